#include "planning/flight_cups.h"

#include "domain/by_hand.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "planning/alcohol.h"
#include "stats/design/servings.h"

#include <algorithm>
#include <functional>
#include <numeric>

namespace oddglass::planning {

namespace {

const std::vector<stats::CupOrder>& ordersAsSides(const Setup& setup) {
  const std::optional<stats::Side> marked = setup.marked ? std::optional(setup.marked == Slot{1} ? 1 : 2) : std::nullopt;
  return stats::served(stats::servingNamed(nameOf(setup.method), marked, setup.expected == Slot{2} ? 2 : 1)).orders;
}

}  // namespace

std::vector<CupsOfOrder> cupsOfOrders(const Setup& setup) {
  if (const auto hands = pouredByHand(setup.routine, setup.method, setup.expected)) {
    if (!formOf(setup.method).hasMarked) return {hands->cups};
    std::vector<CupsOfOrder> withMarked;
    for (int lot = 0; lot < 2; ++lot)
      if (!setup.marked || setup.marked->value == lot + 1) ++withMarked.emplace_back(hands->cups)[static_cast<std::size_t>(lot)];
    return withMarked;
  }
  std::vector<CupsOfOrder> cups;
  for (const stats::CupOrder& order : ordersAsSides(setup)) {
    CupsOfOrder of{};
    for (const stats::Side side : order) ++of[static_cast<std::size_t>(side - 1)];
    cups.push_back(of);
  }
  return cups;
}

int cupsPoured(const Setup& setup) {
  const auto hands = pouredByHand(setup.routine, setup.method, setup.expected);
  return hands ? hands->total() + (formOf(setup.method).hasMarked ? 1 : 0) : formOf(setup.method).cups;
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
