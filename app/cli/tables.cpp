#include "cli/families.h"
#include "cli/options.h"
#include "stats/binomial.h"
#include "stats/choice.h"

namespace oddglass::cli {
namespace {

void describeCritical(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "critical", "The count that is needed at a given risk");
  const auto of = command.option("--of", "M", "triangle, duo-trio, tetrad, two-out-of-five, pair, three-afc or preference");
  const auto trials = command.option("--trials", "N", "How many trials");
  const auto alpha = alphaOption(command);
  command.does([=](Desk&) -> Answer {
    const stats::Method method = methodOf(*of);
    const int all = trials->whole(1, mostTrials);
    const auto critical = stats::neededNumber(method, all, alpha->openShareOr(0.05));
    Json json{{"critical", numberOrNull(critical)}, {"alpha_actual", critical ? numberOrNull(stats::pValue(method, *critical, all)) : Json()}, {"by", "exact"}};
    if (!critical) json["why"] = "no count reaches this risk";
    return {std::move(json), {}};
  });
}

Json ends(const stats::Interval& interval) { return Json::array({numberOrNull(interval.low), numberOrNull(interval.high)}); }

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

}  // namespace

void describeTables(CLI::App& app, Command::Work& chosen) {
  describeCritical(app, chosen);
  describeProportion(app, chosen);
}

}  // namespace oddglass::cli
