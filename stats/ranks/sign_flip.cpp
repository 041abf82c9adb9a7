#include "stats/ranks/sign_flip.h"

#include "stats/error.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>

namespace oddglass::stats {
namespace {

struct FlipCount {
  std::uint64_t asFar = 0, asLarge = 0;
};

void count(double sum, double seen, double allowance, FlipCount& so) {
  so.asFar += std::abs(sum) >= std::abs(seen) - allowance;
  so.asLarge += sum >= seen - allowance;
}

/// Gray code: from one pattern to the next a single sign flips.
FlipCount countAll(std::vector<double> values, double seen, double allowance) {
  FlipCount so;
  double sum = 0.0;
  for (double value : values) sum += value;
  count(sum, seen, allowance, so);
  for (std::uint64_t pattern = 1; pattern < std::uint64_t{1} << values.size(); ++pattern) {
    double& flipped = values[static_cast<std::size_t>(std::countr_zero(pattern))];
    sum -= 2.0 * flipped;
    flipped = -flipped;
    count(sum, seen, allowance, so);
  }
  return so;
}

FlipCount countDrawn(const std::vector<double>& values, double seen, double allowance) {
  FlipCount so;
  DrawnStream stream;
  for (int draw = 0; draw < drawnArrangements; ++draw) {
    double sum = 0.0;
    for (std::size_t i = 0; i < values.size();) {
      std::uint64_t signs = stream.next64();
      for (const std::size_t end = std::min(values.size(), i + 64); i < end; ++i, signs >>= 1) sum += signs & 1 ? values[i] : -values[i];
    }
    count(sum, seen, allowance, so);
  }
  return so;
}

}  // namespace

SignFlip signFlip(const std::vector<double>& differences) {
  if (differences.empty()) throw BadInput("differences", "there are no answers");
  if (differences.size() > 100'000) throw BadInput("differences", "must not be more than 100,000");
  std::vector<double> values;
  double largest = 0.0;
  for (double each : differences) {
    if (!std::isfinite(each)) throw BadInput("differences", "must be finite numbers");
    largest = std::max(largest, std::abs(each));
    if (each != 0.0) values.push_back(each);
  }
  SignFlip result;
  if (values.empty()) return result;
  for (double value : values) result.mean += value / static_cast<double>(differences.size());
  // Scaled, so that sums of very large or very small differences keep within range.
  double seen = 0.0, size = 0.0;
  for (double& value : values) {
    value /= largest;
    seen += value;
    size += std::abs(value);
  }
  result.smallestTwoSided = std::exp2(1.0 - static_cast<double>(values.size()));
  result.isExact = std::exp2(static_cast<double>(values.size())) <= mostArrangements;
  if (result.isExact) {
    const FlipCount so = countAll(values, seen, 1e-9 * size);
    const double all = std::exp2(static_cast<double>(values.size()));
    result.pTwoSided = static_cast<double>(so.asFar) / all;
    result.pGreater = static_cast<double>(so.asLarge) / all;
    return result;
  }
  const FlipCount so = countDrawn(values, seen, 1e-9 * size);
  const DrawnP p = drawnP(static_cast<int>(so.asFar), drawnArrangements);
  result.pTwoSided = p.pValue;
  result.pGreater = drawnP(static_cast<int>(so.asLarge), drawnArrangements).pValue;
  result.monteCarloError = p.error;
  return result;
}

}  // namespace oddglass::stats
