#include "cli/families.h"
#include "cli/options.h"
#include "cli/profile_map.h"
#include "cli/profile_verdicts.h"
#include "cli/score_options.h"
#include "domain/problem.h"

namespace oddglass::cli {
namespace {

stats::ProfileAdjust adjustOf(const Given& given) {
  if (!given.isGiven()) return stats::ProfileAdjust::benjaminiHochberg;
  const std::string& by = given.oneOf({"bh", "holm", "none"});
  return by == "bh" ? stats::ProfileAdjust::benjaminiHochberg : by == "holm" ? stats::ProfileAdjust::holm : stats::ProfileAdjust::none;
}

/// For people: the differences in a table of their own, since a row cannot hold them; rows of one table have the same columns.
std::string shownProfile(const Json& json) {
  Json flat{{"descriptors", Json::array()}, {"differences", Json::array()}};
  for (Json row : json.at("descriptors")) {
    for (const Json& each : row.at("differences")) {
      Json line{{"descriptor", row.at("descriptor")}};
      for (const char* key : {"sample", "difference", "low", "high", "p_adjusted", "p_limit_adjusted", "verdict", "tasters"}) line[key] = each.at(key);
      line["why"] = each.contains("why") ? each.at("why") : Json("");
      flat["differences"].push_back(std::move(line));
    }
    row.erase("differences");
    Json line = Json::object();
    for (const char* key : {"descriptor", "F", "df1", "df2", "p_value", "p_holm", "p_bh", "fit"}) line[key] = row.at(key);
    line["why"] = row.contains("why") ? row.at("why") : Json("");
    flat["descriptors"].push_back(std::move(line));
  }
  if (flat["differences"].empty()) flat.erase("differences");
  for (const char* key : {"variance", "share", "samples", "descriptors"}) flat["components"][key] = json.at("components").at(key);
  if (json.at("components").contains("why")) flat["components"]["why"] = json.at("components").at("why");
  flat["rv"] = Json::array();
  for (const Json& each : json.at("rv")) {
    Json line = Json::object();
    for (const char* key : {"taster", "rv", "permutation_mean", "p_value", "samples", "descriptors"}) line[key] = each.at(key);
    line["why"] = each.contains("why") ? each.at("why") : Json("");
    flat["rv"].push_back(std::move(line));
  }
  if (json.contains("resampled")) flat["resampled"] = json.at("resampled");
  std::string text = readable(flat);
  text.pop_back();
  return text;
}

}  // namespace

void describeProfile(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "profile", "What each descriptor says of the samples, and how each differs from the reference");
  const ScoreColumns columns = scoreColumns(command, {"--descriptor", "--round"});
  const auto reference = command.option("--reference", "X", "The sample that all others are compared with");
  const auto limit = command.option("--limit", "D", "The largest difference that does not matter, above 0; needs --reference");
  const auto adjust = command.option("--adjust", "A", "How p values are adjusted over the descriptors: bh, holm or none (bh)");
  const auto alpha = alphaOption(command);
  const auto level = command.option("--level", "L", "Level of the intervals and ellipses (1 - alpha)");
  const auto resamples = command.option("--resamples", "N", "Intervals of the means over so many resampled panels, from 20 tasters");
  const auto isScaled = command.flag("--scale", "Components of the correlation instead of the covariance");
  command.does([=](Desk&) -> Answer {
    stats::ProfileQuestion question;
    question.adjust = adjustOf(*adjust);
    question.alpha = limit->isGiven() ? limitRisk(*alpha) : alpha->openShareOr(0.05);
    if (level->isGiven()) question.level = level->openShare();
    const int draws = resamples->wholeOr(0, 100, 1'000'000);
    const double within = question.level.value_or(1.0 - question.alpha);
    if (limit->isGiven()) {
      question.limit = limitOf(*limit);
      reference->text();
    }
    const NamedScores scores = readScores(columns);
    if (reference->isGiven()) question.reference = labelIn(scores.samples, *reference);
    const stats::ProfileRows rows{scores.rows, scores.descriptors.factor};
    const stats::ProfileCells cells = stats::profileCells(rows);
    Json json{{"descriptors", descriptorsJson(stats::profileOf(rows, question), scores, question)},
              {"components", componentsJson(stats::componentsOf(cells, *isScaled, within), scores, *isScaled)},
              {"rv", rvJson(stats::rvOf(cells), scores)}};
    if (draws > 0) json["resampled"] = resampledJson(stats::resampledProfile(cells, draws, within), scores);
    const std::string table = shownProfile(json);
    return {std::move(json), {table}};
  });
}

}  // namespace oddglass::cli
