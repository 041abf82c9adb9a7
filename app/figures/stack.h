#pragma once

#include <utility>
#include <vector>

namespace oddglass::figures {

/// A dot above a line: x in points, `level` 0 on the line, 1 above it and so on.
struct Stacked {
  double x = 0;
  int level = 0;
};

/// Places dots `pitch` points apart. Each stands at its own x on the lowest level where it touches no other.
/// `across` above 1 sets equal ones side by side, centred on x; then no two different x may be nearer than across x pitch.
/// `heaps` are x and how many, in any order.
std::vector<Stacked> stacked(std::vector<std::pair<double, int>> heaps, double pitch, int across);

/// How many levels the dots take.
int levelsOf(const std::vector<Stacked>& dots);

}  // namespace oddglass::figures
