#include "session/choice_reply.h"

#include "domain/names.h"

#include <algorithm>

namespace oddglass::session {
namespace {

template <class E>
std::optional<E> among(int value) {
  const auto found = std::ranges::find(allOf<E>(), static_cast<E>(value));
  return found == allOf<E>().end() ? std::nullopt : std::optional(*found);
}

}  // namespace

void addReply(RevealedFlight& flight, const Plan& plan, Item item, int value, const std::vector<Code>& codes) {
  const auto asked = std::ranges::find(plan.items, item, &SheetItem::item);
  if (asked == plan.items.end()) return;
  const auto at = std::ranges::find(codes, Code{value});
  const auto cup = at == codes.end() ? std::nullopt : std::optional(Position{static_cast<int>(at - codes.begin()) + 1});
  if (asked->kind == ItemKind::choose) {
    if (cup) flight.picks.push_back(*cup);
  } else if (asked->kind == ItemKind::same) {
    flight.saidSame = value == 1;
  } else if (asked->kind == ItemKind::prefer) {
    flight.preferredNone = value == 0;
    flight.preferred = cup;
  } else if (asked->kind == ItemKind::sureness) {
    flight.sureness = among<Sureness>(value);
  } else if (asked->kind == ItemKind::clue) {
    flight.clue = among<Clue>(value);
  }
}

}  // namespace oddglass::session
