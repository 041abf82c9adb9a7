#pragma once

#include "sheet_evening.h"

namespace oddglass::testing {

/// Evenings one after the other in one store: the brewer's mead beside the bought one, the overall liking asked. Friends sit from
/// place 1 on, the maker last.
struct OwnEvenings : SheetEvening {
  Draft pattern;
  bool isFirst = true;

  explicit OwnEvenings(int friendCount = 4) : SheetEvening(1, 0, friendCount) { pattern = asSheet({asked(ItemKind::liking), asked(ItemKind::worst)}); }

  /// Points for the own drink and for the reference, of whoever sits at a place.
  using Points = std::function<std::pair<int, int>(int place)>;

  int makersPlace() const { return static_cast<int>(friends.size()) + 1; }

  /// Plans, seals and tastes one evening, up to the closed table. `as`: how each place wants to be shown, by name where left out.
  void taste(const Points& points, std::optional<int> expectation = std::nullopt, const std::map<int, ShownAs>& as = {}) {
    Draft draft = pattern;
    if (!isFirst) session = session::newDraft(*store, clock, chance, draft.title);
    isFirst = false;
    draft.id = session;
    draft.expectationPc = expectation;
    session::saveDraft(*store, clock, draft);
    seal();
    sheet = session::openPourSheet(*store, clock, session);
    session::sayPoured(*store, clock, session);
    for (int place = 1; place <= makersPlace(); ++place) {
      const auto how = as.find(place);
      sit(place, place == makersPlace() ? maker : friends[static_cast<std::size_t>(place) - 1], how == as.end() ? ShownAs::signedName : how->second);
    }
    answerAll([&](int place, int, const SheetItem& item, Slot slot, int) -> Said {
      if (item.kind != ItemKind::liking) return {0};
      const auto [own, reference] = points(place);
      return {slot == Slot{1} ? own : reference};
    });
    session::close(*store, clock, session);
  }

  /// The same, and the key is opened.
  SessionId tell(const Points& points, std::optional<int> expectation = std::nullopt, const std::map<int, ShownAs>& as = {}) {
    taste(points, expectation, as);
    session::reveal(*store, clock, session);
    return session;
  }

  /// Friends put the two close together, the maker puts their own far above.
  Points proud() const {
    return [last = makersPlace()](int place) { return place == last ? std::pair{8, 4} : std::pair{5 + place % 2, 5}; };
  }
};

}  // namespace oddglass::testing
