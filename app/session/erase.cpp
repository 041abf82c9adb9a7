#include "session/erase.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "store/keep.h"
#include "store/log.h"
#include "store/plan_json.h"
#include "tasting/table.h"

#include <algorithm>

namespace oddglass::session {
namespace {

using store::bound;

struct Sat {
  std::int64_t session;
  int place;
};

std::vector<Sat> placesOf(SQLite::Database& db, std::int64_t taster) {
  std::vector<Sat> all;
  auto rows = bound(db, "SELECT session_id, place FROM place_person WHERE taster_id = ? ORDER BY session_id", taster);
  while (rows.executeStep()) all.push_back({rows.getColumn(0).getInt64(), rows.getColumn(1).getInt()});
  return all;
}

void logErased(SQLite::Database& db, std::int64_t session, Millis at, int place, ErasureKind kind) {
  const std::string what(nameOf(kind));
  const Logged entry = store::Log::append(db, session, at, Event::erased, {{"place", place}, {"what", what}});
  store::run(db, "INSERT OR IGNORE INTO erasure VALUES (?, ?, ?, ?)", session, place, what, entry.seq().value);
}

// Whoever is forgotten while the table is open has left it: their place takes no more answers and keeps nobody waiting.
void leaveTable(SQLite::Database& db, const Sat& sat, Millis at) {
  const State state = store::stateOf(db, sat.session);
  if (state != State::sealed && state != State::tasting) return;
  auto left = bound(db, "SELECT 1 FROM place_left WHERE session_id = ? AND place = ?", sat.session, sat.place);
  if (left.executeStep()) return;
  const Logged entry = store::Log::append(db, sat.session, at, Event::placeLeft, {{"place", sat.place}});
  store::run(db, "INSERT INTO place_left VALUES (?, ?, ?)", sat.session, sat.place, entry.seq().value);
}

void eraseAtPlace(SQLite::Database& db, const Sat& sat, Millis at, ErasureKind kind) {
  leaveTable(db, sat, at);
  logErased(db, sat.session, at, sat.place, kind);
  store::run(db, "DELETE FROM answer_words WHERE hand_in_id IN (SELECT id FROM hand_in WHERE session_id = ? AND place = ?)", sat.session, sat.place);
  // What stood on their paper in place of a code was theirs too.
  store::run(db, "DELETE FROM remark WHERE session_id = ?1 AND seq IN (SELECT seq FROM voided WHERE session_id = ?1 AND place = ?2 AND reason = 'misread')", sat.session, sat.place);
  if (kind == ErasureKind::everything) {
    // Rows below first: the guards ask the hand-in for its place.
    store::run(db, "DELETE FROM answer WHERE hand_in_id IN (SELECT id FROM hand_in WHERE session_id = ? AND place = ?)", sat.session, sat.place);
    store::run(db, "DELETE FROM hand_in WHERE session_id = ? AND place = ?", sat.session, sat.place);
    store::run(db, "DELETE FROM open_answer WHERE session_id = ? AND place = ?", sat.session, sat.place);
  }
  store::run(db, "DELETE FROM place_person WHERE session_id = ? AND place = ?", sat.session, sat.place);
}

// The brewer's own words are promises, remarks and decisions.
std::vector<std::int64_t> eraseHostWords(SQLite::Database& db, Millis at, ErasureKind kind) {
  std::vector<std::int64_t> sessions;
  auto rows = bound(db, "SELECT session_id FROM remark UNION SELECT session_id FROM promise");
  while (rows.executeStep()) sessions.push_back(rows.getColumn(0).getInt64());
  for (std::int64_t session : sessions) {
    logErased(db, session, at, 0, kind);
    store::run(db, "DELETE FROM remark WHERE session_id = ?", session);
    store::run(db, "DELETE FROM promise WHERE session_id = ?", session);
  }
  return sessions;
}

// A plan that is still being made forgets the person too, and with the brewer what the brewer wrote in it.
void leaveDrafts(SQLite::Database& db, const TasterId& taster, bool isBrewer) {
  std::vector<std::pair<std::int64_t, std::string>> drafts;
  auto rows = bound(db, "SELECT session_id, body FROM session_draft");
  while (rows.executeStep()) drafts.emplace_back(rows.getColumn(0).getInt64(), rows.getColumn(1).getString());
  for (const auto& [session, body] : drafts) {
    Draft draft = store::draftFrom(canon::Json::parse(body));
    std::erase(draft.tasters, taster);
    if (draft.pourer == taster) draft.pourer.reset();
    if (isBrewer) {
      draft.promises.clear();
      draft.expectationPc.reset();
    }
    store::run(db, "UPDATE session_draft SET body = ? WHERE session_id = ?", canon::canonical(store::draftJson(draft)), session);
  }
}

// Deleting is not erasing: pages are overwritten (secure_delete), the log of writes emptied and the file written anew. False while somebody
// else reads the file, or when it cannot be done now: the rows are gone, their bytes are not yet.
bool scrub(store::Store& store) {
  try {
    SQLite::Database& db = store.db();
    db.exec("VACUUM");
    return db.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)").getInt() == 0;
  } catch (const SQLite::Exception&) {
    return false;
  }
}

}  // namespace

