#include "report/made.h"

#include "domain/trial.h"

#include <algorithm>
#include <map>

namespace oddglass::report {
namespace {

char letterOf(const Plan& plan, Slot slot) {
  for (std::size_t i = 0; i < plan.lots.size(); ++i)
    if (plan.lots[i].slot == slot) return static_cast<char>('A' + i);
  return '?';
}

std::string pouredLetters(const Plan& plan, const RevealedFlight& flight) {
  std::string text;
  for (std::size_t i = 0; i < flight.drawn.size(); ++i) {
    const bool told = i < flight.poured.size();
    text += told && !flight.poured[i] ? '?' : letterOf(plan, told ? *flight.poured[i] : flight.drawn[i]);
  }
  return text;
}

template <class Flight>
void countOrders(const RevealedSession& session, const std::vector<Flight>& flights, std::map<std::string, int>& counts) {
  for (const Flight& flight : flights) {
    std::string order;
    for (const Slot slot : flight.drawn) order += letterOf(session.plan, slot);
    if (const auto found = counts.find(order); found != counts.end()) ++found->second;
  }
}

template <class Flight>
void addRows(const RevealedSession& session, const std::vector<Flight>& flights, bool makers, std::vector<FlightRow>& rows) {
  for (const Flight& flight : flights) {
    const auto person = std::ranges::find(session.people, flight.place, &ShownPerson::place);
    if (person == session.people.end() || person->erased || person->as == ShownAs::loose) continue;
    FlightRow row;
    row.who = person->shown;
    row.isMaker = makers;
    row.round = flight.round;
    row.poured = pouredLetters(session.plan, flight);
    row.picks = flight.picks;
    row.voided = flight.voided;
    row.sureness = flight.sureness;
    row.clue = flight.clue;
    if (!flight.voided) row.right = isRight(session.plan, flight);
    rows.push_back(std::move(row));
  }
}

}  // namespace

std::vector<OrderCount> ordersDealt(const RevealedSession& session) {
  std::map<std::string, int> counts;
  for (const char* order : {"AAB", "ABA", "ABB", "BAA", "BAB", "BBA"}) counts[order] = 0;
  countOrders(session, session.panel, counts);
  if (session.plan.claim == Claim::me) countOrders(session, session.makers, counts);
  std::vector<OrderCount> all;
  for (const auto& [order, flights] : counts) all.push_back({order, flights});
  return all;
}

std::vector<FlightRow> flightRows(const RevealedSession& session) {
  std::vector<FlightRow> rows;
  addRows(session, session.panel, false, rows);
  addRows(session, session.makers, true, rows);
  return rows;
}

std::string_view nameOf(insight::Verdict verdict) {
  switch (verdict) {
    case insight::Verdict::shown: return "shown";
    case insight::Verdict::notShown: return "not_shown";
    case insight::Verdict::alike: return "alike";
    case insight::Verdict::both: return "both";
    case insight::Verdict::none: return "none";
  }
  return {};
}

std::string_view nameOf(insight::NoVerdict why) {
  switch (why) {
    case insight::NoVerdict::sealBroken: return "seal_broken";
    case insight::NoVerdict::nobodyAnswered: return "nobody_answered";
    case insight::NoVerdict::tooFew: return "too_few";
    case insight::NoVerdict::tooFewWithout: return "too_few_without";
    case insight::NoVerdict::noVotes: return "no_votes";
  }
  return {};
}

std::string_view nameOf(insight::WeakenedBy by) {
  switch (by) {
    case insight::WeakenedBy::nothing: return "nothing";
    case insight::WeakenedBy::lookOrFizz: return "look_or_fizz";
    case insight::WeakenedBy::said: return "said";
    case insight::WeakenedBy::either: return "either";
  }
  return {};
}

std::string_view nameOf(insight::RangeBy by) {
  switch (by) {
    case insight::RangeBy::exact: return "exact";
    case insight::RangeBy::people: return "people";
    case insight::RangeBy::self: return "self";
  }
  return {};
}

std::string_view nameOf(insight::DeviationKind kind) {
  switch (kind) {
    case insight::DeviationKind::commitmentBroken: return "commitment_broken";
    case insight::DeviationKind::pourSheetOpened: return "pour_sheet_opened";
    case insight::DeviationKind::pouredOtherwise: return "poured_otherwise";
    case insight::DeviationKind::notSure: return "not_sure";
    case insight::DeviationKind::spilled: return "spilled";
    case insight::DeviationKind::voided: return "voided";
    case insight::DeviationKind::missing: return "missing";
    case insight::DeviationKind::late: return "late";
    case insight::DeviationKind::left: return "left";
    case insight::DeviationKind::said: return "said";
    case insight::DeviationKind::erased: return "erased";
  }
  return {};
}

std::string_view nameOf(insight::Caution caution) {
  switch (caution) {
    case insight::Caution::roundsPooled: return "rounds_pooled";
    case insight::Caution::fewerThanPlanned: return "fewer_than_planned";
    case insight::Caution::halfLikelyMissed: return "half_likely_missed";
    case insight::Caution::mostlyLookOrFizz: return "mostly_look_or_fizz";
    case insight::Caution::placeHabit: return "place_habit";
    case insight::Caution::countsOnly: return "counts_only";
  }
  return {};
}

Millis tastedAt(const RevealedSession& session) {
  for (const LoggedEvent& each : session.log)
    if (each.event == Event::opened) return each.at;
  return session.revealedAt;
}

}  // namespace oddglass::report
