#include "session/ending.h"

#include "blinding/commitment.h"
#include "domain/by_hand.h"
#include "domain/text.h"
#include "session/opened.h"
#include "session/plan_now.h"
#include "session/vault.h"
#include "store/blob.h"
#include "store/keep.h"
#include "tasting/table.h"

namespace oddglass::session {
namespace {

using store::bound;
using store::Log;

std::string required(const char* field, const std::string& words, std::size_t limit) {
  const std::string clean = cleaned(words);
  if (clean.empty()) throw Problem(Trouble::empty, field);
  if (lettersIn(clean) > limit) throw Problem(Trouble::tooLong, field, {{"limit", std::to_string(limit)}});
  return clean;
}

int countOf(SQLite::Database& db, const char* sql, std::int64_t session) {
  auto row = bound(db, sql, session);
  row.executeStep();
  return row.getColumn(0).getInt();
}

void freeBottles(SQLite::Database& db, std::int64_t session, Millis at) {
  store::run(db, R"sql(
    INSERT INTO stock_move (lot_id, session_id, at, kind, bottles)
    SELECT lot_id, session_id, ?2, 'freed', -sum(bottles) FROM stock_move WHERE session_id = ?1 AND kind IN ('held', 'freed')
     GROUP BY lot_id HAVING sum(bottles) < 0)sql", session, at);
}

// Where hands hid the key, every flight that counts must have been read off: nothing else says what stood in it.
void requireReadOff(SQLite::Database& db, std::int64_t session, const Plan& plan) {
  if (isDrawn(plan.routine) || store::stateOf(db, session) != State::closed) return;
  auto row = bound(db, R"sql(
    SELECT h.place, h.round FROM hand_in h WHERE h.session_id = ?1
       AND NOT EXISTS (SELECT 1 FROM voided v WHERE v.session_id = ?1 AND v.place = h.place AND v.round = h.round)
       AND NOT EXISTS (SELECT 1 FROM log g WHERE g.session_id = ?1 AND g.kind = 'found' AND json_extract(g.body, '$.place') = h.place
                          AND json_extract(g.body, '$.round') = h.round)
     ORDER BY h.round, h.place)sql", session);
  if (row.executeStep())
    throw Problem(Trouble::notReadOff, "session", {{"place", std::to_string(row.getColumn(0).getInt())}, {"round", std::to_string(row.getColumn(1).getInt())}});
}

// What hands poured for the flights of places that somebody took; a whole bottle is open once it is poured from.
int pouredByHands(SQLite::Database& db, std::int64_t session, const Plan& plan, const PlannedLot& lot) {
  const int taken = countOf(db, "SELECT count(*) FROM place_taken WHERE session_id = ?", session);
  if (plan.routine == Routine::bottles) return taken > 0 ? lot.bottleMl / plan.cupMl : 0;
  const auto hands = pouredByHand(plan.routine, plan.method, plan.expected);
  if (!hands || lot.slot.value > 2) return 0;
  const bool isMarked = plan.marked == lot.slot;
  return taken * plan.rounds * (hands->cups[static_cast<std::size_t>(lot.slot.value) - 1] + (isMarked ? 1 : 0));
}

// The cups that stood on the table: those of places that somebody took, and the spare ones that were used.
void bookPoured(SQLite::Database& db, std::int64_t session, const Plan& plan, Millis at) {
  for (const PlannedLot& lot : plan.lots) {
    auto cups = bound(db, R"sql(
      SELECT count(*) FROM cup c JOIN key_line k ON k.session_id = c.session_id AND k.code = c.code
       WHERE c.session_id = ?1 AND coalesce(k.poured_slot, k.slot) = ?2
         AND c.place IN (SELECT place FROM place_taken WHERE session_id = ?1)
         AND (c.spare = 0 OR c.code IN (SELECT by_code FROM spilled WHERE session_id = ?1)))sql", session, lot.slot.value);
    cups.executeStep();
    int count = isDrawn(plan.routine) ? cups.getColumn(0).getInt() : lot.role == LotRole::warmUp ? 0 : pouredByHands(db, session, plan, lot);
    // The warm-up cup has no code: one for everybody who sat, on each evening.
    if (lot.role == LotRole::warmUp) count += countOf(db, "SELECT count(*) FROM place_taken WHERE session_id = ?", session) * plan.evenings;
    if (count > 0)
      store::run(db, "INSERT INTO stock_move (lot_id, session_id, at, kind, bottles) SELECT id, ?, ?, 'poured', ? FROM lot WHERE uid = ?", session, at,
                 -((count * plan.cupMl + lot.bottleMl - 1) / lot.bottleMl), lot.lot.text);
  }
}

// Ends a session early, with a reason kept beside the log.
Logged endEarly(SQLite::Database& db, std::int64_t session, Millis at, Event event, const canon::Salt& salt, const std::string& reason) {
  if (store::stateOf(db, session) == State::draft) throw Problem(Trouble::notSealed, "session");
  const Logged entry = Log::append(db, session, at, event, {{"digest", tasting::digestOf(salt, reason)}});
  tasting::keepRemark(db, session, entry, "reason", salt, reason);
  forgetLoose(db, session);
  freeBottles(db, session, at);
  return entry;
}

}  // namespace

void forgetLoose(SQLite::Database& db, std::int64_t session) {
  store::run(db, R"sql(
    DELETE FROM place_person WHERE session_id = ?1
       AND place IN (SELECT place FROM place_taken WHERE session_id = ?1 AND shown_as = 'loose'))sql", session);
}

bool writeOpened(SQLite::Database& db, std::int64_t session, const PlanNow& now, const blinding::KeyContents& key, const Logged& entry,
                 const std::map<Code, std::optional<Slot>>& really, const std::vector<FoundFlight>& readOff) {
  const canon::Digest planHash = canon::sha256({canon::bytesOf(now.text)});
  const bool holds = blinding::commitmentHolds(now.commitment, key, planHash);
  auto opened = bound(db, "INSERT INTO key_opened (session_id, seq, generator, matches, seed, salt) VALUES (?, ?, ?, ?, ?, ?)", session, entry.seq().value,
                      key.generator, holds ? 1 : 0);
  store::bindBlob(opened, 5, key.seed);
  store::bindBlob(opened, 6, key.salt);
  opened.exec();
  SQLite::Statement line(db, "INSERT INTO key_line VALUES (?, ?, ?, ?)");
  for (const auto& [code, slot] : key.lines) {
    line.bind(1, session);
    line.bind(2, code.value);
    line.bind(3, slot.value);
    const auto found = really.find(code);
    if (found == really.end())
      line.bind(4, slot.value);
    else if (found->second)
      line.bind(4, found->second->value);
    else
      line.bind(4);
    line.exec();
    line.reset();
  }
  for (const FoundFlight& flight : readOff)
    for (const auto& [code, slot] : linesOf(now.plan, flight)) {
      if (!slot) continue;
      line.bind(1, session);
      line.bind(2, code.value);
      line.bind(3, slot->value);
      line.bind(4, slot->value);
      line.exec();
      line.reset();
    }
  return holds;
}

Closed close(store::Store& store, Clock& clock, const SessionId& session) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    Closed closed;
    closed.answered = countOf(db, "SELECT count(*) FROM hand_in WHERE session_id = ?", id);
    closed.voided = countOf(db, "SELECT count(*) FROM voided v JOIN place_taken p USING (session_id, place) WHERE v.session_id = ?", id);
    closed.missing = countOf(db, R"sql(
      SELECT count(*) FROM (SELECT DISTINCT c.place, c.round FROM cup c JOIN place_taken p USING (session_id, place) WHERE c.session_id = ?1
                       AND c.round <= coalesce((SELECT max(json_extract(body, '$.round')) FROM log WHERE session_id = ?1 AND kind = 'judged'
                                                   AND json_extract(body, '$.go_on') = 0), c.round)) f
       WHERE NOT EXISTS (SELECT 1 FROM hand_in h WHERE h.session_id = ?1 AND h.place = f.place AND h.round = f.round)
         AND NOT EXISTS (SELECT 1 FROM voided v WHERE v.session_id = ?1 AND v.place = f.place AND v.round = f.round))sql", id);
    Log::append(db, id, clock.now(), Event::closed, {{"missing", closed.missing}});
    forgetLoose(db, id);
    return closed;
  });
}

