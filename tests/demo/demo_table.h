#pragma once

#include "answers.h"
#include "demo/demo_shelf.h"

/// One evening of the demo, from the plan to the decision. The pourer's sheet, opened once as on any evening, tells which cups are right.
struct DemoTable {
  DemoShelf& demo;
  oddglass::SessionId session;
  oddglass::session::PourSheet sheet;
  oddglass::Plan plan;
  oddglass::Millis now;

  /// Sealed, poured, and everybody seated, one of three loose. A draft that says nothing of give-aways is sealed as one where nobody looked.
  DemoTable(DemoShelf& shelf, oddglass::Draft draft, const std::vector<const char*>& names, oddglass::Millis begins) : demo(shelf), now(begins) {
    using namespace oddglass;
    demo.clock.set(now);
    session = draft.id = session::newDraft(*demo.store, demo.clock, demo.chance, draft.title);
    for (const char* name : names) draft.tasters.push_back(demo.people.at(name));
    draft.careSettled = true;
    draft.giveAwaysUnasked = !draft.giveAways;
    session::saveDraft(*demo.store, demo.clock, draft);
    session::seal(*demo.store, demo.clock, demo.chance, session);
    plan = session::record(*demo.store, session).plan;
    later(15);
    sheet = session::openPourSheet(*demo.store, demo.clock, session);
    later(20);
    session::sayPoured(*demo.store, demo.clock, session);
    int place = 0;
    for (const char* name : names) {
      later(1);
      const ShownAs as = place % 3 == 1 ? ShownAs::loose : ShownAs::signedName;
      sit(++place, name, as);
    }
  }

  void later(int minutes) { demo.clock.set(now += minutes * minute); }

  void sit(int place, const char* name, oddglass::ShownAs as = oddglass::ShownAs::signedName, bool heardAboutCups = false) {
    oddglass::tasting::sit(*demo.store, demo.clock, session, {{place}, demo.people.at(name), as, true, true, true, heardAboutCups});
  }

  oddglass::tasting::Flight next(int place) { return oddglass::tasting::nextFlight(*demo.store, session, {place}).value(); }

  void begin(int place) { oddglass::tasting::begin(*demo.store, demo.clock, session, {place}, next(place).round); }

  void answer(int place, const oddglass::testing::Meant& meant) {
    later(2);
    const auto flight = next(place);
    begin(place);
    later(1);
    auto in = oddglass::testing::answersFor(plan, sheet, flight, meant);
    in.clientId = demo.chance.bytes<16>();
    oddglass::tasting::handIn(*demo.store, demo.clock, demo.chance, session, in);
  }

  /// Right and sure by taste at every second place, right and unsure at the others; wrong is a guess.
  void answer(int place, bool isRight) {
    using namespace oddglass;
    answer(place, {.isRight = isRight, .sureness = isRight && place % 2 == 1 ? Sureness::sure : Sureness::guess, .clue = isRight ? Clue::taste : Clue::guess});
  }

  /// One whole round: place by place, right where the script has a 1.
  void round(const std::string& right) {
    for (std::size_t i = 0; i < right.size(); ++i) answer(static_cast<int>(i) + 1, right[i] == '1');
  }

  oddglass::SessionId end(const char* decision) {
    using namespace oddglass;
    later(5);
    session::close(*demo.store, demo.clock, session);
    session::reveal(*demo.store, demo.clock, session);
    later(20);
    session::decide(*demo.store, demo.clock, demo.chance, session, decision);
    return session;
  }
};
