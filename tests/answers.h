#pragma once

#include "domain/flight_form.h"
#include "domain/trial.h"
#include "session/pour.h"
#include "tasting/flight.h"
#include "tasting/hand_in.h"

#include <algorithm>
#include <stdexcept>

namespace oddglass::testing {

/// What one taster means to say to a flight, whatever the method.
struct Meant {
  bool isRight = true;
  Sureness sureness = Sureness::fairly;
  Clue clue = Clue::taste;
  std::optional<Slot> likes = {};   ///< where that is asked; nothing: no preference where it may be said, else the first cup
  std::string words = {};
};

/// What stands in a flight, as the pourer's sheet says.
inline RevealedFlight standing(const session::PourSheet& sheet, const tasting::Flight& flight) {
  RevealedFlight there;
  there.place = flight.place;
  there.round = flight.round;
  for (const auto& cup : flight.cups)
    for (const auto& line : sheet.placeByPlace)
      if (line.code == cup.code) there.poured.push_back(line.slot);
  return there;
}

/// The positions to pick so that the answer is right, or wrong.
inline std::vector<Position> picksFor(const Plan& plan, RevealedFlight there, bool isMeantRight) {
  const FlightForm form = formOf(plan.method);
  for (int first = form.hasMarked ? 2 : 1; first <= form.cups; ++first)
    for (int second = form.picks == 2 ? first + 1 : first; second <= (form.picks == 2 ? form.cups : first); ++second) {
      there.picks = {{first}};
      if (form.picks == 2) there.picks.push_back({second});
      if (isRight(plan, there) == isMeantRight) return there.picks;
    }
  throw std::logic_error("no such answer");
}

/// A hand-in that says what is meant.
inline tasting::HandIn answersFor(const Plan& plan, const session::PourSheet& sheet, const tasting::Flight& flight, const Meant& meant) {
  const RevealedFlight there = standing(sheet, flight);
  const FlightForm form = formOf(plan.method);
  const std::vector<Position> picks = form.picks > 0 ? picksFor(plan, there, meant.isRight) : std::vector<Position>{};
  tasting::HandIn in;
  in.place = flight.place;
  in.round = flight.round;
  std::size_t pick = 0;
  const auto codeAt = [&](Position position) { return flight.cups.at(static_cast<std::size_t>(position.value) - 1).code.value; };
  for (const SheetItem& item : flight.items) {
    tasting::Reply reply{item.item, 0, std::nullopt};
    switch (item.kind) {
      case ItemKind::choose: reply.value = codeAt(picks.at(pick++)); break;
      case ItemKind::same: reply.value = isSame(plan, there).value() == meant.isRight ? 1 : 2; break;
      case ItemKind::prefer: {
        const auto liked = std::ranges::find(there.poured, std::optional(meant.likes.value_or(Slot{0})));
        if (liked != there.poured.end()) {
          // Of the marked cup nothing is asked: the same drink stands further on.
          const auto from = form.hasMarked ? there.poured.begin() + 1 : there.poured.begin();
          reply.value = codeAt({static_cast<int>(std::find(from, there.poured.end(), *liked) - there.poured.begin()) + 1});
        } else if (item.low != 0) {
          reply.value = codeAt({form.hasMarked ? 2 : 1});
        }
        break;
      }
      case ItemKind::sureness: reply.value = static_cast<int>(meant.sureness); break;
      case ItemKind::clue: reply.value = static_cast<int>(meant.clue); break;
      case ItemKind::words:
        if (meant.words.empty()) continue;
        reply.text = meant.words;
        break;
      default: throw std::logic_error("a question of a score sheet");
    }
    in.replies.push_back(std::move(reply));
  }
  return in;
}

}  // namespace oddglass::testing
