#include "planning/flight_cups.h"

#include "domain/problem.h"
#include "planning/alcohol.h"
#include "stats/design/servings.h"

#include <algorithm>
#include <functional>
#include <numeric>

namespace oddglass::planning {

namespace {

stats::Serving servingOf(const Setup& setup) {
  switch (setup.method) {
    case Method::triangle: return stats::Serving::triangle;
    case Method::duoTrio:
      if (!setup.marked) return stats::Serving::duoTrio;
      return *setup.marked == Slot{1} ? stats::Serving::duoTrioAlwaysA : stats::Serving::duoTrioAlwaysB;
    case Method::tetrad: return stats::Serving::tetrad;
    case Method::twoOutOfFive: return stats::Serving::twoOutOfFive;
    case Method::pair: return stats::Serving::pair;
    case Method::threeAfc: return setup.expected == Slot{2} ? stats::Serving::threeAfcOfB : stats::Serving::threeAfcOfA;
    case Method::sameDifferent: return stats::Serving::sameDifferent;
    case Method::aNotA: return stats::Serving::aNotALearned;
    case Method::preference: return stats::Serving::preference;
  }
  throw Problem(Trouble::doesNotFit, "method");
}

}  // namespace

std::vector<CupsOfOrder> cupsOfOrders(const Setup& setup) {
  // The learning cup of an A-not-A is lot 1 unless it is said to be lot 2: then the sides change places.
  const bool turned = setup.method == Method::aNotA && setup.marked == Slot{2};
  std::vector<CupsOfOrder> cups;
  for (const stats::CupOrder& order : stats::served(servingOf(setup)).orders) {
    CupsOfOrder of{};
    for (const stats::Side side : order) ++of[static_cast<std::size_t>((side == 1) == turned)];
    cups.push_back(of);
  }
  return cups;
}

int worstCups(const Setup& setup, int side, int places) {
  std::vector<int> cups;
  for (const CupsOfOrder& order : cupsOfOrders(setup)) cups.push_back(order[static_cast<std::size_t>(side - 1)]);
  std::ranges::sort(cups, std::greater<>());
  const int kinds = static_cast<int>(cups.size());
  return places / kinds * std::accumulate(cups.begin(), cups.end(), 0) + std::accumulate(cups.begin(), cups.begin() + places % kinds, 0);
}

std::vector<std::array<int, 2>> comparedLots(const Setup& setup) {
  if (setup.lots.size() == 3) return {{0, 1}, {0, 2}, {1, 2}};
  if (setup.lots.size() == 2) return {{0, 1}};
  return {};
}

std::optional<double> gramsOfRound(const Setup& setup, int cupMl) {
  const auto compared = comparedLots(setup);
  if (compared.empty()) return std::nullopt;
  for (const SetupLot& lot : setup.lots)
    if (!lot.abvBp) return std::nullopt;
  const auto orders = cupsOfOrders(setup);
  double grams = 0.0;
  for (const auto& [lower, higher] : compared) {
    const double first = *setup.lots[static_cast<std::size_t>(lower)].abvBp / 100.0, second = *setup.lots[static_cast<std::size_t>(higher)].abvBp / 100.0;
    double most = 0.0;
    for (const CupsOfOrder& order : orders)
      most = std::max(most, ethanolGrams(static_cast<double>(order[0]) * cupMl, first) + ethanolGrams(static_cast<double>(order[1]) * cupMl, second));
    grams += most;
  }
  return grams;
}

}  // namespace oddglass::planning
