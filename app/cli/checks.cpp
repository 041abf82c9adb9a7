#include "cli/arranged.h"
#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/checks/checked.h"
#include "stats/checks/correspondence.h"

#include <algorithm>
#include <numeric>

namespace oddglass::cli {
namespace {

constexpr int mostChecked = 50, mostDescriptors = 200;

struct CheckOptions {
  std::shared_ptr<Given> file, sample, taster, descriptor, checked;
};

struct NamedChecks {
  stats::CheckRows rows;
  std::vector<std::string> samples, descriptors;
  std::size_t leftOut = 0;
};

void requireFew(const Labels& labels, const Given& column, int low, int high) {
  if (labels.factor.levels > high) throw Problem(Trouble::outOfRange, column.name, {{"text", std::to_string(labels.factor.levels)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
}

NamedChecks readChecks(const CheckOptions& options) {
  LongTable table(*options.file, {options.sample.get(), options.taster.get(), options.descriptor.get(), options.checked.get()});
  NamedChecks named;
  named.leftOut = table.rows();
  table.keepAnswered(*options.checked);
  named.leftOut -= table.rows();
  named.rows.checked = table.wholes(*options.checked, 0, 1);
  Labels samples = table.labels(*options.sample, 2), descriptors = table.labels(*options.descriptor), tasters = table.labels(*options.taster);
  requireFew(samples, *options.sample, 2, mostChecked);
  requireFew(descriptors, *options.descriptor, 1, mostDescriptors);
  table.requireOnce({&tasters, &samples, &descriptors}, *options.checked, "answered for");
  named.rows.sample = std::move(samples.factor);
  named.rows.taster = std::move(tasters.factor);
  named.rows.descriptor = std::move(descriptors.factor);
  named.samples = std::move(samples.names);
  named.descriptors = std::move(descriptors.names);
  return named;
}

Json pairJson(const stats::CheckPair& pair, const std::vector<std::string>& samples) {
  Json json{{"a", samples[static_cast<std::size_t>(pair.a)]}, {"b", samples[static_cast<std::size_t>(pair.b)]}, {"only_a", pair.onlyA}, {"only_b", pair.onlyB},
            {"p_mcnemar", numberOrNull(pair.pMcNemar)}, {"p_holm", numberOrNull(pair.pHolm)}};
  if (!pair.pMcNemar) json["why"] = "nobody answered for both";
  return json;
}

std::string whyNoTest(const stats::CheckedDescriptor& found) {
  if (found.test.why == stats::Reason::emptyCell) return "nobody answered for every sample";
  if (found.test.why == stats::Reason::allTied) return "everybody checked it for all samples or for none";
  return whyOf(found.test.why, found.test.arranged);
}

Json descriptorJson(const stats::CheckedDescriptor& found, const NamedChecks& named) {
  Json json{{"descriptor", named.descriptors[static_cast<std::size_t>(found.descriptor)]}, {"shares", Json::object()}, {"cochran_q", numberOrNull(found.test.statistic)}, {"df", found.test.df},
            {"p_value", numberOrNull(found.test.pValue)}};
  for (std::size_t i = 0; i < named.samples.size(); ++i) json["shares"][named.samples[i]] = numberOrNull(found.shares[i]);
  addArranged(json, found.test.arranged);
  json["p_holm"] = numberOrNull(found.pHolm);
  json["tasters"] = found.tasters;
  json["left_out"] = found.leftOut;
  if (found.leftOut > 0) json["note"] = "the test is by those who answered for every sample; shares and pairs are by all who answered";
  json["why"] = whyNoTest(found);
  json["pairs"] = Json::array();
  for (const auto& pair : found.pairs) json["pairs"].push_back(pairJson(pair, named.samples));
  return json;
}

/// The lines of one side of the map; those without checks are not on it.
Json placed(const std::vector<std::optional<std::vector<double>>>& lines, const std::vector<std::string>& names, const char* key) {
  Json on = Json::array();
  for (std::size_t i = 0; i < names.size(); ++i)
    if (lines[i]) on.push_back({{key, names[i]}, {"coordinates", *lines[i]}});
  return on;
}

Json mapJson(const std::vector<stats::CheckedDescriptor>& found, const NamedChecks& named) {
  std::vector<std::vector<double>> counts(named.samples.size());
  std::vector<double> ofDescriptor(found.size(), 0.0), ofSample(counts.size(), 0.0);
  for (std::size_t j = 0; j < found.size(); ++j)
    for (std::size_t i = 0; i < counts.size(); ++i) {
      counts[i].push_back(found[j].checks[i]);
      ofDescriptor[j] += found[j].checks[i];
      ofSample[i] += found[j].checks[i];
    }
  const stats::Correspondence map = stats::correspondence(counts);
  const double total = std::accumulate(map.inertia.begin(), map.inertia.end(), 0.0);
  Json json{{"inertia", map.inertia}, {"share", Json::array()}, {"total_inertia", map.why ? Json() : numberOrNull(total)}, {"samples", placed(map.rows, named.samples, "sample")},
            {"descriptors", placed(map.columns, named.descriptors, "descriptor")}, {"never_checked", Json::array()}, {"samples_without_checks", Json::array()}};
  for (double each : map.inertia) json["share"].push_back(each / total);
  for (std::size_t j = 0; j < ofDescriptor.size(); ++j)
    if (ofDescriptor[j] == 0.0) json["never_checked"].push_back(named.descriptors[j]);
  for (std::size_t i = 0; i < ofSample.size(); ++i)
    if (ofSample[i] == 0.0) json["samples_without_checks"].push_back(named.samples[i]);
  if (std::ranges::any_of(found, [](const auto& each) { return each.leftOut > 0; })) json["note"] = "by those who answered for every sample";
  if (map.why) json["why"] = map.why == stats::Reason::noSpread ? "the samples were described alike" : "a map needs two samples and two descriptors with checks";
  return json;
}

/// The same for people: descriptors with their shares side by side, and the pairs in a table of their own.
std::string checksAsTables(const Json& json) {
  Json descriptors = Json::array(), pairs = Json::array();
  for (const Json& each : json.at("descriptors")) {
    Json row{{"descriptor", each.at("descriptor")}};
    for (const auto& [sample, share] : each.at("shares").items()) row["share " + sample] = share;
    for (const char* key : {"cochran_q", "df", "p_value", "p_exact", "p_permutation", "p_holm", "tasters", "left_out", "why"}) row[key] = each.at(key);
    descriptors.push_back(std::move(row));
    for (const Json& pair : each.at("pairs")) {
      Json line{{"descriptor", each.at("descriptor")}};
      line.update(pair);
      pairs.push_back(std::move(line));
    }
  }
  std::string text = readable({{"descriptors", std::move(descriptors)}, {"pairs", std::move(pairs)}, {"map", json.at("map")}, {"left_out", json.at("left_out")}});
  text.pop_back();
  return text;
}

}  // namespace

void describeChecks(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "checks", "Whether descriptors were checked for some samples more often than for others, and how samples and descriptors go together");
  CheckOptions options;
  options.file = command.argument("FILE", "A CSV table, one box a row: a taster, a sample, a descriptor, and whether it was checked; one round at a time");
  options.sample = command.option("--sample", "S", "The column that names the sample");
  options.taster = command.option("--taster", "T", "The column that names the taster");
  options.descriptor = command.option("--descriptor", "D", "The column that names the descriptor");
  options.checked = command.option("--checked", "C", "The column that says 1 for checked and 0 for not; empty is missing");
  command.does([=](Desk&) -> Answer {
    const NamedChecks named = readChecks(options);
    const auto found = stats::checkedDescriptors(named.rows);
    Json descriptors = Json::array();
    for (const auto& each : found) descriptors.push_back(descriptorJson(each, named));
    const Json json{{"descriptors", std::move(descriptors)}, {"map", mapJson(found, named)}, {"left_out", named.leftOut}};
    return {json, {checksAsTables(json)}};
  });
}

}  // namespace oddglass::cli
