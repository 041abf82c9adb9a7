#include "tasting/flight.h"

oddglass::Slot look(const oddglass::tasting::FlightCup& cup) { return cup.code; }
