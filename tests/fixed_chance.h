#pragma once

#include "blinding/stream.h"
#include "domain/chance.h"

/// Chance that is the same every time, for tests and for the maker of the demo: the generator's keystream for a small number.
class FixedChance : public oddglass::Chance {
 public:
  explicit FixedChance(std::uint8_t which = 0) : stream_(seedOf(which), oddglass::blinding::StreamName::names) {}

  void fill(std::span<std::uint8_t> bytes) override {
    for (auto& byte : bytes) byte = static_cast<std::uint8_t>(stream_.next32());
  }

  static oddglass::blinding::Seed seedOf(std::uint8_t which) {
    oddglass::blinding::Seed seed{};
    seed[0] = which;
    return seed;
  }

 private:
  oddglass::blinding::Stream stream_;
};
