#include "tasting/mishaps.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "tasting/table.h"

#include <algorithm>

namespace oddglass::tasting {
namespace {

using store::bound;
using store::Log;

std::string wordsAllowed(const std::string& words) {
  const std::string clean = cleaned(words);
  if (lettersIn(clean) > 4000) throw Problem(Trouble::tooLong, "words", {{"limit", "4000"}});
  return clean;
}

}  // namespace

void said(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::set<Place>& heardBy, const std::string& words) {
  const std::string clean = wordsAllowed(words);
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    canon::Json heard = canon::Json::array();
    for (Place place : heardBy) {
      requirePlace(db, id, place);
      heard.push_back(place.value);
    }
    const canon::Salt salt = chance.bytes<16>();
    const Logged entry = Log::append(db, id, clock.now(), Event::said,
                                     {{"digest", clean.empty() ? canon::Json(nullptr) : canon::Json(digestOf(salt, clean))}, {"heard", heard}});
    for (Place place : heardBy) store::run(db, "INSERT INTO said_aloud VALUES (?, ?, ?)", id, entry.seq().value, place.value);
    if (!clean.empty()) keepRemark(db, id, entry, "said", salt, clean);
  });
}

Code spilled(store::Store& store, Clock& clock, const SessionId& session, Code code) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    auto cup = bound(db, "SELECT place, round, position, spare FROM cup WHERE session_id = ? AND code = ?", id, code.value);
    if (!cup.executeStep()) throw Problem(Trouble::codeNotHere, "code", {{"code", std::to_string(code.value)}});
    const int place = cup.getColumn(0).getInt(), round = cup.getColumn(1).getInt(), position = cup.getColumn(2).getInt(), spare = cup.getColumn(3).getInt();
    auto locked = bound(db, "SELECT at FROM hand_in WHERE session_id = ? AND place = ? AND round = ?", id, place, round);
    if (locked.executeStep())
      throw Problem(Trouble::flightLocked, "code", {{"at", std::to_string(locked.getColumn(0).getInt64())}, {"place", std::to_string(place)}, {"round", std::to_string(round)}});
    auto gone = bound(db, "SELECT 1 FROM spilled WHERE session_id = ? AND code = ?", id, code.value);
    if (gone.executeStep()) throw Problem(Trouble::alreadySpilled, "code", {{"code", std::to_string(code.value)}});
    // A spare code that is not in use yet is no cup on the table.
    if (spare > 0) {
      auto inUse = bound(db, "SELECT 1 FROM spilled WHERE session_id = ? AND by_code = ?", id, code.value);
      if (!inUse.executeStep()) throw Problem(Trouble::codeNotHere, "code", {{"code", std::to_string(code.value)}});
    }
    auto next = bound(db, "SELECT code FROM cup WHERE session_id = ? AND place = ? AND round = ? AND position = ? AND spare = ?", id, place, round,
                      position, spare + 1);
    if (!next.executeStep()) throw Problem(Trouble::noSpareLeft, "code", {{"code", std::to_string(code.value)}});
    const Code by{next.getColumn(0).getInt()};
    const Logged entry = Log::append(db, id, clock.now(), Event::spilled, {{"by", by.value}, {"code", code.value}});
    store::run(db, "INSERT INTO spilled VALUES (?, ?, ?, ?)", id, code.value, by.value, entry.seq().value);
    return by;
  });
}

std::optional<Code> lostCup(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Code code) {
  return store::write(store, [&](SQLite::Database& db) -> std::optional<Code> {
    const auto id = store::sessionRow(db, session);
    auto drawn = bound(db, "SELECT 1 FROM cup WHERE session_id = ? AND spare > 0", id);
    if (drawn.executeStep()) return spilled(store, clock, session, code);
    requireOpenTable(db, id);
    auto cup = bound(db, R"sql(
      SELECT c.place, c.round, h.at FROM cup c LEFT JOIN hand_in h ON h.session_id = c.session_id AND h.place = c.place AND h.round = c.round
       WHERE c.session_id = ? AND c.code = ?)sql", id, code.value);
    if (!cup.executeStep()) throw Problem(Trouble::codeNotHere, "code", {{"code", std::to_string(code.value)}});
    const Place place{cup.getColumn(0).getInt()};
    const Round round{cup.getColumn(1).getInt()};
    if (!cup.getColumn(2).isNull())
      throw Problem(Trouble::flightLocked, "code", {{"at", std::to_string(cup.getColumn(2).getInt64())}, {"place", std::to_string(place.value)}, {"round", std::to_string(round.value)}});
    setAsideWithin(db, id, clock.now(), chance.bytes<16>(), place, round, VoidReason::cupLost, {});
    return std::nullopt;
  });
}

