#include "figures/stack.h"

#include <algorithm>

namespace oddglass::figures {
namespace {

std::vector<Stacked> inColumns(const std::vector<std::pair<double, int>>& heaps, double pitch, int across) {
  std::vector<Stacked> dots;
  for (const auto& [x, times] : heaps) {
    for (int i = 0; i < times; ++i) {
      const int level = i / across, inLevel = std::min(across, times - level * across);
      dots.push_back({x + (i % across - (inLevel - 1) / 2.0) * pitch, level});
    }
  }
  return dots;
}

}  // namespace

std::vector<Stacked> stacked(std::vector<std::pair<double, int>> heaps, double pitch, int across) {
  std::sort(heaps.begin(), heaps.end());
  if (across > 1) return inColumns(heaps, pitch, across);
  constexpr double slack = 1e-9;
  std::vector<Stacked> dots;
  std::vector<double> lastOn;
  for (const auto& [x, times] : heaps) {
    for (int i = 0; i < times; ++i) {
      const auto free = std::find_if(lastOn.begin(), lastOn.end(), [&, at = x](double last) { return last <= at - pitch + slack; });
      dots.push_back({x, static_cast<int>(free - lastOn.begin())});
      if (free == lastOn.end()) lastOn.push_back(x);
      else *free = x;
    }
  }
  return dots;
}

int levelsOf(const std::vector<Stacked>& dots) {
  int levels = 0;
  for (const Stacked& dot : dots) levels = std::max(levels, dot.level + 1);
  return levels;
}

}  // namespace oddglass::figures
