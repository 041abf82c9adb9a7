#include "session/record.h"

#include "domain/by_hand.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/plan_now.h"
#include "session/vault.h"
#include "store/blob.h"

namespace oddglass::session {
namespace {

using store::bound;

std::vector<RecordedPromise> promises(SQLite::Database& db, std::int64_t session) {
  std::vector<RecordedPromise> all;
  auto rows = bound(db, "SELECT outcome, salt, text FROM promise WHERE session_id = ? ORDER BY outcome", session);
  while (rows.executeStep())
    all.push_back({named<Outcome>(rows.getColumn(0).getString()).value_or(Outcome::shown), store::blobOf<16>(rows.getColumn(1)), rows.getColumn(2).getString()});
  return all;
}

std::vector<RecordedRemark> remarks(SQLite::Database& db, std::int64_t session) {
  std::vector<RecordedRemark> all;
  auto rows = bound(db, "SELECT seq, about, salt, text FROM remark WHERE session_id = ? ORDER BY seq", session);
  while (rows.executeStep())
    all.push_back({{rows.getColumn(0).getInt()}, rows.getColumn(1).getString(), store::blobOf<16>(rows.getColumn(2)), rows.getColumn(3).getString()});
  return all;
}

std::vector<RecordedHandIn> handIns(SQLite::Database& db, std::int64_t session) {
  std::vector<RecordedHandIn> all;
  auto rows = bound(db, "SELECT id, seq, place, round, at, via, client_id, salt FROM hand_in WHERE session_id = ? ORDER BY seq", session);
  while (rows.executeStep()) {
    RecordedHandIn in{{rows.getColumn(1).getInt()}, {rows.getColumn(2).getInt()}, {rows.getColumn(3).getInt()}, rows.getColumn(4).getInt64(),
                      rows.getColumn(5).getString(), store::blobOf<16>(rows.getColumn(6)), store::blobOf<16>(rows.getColumn(7)), {}, {}};
    const auto id = rows.getColumn(0).getInt64();
    auto replies = bound(db, R"sql(
      SELECT a.item, a.code, a.value, a.text_digest FROM answer a
        LEFT JOIN cup c ON c.session_id = ?2 AND c.code = a.code WHERE a.hand_in_id = ?1 ORDER BY a.item, c.position, a.code)sql", id, session);
    while (replies.executeStep()) {
      RecordedReply reply{{replies.getColumn(0).getInt()}, {replies.getColumn(1).getInt()}, std::nullopt, std::nullopt};
      if (replies.getColumn(2).isNull())
        reply.textDigest = store::blobOf<32>(replies.getColumn(3));
      else
        reply.value = replies.getColumn(2).getInt();
      in.replies.push_back(reply);
    }
    auto words = bound(db, "SELECT item, code, salt, text FROM answer_words WHERE hand_in_id = ? ORDER BY item, code", id);
    while (words.executeStep())
      in.words.push_back({{words.getColumn(0).getInt()}, {words.getColumn(1).getInt()}, store::blobOf<16>(words.getColumn(2)), words.getColumn(3).getString()});
    all.push_back(std::move(in));
  }
  return all;
}

std::vector<RecordedPerson> people(SQLite::Database& db, std::int64_t session) {
  std::vector<RecordedPerson> all;
  auto rows = bound(db, R"sql(
    SELECT p.place, t.uid, t.name, t.nickname FROM place_person p JOIN taster t ON t.id = p.taster_id
      JOIN place_taken k ON k.session_id = p.session_id AND k.place = p.place
     WHERE p.session_id = ? AND k.shown_as <> 'loose' ORDER BY p.place)sql", session);
  while (rows.executeStep())
    all.push_back({{rows.getColumn(0).getInt()}, {rows.getColumn(1).getString()}, rows.getColumn(2).getString(), rows.getColumn(3).getString()});
  return all;
}

std::vector<RecordedOpen> openAnswers(SQLite::Database& db, std::int64_t session) {
  std::vector<RecordedOpen> all;
  auto rows = bound(db, "SELECT place, slot, item, value, at FROM open_answer WHERE session_id = ? ORDER BY place, slot, item", session);
  while (rows.executeStep())
    all.push_back({{rows.getColumn(0).getInt()}, {rows.getColumn(1).getInt()}, {rows.getColumn(2).getInt()}, rows.getColumn(3).getInt(), rows.getColumn(4).getInt64()});
  return all;
}

// Read from the opened rows, which only exist after the reveal or the breaking of the seal; what was poured lies closed up and needs no opening
// again here because the log has that entry.
std::optional<RecordedKey> openedKey(SQLite::Database& db, std::int64_t session, const Plan& plan) {
  auto row = bound(db, "SELECT seed, salt, generator FROM key_opened WHERE session_id = ?", session);
  if (!row.executeStep()) return std::nullopt;
  RecordedKey key{store::blobOf<32>(row.getColumn(0)), store::blobOf<32>(row.getColumn(1)), row.getColumn(2).getString(), {}, {}, {}};
  auto lines = bound(db, "SELECT code, slot FROM key_line WHERE session_id = ? ORDER BY code", session);
  // What hands hid was never drawn: its rows were read off and stand among the found ones.
  while (isDrawn(plan.routine) && lines.executeStep()) key.lines.emplace_back(Code{lines.getColumn(0).getInt()}, Slot{lines.getColumn(1).getInt()});
  for (const vault::Poured& each : vault::poured(db, session, store::Log::opening(db, session)))
    key.poured.push_back({each.seq, each.salt, each.code, each.slot});
  for (vault::Found& each : vault::found(db, session, store::Log::opening(db, session))) key.found.push_back({each.seq, each.salt, std::move(each.flight)});
  return key;
}

}  // namespace

SessionRecord record(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    PlanNow now = planNow(db, id);
    SessionRecord record;
    record.id = session;
    record.title = now.title;
    record.guestTitle = now.guestTitle;
    record.state = store::stateOf(db, id);
    record.planText = now.text;
    record.plan = std::move(now.plan);
    record.commitment = now.commitment;
    record.sealMark = now.sealMark;
    record.log = store::Log::entries(db, id);
    record.promises = promises(db, id);
    auto head = bound(db, "SELECT came_from, created_at FROM session WHERE id = ?", id);
    head.executeStep();
    record.cameFrom = named<CameFrom>(head.getColumn(0).getString()).value_or(CameFrom::here);
    record.createdAt = head.getColumn(1).getInt64();
    if (record.state != State::revealed && record.state != State::broken) return record;
    record.remarks = remarks(db, id);
    record.handIns = handIns(db, id);
    record.people = people(db, id);
    record.key = openedKey(db, id, record.plan);
    record.open = openAnswers(db, id);
    return record;
  });
}

}  // namespace oddglass::session
