#pragma once

#include <array>
#include <optional>

namespace oddglass::stats {

/// Which of the two sides of a comparison a cup holds. Side 1 and side 2 are named by the plan; stats knows no lots.
using Side = int;

/// One triangle, from the first cup to the third: a 1 or a 2 in each cup, two alike and one odd.
using TriangleOrder = std::array<Side, 3>;

/// The six triangle orders, as sides 1 (A) and 2 (B): ABB BAB BBA AAB ABA BAA. In a whole block of six each cup is the
/// odd one twice, and each side is the odd one three times.
/// Source: ISO 4120:2021, which asks that the six orders are used equally often; by counting.
inline constexpr std::array<TriangleOrder, 6> triangleOrders{{{1, 2, 2}, {2, 1, 2}, {2, 2, 1}, {1, 1, 2}, {1, 2, 1}, {2, 1, 1}}};

/// The place of the odd cup in a triangle, 0 to 2; nothing when the three cups are not two alike and one odd.
constexpr std::optional<int> oddCup(const TriangleOrder& order) {
  const bool firstTwo = order[0] == order[1], lastTwo = order[1] == order[2], ends = order[0] == order[2];
  if (firstTwo && lastTwo) return std::nullopt;
  if (lastTwo) return 0;
  if (ends) return 1;
  if (firstTwo) return 2;
  return std::nullopt;
}

}  // namespace oddglass::stats
