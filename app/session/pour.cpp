#include "session/pour.h"

#include "canon/folded.h"
#include "domain/by_hand.h"
#include "domain/evenings.h"
#include "domain/flight_form.h"
#include "domain/problem.h"
#include "session/plan_now.h"
#include "session/vault.h"
#include "tasting/table.h"

#include <algorithm>
#include <iterator>

namespace oddglass::session {
namespace {

using store::bound;

std::set<Code> spilledCodes(SQLite::Database& db, std::int64_t session) {
  std::set<Code> all;
  auto rows = bound(db, "SELECT code FROM spilled WHERE session_id = ?", session);
  while (rows.executeStep()) all.insert({rows.getColumn(0).getInt()});
  return all;
}

void requireCode(SQLite::Database& db, std::int64_t session, Code code) {
  auto row = bound(db, "SELECT 1 FROM cup WHERE session_id = ? AND code = ?", session, code.value);
  if (!row.executeStep()) throw Problem(Trouble::codeNotHere, "code", {{"code", std::to_string(code.value)}});
}

// A cup of unknown content takes its whole flight with it; nothing about the key is needed to say so.
void setAsideFlightOf(SQLite::Database& db, std::int64_t session, Millis at, Chance& chance, Code code) {
  auto cup = bound(db, R"sql(
    SELECT c.place, c.round FROM cup c WHERE c.session_id = ?1 AND c.code = ?2
       AND NOT EXISTS (SELECT 1 FROM voided v WHERE v.session_id = ?1 AND v.place = c.place AND v.round = c.round))sql", session, code.value);
  if (cup.executeStep())
    tasting::setAsideWithin(db, session, at, chance.bytes<16>(), {cup.getColumn(0).getInt()}, {cup.getColumn(1).getInt()}, VoidReason::notSure, {});
}

void requireDrawn(const Plan& plan) {
  if (!isDrawn(plan.routine)) throw Problem(Trouble::keyByHand, "session");
}

std::string lotLabel(const PlannedLot& lot) { return lot.beverageName + ", " + lot.lotName; }

// Pour order: round by round, first cups before spares, in the order of the places.
auto pouringOrder(const PourLine& line) { return std::tuple(line.spare, line.round, line.place, line.position); }
auto placeOrder(const PourLine& line) { return std::tuple(line.spare > 0, line.place, line.round, line.position, line.spare); }

}  // namespace

std::string PourSheet::nameOf(Slot slot) const {
  for (const PourLot& lot : bottleByBottle)
    if (lot.slot == slot) return lot.name;
  return {};
}

bool isInWaves(const PourSheet& sheet) { return sheet.wave > 0 && sheet.wave < sheet.places; }

std::vector<PourStep> pourSteps(const PourSheet& sheet) {
  std::vector<PourStep> steps;
  const int size = isInWaves(sheet) ? sheet.wave : std::max(1, sheet.places);
  for (int round = 1; round <= sheet.rounds; ++round)
    for (int first = 1; first <= sheet.places; first += size)
      for (const PourLot& lot : sheet.bottleByBottle) {
        PourStep step{{round}, eveningOf({round}, sheet.rounds, sheet.evenings), {first}, {std::min(sheet.places, first + size - 1)}, lot.name, {}};
        std::ranges::copy_if(lot.lines, std::back_inserter(step.lines), [&](const PourLine& line) {
          return line.spare == 0 && line.round == step.round && line.place.value >= step.first.value && line.place.value <= step.last.value;
        });
        if (!step.lines.empty()) steps.push_back(std::move(step));
      }
  return steps;
}

PourSheet openPourSheet(store::Store& store, Clock& clock, const SessionId& session) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    tasting::requireOpenTable(db, id);
    const PlanNow now = planNow(db, id);
    requireDrawn(now.plan);
    const Logged entry = store::Log::append(db, id, clock.now(), Event::pourSheetOpened, canon::Json::object());
    const blinding::OpenedKey key = vault::open(db, id, entry);
    const std::set<Code> ticks = vault::ticks(db, id, entry), spilled = spilledCodes(db, id);
    std::map<Code, std::optional<Slot>> really;
    for (const vault::Poured& each : vault::poured(db, id, entry)) really[each.code] = each.slot;

