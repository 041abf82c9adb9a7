#include "session/look_after.h"

#include "domain/problem.h"
#include "domain/trial.h"
#include "planning/stopping.h"
#include "session/opened.h"
#include "session/plan_now.h"
#include "session/vault.h"
#include "tasting/table.h"

namespace oddglass::session {
namespace {

using store::bound;

// Everybody who sits must have locked, or had set aside, what is open.
void requireRoundDone(SQLite::Database& db, std::int64_t session) {
  bool anySits = false;
  auto rows = bound(db, R"sql(
    SELECT place FROM place_taken k WHERE session_id = ?1
       AND NOT EXISTS (SELECT 1 FROM place_left l WHERE l.session_id = ?1 AND l.place = k.place) ORDER BY place)sql", session);
  while (rows.executeStep()) {
    anySits = true;
    const Place place{rows.getColumn(0).getInt()};
    if (tasting::nextRound(db, session, place) != 0) throw Problem(Trouble::roundOpen, "place", {{"place", std::to_string(place.value)}});
  }
  if (!anySits) throw Problem(Trouble::nothingAnswered, "session");
}

struct Counted {
  int trials = 0, right = 0;
};

// The flights handed in so far by those who count, by what was poured. Nothing of this leaves the function that opened the key.
Counted countSoFar(SQLite::Database& db, std::int64_t session, const Plan& plan, const std::map<Code, Slot>& lines, const std::map<Code, std::optional<Slot>>& really) {
  Counted counted;
  auto rows = bound(db, R"sql(
    SELECT h.id, h.place, h.round FROM hand_in h JOIN place_taken k USING (session_id, place)
     WHERE h.session_id = ?1 AND k.is_maker = ?2
       AND NOT EXISTS (SELECT 1 FROM voided v WHERE v.session_id = ?1 AND v.place = h.place AND v.round = h.round))sql", session,
                    plan.claim == Claim::me ? 1 : 0);
  while (rows.executeStep()) {
    RevealedFlight flight;
    const auto codes = tasting::currentCodes(db, session, {rows.getColumn(1).getInt()}, {rows.getColumn(2).getInt()});
    for (const auto& [position, code] : codes) {
      const auto said = really.find(code);
      flight.poured.push_back(said == really.end() ? std::optional(lines.at(code)) : said->second);
    }
    auto picks = bound(db, R"sql(
      SELECT a.value FROM answer a JOIN item i ON i.session_id = ?1 AND i.item = a.item WHERE a.hand_in_id = ?2 AND i.kind = 'choose')sql", session,
                       rows.getColumn(0).getInt64());
    while (picks.executeStep())
      for (const auto& [position, code] : codes)
        if (code.value == picks.getColumn(0).getInt()) flight.picks.push_back(position);
    if (const auto right = isRight(plan, flight)) {
      ++counted.trials;
      counted.right += *right;
    }
  }
  return counted;
}

}  // namespace

LookedAfter lookAfterRound(store::Store& store, Clock& clock, const SessionId& session) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    tasting::requireOpenTable(db, id);
    const PlanNow now = planNow(db, id);
    if (!now.plan.stopping) throw Problem(Trouble::notSequential, "session");
    const int round = tasting::lastOpenRound(db, id);
    if (round == 0 || round == now.plan.rounds) throw Problem(Trouble::lastRound, "session");
    requireRoundDone(db, id);
    const Millis at = clock.now();
    const Logged entry = store::Log::append(db, id, at, Event::looked, {{"round", round}});
    const blinding::OpenedKey key = vault::open(db, id, entry);
    std::map<Code, Slot> lines(key.contents().lines.begin(), key.contents().lines.end());
    std::map<Code, std::optional<Slot>> really;
    for (const vault::Poured& each : vault::poured(db, id, entry)) really[each.code] = each.slot;
    const Counted counted = countSoFar(db, id, now.plan, lines, really);
    const bool goOn = planning::sequentialAfter(now.plan.method, *now.plan.stopping, now.plan.alphaPm, counted.trials, counted.right) == planning::Sequential::goOn;
    store::Log::append(db, id, at, Event::judged, {{"go_on", goOn}, {"round", round}});
    return LookedAfter{{round}, goOn};
  });
}

}  // namespace oddglass::session
