#include "demo/demo_evenings.h"

#include <algorithm>

using namespace oddglass;

namespace {

/// What one taster does that evening.
struct TasterPart {
  const char* name;
  ShownAs as;
  bool isRight;
  Sureness sureness;
  Clue clue;
  const char* words;
};

/// The code of the odd cup of a flight, or of the first other one.
Code cupFor(const session::PourSheet& sheet, const tasting::Flight& flight, bool odd) {
  std::map<Slot, std::vector<Code>> bySlot;
  for (const auto& cup : flight.cups)
    for (const auto& line : sheet.placeByPlace)
      if (line.code == cup.code) bySlot[line.slot].push_back(cup.code);
  for (const auto& [slot, codes] : bySlot)
    if ((codes.size() == 1) == odd) return codes.front();
  throw std::logic_error("no triangle at place " + std::to_string(flight.place.value));
}

/// One evening, from the plan to the moment before the close.
struct Played {
  DemoShelf& demo;
  SessionId session;
  session::PourSheet sheet;
  Millis now;

  Played(DemoShelf& shelf, Draft draft, const std::vector<TasterPart>& parts, Millis begins) : demo(shelf), now(begins) {
    demo.clock.set(now);
    session = draft.id = session::newDraft(*demo.store, demo.clock, demo.chance, draft.title);
    for (const TasterPart& part : parts) draft.tasters.push_back(demo.people.at(part.name));
    draft.careSettled = true;
    draft.giveAwaysUnasked = true;
    session::saveDraft(*demo.store, demo.clock, draft);
    session::seal(*demo.store, demo.clock, demo.chance, session);
    later(20);
    sheet = session::openPourSheet(*demo.store, demo.clock, session);
    later(15);
    session::sayPoured(*demo.store, demo.clock, session);
    int place = 0;
    for (const TasterPart& part : parts) {
      later(1);
      tasting::sit(*demo.store, demo.clock, session, {{++place}, demo.people.at(part.name), part.as, true, true, true, false});
    }
  }

  void later(int minutes) { demo.clock.set(now += minutes * minute); }

  void answer(int place, const TasterPart& part) {
    later(2);
    const auto flight = tasting::nextFlight(*demo.store, session, {place}).value();
    tasting::begin(*demo.store, demo.clock, session, {place}, flight.round);
    later(2);
    tasting::HandIn in;
    in.place = {place};
    in.round = flight.round;
    in.clientId = demo.chance.bytes<16>();
    in.replies = {{{1}, cupFor(sheet, flight, part.isRight).value, std::nullopt}, {{2}, static_cast<int>(part.sureness), std::nullopt}, {{3}, static_cast<int>(part.clue), std::nullopt}};
    if (*part.words) in.replies.push_back({{4}, 0, std::string(part.words)});
    tasting::handIn(*demo.store, demo.clock, demo.chance, session, in);
  }

  void end(const char* decision) {
    later(3);
    session::close(*demo.store, demo.clock, session);
    session::reveal(*demo.store, demo.clock, session);
    later(25);
    session::decide(*demo.store, demo.clock, demo.chance, session, decision);
  }
};

}  // namespace

// Eight of ten are right, one of them by the look of it.
SessionId playPorterEvening(DemoShelf& demo) {
  using enum ShownAs;
  const std::vector<TasterPart> parts{
      {"Ilse", signedName, true, Sureness::sure, Clue::smell, "one of them smells of coffee"},
      {"Bram", nickname, true, Sureness::fairly, Clue::taste, ""},
      {"Tove", loose, true, Sureness::sure, Clue::taste, "drier at the end"},
      {"Nia", signedName, false, Sureness::guess, Clue::guess, ""},
      {"Ruan", nickname, true, Sureness::fairly, Clue::mouthfeel, "thinner, I think"},
      {"Ebba", loose, true, Sureness::guess, Clue::guess, ""},
      {"Kit", signedName, true, Sureness::sure, Clue::look, "the head was browner"},
      {"Sorrel", signedName, true, Sureness::fairly, Clue::taste, ""},
      {"Piet", signedName, false, Sureness::fairly, Clue::fizz, ""},
      {"Maud", signedName, true, Sureness::fairly, Clue::taste, "more roast in the odd one"},
      {"Wenna", signedName, true, Sureness::sure, Clue::taste, "mine is the odd one, of course"},
  };
  Draft draft;
  draft.title = "Porter no. 4 against a bought one";
  draft.guestTitle = "An evening with dark beer";
  draft.lots = {demo.porter, demo.boughtPorter};
  draft.pourer = demo.people.at("Odo");
  draft.cupMl = 30;
  draft.spares = 1;
  draft.promises = {{Outcome::shown, "pour pairs next time and ask which one is drier"}, {Outcome::notShown, "stop worrying about the yeast"}};
  Played evening(demo, draft, parts, 1774119600000);  // 21 March 2026, 19:00 UTC
  const auto spilt = tasting::nextFlight(*demo.store, evening.session, {5}).value().cups.at(1).code;
  evening.later(1);
  tasting::spilled(*demo.store, demo.clock, evening.session, spilt);
  for (std::size_t i = 0; i < parts.size(); ++i) evening.answer(static_cast<int>(i) + 1, parts[i]);
  evening.end("less crystal malt in no. 5, then pairs: which one is drier?");
  return evening.session;
}

// Three of seven are right, one flight is set aside, and something was said.
SessionId playCiderEvening(DemoShelf& demo) {
  using enum ShownAs;
  const std::vector<TasterPart> parts{
      {"Ilse", signedName, false, Sureness::guess, Clue::guess, ""},
      {"Bram", nickname, true, Sureness::fairly, Clue::taste, "a little vanilla"},
      {"Tove", signedName, false, Sureness::fairly, Clue::taste, ""},
      {"Nia", loose, true, Sureness::guess, Clue::guess, ""},
      {"Ruan", nickname, false, Sureness::guess, Clue::guess, "no idea, honestly"},
      {"Kit", loose, true, Sureness::fairly, Clue::smell, ""},
      {"Sorrel", signedName, false, Sureness::guess, Clue::mouthfeel, ""},
      {"Maud", signedName, false, Sureness::guess, Clue::guess, ""},
      {"Wenna", signedName, false, Sureness::sure, Clue::taste, "the oak is plain to taste"},
      {"Odo", signedName, true, Sureness::fairly, Clue::smell, ""},
  };
  Draft draft;
  draft.title = "Cider: does two weeks of oak show?";
  draft.guestTitle = "An evening with cider";
  draft.lots = {demo.ciderMarch, demo.ciderOak};
  draft.pourer = demo.people.at("Ebba");
  draft.cupMl = 30;
  draft.spares = 1;
  draft.sought = Sought::both;
  draft.limitPm = 300;
  draft.promises = {{Outcome::shown, "oak the whole batch"}, {Outcome::notShown, "leave it for a month and ask again"}, {Outcome::alike, "no more chips"}};
  Played evening(demo, draft, parts, 1778958000000);  // 16 May 2026, 19:00 UTC
  for (int place : {1, 2, 3, 4}) evening.answer(place, parts[place - 1]);
  evening.later(1);
  tasting::said(*demo.store, demo.clock, demo.chance, evening.session, {Place{5}, Place{7}}, "is one of these from the barrel?");
  for (int place : {5, 6, 7, 9, 10}) evening.answer(place, parts[place - 1]);
  tasting::setAside(*demo.store, demo.clock, demo.chance, evening.session, {8}, {1}, VoidReason::mixedUp);
  evening.end("a month in the cellar, then once more with ten people");
  return evening.session;
}
