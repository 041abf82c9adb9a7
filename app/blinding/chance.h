#pragma once

#include "domain/chance.h"

namespace oddglass::blinding {

/// The system's own random bytes (libsodium).
class SystemChance : public Chance {
 public:
  SystemChance();
  void fill(std::span<std::uint8_t> bytes) override;
};

}  // namespace oddglass::blinding
