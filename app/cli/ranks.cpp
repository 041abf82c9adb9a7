#include "cli/arranged.h"
#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/ranks/durbin.h"
#include "stats/ranks/friedman.h"
#include "stats/ranks/page.h"
#include "stats/ranks/pairs.h"

#include <sstream>

namespace oddglass::cli {
namespace {

struct RankOptions {
  std::shared_ptr<Given> file, rank, sample, taster, expected, alpha;
  std::shared_ptr<bool> bestFirst;
};

/// Ranks with the names of their samples.
struct NamedRanks {
  stats::RankBlocks ranks;
  Labels samples;
};

NamedRanks readRanks(const RankOptions& options) {
  LongTable table(*options.file, {options.rank.get(), options.sample.get(), options.taster.get()});
  table.keepAnswered(*options.rank);
  std::vector<double> values = table.numbers(*options.rank);
  NamedRanks named;
  named.samples = table.labels(*options.sample, 2);
  const Labels tasters = table.labels(*options.taster);
  table.requireOnce({&tasters, &named.samples}, *options.sample, "ranked");
  // Turned, so that more is always higher.
  if (*options.bestFirst)
    for (double& value : values) value = -value;
  named.ranks = stats::rankBlocks(values, named.samples.factor, tasters.factor);
  return named;
}

std::vector<int> orderOf(const Given& expected, const Labels& samples) {
  std::vector<int> order;
  std::istringstream parts(expected.text());
  for (std::string part; std::getline(parts, part, ',');) {
    part.erase(0, part.find_first_not_of(' '));
    part.erase(part.find_last_not_of(' ') + 1);
    order.push_back(labelOf(samples, Given{expected.name, part}));
  }
  return order;
}

Json ratioJson(const std::optional<stats::RankF>& f) {
  if (!f) return nullptr;
  return Json{{"F", numberOrNull(f->F)}, {"df1", f->df1}, {"df2", f->df2}, {"p_value", numberOrNull(f->pValue)}};
}

Json friedmanJson(const stats::Friedman& found) {
  Json json{{"statistic", numberOrNull(found.statistic)}, {"df", found.df}, {"p_value", numberOrNull(found.pValue)}};
  addArranged(json, found.arranged);
  json["iman_davenport"] = ratioJson(found.imanDavenport);
  json["why"] = whyOf(found.why, found.arranged);
  return json;
}

Json durbinJson(const stats::Durbin& found) {
  Json json{{"statistic", numberOrNull(found.statistic)}, {"df", found.df}, {"p_value", numberOrNull(found.pValue)}};
  addArranged(json, found.arranged);
  json["f"] = ratioJson(found.f);
  json["balanced"] = found.blocks.isBalanced;
  json["why"] = whyOf(found.why, found.arranged);
  return json;
}

Json pageJson(const stats::Page& found) {
  Json json{{"l", numberOrNull(found.l)}, {"z", numberOrNull(found.z)}, {"p_value", numberOrNull(found.pValue)}};
  addArranged(json, {found.pExact, found.drawn});
  json["why"] = whyOf(found.why, {found.pExact, found.drawn});
  return json;
}

Json pairsJson(const stats::RankPairs& found, const std::vector<std::string>& names) {
  Json list = Json::array();
  for (const stats::RankPair& pair : found.pairs) {
    Json json{{"a", names[static_cast<std::size_t>(pair.a)]}, {"b", names[static_cast<std::size_t>(pair.b)]}, {"difference", numberOrNull(pair.difference)},
              {"p_nemenyi", numberOrNull(pair.pNemenyi)}, {"p_conover_holm", numberOrNull(pair.pConoverHolm)}};
    if (const auto reason = found.whyNemenyi ? found.whyNemenyi : found.whyConover) json["why"] = why(*reason);
    list.push_back(std::move(json));
  }
  return list;
}

Json judged(const NamedRanks& named, const RankOptions& options) {
  const stats::RankBlocks& ranks = named.ranks;
  const double alpha = options.alpha->openShareOr(0.05);
  const stats::Friedman friedman = stats::friedman(ranks);
  Json json{{"friedman", friedmanJson(friedman)}, {"rank_sums", Json::object()}};
  for (std::size_t i = 0; i < named.samples.names.size(); ++i) json["rank_sums"][named.samples.names[i]] = numberOrNull(friedman.rankSums[i]);
  json["kendall_w"] = numberOrNull(friedman.kendallW);
  const auto lsd = friedman.why == stats::Reason::oneTaster ? std::nullopt : stats::leastSignificantDifference(stats::blockSizes(ranks), alpha);
  json["lsd"] = numberOrNull(lsd);
  if (friedman.why) json["why"] = why(*friedman.why);
  json["pairs"] = pairsJson(stats::rankPairs(ranks), named.samples.names);
  if (options.expected->isGiven()) json["page"] = pageJson(stats::page(ranks, orderOf(*options.expected, named.samples)));
  if (!stats::isComplete(ranks)) json["durbin"] = durbinJson(stats::durbin(ranks));
  json["tasters"] = ranks.blocks.size();
  return json;
}

}  // namespace

void describeRanks(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "ranks", "Whether samples that were put in order differ, and which; by tasters who ranked all of them, or some");
  RankOptions options;
  options.file = command.argument("FILE", "A CSV table, one rank a row; scores are ranked within each taster");
  options.rank = command.option("--rank", "R", "The column of the rank; 1 is least, ties share or repeat a rank");
  options.sample = command.option("--sample", "S", "The column that names the sample");
  options.taster = command.option("--taster", "T", "The column that names the taster");
  options.expected = command.option("--expected", "A,B,C", "All samples in the order expected beforehand, from least to most");
  options.bestFirst = command.flag("--best-first", "Rank 1 is most; ranks are turned, so that a higher rank sum is always more");
  options.alpha = alphaOption(command);
  command.does([=](Desk&) -> Answer {
    const NamedRanks named = readRanks(options);
    if (named.ranks.samples > 300) throw Problem(Trouble::outOfRange, options.sample->name, {{"text", std::to_string(named.ranks.samples)}, {"low", "2"}, {"high", "300"}});
    return {judged(named, options), {}};
  });
}

}  // namespace oddglass::cli
