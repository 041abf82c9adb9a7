#include "cli/families.h"
#include "cli/options.h"
#include "cli/score_options.h"
#include "cli/why.h"
#include "stats/ordinal/ordinal.h"

#include <boost/math/distributions/normal.hpp>

#include <algorithm>

namespace oddglass::cli {
namespace {

constexpr int mostCategory = 1'000'000;

/// The samples with this one first; the others stay in alphabetical order.
void putFirst(NamedScores& scores, int reference) {
  std::rotate(scores.samples.begin(), scores.samples.begin() + reference, scores.samples.begin() + reference + 1);
  for (int& level : scores.rows.sample.of) level = level == reference ? 0 : level < reference ? level + 1 : level;
}

Json ratedJson(const stats::RatedSamples& rated, const std::vector<std::string>& samples, double level) {
  Json json{{"thresholds", nullptr}, {"categories", nullptr}, {"reference", samples.front()}, {"samples", nullptr}, {"taster_sd", nullptr}, {"singular", nullptr},
            {"log_likelihood", nullptr}, {"lr", {{"statistic", numberOrNull(rated.ratio)}, {"df", samples.size() - 1}, {"p_value", numberOrNull(rated.pValue)}}}};
  if (rated.why) json["why"] = why(*rated.why);
  if (!rated.fit) return json;
  const stats::OrdinalFit& fit = *rated.fit;
  json["thresholds"] = Json::array();
  for (double threshold : fit.thresholds) json["thresholds"].push_back(numberOrNull(threshold));
  json["categories"] = fit.categories;
  json["samples"] = Json::array();
  const double half = boost::math::quantile(boost::math::normal(), (1.0 + level) / 2.0);
  for (std::size_t i = 0; i < rated.samples.size(); ++i) {
    const stats::SampleShift& each = rated.samples[i];
    json["samples"].push_back({{"sample", samples[i + 1]}, {"estimate", numberOrNull(each.estimate)}, {"se", numberOrNull(each.se)}, {"low", numberOrNull(each.estimate - half * each.se)},
                               {"high", numberOrNull(each.estimate + half * each.se)}, {"p_value", numberOrNull(each.pValue)}});
  }
  json["taster_sd"] = numberOrNull(fit.groupSd);
  json["singular"] = fit.singular;
  json["log_likelihood"] = numberOrNull(fit.logLikelihood);
  if (fit.singular) json["note"] = "tasters differ no more than chance would have it, so their spread is zero and left the model";
  return json;
}

}  // namespace

void describeRatings(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "ratings", "Samples rated in ordered categories: a cumulative logit model with tasters at random");
  const ScoreColumns columns = scoreColumns(command, {"--round", "--session", "--position"});
  const auto reference = command.option("--reference", "X", "The sample the others are compared with; the first in the alphabet unless given");
  const auto points = command.option("--points", "N", "Points of quadrature, 1 to 100; 1 is Laplace's approximation, as when left out");
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const int nodes = points->wholeOr(1, 1, 100);
    const double covered = level->openShareOr(0.95);
    NamedScores scores = readScores(columns);
    LongTable table(*columns.file, {columns.response.get()});
    table.keepAnswered(*columns.response);
    table.wholes(*columns.response, -mostCategory, mostCategory);  // names the line of an answer that is no category
    if (reference->isGiven()) putFirst(scores, labelIn(scores.samples, *reference));
    return {ratedJson(stats::rateSamples(scores.rows, nodes), scores.samples, covered), {}};
  });
}

}  // namespace oddglass::cli
