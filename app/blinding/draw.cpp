#include "blinding/draw.h"

#include "blinding/codes.h"
#include "blinding/within.h"
#include "domain/by_hand.h"

#include <algorithm>

namespace oddglass::blinding {

namespace {

// The place of a lot among those that are coded.
int bottleOf(const Deal& deal, Slot lot) {
  if (!deal.sheet) return lot.value;
  return static_cast<int>(std::ranges::find(deal.sheet->coded, lot) - deal.sheet->coded.begin()) + 1;
}

}  // namespace

Streams streamsFrom(const Seed& seed) { return {Stream(seed, StreamName::orders), Stream(seed, StreamName::codes)}; }

Drawn draw(const Shape& shape, Streams& streams) {
  needWithin(shape.deal.places, 1, 999, "places");
  needWithin(shape.deal.rounds, 1, 99, "rounds");
  needWithin(shape.spareCodesPerCup, 0, 9, "spare_codes_per_cup");

  const int cupsPerFlight = shape.deal.cupsPerFlight();
  const auto codes = drawCodes(shape.deal.places * shape.deal.rounds, cupsPerFlight * (1 + shape.spareCodesPerCup), streams.codes);
  const bool hasOrders = isDrawn(shape.routine) || shape.routine == Routine::bottles;
  const auto orders = hasOrders ? dealOrders(shape.deal, streams.orders) : std::vector<FlightOrder>{};
  Drawn drawn;
  for (std::size_t f = 0; f < codes.size(); ++f)
    for (int position = 0; position < cupsPerFlight; ++position)
      for (int spare = 0; spare <= shape.spareCodesPerCup; ++spare) {
        const int at = spare == 0 ? position : cupsPerFlight + position * shape.spareCodesPerCup + spare - 1;
        const Code code = codes[f][at];
        const int flight = static_cast<int>(f);
        Cup cup{code, Place{flight / shape.deal.rounds + 1}, Round{flight % shape.deal.rounds + 1}, Position{position + 1}, spare};
        if (shape.routine == Routine::bottles) cup.bottle = bottleOf(shape.deal, orders[f].lots[static_cast<std::size_t>(position)]);
        drawn.cups.push_back(cup);
        if (isDrawn(shape.routine)) drawn.lines.emplace_back(code, orders[f].lots[position]);
      }
  std::ranges::sort(drawn.lines);
  return drawn;
}

bool reproduces(const Seed& seed, const Shape& shape, const Drawn& drawn) {
  Streams streams = streamsFrom(seed);
  const Drawn again = draw(shape, streams);
  return again.cups == drawn.cups && again.lines == drawn.lines;
}

}  // namespace oddglass::blinding
