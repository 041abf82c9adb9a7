#include "cli/estimated.h"
#include "cli/families.h"
#include "cli/options.h"
#include "cli/score_options.h"
#include "cli/why.h"
#include "stats/orders/order_effects.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

constexpr int mostPlaces = 1000;

/// For each row the number of the sample before, -1 where none is named.
std::vector<int> previousOf(const LongTable& table, const Given& column, const std::vector<std::string>& samples) {
  std::vector<int> previous;
  const std::vector<std::string> texts = table.texts(column);
  for (std::size_t row = 0; row < texts.size(); ++row) {
    const auto found = std::ranges::lower_bound(samples, texts[row]);
    const bool isSample = found != samples.end() && *found == texts[row];
    if (!texts[row].empty() && !isSample) table.refuse(row, column, '"' + texts[row] + "\" is not among the samples");
    previous.push_back(isSample ? static_cast<int>(found - samples.begin()) : -1);
  }
  return previous;
}

Json carryOverJson(const stats::OrderEffects::CarryOver& found, const std::vector<std::string>& samples) {
  Json json{{"F", numberOrNull(found.F)}, {"df1", numberOrNull(found.df1)}, {"df2", numberOrNull(found.df2)}, {"p_value", numberOrNull(found.pValue)}};
  if (found.why) json["why"] = why(*found.why);
  json["previous"] = Json::array();
  for (const auto& each : found.previous) {
    Json one{{"sample", samples[static_cast<std::size_t>(each.sample)]}};
    one.update(estimatedJson(each.effect));
    json["previous"].push_back(std::move(one));
  }
  return json;
}

}  // namespace

void describeOrder(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "order", "What the place of a cup, and the cup before it, did to the scores");
  ScoreColumns columns = scoreColumns(command, {"--round", "--session", "--position"});
  const auto previous = command.option("--previous", "Q", "The column that names the sample tasted before; empty for the first");
  const auto beside = command.option("--beside", "R2", "Another column of scores: how far both move together (halo)");
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const double within = level->openShareOr(0.95);
    NamedScores scores = readScores(columns);
    LongTable table(*columns.file, {columns.response.get(), columns.position.get(), previous.get(), beside.get()});
    table.keepAnswered(*columns.response);
    // Places are numbers: their labels would sort "10" before "2".
    stats::Factor places{table.wholes(*columns.position, 1, mostPlaces), 0};
    for (int& place : places.of) places.levels = std::max(places.levels, place--);
    scores.rows.position = std::move(places);
    const auto found = stats::orderEffects(scores.rows, previous->isGiven() ? previousOf(table, *previous, scores.samples) : std::vector<int>{}, within);
    Json json{{"first_position", estimatedJson(found.firstPosition)}, {"carry_over", carryOverJson(found.carryOver, scores.samples)}};
    if (beside->isGiven()) {
      const stats::Halo halo = stats::halo(scores.rows, table.numbers(*beside));
      json["halo"] = {{"correlation", numberOrNull(halo.correlation)}, {"df", numberOrNull(halo.df)}, {"p_value", numberOrNull(halo.pValue)}};
      if (halo.why) json["halo"]["why"] = why(*halo.why);
    }
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
