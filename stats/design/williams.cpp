#include "stats/design/williams.h"

#include "stats/error.h"

#include <algorithm>

namespace oddglass::stats {

std::vector<SampleOrders> williamsSquares(int samples) {
  if (samples < 2 || samples > 60) throw BadInput("samples", "must be from 2 to 60");
  // The first row goes 0, n-1, 1, n-2, ... : its steps are all different, so that each ordered pair of neighbours comes once when the
  // rows are moved on by one each. For an odd number the steps come twice in one direction; the mirrored square evens it out.
  std::vector<int> zigzag;
  for (int i = 0; i < samples; ++i) zigzag.push_back(i % 2 == 0 ? i / 2 : samples - 1 - i / 2);
  SampleOrders square;
  for (int move = 0; move < samples; ++move) {
    std::vector<int> row;
    for (const int sample : zigzag) row.push_back((sample + move) % samples);
    square.push_back(std::move(row));
  }
  if (samples % 2 == 0) return {square};
  SampleOrders mirrored = square;
  for (auto& row : mirrored) std::ranges::reverse(row);
  return {square, mirrored};
}

}  // namespace oddglass::stats
