#include "domain/sheet.h"

#include "domain/item_kinds.h"
#include "domain/text.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace oddglass {
namespace {

constexpr int mostCups = 40;

bool belongsOnSheet(ItemKind kind) { return answerForm(kind).isScored || kind == ItemKind::words || kind == ItemKind::sureness; }

bool isPossible(const SheetItem& item, bool hasMarked) {
  const AnswerForm form = answerForm(item.kind);
  if (!belongsOnSheet(item.kind) || (form.needsWord && item.word.empty())) return false;
  if (cleaned(item.word) != item.word || lettersIn(item.word) > 60) return false;
  if (item.kind == ItemKind::distance && !hasMarked) return false;
  const auto parts = partsOf(item.kind);
  const bool isSaidOnce = item.kind == ItemKind::sureness;  // files may put it into any part
  if (!isSaidOnce && std::ranges::find(parts, item.part) == parts.end()) return false;
  if (item.limit && (!hasPoints(item.kind) || *item.limit < 1 || *item.limit > *form.high - *form.low)) return false;
  return true;
}

}  // namespace

AnswerForm answerForm(ItemKind kind) {
  switch (kind) {
    case ItemKind::choose:
    case ItemKind::prefer: return {.isCode = true};
    case ItemKind::same: return {.low = 1, .high = 2};
    case ItemKind::sureness: return {.low = 1, .high = 3};
    case ItemKind::clue: return {.low = 1, .high = 6};
    case ItemKind::words: return {.isText = true};
    case ItemKind::liking: return {.low = 1, .high = 9, .isScored = true};
    case ItemKind::line: return {.low = 0, .high = 100, .isScored = true, .needsWord = true};
    case ItemKind::magnitude: return {.low = 0, .high = 1000, .isScored = true, .needsWord = true};
    case ItemKind::justRight: return {.low = 1, .high = 5, .isScored = true, .needsWord = true};
    case ItemKind::check: return {.low = 0, .high = 1, .isScored = true, .needsWord = true};
    case ItemKind::rank: return {.low = 1, .high = mostCups, .isScored = true};
    case ItemKind::split: return {.low = 0, .high = 5, .isScored = true};
    case ItemKind::behaviour: return {.low = 1, .high = 3, .isScored = true};
    case ItemKind::worst:
    case ItemKind::changeOne: return {.isText = true, .isScored = true};
    case ItemKind::distance: return {.low = 0, .high = 10, .isScored = true};
  }
  return {};
}

std::optional<int> firstImpossible(const std::vector<SheetItem>& items, bool hasMarked) {
  if (items.empty() || items.size() > 200) return 0;
  std::set<std::tuple<ItemKind, Part, std::string>> once;
  for (std::size_t i = 0; i < items.size(); ++i)
    if (!isPossible(items[i], hasMarked) || !once.emplace(items[i].kind, items[i].part, items[i].word).second) return static_cast<int>(i) + 1;
  if (std::ranges::none_of(items, [](const SheetItem& item) { return answerForm(item.kind).isScored; })) return 0;
  return std::nullopt;
}

std::vector<SheetItem> numbered(std::vector<SheetItem> items, int cupsInFlight) {
  int number = 0;
  for (SheetItem& item : items) {
    const AnswerForm form = answerForm(item.kind);
    item.item = {++number};
    item.low = form.low;
    item.high = item.kind == ItemKind::rank ? cupsInFlight : form.high;
    item.perCup = form.isScored || (item.kind == ItemKind::words && item.part != Part::last);
  }
  return items;
}

}  // namespace oddglass
