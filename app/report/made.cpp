#include "report/made.h"

#include "domain/flight_form.h"
#include "domain/trial.h"

#include <algorithm>
#include <limits>
#include <map>

namespace oddglass::report {
namespace {

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
    if (order.empty()) continue;   // hidden by hands, and not read off
    if (session.plan.sheet) ++counts[order];
    else if (const auto found = counts.find(order); found != counts.end()) ++found->second;
  }
}

// Whether a row of lots is a flight of the plan's method at all.
bool isAFlight(const Plan& plan, const std::vector<Slot>& lots) {
  RevealedFlight flight;
  flight.drawn = lots;
  const FlightForm form = formOf(plan.method);
  if (form.hasMarked && plan.marked && lots.front() != *plan.marked) return false;
  if (form.saysSame) return isSame(plan, flight).has_value();
  const auto compared = comparedIn(flight);
  return compared && compared->first != compared->second && rightCups(plan, flight).has_value();
}

// Every order that the plan's method can deal, none of them dealt yet.
std::map<std::string, int> possibleOrders(const Plan& plan) {
  const auto cups = static_cast<std::size_t>(formOf(plan.method).cups);
  std::map<std::string, int> counts;
  std::vector<std::size_t> row(cups, 0);
  for (std::size_t turned = 0; turned < cups && !plan.lots.empty();) {
    std::vector<Slot> lots;
    std::string letters;
    for (const std::size_t lot : row) {
      lots.push_back(plan.lots[lot].slot);
      letters += static_cast<char>('A' + lot);
    }
    if (isAFlight(plan, lots)) counts[letters] = 0;
    // The next row, counting up from the last cup.
    turned = 0;
    while (turned < cups && ++row[cups - 1 - turned] == plan.lots.size()) row[cups - 1 - turned++] = 0;
  }
  return counts;
}

// Nobody where they asked to be only in the sums, or to be forgotten.
const ShownPerson* withRows(const RevealedSession& session, Place place) {
  const auto person = std::ranges::find(session.people, place, &ShownPerson::place);
  return person == session.people.end() || person->erased || person->as == ShownAs::loose ? nullptr : &*person;
}

template <class Flight>
void addSheetRows(const RevealedSession& session, const std::vector<Flight>& flights, bool makers, std::vector<SheetRow>& rows) {
  for (const Flight& flight : flights) {
    const ShownPerson* person = withRows(session, flight.place);
    if (!person || flight.replies.empty()) continue;
    std::map<int, SheetRow> byCup;   // the flight as a whole last
    for (const SheetReply& reply : flight.replies) {
      if (!reply.value) continue;
      const int at = reply.cup ? reply.cup->value : std::numeric_limits<int>::max();
      SheetRow& row = byCup.try_emplace(at, SheetRow{person->shown, makers, flight.round, std::nullopt, reply.cup, flight.voided, {}}).first->second;
      if (reply.cup) row.lot = flight.poured.at(static_cast<std::size_t>(reply.cup->value - 1));
      row.values.emplace_back(reply.item, *reply.value);
    }
    for (auto& [cup, row] : byCup) rows.push_back(std::move(row));
  }
}

template <class Flight>
void addRows(const RevealedSession& session, const std::vector<Flight>& flights, bool makers, std::vector<FlightRow>& rows) {
  for (const Flight& flight : flights) {
    const ShownPerson* person = withRows(session, flight.place);
    if (!person) continue;
    FlightRow row;
    row.who = person->shown;
    row.isMaker = makers;
    row.round = flight.round;
    row.poured = pouredLetters(session.plan, flight);
    row.picks = flight.picks;
    row.voided = flight.voided;
    row.sureness = flight.sureness;
    row.clue = flight.clue;
    row.saidSame = flight.saidSame;
    row.preferred = flight.preferred;
    row.preferredNone = flight.preferredNone;
    row.isAnswered = flight.isAnswered();
    if (!flight.voided) row.right = isRight(session.plan, flight);
    row.counts = !flight.voided && row.isAnswered && (row.right || !formOf(session.plan.method).hasRight) && comparedIn(flight).has_value();
    rows.push_back(std::move(row));
  }
}

}  // namespace

char letterOf(const Plan& plan, Slot slot) {
  for (std::size_t i = 0; i < plan.lots.size(); ++i)
    if (plan.lots[i].slot == slot) return static_cast<char>('A' + i);
  return '?';
}

std::vector<OrderCount> ordersDealt(const RevealedSession& session) {
  std::map<std::string, int> counts;
  if (!session.plan.sheet) counts = possibleOrders(session.plan);
  countOrders(session, session.panel, counts);
  if (session.plan.claim == Claim::me) countOrders(session, session.makers, counts);
  std::vector<OrderCount> all;
  for (const auto& [order, flights] : counts) all.push_back({order, flights});
  return all;
}

std::vector<SheetRow> sheetRows(const RevealedSession& session) {
  std::vector<SheetRow> rows;
  addSheetRows(session, session.panel, false, rows);
  addSheetRows(session, session.makers, true, rows);
  return rows;
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
    case insight::DeviationKind::matsSwapped: return "mats_swapped";
    case insight::DeviationKind::placeFreed: return "place_freed";
    case insight::DeviationKind::closedEarly: return "closed_early";
    case insight::DeviationKind::clockBack: return "clock_back";
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

std::string_view nameOf(insight::Decision decision) {
  switch (decision) {
    case insight::Decision::difference: return "difference";
    case insight::Decision::none: return "none";
    case insight::Decision::undecided: return "undecided";
  }
  return {};
}

Millis tastedAt(const RevealedSession& session) {
  for (const LoggedEvent& each : session.log)
    if (each.event == Event::opened) return each.at;
  return session.revealedAt;
}

}  // namespace oddglass::report
