#include "cli/families.h"
#include "cli/options.h"
#include "stats/binomial.h"

namespace oddglass::cli {
namespace {

Json ends(const stats::Interval& interval) { return Json::array({numberOrNull(interval.low), numberOrNull(interval.high)}); }

}  // namespace

void describeProportion(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "proportion", "Three intervals of a share");
  const auto trials = command.option("--trials", "N", "How many trials");
  const auto successes = command.option("--successes", "X", "How many of them");
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const int all = trials->whole(0, mostTrials), some = successes->whole(0, all);
    const double within = level->openShareOr(0.95);
    if (all == 0) return {Json{{"clopper_pearson", nullptr}, {"wilson", nullptr}, {"jeffreys", nullptr}, {"why", "nothing was counted"}}, {}};
    return {Json{{"clopper_pearson", ends(stats::clopperPearson(some, all, within))}, {"wilson", ends(stats::wilson(some, all, within))},
                 {"jeffreys", ends(stats::jeffreys(some, all, within))}}, {}};
  });
}

}  // namespace oddglass::cli
