#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
#include "cli/why.h"
#include "stats/lean/expectation.h"

namespace oddglass::cli {

void describeExpect(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "expect", "How well expectations hold: probabilities given beforehand, and what came true");
  const auto file = command.argument("FILE", "A CSV table, one expectation a row");
  const auto probability = command.option("--probability", "P", "The column of probabilities, 0.01 to 0.99");
  const auto cameTrue = command.option("--came-true", "O", "The column that holds 1 for what came true and 0 for what did not");
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const double within = level->openShareOr(0.95);
    LongTable table(*file, {probability.get(), cameTrue.get()});
    table.keepAnswered(*probability);
    table.keepAnswered(*cameTrue);
    const std::vector<int> outcomes = table.wholes(*cameTrue, 0, 1);
    const auto found = stats::calibration(table.numbers(*probability, 0.01, 0.99), std::vector<bool>(outcomes.begin(), outcomes.end()), within);
    Json json{{"brier", numberOrNull(found.brier)}, {"brier_of_50", 0.25}, {"log_score", numberOrNull(found.logScore)}, {"expected_hits", numberOrNull(found.expectedHits)},
              {"hits", found.hits}, {"p_value", numberOrNull(found.pValue)}, {"curve", nullptr}};
    if (!found.curve.empty()) json["curve"] = Json::array();
    for (const auto& band : found.curve)
      json["curve"].push_back({{"from", band.low}, {"to", band.high}, {"count", band.count}, {"mean_probability", numberOrNull(band.meanProbability)},
                               {"estimate", numberOrNull(band.cameTrue.estimate)}, {"low", numberOrNull(band.cameTrue.low)}, {"high", numberOrNull(band.cameTrue.high)}});
    if (found.why == stats::Reason::fewSessions) json["why"] = "a curve needs 20 expectations";
    else if (!found.pValue) json["why"] = why(stats::Reason::tooLarge);
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
