#include "demo/demo_hands.h"

#include "by_hand.h"

using namespace oddglass;
using testing::Meant;

namespace {

/// One evening without a pourer, from the plan to the decision.
struct HandTable {
  DemoShelf& demo;
  SessionId session;
  std::optional<testing::Hands> hands;
  Millis now;

  HandTable(DemoShelf& shelf, Draft draft, const std::vector<const char*>& names, Millis begins, unsigned seed) : demo(shelf), now(begins) {
    demo.clock.set(now);
    session = draft.id = session::newDraft(*demo.store, demo.clock, demo.chance, draft.title);
    for (const char* name : names) draft.tasters.push_back(demo.people.at(name));
    draft.method = Method::triangle;
    draft.methodChosen = true;
    draft.cupMl = 15;
    draft.giveAways.emplace();
    draft.careSettled = true;
    session::saveDraft(*demo.store, demo.clock, draft);
    session::seal(*demo.store, demo.clock, demo.chance, session);
    hands.emplace(*demo.store, session, seed);
    later(15);
    session::sayPoured(*demo.store, demo.clock, session);
    int place = 0;
    for (const char* name : names) {
      later(1);
      tasting::sit(*demo.store, demo.clock, session, {{++place}, demo.people.at(name), ShownAs::signedName, true, true, true, false});
    }
  }

  void later(int minutes) { demo.clock.set(now += minutes * minute); }

  void answer(int place, bool isRight) {
    later(3);
    const auto flight = tasting::nextFlight(*demo.store, session, {place}).value();
    tasting::begin(*demo.store, demo.clock, session, {place}, flight.round);
    later(2);
    auto in = testing::answersFor(hands->plan, hands->known, flight, Meant{.isRight = isRight, .sureness = isRight ? Sureness::fairly : Sureness::guess, .clue = isRight ? Clue::taste : Clue::guess});
    in.clientId = demo.chance.bytes<16>();
    tasting::handIn(*demo.store, demo.clock, demo.chance, session, in);
  }

  void close() {
    later(3);
    session::close(*demo.store, demo.clock, session);
  }

  SessionId end(const char* decision) {
    later(2);
    session::reveal(*demo.store, demo.clock, session);
    later(10);
    session::decide(*demo.store, demo.clock, demo.chance, session, decision);
    return session;
  }
};

}  // namespace

PlayedEvening playAlone(DemoShelf& demo) {
  Draft draft;
  draft.title = "By myself: can I tell the porter from the bought one?";
  draft.guestTitle = "An evening by myself";
  draft.routine = Routine::alone;
  draft.lots = {demo.porter, demo.boughtPorter};
  draft.rounds = 6;
  draft.promises = {{Outcome::shown, "ask the others"}, {Outcome::notShown, "stop worrying about it"}};
  HandTable table(demo, draft, {"Wenna"}, 1786042800000, 41);  // 6 August 2026, 19:00 UTC
  for (int round = 1; round <= 6; ++round) {
    table.answer(1, round != 5);
    table.later(1);
    auto found = table.hands->at(1, round);
    // One slip had come off in the wet.
    if (round == 3) found.lines[1].slot.reset();
    session::readOff(*demo.store, demo.clock, demo.chance, table.session, found, ReadBy::taster);
    table.later(8);
  }
  table.close();
  return {table.end("ask the others, as a pair: which is the drier one?"), "Alone, the key under the cups: five of six rounds could be read off, four of them right, which is enough to say \"you can tell\"."};
}

PlayedEvening playCouple(DemoShelf& demo) {
  Draft draft;
  draft.title = "Two vintages of the bought mead, the two of us";
  draft.guestTitle = "Two meads";
  draft.routine = Routine::couple;
  draft.lots = {demo.boughtMead, demo.boughtMeadOlder};
  draft.rounds = 3;
  draft.promises = {{Outcome::shown, "keep one bottle of the older"}, {Outcome::notShown, "buy whichever is there"}};
  HandTable table(demo, draft, {"Tove", "Bram"}, 1786647600000, 43);  // 13 August 2026, 19:00 UTC
  for (int round = 1; round <= 3; ++round)
    for (int place = 1; place <= 2; ++place) table.answer(place, !(round == 2 && place == 2));
  table.close();
  std::vector<session::MarkedLot> first;
  std::vector<session::MarkedCode> second;
  for (int round = 1; round <= 3; ++round)
    for (int place = 1; place <= 2; ++place) {
      const auto sheets = table.hands->twoSheets(place, round);
      first.insert(first.end(), sheets.first.begin(), sheets.first.end());
      second.insert(second.end(), sheets.second.begin(), sheets.second.end());
    }
  table.later(6);
  session::readOffAll(*demo.store, demo.clock, demo.chance, table.session, session::joined(first, second), ReadBy::twoSheets);
  return {table.end("keep one bottle of the older vintage for next year"), "A couple and their two sheets: nobody else was there, and five of six triangles are right at this table."};
}
