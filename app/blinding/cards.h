#pragma once

#include "blinding/stream.h"

#include <cstddef>
#include <vector>

namespace oddglass::blinding {

/// Gives each place one of `kinds` orders (by its index), block by block: for each block of so many places the indices from 0 on are shuffled, and
/// the places take them in turn. The last block may be cut short.
std::vector<std::size_t> dealtCards(int places, std::size_t kinds, Stream& orders);

}  // namespace oddglass::blinding
