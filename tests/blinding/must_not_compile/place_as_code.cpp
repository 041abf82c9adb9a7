#include "blinding/key.h"

oddglass::Slot wrong(const oddglass::blinding::OpenedKey& key, oddglass::Place place) { return key.slotOf(place); }
