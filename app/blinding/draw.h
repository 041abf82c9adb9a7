#pragma once

#include "blinding/key.h"
#include "blinding/orders.h"
#include "blinding/stream.h"
#include "domain/plan.h"

#include <utility>
#include <vector>

namespace oddglass::blinding {

/// How much has to be drawn: orders (see Deal), and for each cup its spare codes.
struct Shape {
  Deal deal{};               ///< all places, spare ones too; the real ones have the lowest numbers
  int spareCodesPerCup = 1;  ///< codes kept ready for spilled cups, for each cup
  Routine routine = Routine::pourer;  ///< where hands hide the key only codes are drawn, and with whole bottles which letter each cup is poured from
};

/// The two independent streams of a seed.
struct Streams {
  Stream orders;
  Stream codes;
};
Streams streamsFrom(const Seed& seed);

/// What was drawn: the cups, which everybody may see, and apart from them what is in them.
struct Drawn {
  std::vector<Cup> cups;                     ///< ordered by place, round, position, spare; depends on `codes` only
  std::vector<std::pair<Code, Slot>> lines;  ///< rising by code; none where hands hide the key
};

/// Draws orders and codes. The flights stand in the order of place, then round; within a flight the codes go to the cups at
/// positions 1, 2, 3 ..., then to the spares of position 1, of position 2, and so on. With whole bottles the orders are dealt as for a drawn key, and the first
/// coded lot stands for bottle A, the second for B: which bottle holds which lot is then up to whoever shuffles them.
/// Problem(outOfRange) for a shape that is impossible; Problem(tooManyCups) when codes run out.
Drawn draw(const Shape& shape, Streams& streams);

/// Checks that a seed gives exactly these cups and lines.
bool reproduces(const Seed& seed, const Shape& shape, const Drawn& drawn);

}  // namespace oddglass::blinding
