#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/right/just_right.h"

namespace oddglass::cli {
namespace {

constexpr int mostSamples = 100;

struct RightOptions {
  std::shared_ptr<Given> file, response, liking, sample, taster, level;
};

struct NamedRight {
  stats::RightRows rows;
  std::vector<std::string> samples;
  std::size_t leftOut = 0;
};

/// Rows without one of the two answers are left out. One sample is enough: nothing is compared between samples.
NamedRight readRight(const RightOptions& options) {
  LongTable table(*options.file, {options.response.get(), options.liking.get(), options.sample.get(), options.taster.get()});
  NamedRight named;
  named.leftOut = table.rows();
  table.keepAnswered(*options.response);
  table.keepAnswered(*options.liking);
  named.leftOut -= table.rows();
  named.rows.category = table.wholes(*options.response, 1, 5);
  named.rows.liking = table.numbers(*options.liking);
  Labels samples = table.labels(*options.sample);
  const Labels tasters = table.labels(*options.taster);
  table.requireOnce({&tasters, &samples}, *options.sample, "answered for");
  if (samples.factor.levels > mostSamples) throw Problem(Trouble::outOfRange, options.sample->name, {{"text", std::to_string(samples.factor.levels)}, {"low", "1"}, {"high", std::to_string(mostSamples)}});
  named.rows.sample = std::move(samples.factor);
  named.rows.taster = tasters.factor;
  named.samples = std::move(samples.names);
  return named;
}

std::string whyNoDrop(stats::Reason reason, int onThisSide) {
  if (reason != stats::Reason::emptyCell) return why(reason);
  return onThisSide == 0 ? "nobody is on this side" : "nobody said just about right";
}

Json dropJson(const stats::LikingDrop& found) {
  const auto& p = found.permuted;
  Json json{{"mean", numberOrNull(found.drop.estimate)}, {"low", numberOrNull(found.drop.low)}, {"high", numberOrNull(found.drop.high)}, {"p_value", p ? numberOrNull(p->pValue) : Json()},
            {"penalty", numberOrNull(found.penalty)}, {"answers", found.answers}, {"se", numberOrNull(found.drop.se)}, {"df", numberOrNull(found.drop.df)}, {"p_t", numberOrNull(found.drop.pValue)},
            {"by", p ? Json(p->isExact ? "exact" : "100,000 draws") : Json()}, {"permutation_error", p ? numberOrNull(p->error) : Json()}};
  if (const auto reason = found.drop.why ? found.drop.why : found.whyNoSplit) json["why"] = whyNoDrop(*reason, found.answers);
  return json;
}

Json sampleJson(const stats::RightSample& found, const std::string& name) {
  Json json{{"sample", name}, {"answers", found.answers}, {"low_share", found.lowShare}, {"right_share", found.rightShare}, {"high_share", found.highShare},
            {"mean_liking", numberOrNull(found.meanLiking)}, {"mean_right", numberOrNull(found.meanRight)}, {"drop_low", dropJson(found.low)}, {"drop_high", dropJson(found.high)},
            {"total_penalty", numberOrNull(found.totalPenalty)}, {"p_sides", numberOrNull(found.pSides)}};
  if (!found.totalPenalty) json["why"] = "nobody said just about right";
  else if (!found.pSides) json["why"] = "nobody said too little or too much";
  return json;
}

/// The same for people: one table of samples, one of drops.
std::string sidesAsTables(const Json& json) {
  Json samples = Json::array(), drops = Json::array();
  for (Json each : json.at("samples")) {
    for (const char* side : {"low", "high"}) {
      const std::string key = std::string("drop_") + side;
      Json row{{"sample", each.at("sample")}, {"side", std::string(side) == "low" ? "too little" : "too much"}};
      for (const char* shown : {"answers", "mean", "low", "high", "p_value", "penalty", "why"}) row[std::string(shown) == "mean" ? "drop" : shown] = each.at(key).value(shown, Json());
      drops.push_back(std::move(row));
      each.erase(key);
    }
    each["why"] = each.value("why", Json());
    samples.push_back(std::move(each));
  }
  std::string text = readable({{"samples", std::move(samples)}, {"drops", std::move(drops)}, {"left_out", json.at("left_out")}});
  text.pop_back();
  return text;
}

}  // namespace

void describeRight(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "right", "What too little and too much cost in liking: just-about-right answers, for each sample");
  RightOptions options;
  options.file = command.argument("FILE", "A CSV table, one taster's answer for one sample a row; one round at a time");
  options.response = command.option("--response", "R", "The column of answers from 1 (far too little) to 5 (far too much); 3 is just about right");
  options.liking = command.option("--liking", "L", "The column of liking, higher is better");
  options.sample = command.option("--sample", "S", "The column that names the sample");
  options.taster = command.option("--taster", "T", "The column that names the taster");
  options.level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const double level = options.level->openShareOr(0.95);
    const NamedRight named = readRight(options);
    Json samples = Json::array();
    for (const stats::RightSample& each : stats::justRight(named.rows, level)) samples.push_back(sampleJson(each, named.samples[static_cast<std::size_t>(each.sample)]));
    const Json json{{"samples", std::move(samples)}, {"left_out", named.leftOut}};
    return {json, {sidesAsTables(json)}};
  });
}

}  // namespace oddglass::cli
