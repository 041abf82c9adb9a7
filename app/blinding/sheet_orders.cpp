#include "blinding/sheet_orders.h"

#include "blinding/cards.h"
#include "blinding/within.h"

#include <algorithm>

namespace oddglass::blinding {
namespace {

void require(const SheetDeal& sheet) {
  const int samples = static_cast<int>(sheet.coded.size()) + (sheet.mayDouble.empty() ? 0 : 1);
  needWithin(samples, 1, 40, "samples");
  needWithin(static_cast<int>(sheet.orders.size()), 1, 999, "orders");
  for (const std::vector<int>& order : sheet.orders) {
    needWithin(static_cast<int>(order.size()), 1, 40, "orders");
    needWithin(static_cast<int>(order.size()), static_cast<int>(sheet.orders.front().size()), static_cast<int>(sheet.orders.front().size()), "orders");
    for (int sample : order) needWithin(sample, 1, samples, "orders");
  }
}

}  // namespace

std::vector<FlightOrder> dealSheet(const Deal& deal, Stream& orders) {
  const SheetDeal& sheet = *deal.sheet;
  require(sheet);
  std::vector<Slot> samples = sheet.coded;
  if (!sheet.mayDouble.empty()) samples.push_back(sheet.mayDouble[orders.below(static_cast<std::uint32_t>(sheet.mayDouble.size()))]);
  orders.shuffle(samples);
  std::vector<FlightOrder> dealt;
  dealt.reserve(static_cast<std::size_t>(deal.places) * static_cast<std::size_t>(deal.rounds));
  for (int round = 1; round <= deal.rounds; ++round) {
    const auto cards = dealtCards(deal.places, sheet.orders.size(), orders);
    for (int place = 1; place <= deal.places; ++place) {
      FlightOrder flight{Place{place}, Round{round}, {}};
      if (deal.marked) flight.lots.push_back(*deal.marked);
      for (int sample : sheet.orders[cards[static_cast<std::size_t>(place - 1)]]) flight.lots.push_back(samples[static_cast<std::size_t>(sample - 1)]);
      dealt.push_back(std::move(flight));
    }
  }
  std::ranges::sort(dealt, {}, [](const FlightOrder& flight) { return std::pair{flight.place, flight.round}; });
  return dealt;
}

}  // namespace oddglass::blinding
