#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
#include "cli/score_options.h"
#include "cli/why.h"
#include "stats/scores/sample_scores.h"

namespace oddglass::cli {
namespace {

using stats::SampleScores;

std::string reasonOf(const SampleScores& scores) {
  const std::string text = why(scores.why.value_or(stats::Reason::noSpread));
  return scores.about.empty() ? text : text + ": " + scores.about;
}

Json withReason(Json json, bool isEmpty, const std::string& reason) {
  if (isEmpty) json["why"] = reason;
  return json;
}

Json modelJson(const SampleScores& scores) {
  Json variance = Json::object();
  std::string missing;
  for (const auto& each : scores.variances) {
    variance[each.term] = numberOrNull(each.variance);
    if (!each.variance) missing += (missing.empty() ? "" : "; ") + each.term + ": " + why(each.why.value_or(stats::Reason::noSpread));
  }
  if (!missing.empty()) variance["why"] = missing;
  Json model{{"fit", scores.fit == stats::ScoreFit::classical ? "anova" : "reml"}, {"random", scores.random}, {"variance", std::move(variance)},
             {"reml_criterion", numberOrNull(scores.remlCriterion)}, {"singular", scores.isSingular}};
  return withReason(std::move(model), !scores.remlCriterion, reasonOf(scores));
}

Json testJson(const SampleScores& scores) {
  Json json{{"F", nullptr}, {"df1", nullptr}, {"df2", nullptr}, {"p_value", nullptr}};
  if (scores.test) json = {{"F", numberOrNull(scores.test->F)}, {"df1", numberOrNull(scores.test->df1)}, {"df2", numberOrNull(scores.test->df2)}, {"p_value", numberOrNull(scores.test->pValue)}};
  const std::string notes = notesOf(scores.notes);
  json["note"] = notes.empty() ? Json(nullptr) : Json(notes);
  return withReason(std::move(json), !scores.test, reasonOf(scores));
}

/// The numbers that a mean and a difference have in common.
template <class Row>
void addErrors(Json& json, const Row& row) {
  json["se"] = numberOrNull(row.se);
  json["df"] = numberOrNull(row.df);
  json["low"] = numberOrNull(row.low);
  json["high"] = numberOrNull(row.high);
}

Json scoresJson(const SampleScores& scores, const std::vector<std::string>& names) {
  const auto name = [&](int sample) { return names[static_cast<std::size_t>(sample)]; };
  Json means = Json::array(), pairs = Json::array(), reference = Json::array();
  for (const auto& each : scores.means) {
    Json row{{"sample", name(each.sample)}, {"mean", numberOrNull(each.mean)}};
    addErrors(row, each);
    means.push_back(withReason(std::move(row), !each.mean || !each.low, reasonOf(scores)));
  }
  for (const auto& each : scores.pairs) {
    Json row{{"a", name(each.a)}, {"b", name(each.b)}, {"difference", numberOrNull(each.difference)}};
    addErrors(row, each);
    row["p_tukey"] = numberOrNull(each.pValue);
    pairs.push_back(withReason(std::move(row), !each.difference || !each.low, reasonOf(scores)));
  }
  for (const auto& each : scores.fromReference) {
    Json row{{"sample", name(each.a)}, {"difference", numberOrNull(each.difference)}};
    addErrors(row, each);
    row["p_dunnett"] = numberOrNull(each.pValue);
    reference.push_back(withReason(std::move(row), !each.difference || !each.low, reasonOf(scores)));
  }
  Json json{{"model", modelJson(scores)}, {"samples", testJson(scores)}, {"means", std::move(means)}, {"pairs", std::move(pairs)}, {"reference", std::move(reference)}};
  return withReason(std::move(json), scores.why.has_value(), reasonOf(scores));
}

}  // namespace

void describeScores(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "scores", "Whether samples differ in their scores, which of them, and by how much");
  const ScoreColumns columns = scoreColumns(command, {"--round", "--session", "--position"});
  const auto reference = command.option("--reference", "X", "The sample that all others are compared with");
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    stats::ScoreQuestion question;
    question.level = level->openShareOr(0.95);
    const NamedScores scores = readScores(columns);
    if (reference->isGiven()) question.reference = labelIn(scores.samples, *reference);
    return {scoresJson(stats::scoresOf(scores.rows, question), scores.samples), {}};
  });
}

}  // namespace oddglass::cli
