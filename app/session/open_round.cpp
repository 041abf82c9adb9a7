#include "session/open_round.h"

#include "domain/expectation.h"
#include "domain/item_kinds.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/look.h"
#include "store/log.h"
#include "store/step.h"

#include <algorithm>
#include <set>

namespace oddglass::session {
namespace {

using store::bound;

std::string textOf(int value) { return std::to_string(value); }

std::set<Place> placesIn(SQLite::Database& db, const char* sql, std::int64_t session) {
  std::set<Place> places;
  auto rows = bound(db, sql, session);
  while (rows.executeStep()) places.insert({rows.getColumn(0).getInt()});
  return places;
}

void requireSound(const OpenRound& round, const OpenAnswers& answers) {
  const auto place = std::ranges::find(round.places, answers.place, &OpenPlace::place);
  if (place == round.places.end()) throw Problem(Trouble::noSuchPlace, "place", {{"place", textOf(answers.place.value)}});
  if (place->isDone) throw Problem(Trouble::alreadyThere, "place", {{"text", textOf(answers.place.value)}});
  for (const auto& [slot, value] : answers.values) {
    if (std::ranges::find(round.lots, slot, &PlannedLot::slot) == round.lots.end()) throw Problem(Trouble::unknown, "lot", {{"what", "lot"}, {"text", textOf(slot.value)}});
    if (value < round.item.low.value_or(1) || value > round.item.high.value_or(9))
      throw Problem(Trouble::outOfRange, "value", {{"text", textOf(value)}, {"low", textOf(round.item.low.value_or(1))}, {"high", textOf(round.item.high.value_or(9))}});
  }
  if (answers.values.size() != round.lots.size()) throw Problem(Trouble::empty, "lot");
}

}  // namespace

bool mayAnswerOpenly(const RevealedSession& session) {
  const Plan& plan = session.plan;
  const auto reference = heldAgainst(plan.lots, plan.marked);
  return session.state == State::revealed && plan.sheet && reference && std::ranges::any_of(plan.items, isOverallLiking) &&
         std::ranges::any_of(plan.lots, [&](const PlannedLot& lot) { return lot.role == LotRole::compared && lot.origin == Origin::batch; }) &&
         // Beside a twin of their own nobody leans to their own.
         std::ranges::any_of(plan.lots, [&](const PlannedLot& lot) { return lot.slot == *reference && lot.origin == Origin::reference; });
}

std::optional<OpenRound> openRound(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) -> std::optional<OpenRound> {
    const auto id = store::sessionRow(db, session);
    if (store::stateOf(db, id) != State::revealed) return std::nullopt;
    const RevealedSession revealed = session::revealed(store, session);
    if (!mayAnswerOpenly(revealed)) return std::nullopt;
    OpenRound round{session, revealed.title, *std::ranges::find_if(revealed.plan.items, isOverallLiking), {}, {}};
    for (const PlannedLot& lot : revealed.plan.lots)
      if (lot.role != LotRole::warmUp) round.lots.push_back(lot);
    std::set<Place> answered;
    for (const PanelFlight& flight : revealed.panel)
      if (flight.isAnswered()) answered.insert(flight.place);
    for (const MakerFlight& flight : revealed.makers)
      if (flight.isAnswered()) answered.insert(flight.place);
    const std::set<Place> done = placesIn(db, "SELECT DISTINCT place FROM open_answer WHERE session_id = ?", id), known = placesIn(db, "SELECT place FROM place_person WHERE session_id = ?", id);
    for (const ShownPerson& person : revealed.people)
      if (!person.erased && answered.contains(person.place)) round.places.push_back({person.place, person.shown, !known.contains(person.place), person.isMaker, done.contains(person.place)});
    std::ranges::sort(round.places, {}, &OpenPlace::place);
    return round;
  });
}

void answerOpenly(store::Store& store, Clock& clock, const SessionId& session, const std::vector<OpenAnswers>& answers) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    const State state = store::stateOf(db, id);
    if (state != State::revealed) throw Problem(Trouble::wrongState, "session", {{"state", std::string(nameOf(state))}});
    auto round = openRound(store, session);
    if (!round) throw Problem(Trouble::doesNotFit, "session", {{"what", "an open round"}});
    const Millis at = clock.now();
    for (const OpenAnswers& each : answers) {
      requireSound(*round, each);
      std::ranges::find(round->places, each.place, &OpenPlace::place)->isDone = true;
      for (const auto& [slot, value] : each.values)
        store::run(db, "INSERT INTO open_answer VALUES (?, ?, ?, ?, ?, ?)", id, each.place.value, slot.value, round->item.item.value, value, at);
    }
  });
}

}  // namespace oddglass::session
