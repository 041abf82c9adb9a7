#pragma once

#include "evening.h"

#include <functional>
#include <map>

namespace oddglass::testing {

inline SheetItem asked(ItemKind kind, const std::string& word = {}, Part part = Part::main, bool required = true) {
  SheetItem item;
  item.kind = kind;
  item.word = word;
  item.part = part;
  item.required = required;
  return item;
}

/// What one taster says to a question about a cup of a lot (slot 0: about the flight); words, a number, or nothing. `cup` counts the coded cups
/// of the flight from 1.
struct Said {
  std::optional<int> value{};
  std::string words{};
};
using Sayer = std::function<Said(int place, int round, const SheetItem& item, Slot slot, int cup)>;

/// The evening of tests/evening.h as score sheets.
struct SheetEvening : Evening {
  session::PourSheet sheet;

  using Evening::Evening;

  /// The draft as a sheet of these questions.
  Draft asSheet(std::vector<SheetItem> items, bool doubles = false) {
    Draft draft = session::draft(*store, session);
    draft.question = Question::lacks;
    draft.method = Method::sheet;
    draft.sheet.items = std::move(items);
    draft.sheet.hasDuplicate = doubles;
    return draft;
  }

  /// Everybody is invited to a draft and somebody pours.
  void invite(Draft& draft) const {
    draft.tasters = friends;
    draft.tasters.push_back(maker);
    draft.pourer = pourer;
    draft.cupMl = 15;
  }

  void sealAndSit() {
    seal();
    sheet = session::openPourSheet(*store, clock, session);
    session::sayPoured(*store, clock, session);
    sitAll();
  }

  Slot slotOf(Code code) const {
    for (const auto& line : sheet.placeByPlace)
      if (line.code == code) return line.slot;
    return {0};
  }

  tasting::HandIn filledIn(const tasting::Flight& flight, const Sayer& say) {
    tasting::HandIn in;
    in.place = flight.place;
    in.round = flight.round;
    chance.fill(in.clientId);
    const auto reply = [&](const SheetItem& item, Code code, Slot slot, int cup) {
      const Said said = say(flight.place.value, flight.round.value, item, slot, cup);
      if (said.value) in.replies.push_back({item.item, *said.value, std::nullopt, code});
      else if (!said.words.empty()) in.replies.push_back({item.item, 0, said.words, code});
    };
    for (const SheetItem& item : flight.items) {
      int cup = 0;
      if (!item.perCup) reply(item, {}, {0}, 0);
      else
        for (const auto& each : flight.cups)
          if (!each.isMarked) reply(item, each.code, slotOf(each.code), ++cup);
    }
    return in;
  }

  /// Everybody tastes and answers every flight.
  void answerAll(const Sayer& say) {
    for (int place = 1; place <= static_cast<int>(friends.size()) + 1; ++place)
      while (const auto flight = tasting::nextFlight(*store, session, {place})) {
        tasting::begin(*store, clock, session, {place}, flight->round);
        tasting::handIn(*store, clock, chance, session, filledIn(*flight, say));
      }
  }

  RevealedSession end() {
    session::close(*store, clock, session);
    session::reveal(*store, clock, session);
    return session::revealed(*store, session);
  }
};

}  // namespace oddglass::testing
