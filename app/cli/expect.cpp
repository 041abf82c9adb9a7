#include "cli/calibrated.h"
#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
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
    return {calibrationJson(found), {}};
  });
}

}  // namespace oddglass::cli
