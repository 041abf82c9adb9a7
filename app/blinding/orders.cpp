#include "blinding/orders.h"

#include "blinding/cards.h"
#include "blinding/sheet_orders.h"
#include "blinding/within.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "stats/design/servings.h"

#include <algorithm>
#include <array>

namespace oddglass::blinding {
namespace {

using Order = std::vector<Slot>;

const std::vector<stats::CupOrder>& ordersAsSides(const Deal& deal) {
  const std::optional<stats::Side> marked = deal.marked ? std::optional(deal.marked == Slot{1} ? 1 : 2) : std::nullopt;
  return stats::served(stats::servingNamed(nameOf(deal.method), marked, deal.expected == Slot{2} ? 2 : 1)).orders;
}

constexpr std::array<std::pair<Slot, Slot>, 3> pairsOfThree{{{{1}, {2}}, {{1}, {3}}, {{2}, {3}}}};
constexpr std::array<std::array<int, 3>, 6> sequences{{{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}};

Order between(const Order& sides, const std::pair<Slot, Slot>& lots) {
  Order order;
  for (Slot side : sides) order.push_back(side == Slot{1} ? lots.first : lots.second);
  return order;
}

}  // namespace

int Deal::cupsPerFlight() const {
  if (!sheet) return formOf(method).cups;
  return (marked ? 1 : 0) + (sheet->orders.empty() ? 0 : static_cast<int>(sheet->orders.front().size()));
}

std::vector<std::vector<Slot>> ordersOf(const Deal& deal) {
  std::vector<Order> all;
  for (const stats::CupOrder& sides : ordersAsSides(deal)) {
    Order& order = all.emplace_back();
    for (stats::Side side : sides) order.push_back(Slot{side});
  }
  return all;
}

std::vector<FlightOrder> dealOrders(const Deal& deal, Stream& orders) {
  needWithin(deal.places, 1, 999, "places");
  needWithin(deal.rounds, 1, 99, "rounds");
  if (deal.sheet) return dealSheet(deal, orders);
  if (deal.comparisons != 3) needWithin(deal.comparisons, 1, 1, "comparisons");
  needWithin(deal.rounds % deal.comparisons, 0, 0, "rounds");
  const auto all = ordersOf(deal);
  std::vector<FlightOrder> dealt;
  dealt.reserve(static_cast<std::size_t>(deal.places) * deal.rounds);
  for (int first = 1; first <= deal.rounds; first += deal.comparisons) {
    std::vector<std::vector<std::size_t>> cards;
    for (int pair = 0; pair < deal.comparisons; ++pair) cards.push_back(dealtCards(deal.places, all.size(), orders));
    const auto sequence = deal.comparisons == 3 ? dealtCards(deal.places, sequences.size(), orders) : std::vector<std::size_t>{};
    for (int place = 1; place <= deal.places; ++place)
      for (int step = 0; step < deal.comparisons; ++step) {
        const std::size_t at = static_cast<std::size_t>(place - 1);
        const int pair = deal.comparisons == 3 ? sequences[sequence[at]][static_cast<std::size_t>(step)] : 0;
        dealt.push_back({Place{place}, Round{first + step}, between(all[cards[static_cast<std::size_t>(pair)][at]], pairsOfThree[static_cast<std::size_t>(pair)])});
      }
  }
  std::ranges::sort(dealt, {}, [](const FlightOrder& flight) { return std::pair{flight.place, flight.round}; });
  return dealt;
}

}  // namespace oddglass::blinding
