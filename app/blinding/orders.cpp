#include "blinding/orders.h"

#include "domain/flight_form.h"
#include "domain/problem.h"
#include "stats/designs.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace oddglass::blinding {
namespace {

using Order = std::vector<Slot>;

void needWithin(int value, int low, int high, const char* argument) {
  if (value < low || value > high)
    throw Problem(Trouble::outOfRange, argument, {{"text", std::to_string(value)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
}

// All sequences of `cups` lots with `ofFirst` cups of lot 1, in rising order.
std::vector<Order> arrangements(int cups, int ofFirst) {
  Order order(static_cast<std::size_t>(cups), Slot{2});
  std::fill_n(order.begin(), ofFirst, Slot{1});
  std::vector<Order> all;
  do all.push_back(order);
  while (std::ranges::next_permutation(order).found);
  return all;
}

std::vector<Order> together(std::vector<Order> all, const std::vector<Order>& more) {
  all.insert(all.end(), more.begin(), more.end());
  std::ranges::sort(all);
  return all;
}

// Gives each item of a block of `kinds` an index of its own, at random; for all places in turn.
std::vector<std::size_t> dealtIndices(int places, std::size_t kinds, Stream& orders) {
  std::vector<std::size_t> dealt;
  while (static_cast<int>(dealt.size()) < places) {
    std::vector<std::size_t> cards(kinds);
    std::iota(cards.begin(), cards.end(), std::size_t{0});
    orders.shuffle(cards);
    for (std::size_t card : cards)
      if (static_cast<int>(dealt.size()) < places) dealt.push_back(card);
  }
  return dealt;
}

constexpr std::array<std::pair<Slot, Slot>, 3> pairsOfThree{{{{1}, {2}}, {{1}, {3}}, {{2}, {3}}}};
constexpr std::array<std::array<int, 3>, 6> sequences{{{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}};

Order between(const Order& sides, const std::pair<Slot, Slot>& lots) {
  Order order;
  for (Slot side : sides) order.push_back(side == Slot{1} ? lots.first : lots.second);
  return order;
}

}  // namespace

std::vector<std::vector<Slot>> ordersOf(const Deal& deal) {
  switch (deal.method) {
    case Method::triangle: {
      std::vector<Order> all;
      for (const auto& order : stats::triangleOrders) all.push_back({Slot{order[0]}, Slot{order[1]}, Slot{order[2]}});
      return all;
    }
    case Method::tetrad: return arrangements(4, 2);
    case Method::twoOutOfFive: return together(arrangements(5, 2), arrangements(5, 3));
    case Method::pair:
    case Method::preference: return arrangements(2, 1);
    case Method::threeAfc: return arrangements(3, deal.expected == Slot{2} ? 2 : 1);
    case Method::sameDifferent: return together(arrangements(2, 1), {{Slot{1}, Slot{1}}, {Slot{2}, Slot{2}}});
    case Method::duoTrio:
    case Method::aNotA: {
      std::vector<Order> all;
      for (Slot marked : {Slot{1}, Slot{2}}) {
        if (deal.marked && *deal.marked != marked) continue;
        const Slot other{3 - marked.value};
        if (deal.method == Method::duoTrio) all = together(all, {{marked, marked, other}, {marked, other, marked}});
        else all = together(all, {{marked, marked}, {marked, other}});
      }
      return all;
    }
  }
  return {};
}

std::vector<FlightOrder> dealOrders(const Deal& deal, Stream& orders) {
  needWithin(deal.places, 1, 999, "places");
  needWithin(deal.rounds, 1, 99, "rounds");
  needWithin(deal.comparisons == 3 ? 3 : deal.comparisons, 1, deal.comparisons == 3 ? 3 : 1, "comparisons");
  needWithin(deal.rounds % deal.comparisons, 0, 0, "rounds");
  const auto all = ordersOf(deal);
  std::vector<FlightOrder> dealt;
  dealt.reserve(static_cast<std::size_t>(deal.places) * deal.rounds);
  for (int first = 1; first <= deal.rounds; first += deal.comparisons) {
    std::vector<std::vector<std::size_t>> cards;
    for (int pair = 0; pair < deal.comparisons; ++pair) cards.push_back(dealtIndices(deal.places, all.size(), orders));
    const auto sequence = deal.comparisons == 3 ? dealtIndices(deal.places, sequences.size(), orders) : std::vector<std::size_t>{};
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
