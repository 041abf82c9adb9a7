#include "store/log.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "store/blob.h"

namespace oddglass::store {
namespace {

std::string uidOf(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, "SELECT uid FROM session WHERE id = ?", session);
  row.executeStep();
  return row.getColumn(0).getString();
}

struct Last {
  int seq = 0;
  canon::Digest hash{};
};

Last lastOf(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, "SELECT seq, hash FROM log WHERE session_id = ? ORDER BY seq DESC LIMIT 1", session);
  if (!row.executeStep()) return {};
  return {row.getColumn(0).getInt(), blobOf<32>(row.getColumn(1))};
}

void insert(SQLite::Database& db, std::int64_t session, const LogEntry& entry, const canon::Digest& prev) {
  auto row = bound(db, "INSERT INTO log VALUES (?, ?, ?, ?, ?, ?, ?, ?)", session, entry.seq.value, entry.at, std::string(nameOf(entry.event)),
                   std::string(nameOf(entry.after)), entry.body);
  bindBlob(row, 7, prev);
  bindBlob(row, 8, entry.hash);
  row.exec();
}

}  // namespace

canon::Digest Log::hashOf(const canon::Digest& before, const SessionId& session, const LogEntry& entry) {
  const canon::Json text{{"at", entry.at},
                         {"body", canon::Json::parse(entry.body)},
                         {"kind", nameOf(entry.event)},
                         {"seq", entry.seq.value},
                         {"session", session.text},
                         {"state", nameOf(entry.after)}};
  return canon::sha256({before, canon::bytesOf(canon::canonical(text))});
}

Logged Log::append(SQLite::Database& db, std::int64_t session, Millis at, Event event, const canon::Json& body) {
  const State before = stateOf(db, session);
  const auto after = stateAfter(before, event);
  if (!after) throw Problem(Trouble::wrongState, "session", {{"state", std::string(nameOf(before))}, {"event", std::string(nameOf(event))}});
  const Last last = lastOf(db, session);
  LogEntry entry{Seq{last.seq + 1}, at, event, *after, canon::canonical(body), {}};
  entry.hash = hashOf(last.hash, SessionId{uidOf(db, session)}, entry);
  insert(db, session, entry, last.hash);
  return Logged(entry.seq, event);
}

Logged Log::putAgain(SQLite::Database& db, std::int64_t session, const LogEntry& entry) {
  const Last last = lastOf(db, session);
  if (entry.seq.value != last.seq + 1 || stateAfter(stateOf(db, session), entry.event) != entry.after ||
      hashOf(last.hash, SessionId{uidOf(db, session)}, entry) != entry.hash)
    throw Problem(Trouble::doesNotVerify, "log", {{"text", "entry " + std::to_string(entry.seq.value)}});
  insert(db, session, entry, last.hash);
  return Logged(entry.seq, entry.event);
}

Logged Log::opening(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, "SELECT seq, kind FROM log WHERE session_id = ? AND kind IN ('revealed', 'broken')", session);
  if (!row.executeStep()) throw Problem(Trouble::stillSealed, "session");
  return Logged({row.getColumn(0).getInt()}, row.getColumn(1).getString() == "broken" ? Event::broken : Event::revealed);
}

std::vector<LogEntry> Log::entries(SQLite::Database& db, std::int64_t session) {
  std::vector<LogEntry> all;
  auto rows = bound(db, "SELECT seq, at, kind, state_after, body, hash FROM log WHERE session_id = ? ORDER BY seq", session);
  while (rows.executeStep()) {
    const auto event = named<Event>(rows.getColumn(2).getString());
    const auto after = named<State>(rows.getColumn(3).getString());
    if (!event || !after) throw Problem(Trouble::storeDamaged, "log");
    all.push_back({Seq{rows.getColumn(0).getInt()}, rows.getColumn(1).getInt64(), *event, *after, rows.getColumn(4).getString(),
                   blobOf<32>(rows.getColumn(5))});
  }
  return all;
}

std::int64_t sessionRow(SQLite::Database& db, const SessionId& id) {
  auto row = bound(db, "SELECT id FROM session WHERE uid = ?", id.text);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "session", {{"what", "session"}, {"text", id.text}});
  return row.getColumn(0).getInt64();
}

State stateOf(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, "SELECT state FROM session_state WHERE session_id = ?", session);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "session");
  const auto state = named<State>(row.getColumn(0).getString());
  if (!state) throw Problem(Trouble::storeDamaged, "log");
  return *state;
}

}  // namespace oddglass::store
