#include "domain/by_hand.h"

#include <algorithm>

namespace oddglass {
namespace {

bool hidesInPairs(Method method) { return method == Method::pair || method == Method::preference; }

}  // namespace

std::optional<HandPoured> pouredByHand(Routine routine, Method method, std::optional<Slot> expected) {
  if (isDrawn(routine)) return std::nullopt;
  if (hidesInPairs(method)) return HandPoured{{1, 1}, false};
  if (routine == Routine::die || routine == Routine::bottles) return std::nullopt;
  switch (method) {
    case Method::triangle: return HandPoured{{2, 2}, true};
    case Method::tetrad: return HandPoured{{2, 2}, false};
    case Method::duoTrio: return HandPoured{{1, 1}, false};
    case Method::threeAfc: return expected == Slot{2} ? HandPoured{{2, 1}, false} : HandPoured{{1, 2}, false};
    default: return std::nullopt;
  }
}

bool mayHide(Routine routine, Method method) {
  return isDrawn(routine) || (routine == Routine::bottles && method == Method::sheet) || pouredByHand(routine, method, Slot{1}).has_value();
}

std::optional<NotByHand> whyNotByHand(const Draft& draft, int tasters, bool hasPourer) {
  if (isDrawn(draft.routine)) return std::nullopt;
  const bool isSheet = draft.method == Method::sheet;
  if (!mayHide(draft.routine, draft.method)) return NotByHand::method;
  if (!isSheet && draft.lots.size() > 2) return NotByHand::threeLots;
  if (draft.method == Method::duoTrio && !draft.marked) return NotByHand::eitherMarked;
  if (draft.stopping) return NotByHand::stopsEarly;
  if (isSheet && draft.sheet.hasDuplicate) return NotByHand::duplicate;
  if (isSheet && draft.marked) return NotByHand::markedSheet;
  if (draft.routine == Routine::alone && tasters != 1) return NotByHand::onlyOne;
  if (draft.routine == Routine::couple && tasters < 2) return NotByHand::needsTwo;
  if (draft.routine == Routine::die && !hasPourer) return NotByHand::needsPourer;
  if (draft.routine != Routine::die && hasPourer) return NotByHand::noPourer;
  if (draft.routine == Routine::alone && draft.spares > 0) return NotByHand::spares;
  if (draft.routine == Routine::bottles && draft.evenings > 1) return NotByHand::oneEvening;
  return std::nullopt;
}

ReadBy usualReader(Routine routine) {
  switch (routine) {
    case Routine::couple: return ReadBy::twoSheets;
    case Routine::die: return ReadBy::pourer;
    case Routine::pourer:
    case Routine::bottles:
    case Routine::alone: return ReadBy::taster;
  }
  return ReadBy::taster;
}

int letteredBottles(const Plan& plan) {
  if (plan.routine != Routine::bottles) return 0;
  return static_cast<int>(std::ranges::count_if(plan.lots, [](const PlannedLot& lot) { return lot.role != LotRole::warmUp; }));
}

}  // namespace oddglass
