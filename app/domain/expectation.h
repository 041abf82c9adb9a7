#pragma once

#include "domain/plan.h"

#include <optional>
#include <vector>

namespace oddglass {

/// What the brewer's expectation of a score sheet is about: that the mean of `own` stands above that of `reference` in one question.
struct ExpectedAbove {
  Item item;       ///< counted from 1 in the order of the sheet, as at the seal
  Slot own;
  Slot reference;
  bool operator==(const ExpectedAbove&) const = default;
};

/// The first batch of the brewer's that is compared, against the lot that the others are held against, in the overall liking; where that is not asked,
/// in the first main question on a line. Nothing where one of these is missing.
/// `marked` is the lot of the marked cup.
std::optional<ExpectedAbove> expectedAbove(const std::vector<PlannedLot>& lots, std::optional<Slot> marked, const std::vector<SheetItem>& items);

/// True when an expectation can be written for a plan. For all methods but the score sheet it is that the difference, direction or preference comes
/// out as *shown* (of three pairs: one of them at least). Who tastes alone has nobody whose mean could be expected on a sheet.
bool mayExpect(Method method, Claim claim, const std::vector<PlannedLot>& lots, std::optional<Slot> marked, const std::vector<SheetItem>& items);
bool mayExpect(const Plan& plan);

/// The lot that the others are held against: the marked one, else the first with that role; nothing without one.
std::optional<Slot> heldAgainst(const std::vector<PlannedLot>& lots, std::optional<Slot> marked);

}  // namespace oddglass
