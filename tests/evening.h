#pragma once

#include "blinding/chance.h"
#include "fixed.h"
#include "session/drafts.h"
#include "session/ending.h"
#include "session/look.h"
#include "session/pour.h"
#include "session/record.h"
#include "session/seal.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/people.h"
#include "tasting/board.h"
#include "tasting/flight.h"
#include "tasting/hand_in.h"
#include "tasting/mishaps.h"
#include "tasting/seats.h"

#include <vector>

namespace oddglass::testing {

/// A store with an invented shelf and a plan of six friends, one maker and a pourer, ready for whatever a test does with the evening.
struct Evening {
  Folder folder;
  FixedClock clock;
  FixedChance chance;
  std::unique_ptr<store::Store> store = store::Store::open(folder / "cellar.oddglass", store::Access::write, clock, chance);
  LotId mine, bought;
  TasterId maker, pourer;
  std::vector<TasterId> friends;
  SessionId session;

  /// `rounds` rounds, `spares` spare places; not sealed yet.
  explicit Evening(int rounds = 1, int spares = 1, int friendCount = 6) {
    maker = shelf::save(*store, chance, Taster{{}, "Wenna Tarn", "", true, false});
    pourer = shelf::save(*store, chance, Taster{{}, "Odo Pell", "", false, false});
    for (int i = 0; i < friendCount; ++i)
      friends.push_back(shelf::save(*store, chance, Taster{{}, "Friend " + std::string(1, static_cast<char>('A' + i)), "fox " + std::to_string(i), false, false}));
    Beverage batch;
    batch.name = "Heather mead";
    batch.kind = Kind::mead;
    batch.abvBp = 1200;
    batch.abvFrom = AbvFrom::gravities;
    batch.ingredients = {IngredientsKnown::known, {Allergen::sulphites}};
    batch.makers = {maker};
    Beverage reference;
    reference.origin = Origin::reference;
    reference.name = "Bought mead";
    reference.kind = Kind::mead;
    reference.abvBp = 1150;
    reference.abvFrom = AbvFrom::label;
    mine = addLot(shelf::save(*store, chance, batch), "bottled in March");
    bought = addLot(shelf::save(*store, chance, reference), "vintage 2");
    Draft draft;
    draft.id = session = session::newDraft(*store, clock, chance, "Heather against bought");
    draft.title = "Heather against bought";
    draft.guestTitle = "An evening with cups";
    draft.lots = {mine, bought};
    draft.tasters = friends;
    draft.tasters.push_back(maker);
    draft.pourer = pourer;
    draft.rounds = rounds;
    draft.cupMl = 15;
    draft.spares = spares;
    draft.promises = {{Outcome::shown, "name the difference next"}, {Outcome::notShown, "pour pairs"}};
    draft.careSettled = true;
    draft.giveAways.emplace();
    session::saveDraft(*store, clock, draft);
  }

  LotId addLot(const BeverageId& beverage, const std::string& name) {
    Lot lot;
    lot.beverage = beverage;
    lot.name = name;
    lot.bottleMl = 750;
    const LotId id = shelf::save(*store, chance, lot);
    shelf::move(*store, clock, id, StockChange::added, 12);
    return id;
  }

  session::Sealed seal() { return session::seal(*store, clock, chance, session); }

  void sit(int place, const TasterId& who, ShownAs as = ShownAs::signedName) {
    tasting::sit(*store, clock, session, {{place}, who, as, true, true, true, false});
  }

  /// Everybody takes a place: friends from 1 on, the maker last.
  void sitAll() {
    int place = 0;
    for (const TasterId& each : friends) sit(++place, each);
    sit(++place, maker);
  }

  tasting::HandIn choose(int place, int round, Code code, Sureness sureness = Sureness::fairly, Clue clue = Clue::taste, const std::string& words = {}) {
    tasting::HandIn in;
    in.place = {place};
    in.round = {round};
    chance.fill(in.clientId);
    in.replies = {{{1}, code.value, std::nullopt}, {{2}, static_cast<int>(sureness), std::nullopt}, {{3}, static_cast<int>(clue), std::nullopt}};
    if (!words.empty()) in.replies.push_back({{4}, 0, words});
    return in;
  }

  /// A place answers its next flight with the cup at `position`.
  tasting::Receipt answer(int place, int position, const std::string& words = {}) {
    const auto flight = tasting::nextFlight(*store, session, {place}).value();
    tasting::begin(*store, clock, session, {place}, flight.round);
    const Code code = flight.cups.at(static_cast<std::size_t>(position - 1)).code;
    return tasting::handIn(*store, clock, chance, session, choose(place, flight.round.value, code, Sureness::fairly, Clue::taste, words));
  }
};

}  // namespace oddglass::testing
