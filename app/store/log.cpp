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
  canon::Digest prev{};
  int seq = 1;
  auto last = bound(db, "SELECT seq, hash FROM log WHERE session_id = ? ORDER BY seq DESC LIMIT 1", session);
  if (last.executeStep()) {
    seq = last.getColumn(0).getInt() + 1;
    prev = blobOf<32>(last.getColumn(1));
  }
  const LogEntry entry{Seq{seq}, at, event, *after, canon::canonical(body), {}};
  const canon::Digest hash = hashOf(prev, SessionId{uidOf(db, session)}, entry);
  auto insert = bound(db, "INSERT INTO log VALUES (?, ?, ?, ?, ?, ?, ?, ?)", session, seq, at, std::string(nameOf(event)),
                      std::string(nameOf(*after)), entry.body);
  bindBlob(insert, 7, prev);
  bindBlob(insert, 8, hash);
  insert.exec();
  return Logged(entry.seq, event);
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
