#include "domain/names.h"
#include "domain/state.h"

#include <catch2/catch.hpp>

#include <set>

using namespace oddglass;

TEST_CASE("a session goes one way only") {
  CHECK(stateAfter(State::draft, Event::sealed) == State::sealed);
  CHECK(stateAfter(State::sealed, Event::opened) == State::tasting);
  CHECK(stateAfter(State::tasting, Event::closed) == State::closed);
  CHECK(stateAfter(State::closed, Event::revealed) == State::revealed);
  for (State from : {State::sealed, State::tasting, State::closed, State::revealed, State::broken, State::abandoned})
    CHECK_FALSE(stateAfter(from, Event::sealed));
  for (State from : {State::sealed, State::closed, State::revealed, State::broken, State::abandoned})
    CHECK_FALSE(stateAfter(from, Event::answered));
  for (State from : {State::draft, State::sealed, State::tasting, State::revealed, State::broken, State::abandoned})
    CHECK_FALSE(stateAfter(from, Event::revealed));
  for (Event event : allOf<Event>())
    if (event != Event::erased) {
      CHECK_FALSE(stateAfter(State::broken, event));
      CHECK_FALSE(stateAfter(State::abandoned, event));
    }
}

TEST_CASE("no step stands twice in the transition table") {
  std::set<std::pair<State, Event>> seen;
  for (const Transition& row : transitions()) CHECK(seen.emplace(row.state, row.event).second);
}

TEMPLATE_TEST_CASE("every word leads back to its value", "", Origin, Kind, AbvFrom, Allergen, IngredientsKnown, StockChange, NoteKind,
                   Question, Method, Claim, Sought, ItemKind, Part, LotRole, Outcome, State, Event, ShownAs, VoidReason, CameFrom, ErasureKind, Clue,
                   Sureness) {
  std::set<std::string_view> words;
  for (TestType value : allOf<TestType>()) {
    CHECK(named<TestType>(nameOf(value)) == value);
    CHECK(words.insert(nameOf(value)).second);
  }
  CHECK_FALSE(named<TestType>("no such word"));
}
