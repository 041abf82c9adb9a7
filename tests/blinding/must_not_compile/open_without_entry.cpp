#include "blinding/key.h"

auto peek(oddglass::blinding::SealedKey key) { return oddglass::blinding::open(std::move(key)); }
