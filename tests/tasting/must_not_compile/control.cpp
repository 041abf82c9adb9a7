// The right way; it must compile, so that its neighbours fail for their own reason.
#include "tasting/board.h"
#include "tasting/flight.h"
#include "tasting/hand_in.h"

using namespace oddglass;

Code first(const tasting::Flight& flight) { return flight.cups.at(0).code; }
Place place(const tasting::Board& board) { return board.places.at(0).place; }
Seq seq(const tasting::Receipt& receipt) { return receipt.seq(); }
