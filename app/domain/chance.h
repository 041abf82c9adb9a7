#pragma once

#include "domain/numbers.h"

#include <array>
#include <cstdint>
#include <span>

namespace oddglass {

/// Where random bytes come from. The program passes the system's; tests and the maker of the demo pass their own.
class Chance {
 public:
  virtual ~Chance() = default;
  virtual void fill(std::span<std::uint8_t> bytes) = 0;

  template <std::size_t N>
  std::array<std::uint8_t, N> bytes() {
    std::array<std::uint8_t, N> result{};
    fill(result);
    return result;
  }
};

/// Where the time comes from.
class Clock {
 public:
  virtual ~Clock() = default;
  virtual Millis now() = 0;
};

/// The computer's own wall clock.
class SystemClock : public Clock {
 public:
  Millis now() override;
};

}  // namespace oddglass
