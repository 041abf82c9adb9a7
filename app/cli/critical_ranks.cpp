#include "cli/critical.h"
#include "cli/options.h"
#include "stats/ranks/critical.h"

namespace oddglass::cli {
namespace {

Answer criticalOf(const CriticalOptions& options, stats::RankCritical (*of)(int samples, int tasters, double alpha), const char* approximation) {
  const stats::RankCritical found = of(options.samples->whole(2, 1000), options.tasters->whole(1, mostTrials), options.alpha->openShareOr(0.05));
  Json json{{"critical", numberOrNull(found.critical)}, {"alpha_actual", found.critical ? numberOrNull(found.alphaActual) : Json()}, {"by", found.isExact ? "exact" : approximation}};
  if (!found.critical) json["why"] = "no set of ranks reaches this risk";
  return {std::move(json), {}};
}

}  // namespace

Answer criticalFriedman(const CriticalOptions& options) { return criticalOf(options, stats::friedmanCritical, "chi-square"); }
Answer criticalPage(const CriticalOptions& options) { return criticalOf(options, stats::pageCritical, "normal"); }

}  // namespace oddglass::cli
