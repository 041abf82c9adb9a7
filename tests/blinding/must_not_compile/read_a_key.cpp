#include "blinding/key.h"

auto lines(const oddglass::blinding::SealedKey& key) { return key.contents().lines; }
