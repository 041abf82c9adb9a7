#pragma once

#include "canon/canonical.h"
#include "canon/digest.h"
#include "domain/logged.h"
#include "domain/numbers.h"
#include "domain/state.h"
#include "domain/uid.h"
#include "store/step.h"

#include <string>
#include <vector>

namespace oddglass::store {

/// One entry of a session's chain.
struct LogEntry {
  Seq seq;
  Millis at = 0;
  Event event = Event::sealed;
  State after = State::draft;
  std::string body;      ///< canonical JSON
  canon::Digest hash{};
};

/// The hash chain of a session. An entry holds no names and no words; free text only as a salted digest.
class Log {
 public:
  /// Adds an entry inside the running transaction. Throws Problem wrongState when `event` is not allowed now.
  static Logged append(SQLite::Database& db, std::int64_t session, Millis at, Event event, const canon::Json& body);

  /// Puts an entry of another store's log in as it is. The chain and the steps are checked as for a new one; the hash must be right: Problem doesNotVerify.
  static Logged putAgain(SQLite::Database& db, std::int64_t session, const LogEntry& entry);

  /// The entry that opened a session's key for everybody: revealed or broken. Problem stillSealed when there is none.
  static Logged opening(SQLite::Database& db, std::int64_t session);

  static std::vector<LogEntry> entries(SQLite::Database& db, std::int64_t session);

  /// The hash an entry must have after `before`.
  static canon::Digest hashOf(const canon::Digest& before, const SessionId& session, const LogEntry& entry);
};

/// The row of a session; throws Problem unknown. And its state now.
std::int64_t sessionRow(SQLite::Database& db, const SessionId& id);
State stateOf(SQLite::Database& db, std::int64_t session);

}  // namespace oddglass::store
