#include "stats/design/right_answers.h"

#include <algorithm>

namespace oddglass::stats {
namespace {

/// The cups of a side, rising.
std::vector<int> cupsOf(const CupOrder& order, Side side) {
  std::vector<int> cups;
  for (std::size_t i = 0; i < order.size(); ++i)
    if (order[i] == side) cups.push_back(static_cast<int>(i));
  return cups;
}

bool hasOnlySides(const CupOrder& order) {
  return std::ranges::all_of(order, [](Side side) { return side == 1 || side == 2; });
}

}  // namespace

std::optional<int> oddCup(const CupOrder& order) {
  if (order.size() != 3) return std::nullopt;
  return oddCup(TriangleOrder{order[0], order[1], order[2]});
}

std::optional<int> matchingCup(const CupOrder& order) {
  if (order.size() != 3 || order[1] == order[2]) return std::nullopt;
  if (order[1] == order[0]) return 1;
  if (order[2] == order[0]) return 2;
  return std::nullopt;
}

std::optional<int> onlyCup(const CupOrder& order, Side side) {
  const std::vector<int> cups = cupsOf(order, side);
  return cups.size() == 1 ? std::optional(cups[0]) : std::nullopt;
}

std::optional<std::array<int, 2>> rightGroup(const CupOrder& order) {
  if (!hasOnlySides(order) || (order.size() != 4 && order.size() != 5)) return std::nullopt;
  const std::vector<int> ofA = cupsOf(order, 1), ofB = cupsOf(order, 2);
  if (order.size() == 4 && ofA.size() != 2) return std::nullopt;
  if (order.size() == 5 && ofA.size() != 2 && ofB.size() != 2) return std::nullopt;
  const bool isGroupOfA = order.size() == 4 ? order[0] == 1 : ofA.size() == 2;
  const std::vector<int>& two = isGroupOfA ? ofA : ofB;
  return std::array{two[0], two[1]};
}

bool isRightGroup(const CupOrder& order, std::array<int, 2> cups) {
  const auto right = rightGroup(order);
  const int last = static_cast<int>(order.size()) - 1;
  if (!right || cups[0] == cups[1] || std::min(cups[0], cups[1]) < 0 || std::max(cups[0], cups[1]) > last) return false;
  std::ranges::sort(cups);
  if (cups == *right) return true;
  return order.size() == 4 && order[static_cast<std::size_t>(cups[0])] == order[static_cast<std::size_t>(cups[1])];
}

std::optional<bool> areSame(const CupOrder& order) {
  if (order.size() < 2) return std::nullopt;
  return order[order.size() - 1] == order[order.size() - 2];
}

std::optional<bool> isA(const CupOrder& order) {
  if (order.empty()) return std::nullopt;
  return order.back() == 1;
}

}  // namespace oddglass::stats
