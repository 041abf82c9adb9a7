#include "cli/estimated.h"
#include "cli/families.h"
#include "cli/options.h"
#include "cli/score_options.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/trend/trend.h"

namespace oddglass::cli {
namespace {

struct TimeColumns {
  std::shared_ptr<Given> file, response, age, taster, session, sample, batch, control;
};

/// Reads the batch and its control; other samples are left out. A session has one age.
stats::TimeRows readTime(const TimeColumns& columns) {
  LongTable table(*columns.file, {columns.response.get(), columns.age.get(), columns.taster.get(), columns.session.get(), columns.sample.get()});
  table.keepAnswered(*columns.response);
  const std::vector<double> response = table.numbers(*columns.response), age = table.numbers(*columns.age, -1e6, 1e6);
  const Labels taster = table.labels(*columns.taster), session = table.labels(*columns.session);
  for (const auto* needsSample : {columns.batch.get(), columns.control.get()})
    if (needsSample->isGiven() && !columns.sample->isGiven()) throw Problem(Trouble::empty, columns.sample->name);
  const Labels sample = columns.sample->isGiven() ? table.labels(*columns.sample) : Labels{};
  const int batch = columns.sample->isGiven() ? labelOf(sample, *columns.batch) : -1, control = columns.control->isGiven() ? labelOf(sample, *columns.control) : -1;
  if (control >= 0 && control == batch) throw Problem(Trouble::notAChoice, columns.control->name, {{"text", columns.control->text()}, {"choices", "another sample than " + columns.batch->name}});
  stats::TimeRows rows;
  rows.taster.levels = taster.factor.levels;
  rows.session.levels = session.factor.levels;
  std::vector<std::optional<double>> ages(session.names.size());
  for (std::size_t i = 0; i < response.size(); ++i) {
    auto& known = ages[static_cast<std::size_t>(session.factor.of[i])];
    if (known && *known != age[i]) table.refuse(i, *columns.age, "the session has another age before this line");
    known = age[i];
    const bool isControl = control >= 0 && sample.factor.of[i] == control;
    if (columns.sample->isGiven() && sample.factor.of[i] != batch && !isControl) continue;
    rows.response.push_back(response[i]);
    rows.taster.of.push_back(taster.factor.of[i]);
    rows.session.of.push_back(session.factor.of[i]);
    if (control >= 0) rows.isControl.push_back(isControl);
  }
  for (const auto& each : ages) rows.age.push_back(each.value_or(0.0));
  return rows;
}

Json trendModelJson(const stats::Trend& found) {
  Json variance{{"taster", numberOrNull(found.variance.taster)}, {"session", numberOrNull(found.variance.session)}, {"residual", numberOrNull(found.variance.residual)}};
  if (found.variance.why) variance["why"] = why(*found.variance.why);
  return {{"fit", found.fit == stats::TrendFit::reml ? "reml" : "session means"}, {"variance", std::move(variance)}, {"singular", found.variance.isAtZero}};
}

Json shapeName(const std::optional<stats::Shape>& shape) {
  if (!shape) return nullptr;
  switch (*shape) {
    case stats::Shape::flat: return "flat";
    case stats::Shape::linear: return "linear";
    case stats::Shape::quadratic: return "quadratic";
    case stats::Shape::spline: return "spline";
  }
  return nullptr;
}

Json aiccJson(const stats::ShapeChoice& shape) {
  Json json{{"flat", numberOrNull(shape.flat)}, {"linear", numberOrNull(shape.linear)}, {"quadratic", numberOrNull(shape.quadratic)}, {"spline", numberOrNull(shape.spline)}};
  if (shape.why == stats::Reason::noSpread) json["why"] = "a shape fits every session without a rest";
  else if (shape.why) json["why"] = why(*shape.why);
  else if (!shape.quadratic || !shape.spline) json["why"] = "a quadratic needs 6 sessions and a spline 8, at ages enough";
  return json;
}

Json peakJson(const stats::Trend& found) {
  Json json{{"age", numberOrNull(found.peak.age)}, {"low", numberOrNull(found.peak.low)}, {"high", numberOrNull(found.peak.high)}};
  if (!found.shape.chosen && found.shape.why) json["why"] = why(*found.shape.why);
  else if (found.shape.chosen != stats::Shape::quadratic) json["why"] = "only a chosen quadratic has a peak";
  else if (found.peak.why == stats::Reason::notGiven) json["why"] = "the curve has no peak within the ages seen";
  else if (found.peak.why) json["why"] = why(*found.peak.why);
  else if (!found.peak.low || !found.peak.high) json["why"] = "an open side goes beyond the ages seen";
  return json;
}

}  // namespace

void describeTrend(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "trend", "Whether scores change with age, and whether the last two sittings were alike");
  TimeColumns columns;
  columns.file = command.argument("FILE", "A CSV table, one answer a row");
  columns.response = command.option("--response", "R", "The column of scores");
  columns.age = command.option("--age", "A", "The column of ages, one for each session");
  columns.taster = command.option("--taster", "T", "The column that names the taster");
  columns.session = command.option("--session", "V", "The column that names the session");
  columns.sample = command.option("--sample", "S", "The column that names the sample");
  columns.batch = command.option("--batch", "X", "The sample whose age it is");
  columns.control = command.option("--control", "C", "The sample that was kept from aging, or the reference");
  const auto limit = command.option("--limit", "D", "The largest difference that does not matter, above 0");
  const auto alpha = alphaOption(command), level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const double within = level->openShareOr(0.95), risk = limitRisk(*alpha);
    const double most = limit->isGiven() ? limitOf(*limit) : 0.0;
    const stats::TimeRows rows = readTime(columns);
    const stats::Trend found = stats::trend(rows, within);
    Json json{{"model", trendModelJson(found)}, {"slope", estimatedJson(found.slope)}, {"aicc", aiccJson(found.shape)}, {"shape", shapeName(found.shape.chosen)}};
    if (!found.shape.chosen) json["why"] = why(found.shape.why.value_or(stats::Reason::fewSessions));
    json["peak"] = peakJson(found);
    json["change_since_first"] = estimatedJson(found.changeSinceFirst);
    json["change_since_first"]["tasters"] = found.satInBoth;
    if (limit->isGiven()) json["last_two_alike"] = alikeJson(stats::lastTwoAlike(rows, most, risk), most, found.isConfounded ? "these two sittings were alike" : "alike");
    else json["last_two_alike"] = {{"difference", nullptr}, {"low", nullptr}, {"high", nullptr}, {"limit", nullptr}, {"p_value", nullptr}, {"verdict", nullptr}, {"why", "no limit was given"}};
    json["confounded"] = found.isConfounded;
    json["sessions"] = found.sessions;
    json["tasters"] = found.tasters;
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