Revealed reveal(store::Store& store, Clock& clock, const SessionId& session) {
  Revealed result;
  result.commitmentHolds = store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    const PlanNow now = planNow(db, id);
    requireReadOff(db, id, now.plan);
    const Millis at = clock.now();
    const Logged entry = Log::append(db, id, at, Event::revealed, canon::Json::object());
    const bool holds = openKey(db, id, now, entry);
    freeBottles(db, id, at);
    bookPoured(db, id, now.plan, at);
    return holds;
  });
  try {
    result.backup = store::keepCopy(store, clock, store::BackupReason::afterReveal);
  } catch (const Problem& problem) {
    result.backupProblem = problem;
  }
  return result;
}

bool openKey(SQLite::Database& db, std::int64_t session, const PlanNow& now, const Logged& entry) {
  const blinding::OpenedKey key = vault::open(db, session, entry);
  std::map<Code, std::optional<Slot>> really;
  for (const vault::Poured& each : vault::poured(db, session, entry)) really[each.code] = each.slot;
  std::vector<FoundFlight> found;
  for (vault::Found& each : vault::found(db, session, entry)) found.push_back(std::move(each.flight));
  return writeOpened(db, session, now, key.contents(), entry, really, found);
}

void breakSeal(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::string& reason, bool sure) {
  if (!sure) throw Problem(Trouble::askTwice, "yes_break_the_seal");
  const std::string clean = required("reason", reason, 4000);
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    const Logged entry = endEarly(db, id, clock.now(), Event::broken, chance.bytes<16>(), clean);
    openKey(db, id, planNow(db, id), entry);
  });
}

void abandon(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::string& reason, bool sure) {
  if (!sure) throw Problem(Trouble::askTwice, "yes_abandon");
  const std::string clean = required("reason", reason, 4000);
  store::write(store, [&](SQLite::Database& db) {
    endEarly(db, store::sessionRow(db, session), clock.now(), Event::abandoned, chance.bytes<16>(), clean);
  });
}

void decide(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::string& text) {
  const std::string clean = required("text", text, 500);
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    const canon::Salt salt = chance.bytes<16>();
    const Logged entry = Log::append(db, id, clock.now(), Event::decided, {{"digest", tasting::digestOf(salt, clean)}});
    tasting::keepRemark(db, id, entry, "decision", salt, clean);
  });
}

}  // namespace oddglass::session
