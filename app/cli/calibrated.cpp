#include "cli/calibrated.h"

#include "cli/why.h"

namespace oddglass::cli {

Json calibrationJson(const stats::Calibration& found) {
  Json json{{"brier", numberOrNull(found.brier)}, {"brier_of_50", 0.25}, {"log_score", numberOrNull(found.logScore)}, {"expected_hits", numberOrNull(found.expectedHits)},
            {"hits", found.hits}, {"p_value", numberOrNull(found.pValue)}, {"curve", nullptr}};
  if (!found.curve.empty()) json["curve"] = Json::array();
  for (const auto& band : found.curve)
    json["curve"].push_back({{"from", band.low}, {"to", band.high}, {"count", band.count}, {"mean_probability", numberOrNull(band.meanProbability)},
                             {"estimate", numberOrNull(band.cameTrue.estimate)}, {"low", numberOrNull(band.cameTrue.low)}, {"high", numberOrNull(band.cameTrue.high)}});
  if (found.why == stats::Reason::fewSessions) json["why"] = "a curve needs 20 expectations";
  else if (!found.pValue) json["why"] = why(stats::Reason::tooLarge);
  return json;
}

}  // namespace oddglass::cli
