#include "cli/estimated.h"
#include "cli/families.h"
#include "cli/options.h"
#include "cli/score_options.h"

namespace oddglass::cli {

void describeAlike(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "alike", "Whether a batch is alike a reference within a limit set beforehand, paired by taster");
  const ScoreColumns columns = scoreColumns(command, {"--round"});
  const auto batch = command.option("--batch", "X", "The sample that is judged");
  const auto reference = command.option("--reference", "Y", "The sample it is compared with");
  const auto limit = command.option("--limit", "D", "The largest difference that does not matter, above 0");
  const auto alpha = alphaOption(command);
  command.does([=](Desk&) -> Answer {
    const double most = limitOf(*limit), risk = limitRisk(*alpha);
    const NamedScores scores = readScores(columns);
    const auto [own, other] = twoSamples(scores, *batch, *reference);
    return {alikeJson(stats::pairedAlike(stats::differencesByTaster(scores.rows, own, other), most, risk), most, "alike"), {}};
  });
}

}  // namespace oddglass::cli
