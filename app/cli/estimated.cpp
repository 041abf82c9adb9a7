#include "cli/estimated.h"

#include "cli/why.h"

namespace oddglass::cli {

Json estimatedJson(const stats::Estimated& found, const std::string& noSpread) {
  Json json{{"estimate", numberOrNull(found.estimate)}, {"se", numberOrNull(found.se)}, {"df", numberOrNull(found.df)},
            {"low", numberOrNull(found.low)}, {"high", numberOrNull(found.high)}, {"p_value", numberOrNull(found.pValue)}};
  if (found.why) json["why"] = *found.why == stats::Reason::noSpread && !noSpread.empty() ? noSpread : why(*found.why);
  return json;
}

Json alikeJson(const stats::Alike& found, double limit, const std::string& shown) {
  Json json{{"difference", numberOrNull(found.difference)}, {"low", numberOrNull(found.low)}, {"high", numberOrNull(found.high)}, {"limit", limit},
            {"p_value", numberOrNull(found.pValue)}, {"verdict", found.isAlike ? shown : "cannot tell"}, {"tasters", found.tasters}};
  if (found.why) json["why"] = why(*found.why);
  return json;
}

}  // namespace oddglass::cli