void setAside(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place place, Round round, VoidReason reason,
              const std::string& words) {
  const std::string clean = wordsAllowed(words);
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requirePlace(db, id, place);
    requireRound(db, id, round);
    setAsideWithin(db, id, clock.now(), chance.bytes<16>(), place, round, reason, clean);
  });
}

namespace {

bool isLocked(SQLite::Database& db, std::int64_t session, Place place, Round round) {
  auto row = bound(db, "SELECT 1 FROM hand_in WHERE session_id = ? AND place = ? AND round = ?", session, place.value, round.value);
  return row.executeStep();
}

bool isSetAside(SQLite::Database& db, std::int64_t session, Place place, Round round) {
  auto row = bound(db, "SELECT 1 FROM voided WHERE session_id = ? AND place = ? AND round = ?", session, place.value, round.value);
  return row.executeStep();
}

std::vector<Round> lockedAt(SQLite::Database& db, std::int64_t session, Place place) {
  std::vector<Round> rounds;
  auto rows = bound(db, "SELECT round FROM hand_in WHERE session_id = ? AND place = ? ORDER BY round", session, place.value);
  while (rows.executeStep()) rounds.push_back({rows.getColumn(0).getInt()});
  return rounds;
}

}  // namespace

MatsSwapped matsSwapped(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place one, Place other, Round round) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    const Place first = std::min(one, other), second = std::max(one, other);
    for (const Place place : {first, second}) requireSeated(db, id, place);
    if (first == second) throw Problem(Trouble::samePlace, "place", {{"place", std::to_string(first.value)}});
    requireRound(db, id, round);
    const auto hasCome = [&](Place place) { return isLocked(db, id, place, round) || nextRound(db, id, place) == round.value; };
    if (!hasCome(first) && !hasCome(second))
      throw Problem(Trouble::notThisRound, "round", {{"round", std::to_string(round.value)}, {"place", std::to_string(first.value)}});
    const Millis at = clock.now();
    Log::append(db, id, at, Event::matsSwapped, {{"places", {first.value, second.value}}, {"round", round.value}});
    MatsSwapped done;
    for (const Place place : {first, second}) {
      if (isSetAside(db, id, place, round)) continue;
      if (isLocked(db, id, place, round)) {
        setAsideWithin(db, id, at, chance.bytes<16>(), place, round, VoidReason::mixedUp, {});
        done.setAside.push_back(place);
        continue;
      }
      store::run(db, "DELETE FROM typed WHERE session_id = ? AND place = ? AND round = ?", id, place.value, round.value);
      done.begunAgain.push_back(place);
    }
    return done;
  });
}

WrongPerson wrongPerson(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, Place place) {
  return store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    requireSeated(db, id, place);
    const Millis at = clock.now();
    const std::vector<Round> locked = lockedAt(db, id, place);
    WrongPerson done;
    for (const Round round : locked) {
      if (isSetAside(db, id, place, round)) continue;
      setAsideWithin(db, id, at, chance.bytes<16>(), place, round, VoidReason::wrongPerson, {});
      ++done.setAside;
    }
    if (!locked.empty()) return done;
    Log::append(db, id, at, Event::placeFreed, {{"place", place.value}});
    store::run(db, "DELETE FROM typed WHERE session_id = ? AND place = ?", id, place.value);
    store::run(db, "DELETE FROM place_person WHERE session_id = ? AND place = ?", id, place.value);
    store::run(db, "DELETE FROM place_taken WHERE session_id = ? AND place = ?", id, place.value);
    done.freed = true;
    return done;
  });
}

}  // namespace oddglass::tasting
