#include "domain/expectation.h"

#include "domain/item_kinds.h"

#include <algorithm>

namespace oddglass {
namespace {

bool isOnLine(ItemKind kind) { return kind == ItemKind::liking || kind == ItemKind::line || kind == ItemKind::magnitude; }

std::optional<Item> itemExpected(const std::vector<SheetItem>& items) {
  auto found = std::ranges::find_if(items, isOverallLiking);
  if (found == items.end()) found = std::ranges::find_if(items, [](const SheetItem& item) { return item.isMain && isOnLine(item.kind); });
  if (found == items.end()) return std::nullopt;
  return Item{static_cast<int>(found - items.begin()) + 1};
}

}  // namespace

std::optional<Slot> heldAgainst(const std::vector<PlannedLot>& lots, std::optional<Slot> marked) {
  if (marked) return marked;
  const auto found = std::ranges::find(lots, LotRole::reference, &PlannedLot::role);
  return found == lots.end() ? std::nullopt : std::optional(found->slot);
}

std::optional<ExpectedAbove> expectedAbove(const std::vector<PlannedLot>& lots, std::optional<Slot> marked, const std::vector<SheetItem>& items) {
  const auto own = std::ranges::find_if(lots, [](const PlannedLot& lot) { return lot.role == LotRole::compared && lot.origin == Origin::batch; });
  const auto reference = heldAgainst(lots, marked);
  const auto item = itemExpected(items);
  if (own == lots.end() || !reference || !item || own->slot == *reference) return std::nullopt;
  return ExpectedAbove{*item, own->slot, *reference};
}

bool mayExpect(Method method, Claim claim, const std::vector<PlannedLot>& lots, std::optional<Slot> marked, const std::vector<SheetItem>& items) {
  return method != Method::sheet || (claim != Claim::me && expectedAbove(lots, marked, items));
}

bool mayExpect(const Plan& plan) { return mayExpect(plan.method, plan.claim, plan.lots, plan.marked, plan.items); }

}  // namespace oddglass
