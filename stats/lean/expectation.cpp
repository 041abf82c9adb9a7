#include "stats/lean/expectation.h"

#include "stats/check.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

constexpr std::size_t mostExpectations = 20'000, fewestForCurve = 20;
constexpr int bands = 5;

std::vector<Calibration::Band> curveOf(const std::vector<double>& probabilities, const std::vector<bool>& cameTrue, double level) {
  std::vector<Calibration::Band> all(bands);
  std::vector<int> hits(bands);
  for (std::size_t i = 0; i < probabilities.size(); ++i) {
    const int at = std::min(bands - 1, static_cast<int>(std::floor(probabilities[i] * bands + 1e-9)));
    Calibration::Band& band = all[static_cast<std::size_t>(at)];
    ++band.count;
    band.meanProbability += probabilities[i];
    hits[static_cast<std::size_t>(at)] += cameTrue[i];
  }
  for (std::size_t at = 0; at < all.size(); ++at) {
    Calibration::Band& band = all[at];
    band.low = static_cast<double>(at) / bands;
    band.high = static_cast<double>(at + 1) / bands;
    if (band.count == 0) continue;
    band.meanProbability /= band.count;
    const Interval interval = clopperPearson(hits[at], band.count, level);
    band.cameTrue = {static_cast<double>(hits[at]) / band.count, interval.low, interval.high};
  }
  std::erase_if(all, [](const Calibration::Band& band) { return band.count == 0; });
  return all;
}

}  // namespace

std::vector<double> poissonBinomial(const std::vector<double>& probabilities) {
  std::vector<double> mass(probabilities.size() + 1);
  mass[0] = 1.0;
  for (std::size_t n = 0; n < probabilities.size(); ++n) {
    const double p = probabilities[n];
    requireShare("probability", p);
    for (std::size_t k = n + 1; k > 0; --k) mass[k] = mass[k] * (1.0 - p) + mass[k - 1] * p;
    mass[0] *= 1.0 - p;
  }
  return mass;
}

Calibration calibration(const std::vector<double>& probabilities, const std::vector<bool>& cameTrue, double level) {
  requireOpenShare("level", level);
  if (probabilities.empty()) throw BadInput("probability", "there are no expectations");
  if (probabilities.size() != cameTrue.size()) throw BadInput("cameTrue", "must have as many rows as the probability");
  Calibration found;
  const double n = static_cast<double>(probabilities.size());
  for (std::size_t i = 0; i < probabilities.size(); ++i) {
    const double p = probabilities[i], miss = cameTrue[i] ? 1.0 - p : p;
    if (!(p >= 0.01 && p <= 0.99)) throw BadInput("probability", "must be from 0.01 to 0.99");
    found.brier += miss * miss / n;
    found.logScore -= std::log1p(-miss) / n;
    found.expectedHits += p;
    found.hits += cameTrue[i];
  }
  if (probabilities.size() <= mostExpectations) {
    const std::vector<double> mass = poissonBinomial(probabilities);
    const double seen = mass[static_cast<std::size_t>(found.hits)] * (1.0 + 1e-9);
    double sum = 0.0;
    for (double each : mass) sum += each <= seen ? each : 0.0;
    found.pValue = std::min(1.0, sum);
  }
  if (probabilities.size() >= fewestForCurve) found.curve = curveOf(probabilities, cameTrue, level);
  else found.why = Reason::fewSessions;
  return found;
}

}  // namespace oddglass::stats
