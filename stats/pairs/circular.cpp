#include "stats/pairs/circular.h"

#include "stats/error.h"

namespace oddglass::stats {

CircularTriads circularTriads(const std::vector<PairedChoice>& choices, int samples) {
  if (samples > 300) throw BadInput("samples", "must not be above 300");
  const std::size_t n = static_cast<std::size_t>(samples < 0 ? 0 : samples);
  std::vector<std::vector<double>> ahead(n, std::vector<double>(n, 0.0));
  for (const PairCount& each : countPairs(choices, samples)) {
    ahead[static_cast<std::size_t>(each.left)][static_cast<std::size_t>(each.right)] += each.leftWins - each.rightWins;
    ahead[static_cast<std::size_t>(each.right)][static_cast<std::size_t>(each.left)] += each.rightWins - each.leftWins;
  }
  CircularTriads result;
  std::vector<std::vector<std::size_t>> beats(n);
  bool isDecided = true;
  for (std::size_t a = 0; a < n; ++a)
    for (std::size_t b = 0; b < n; ++b) {
      isDecided = isDecided && (a == b || ahead[a][b] != 0.0);
      if (ahead[a][b] > 0.0) beats[a].push_back(b);
    }
  for (std::size_t a = 0; a < n; ++a)
    for (std::size_t b : beats[a])
      for (std::size_t c : beats[b]) result.triads += ahead[c][a] > 0.0;
  result.triads /= 3;  // each circle was met at each of its samples
  if (samples < 3 || !isDecided) return result;
  const double size = samples, most = (samples % 2 ? size * size * size - size : size * size * size - 4 * size) / 24.0;
  result.zeta = 1.0 - static_cast<double>(result.triads) / most;
  return result;
}

}  // namespace oddglass::stats
