#pragma once

#include <compare>
#include <cstdint>

namespace oddglass {

/// A whole number that knows what it counts, so that a place is never taken for a round or a code.
template <class Tag>
struct Number {
  int value = 0;
  auto operator<=>(const Number&) const = default;
};

using Place = Number<struct PlaceTag>;        ///< a numbered seat, from 1
using Round = Number<struct RoundTag>;        ///< a taster's first, second ... flight, from 1
using Position = Number<struct PositionTag>;  ///< where a cup stands in its flight, from 1, left to right as the taster sees it
using Code = Number<struct CodeTag>;          ///< what stands on a cup: three digits, or four
using Slot = Number<struct SlotTag>;          ///< the how-manieth lot of the plan, from 1; part of the key
using Item = Number<struct ItemTag>;          ///< a question of the sheet, from 1
using Seq = Number<struct SeqTag>;            ///< an entry of a session's log, from 1

/// Milliseconds since 1970 UTC by the wall clock. For the record only; order is Seq.
using Millis = std::int64_t;

}  // namespace oddglass
