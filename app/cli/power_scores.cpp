#include "cli/power_scores.h"

#include "cli/why.h"
#include "domain/problem.h"
#include "stats/scores/power.h"

namespace oddglass::cli {

const Given* ScorePlanOptions::anyGiven() const {
  for (const auto& each : {tasters, samples, difference, sdInteraction, sdRepeat, wanted})
    if (each->isGiven()) return each.get();
  return nullptr;
}

ScorePlanOptions scorePlanOptions(Command& command) {
  return {command.option("--tasters", "T", "With --scores: how many people"),
          command.option("--samples", "S", "With --scores: how many samples"),
          command.option("--difference", "D", "With --scores: the true gap between two samples, in points"),
          command.option("--sd-interaction", "X", "With --scores: how much people differ in what they find between samples (1)"),
          command.option("--sd-repeat", "Y", "With --scores: how much one person differs from round to round (1)"),
          command.option("--wanted", "W", "With --scores: the power at which the smallest difference is found (0.8)")};
}

Answer scorePowerOf(const ScorePlanOptions& options, const Given& rounds, const Given& alpha) {
  stats::ScorePlan plan;
  plan.tasters = options.tasters->whole(1, 10'000);
  plan.samples = options.samples->whole(2, 500);
  plan.rounds = rounds.wholeOr(1, 1, 1'000);
  plan.sdInteraction = options.sdInteraction->numberOr(1.0, 0.0, 1e9);
  plan.sdRepeat = options.sdRepeat->numberOr(1.0, 0.0, 1e9);
  const double risk = alpha.openShareOr(0.05), wanted = options.wanted->openShareOr(0.8);
  if (wanted <= risk) throw Problem(Trouble::outOfRange, options.wanted->name, {{"text", options.wanted->isGiven() ? options.wanted->text() : "0.8"}, {"low", "just above alpha"}, {"high", "just below 1"}});
  const stats::ScorePower found = stats::scorePower(plan, options.difference->number(-1e12, 1e12), risk, wanted);
  Json json{{"power", numberOrNull(found.power)}, {"smallest_difference", numberOrNull(found.smallestDifference)}, {"at_power", wanted},
            {"sd_interaction", plan.sdInteraction}, {"sd_repeat", plan.sdRepeat}};
  if (found.why) json["why"] = why(*found.why);
  return {std::move(json), {}};
}

}  // namespace oddglass::cli
