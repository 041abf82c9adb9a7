#pragma once

#include "canon/digest.h"
#include "domain/plan.h"
#include "store/log.h"

#include <set>
#include <string>

namespace oddglass::tasting {

/// What the steps of the blind side ask the store again and again; used inside their transactions.

/// Throws Problem placeEmpty or placeLeft (and noSuchPlace) unless somebody sits at `place` and has not stopped.
void requireSeated(SQLite::Database& db, std::int64_t session, Place place);

/// Throws Problem noSuchPlace / noSuchRound.
void requirePlace(SQLite::Database& db, std::int64_t session, Place place);
void requireRound(SQLite::Database& db, std::int64_t session, Round round);

/// What of the sealed plan the blind side goes by. No lot.
struct Asked {
  Method method = Method::triangle;
  std::string attribute;       ///< "more what"
  bool isSequential = false;   ///< looked at after whole rounds
  bool hasMarked = false;      ///< the first cup of each flight is marked
  int pauseSeconds = 0;        ///< wait between two cups of a score sheet
  std::string cleanser;        ///< the same for everybody; may be empty
};
Asked askedIn(SQLite::Database& db, std::int64_t session);

/// The questions of the sheet, in its order. No limit and no aim: these are not for tasters.
std::vector<SheetItem> itemsIn(SQLite::Database& db, std::int64_t session);

/// How often a sequential plan was looked at.
int looksIn(SQLite::Database& db, std::int64_t session);

/// The last round that may be tasted now: all of them, or in a sequential plan the one after those that were looked at; 0 after it said stop.
int lastOpenRound(SQLite::Database& db, std::int64_t session);

/// The lowest round of a place that may be tasted and is neither locked nor set aside; 0 when there is none.
int nextRound(SQLite::Database& db, std::int64_t session, Place place);

/// True when the cups of a flight were confirmed, and since then none was replaced, the mats were not swapped and nobody else sat down.
bool hasBegun(SQLite::Database& db, std::int64_t session, Place place, Round round);

/// Throws Problem wrongState (tableClosed after the close) unless the table takes people and answers.
void requireOpenTable(SQLite::Database& db, std::int64_t session);

/// Adds "the table is open" when it is not yet.
void openTable(SQLite::Database& db, std::int64_t session, Millis at);

/// The code that stands for `code` now, after spills.
Code currentCode(SQLite::Database& db, std::int64_t session, Code code);

/// The codes of a flight as they stand now, by position.
std::vector<std::pair<Position, Code>> currentCodes(SQLite::Database& db, std::int64_t session, Place place, Round round);

/// Keeps words beside a log entry and gives the digest that the entry holds: sha256(salt, text).
std::string digestOf(const canon::Salt& salt, const std::string& text);

/// Sets a flight aside inside the running transaction. Problem flightVoid when it is already.
void setAsideWithin(SQLite::Database& db, std::int64_t session, Millis at, const canon::Salt& salt, Place place, Round round, VoidReason reason,
                    const std::string& words);

/// Keeps the words of a log entry beside it.
void keepRemark(SQLite::Database& db, std::int64_t session, const Logged& entry, const char* about, const canon::Salt& salt, const std::string& words);

}  // namespace oddglass::tasting
