#include "cli/power.h"
#include "stats/votes/preference_plan.h"

namespace oddglass::cli {
namespace {

void refuseOthers(const PowerOptions& options) {
  refuseGiven(options, {options.difference.pd, options.difference.dPrime, options.rounds, options.gamma, options.limit, options.criterion, options.tau});
}

}  // namespace

Answer preferencePower(const PowerOptions& options) {
  refuseOthers(options);
  const double none = options.none->numberOr(0.0, 0.0, 0.999), share = options.share->number(0.0, 1.0);
  const stats::PreferencePower found = stats::preferencePower(options.trials->whole(1, none > 0.0 ? 20'000 : mostTrials), share, options.risk(), none);
  Json json{{"critical", numberOrNull(found.critical)}, {"alpha_actual", numberOrNull(found.alphaActual)}, {"power", numberOrNull(found.power)},
            {"power_this_way", numberOrNull(found.powerThisWay)}, {"no_preference", none}};
  if (!found.critical) json["why"] = noCount;
  return {std::move(json), {}};
}

Answer preferenceSize(const PowerOptions& options) {
  refuseOthers(options);
  return sizesAnswer(stats::preferenceSizes(options.share->number(0.0, 1.0), options.power->openShare(), options.risk()));
}

}  // namespace oddglass::cli