std::vector<std::filesystem::path> copiesHolding(store::Store& store, Clock& clock, Chance& chance, const TasterId& taster) {
  std::vector<std::filesystem::path> holding;
  for (const store::Backup& copy : store::backups(store)) {
    if (!copy.isThere) {
      // On a disk that is not there now a copy may still lie; where the folder is there and the copy is not, it was taken away.
      std::error_code ignored;
      if (!std::filesystem::exists(copy.file.parent_path(), ignored)) holding.push_back(copy.file);
      continue;
    }
    try {
      const auto other = store::Store::open(copy.file, store::Access::read, clock, chance);
      const bool holds = store::read(*other, [&](SQLite::Database& db) {
        auto row = bound(db, "SELECT 1 FROM taster WHERE uid = ?", taster.text);
        return row.executeStep();
      });
      if (holds) holding.push_back(copy.file);
    } catch (const Problem&) {
      holding.push_back(copy.file);  // it cannot be read, so it may hold the person
    }
  }
  return holding;
}

Erased erase(store::Store& store, Clock& clock, Chance& chance, const TasterId& taster, ErasureKind kind, bool sure) {
  if (!sure) throw Problem(Trouble::askTwice, "yes_cannot_be_undone");
  Erased erased;
  erased.sessions = store::write(store, [&](SQLite::Database& db) {
    auto row = bound(db, "SELECT id, is_brewer FROM taster WHERE uid = ?", taster.text);
    if (!row.executeStep()) throw Problem(Trouble::unknown, "taster", {{"what", "taster"}, {"text", taster.text}});
    const auto id = row.getColumn(0).getInt64();
    const bool isBrewer = row.getColumn(1).getInt() != 0;
    const Millis at = clock.now();
    std::vector<std::int64_t> sessions;
    for (const Sat& sat : placesOf(db, id)) {
      eraseAtPlace(db, sat, at, kind);
      sessions.push_back(sat.session);
    }
    if (isBrewer)
      for (std::int64_t session : eraseHostWords(db, at, kind)) sessions.push_back(session);
    leaveDrafts(db, taster, isBrewer);
    store::run(db, "DELETE FROM taster WHERE id = ?", id);
    std::ranges::sort(sessions);
    return static_cast<int>(std::ranges::unique(sessions).begin() - sessions.begin());
  });
  erased.bytesGone = scrub(store);
  erased.copies = copiesHolding(store, clock, chance, taster);
  return erased;
}

bool takeBack(store::Store& store, Clock& clock, const SessionId& session, Place place, bool sure) {
  if (!sure) throw Problem(Trouble::askTwice, "yes_cannot_be_undone");
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    const State state = store::stateOf(db, id);
    if (state != State::draft && state != State::sealed && state != State::tasting) throw Problem(Trouble::tooLateToTakeBack, "session");
    tasting::requireOpenTable(db, id);
    tasting::requirePlace(db, id, place);
    auto taken = bound(db, "SELECT 1 FROM place_taken WHERE session_id = ? AND place = ?", id, place.value);
    if (!taken.executeStep()) throw Problem(Trouble::placeEmpty, "place", {{"place", std::to_string(place.value)}});
    auto erased = bound(db, "SELECT 1 FROM erasure WHERE session_id = ? AND place = ? AND what = 'everything'", id, place.value);
    if (erased.executeStep()) throw Problem(Trouble::placeLeft, "place", {{"place", std::to_string(place.value)}});
    eraseAtPlace(db, {id, place.value}, clock.now(), ErasureKind::everything);
  });
  return scrub(store);
}

}  // namespace oddglass::session
