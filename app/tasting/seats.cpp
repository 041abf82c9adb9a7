#include "tasting/seats.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "tasting/table.h"

namespace oddglass::tasting {
namespace {

using store::bound;
using store::Log;

struct Person {
  std::int64_t row = 0;
  std::string name;
};

Person person(SQLite::Database& db, const TasterId& id) {
  auto row = bound(db, "SELECT id, name FROM taster WHERE uid = ?", id.text);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "taster", {{"what", "taster"}, {"text", id.text}});
  return {row.getColumn(0).getInt64(), row.getColumn(1).getString()};
}

// Whoever was invited is what they were at the seal; a latecomer is what the shelf says now.
bool isMaker(SQLite::Database& db, std::int64_t session, const Person& who) {
  auto invited = bound(db, "SELECT is_maker, pours FROM invited WHERE session_id = ? AND taster_id = ?", session, who.row);
  if (invited.executeStep()) {
    if (invited.getColumn(1).getInt() != 0) throw Problem(Trouble::pourerSits, "taster", {{"name", who.name}});
    return invited.getColumn(0).getInt() != 0;
  }
  auto made = bound(db, R"sql(
    SELECT 1 FROM session_lot s JOIN lot l ON l.id = s.lot_id JOIN made_by m ON m.beverage_id = l.beverage_id
     WHERE s.session_id = ? AND m.taster_id = ?)sql", session, who.row);
  return made.executeStep();
}

void requireFree(SQLite::Database& db, std::int64_t session, Place place, const Person& who) {
  auto taken = bound(db, "SELECT 1 FROM place_taken WHERE session_id = ? AND place = ?", session, place.value);
  if (taken.executeStep()) throw Problem(Trouble::placeTaken, "place", {{"place", std::to_string(place.value)}});
  auto seated = bound(db, "SELECT place FROM place_person WHERE session_id = ? AND taster_id = ?", session, who.row);
  if (seated.executeStep())
    throw Problem(Trouble::alreadySeated, "taster", {{"name", who.name}, {"place", std::to_string(seated.getColumn(0).getInt())}});
}

}  // namespace

void sit(store::Store& store, Clock& clock, const SessionId& session, const SitDown& who) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    requirePlace(db, id, who.place);
    const Person taster = person(db, who.taster);
    requireFree(db, id, who.place, taster);
    const bool maker = isMaker(db, id, taster);
    if (!who.ofAge) throw Problem(Trouble::notOfAge, "of_age");
    if (!who.careHeard) throw Problem(Trouble::careNotHeard, "care");
    if (!who.consents) throw Problem(Trouble::noConsent, "consent");
    const Millis at = clock.now();
    const std::string as(nameOf(who.as));
    const Logged entry = Log::append(db, id, at, Event::placeTaken, {{"as", as}, {"maker", maker}, {"place", who.place.value}});
    store::run(db, "INSERT INTO place_taken VALUES (?, ?, ?, ?, ?)", id, who.place.value, entry.seq().value, maker ? 1 : 0, as);
    store::run(db, "INSERT INTO place_person VALUES (?, ?, ?)", id, who.place.value, taster.row);
    if (who.heardAboutCups) {
      const Logged heard = Log::append(db, id, at, Event::said, {{"digest", nullptr}, {"heard", canon::Json::array({who.place.value})}});
      store::run(db, "INSERT INTO said_aloud VALUES (?, ?, ?)", id, heard.seq().value, who.place.value);
    }
  });
}

void stopHere(store::Store& store, Clock& clock, const SessionId& session, Place place) {
  store::write(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    requireOpenTable(db, id);
    requireSeated(db, id, place);
    const Logged entry = Log::append(db, id, clock.now(), Event::placeLeft, {{"place", place.value}});
    store::run(db, "INSERT INTO place_left VALUES (?, ?, ?)", id, place.value, entry.seq().value);
  });
}

}  // namespace oddglass::tasting
