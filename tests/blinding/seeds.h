#pragma once

#include "blinding/stream.h"

/// One of many seeds, for properties that must hold for each.
inline oddglass::blinding::Seed seedOf(int which) {
  oddglass::blinding::Seed seed{};
  seed[0] = static_cast<std::uint8_t>(which);
  seed[31] = static_cast<std::uint8_t>(which >> 8);
  return seed;
}
