#pragma once

#include "blinding/key.h"
#include "domain/chance.h"
#include "domain/logged.h"
#include "session/found.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <map>
#include <optional>
#include <set>
#include <vector>

namespace oddglass::session::vault {

/// The only file that touches the key's tables. Everything that reads takes the log entry that makes the reading known.

void put(SQLite::Database& db, std::int64_t session, blinding::SealedKey&& key);
blinding::OpenedKey open(SQLite::Database& db, std::int64_t session, const Logged& entry);

/// What the pourer says really went into a cup, closed up like the key.
void putPoured(SQLite::Database& db, std::int64_t session, const Logged& entry, const std::array<std::uint8_t, 16>& salt, Code code,
               std::optional<Slot> slot, Chance& chance);

struct Poured {
  Seq seq;
  std::array<std::uint8_t, 16> salt{};
  Code code;
  std::optional<Slot> slot;
};
std::vector<Poured> poured(SQLite::Database& db, std::int64_t session, const Logged& entry);

/// What was read off of a flight, closed up like the key.
struct Found {
  Seq seq;
  std::array<std::uint8_t, 16> salt{};
  FoundFlight flight;
};
void putFound(SQLite::Database& db, std::int64_t session, const Found& found, Chance& chance);
std::vector<Found> found(SQLite::Database& db, std::int64_t session, const Logged& entry);

void tick(SQLite::Database& db, std::int64_t session, Millis at, Code code, bool isPoured);
std::set<Code> ticks(SQLite::Database& db, std::int64_t session, const Logged& entry);

/// A key that comes from outside, already open; only for a session whose log says so.
void putOpened(SQLite::Database& db, std::int64_t session, const blinding::KeyContents& key, const std::vector<Poured>& poured, const std::vector<Found>& found, Chance& chance);

}  // namespace oddglass::session::vault