    PourSheet sheet{now.guestTitle, now.sealMark, now.plan.cupMl, now.plan.rounds, cupsInFlight(now.plan), now.plan.evenings, now.plan.wave, now.plan.places, hasMarkedCup(now.plan), 0, {}, {}};
    auto openings = bound(db, "SELECT count(*) FROM log WHERE session_id = ? AND kind = 'pour_sheet_opened'", id);
    openings.executeStep();
    sheet.openings = openings.getColumn(0).getInt();
    for (const PlannedLot& lot : now.plan.lots) sheet.bottleByBottle.push_back({lot.slot, lotLabel(lot), {}});
    for (const Cup& cup : now.plan.cups) {
      PourLine line{cup.code, cup.place, cup.round, cup.position, cup.spare, key.slotOf(cup.code), ticks.contains(cup.code), spilled.contains(cup.code), {}};
      if (const auto found = really.find(cup.code); found != really.end()) line.really = found->second;
      sheet.placeByPlace.push_back(line);
      std::ranges::find(sheet.bottleByBottle, line.slot, &PourLot::slot)->lines.push_back(line);
    }
    std::ranges::sort(sheet.placeByPlace, {}, placeOrder);
    for (PourLot& lot : sheet.bottleByBottle) std::ranges::sort(lot.lines, {}, pouringOrder);
    return sheet;
  });
}

void tick(store::Store& store, Clock& clock, const SessionId& session, Code code, bool isPoured) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    tasting::requireOpenTable(db, id);
    requireDrawn(planNow(db, id).plan);
    requireCode(db, id, code);
    vault::tick(db, id, clock.now(), code, isPoured);
  });
}

void pouredReallyAll(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<ReallyPoured>& all) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    if (!all.empty()) requireDrawn(planNow(db, id).plan);
    for (const ReallyPoured& each : all) {
      requireCode(db, id, each.code);
      if (each.slot) {
        auto lot = bound(db, "SELECT 1 FROM session_lot WHERE session_id = ? AND slot = ?", id, each.slot->value);
        if (!lot.executeStep()) throw Problem(Trouble::unknown, "lot", {{"what", "lot"}, {"text", std::to_string(each.slot->value)}});
      }
      const canon::Salt salt = chance.bytes<16>();
      const std::string text = canon::canonical({each.code.value, each.slot ? canon::Json(each.slot->value) : canon::Json(nullptr)});
      const Logged entry = store::Log::append(db, id, clock.now(), Event::asPoured, {{"digest", tasting::digestOf(salt, text)}});
      vault::putPoured(db, id, entry, salt, each.code, each.slot, chance);
      if (!each.slot) setAsideFlightOf(db, id, clock.now(), chance, each.code);
    }
  });
}

void pouredReally(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Code code, std::optional<Slot> slot) {
  pouredReallyAll(store, clock, chance, session, {{code, slot}});
}

Slot slotNamed(store::Store& store, const SessionId& session, const std::string& lot) {
  return store::read(store, [&](SQLite::Database& db) {
    const PlanNow now = planNow(db, store::sessionRow(db, session));
    std::vector<Slot> found;
    const std::string wanted = canon::folded(lot);
    const auto is = [&](const std::string& name) { return canon::folded(name) == wanted; };
    for (const PlannedLot& each : now.plan.lots)
      if (each.lot.text == lot || is(each.lotName) || is(each.beverageName) || is(lotLabel(each)) || std::to_string(each.slot.value) == lot)
        found.push_back(each.slot);
    if (found.empty()) throw Problem(Trouble::unknown, "lot", {{"what", "lot"}, {"text", lot}});
    if (found.size() > 1) throw Problem(Trouble::ambiguous, "lot", {{"what", "lot"}, {"text", lot}});
    return found.front();
  });
}

void sayPoured(store::Store& store, Clock& clock, const SessionId& session) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    tasting::requireOpenTable(db, id);
    store::Log::append(db, id, clock.now(), Event::poured, canon::Json::object());
  });
}

}  // namespace oddglass::session
