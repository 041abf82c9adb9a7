#include "blinding/draw.h"

#include "blinding/codes.h"
#include "blinding/within.h"

#include <algorithm>

namespace oddglass::blinding {

Streams streamsFrom(const Seed& seed) { return {Stream(seed, StreamName::orders), Stream(seed, StreamName::codes)}; }

Drawn draw(const Shape& shape, Streams& streams) {
  needWithin(shape.deal.places, 1, 999, "places");
  needWithin(shape.deal.rounds, 1, 99, "rounds");
  needWithin(shape.spareCodesPerCup, 0, 9, "spare_codes_per_cup");

  const int cupsPerFlight = shape.deal.cupsPerFlight();
  const auto codes = drawCodes(shape.deal.places * shape.deal.rounds, cupsPerFlight * (1 + shape.spareCodesPerCup), streams.codes);
  const auto orders = dealOrders(shape.deal, streams.orders);
  Drawn drawn;
  for (std::size_t f = 0; f < orders.size(); ++f)
    for (int position = 0; position < cupsPerFlight; ++position)
      for (int spare = 0; spare <= shape.spareCodesPerCup; ++spare) {
        const int at = spare == 0 ? position : cupsPerFlight + position * shape.spareCodesPerCup + spare - 1;
        const Code code = codes[f][at];
        drawn.cups.push_back({code, orders[f].place, orders[f].round, Position{position + 1}, spare});
        drawn.lines.emplace_back(code, orders[f].lots[position]);
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
