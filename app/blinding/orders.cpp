#include "blinding/orders.h"

#include "domain/problem.h"
#include "stats/designs.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace oddglass::blinding {
namespace {

void needAtLeastOne(int count, const char* argument) {
  if (count < 1) throw Problem(Trouble::outOfRange, argument, {{"text", std::to_string(count)}, {"low", "1"}, {"high", "999"}});
}

}  // namespace

std::vector<FlightOrder> dealTriangles(int places, int rounds, Stream& orders) {
  needAtLeastOne(places, "places");
  needAtLeastOne(rounds, "rounds");
  constexpr int block = static_cast<int>(stats::triangleOrders.size());
  std::vector<FlightOrder> dealt;
  dealt.reserve(static_cast<std::size_t>(places) * rounds);
  for (int round = 1; round <= rounds; ++round)
    for (int first = 1; first <= places; first += block) {
      std::array<std::size_t, block> cards{};
      std::iota(cards.begin(), cards.end(), std::size_t{0});
      orders.shuffle(cards);
      for (int i = 0; i < block && first + i <= places; ++i) {
        FlightOrder flight{Place{first + i}, Round{round}, {}};
        for (stats::Side side : stats::triangleOrders[cards[i]]) flight.slots.push_back(Slot{side});
        dealt.push_back(std::move(flight));
      }
    }
  std::ranges::sort(dealt, {}, [](const FlightOrder& f) { return std::pair{f.place, f.round}; });
  return dealt;
}

}  // namespace oddglass::blinding
