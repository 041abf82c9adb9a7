#include "stats/design/servings.h"

#include "stats/error.h"

#include <algorithm>
#include <map>

namespace oddglass::stats {
namespace {

/// Every way to stand `ofA` cups of A and `ofB` cups of B in a row, beginning with the A's in front.
std::vector<CupOrder> rows(int ofA, int ofB) {
  CupOrder order(static_cast<std::size_t>(ofA), 1);
  order.insert(order.end(), static_cast<std::size_t>(ofB), 2);
  std::vector<CupOrder> all;
  do all.push_back(order);
  while (std::ranges::next_permutation(order).found);
  return all;
}

std::vector<CupOrder> joined(std::vector<CupOrder> first, const std::vector<CupOrder>& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}

Served made(Serving serving) {
  switch (serving) {
    case Serving::triangle: {
      Served six;
      for (const TriangleOrder& order : triangleOrders) six.orders.emplace_back(order.begin(), order.end());
      return six;
    }
    case Serving::duoTrio: return {1, {{1, 1, 2}, {1, 2, 1}, {2, 1, 2}, {2, 2, 1}}};
    case Serving::duoTrioAlwaysA: return {1, {{1, 1, 2}, {1, 2, 1}}};
    case Serving::duoTrioAlwaysB: return {1, {{2, 1, 2}, {2, 2, 1}}};
    case Serving::tetrad: return {0, rows(2, 2)};
    case Serving::twoOutOfFive: return {0, joined(rows(2, 3), rows(3, 2))};
    case Serving::pair:
    case Serving::preference: return {0, rows(1, 1)};
    case Serving::threeAfcOfA: return {0, rows(1, 2)};
    case Serving::threeAfcOfB: return {0, rows(2, 1)};
    case Serving::sameDifferent: return {0, {{1, 1}, {2, 2}, {1, 2}, {2, 1}}};
    case Serving::aNotA: return {0, {{1}, {2}}};
    case Serving::aNotALearned: return {1, {{1, 1}, {1, 2}}};
    case Serving::aNotALearnedOfB: return {1, {{2, 2}, {2, 1}}};
  }
  throw BadInput("serving", "unknown");
}

}  // namespace

Serving servingNamed(std::string_view method, std::optional<Side> marked, std::optional<Side> target) {
  for (const auto& [name, side] : {std::pair{"marked", marked}, std::pair{"target", target}})
    if (side && *side != 1 && *side != 2) throw BadInput(name, "must be side 1 or 2");
  if (method == "duo-trio") return !marked ? Serving::duoTrio : *marked == 1 ? Serving::duoTrioAlwaysA : Serving::duoTrioAlwaysB;
  if (method == "three-afc") return target == 2 ? Serving::threeAfcOfB : Serving::threeAfcOfA;
  if (method == "a-not-a") return marked == 2 ? Serving::aNotALearnedOfB : Serving::aNotALearned;
  static const std::map<std::string_view, Serving> others{{"triangle", Serving::triangle}, {"tetrad", Serving::tetrad}, {"two-out-of-five", Serving::twoOutOfFive},
                                                          {"pair", Serving::pair}, {"same-different", Serving::sameDifferent}, {"preference", Serving::preference}};
  const auto found = others.find(method);
  if (found == others.end()) throw BadInput("method", "unknown");
  return found->second;
}

const Served& served(Serving serving) {
  static const std::map<Serving, Served> all = [] {
    std::map<Serving, Served> each;
    for (int i = 0; i <= static_cast<int>(Serving::preference); ++i) each.emplace(static_cast<Serving>(i), made(static_cast<Serving>(i)));
    return each;
  }();
  const auto found = all.find(serving);
  if (found == all.end()) throw BadInput("serving", "unknown");
  return found->second;
}

}  // namespace oddglass::stats
