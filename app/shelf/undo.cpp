#include "shelf/undo.h"

#include "domain/problem.h"
#include "shelf/folded.h"
#include "shelf/undo_rows.h"
#include "store/step.h"

#include <sqlite3.h>

#include <map>
#include <memory>

namespace oddglass::shelf {
namespace {

/// Counts the changes of a connection: one for each transaction that is committed.
struct Counter {
  std::int64_t number = 1;
  bool isTakingBack = false;
};

int committed(void* counter) {
  ++static_cast<Counter*>(counter)->number;
  return 0;
}

void numberNow(sqlite3_context* context, int, sqlite3_value**) {
  const auto* counter = static_cast<const Counter*>(sqlite3_user_data(context));
  if (counter->isTakingBack) sqlite3_result_null(context);
  else sqlite3_result_int64(context, counter->number);
}

void beQuiet(sqlite3_context* context, int, sqlite3_value** arguments) {
  static_cast<Counter*>(sqlite3_user_data(context))->isTakingBack = sqlite3_value_int(arguments[0]) != 0;
}

void forget(void* counter) { delete static_cast<Counter*>(counter); }

bool isRemembered(SQLite::Database& db) {
  SQLite::Statement row(db, "SELECT 1 FROM temp.sqlite_schema WHERE name = 'undo_row'");
  return row.executeStep();
}

std::optional<ShelfChange> lastIn(SQLite::Database& db) {
  if (!isRemembered(db)) return std::nullopt;
  db.exec("DELETE FROM undo_row WHERE change IN (SELECT change FROM undo_row WHERE thing = 'session')");
  // The row that was written first says what it was about, or the one that says more than that something was changed.
  SQLite::Statement row(db, "SELECT change, thing, deed, name FROM undo_row WHERE thing IS NOT NULL ORDER BY change DESC, deed = 'changed', seq LIMIT 1");
  if (!row.executeStep()) return std::nullopt;
  static const std::map<std::string, ChangedThing> things{{"drink", ChangedThing::drink}, {"lot", ChangedThing::lot}, {"bottles", ChangedThing::bottles}, {"note", ChangedThing::note}, {"person", ChangedThing::person}, {"word", ChangedThing::word}};
  static const std::map<std::string, ChangeDeed> deeds{{"added", ChangeDeed::added}, {"changed", ChangeDeed::changed}, {"put_away", ChangeDeed::putAway}, {"brought_back", ChangeDeed::broughtBack}, {"merged", ChangeDeed::merged}};
  return ShelfChange{row.getColumn(0).getInt64(), things.at(row.getColumn(1).getString()), deeds.at(row.getColumn(2).getString()), row.getColumn(3).getString()};
}

[[noreturn]] void refuse(const ShelfChange& change) { throw Problem(Trouble::undoDoesNotFit, "change", {{"name", change.name}}); }

void refuseWhatTheShelfWould(SQLite::Database& db, const ShelfChange& change) {
  SQLite::Statement inUse(db, R"(SELECT 1 FROM session_state s WHERE s.state IN ('sealed', 'tasting', 'closed') AND (
    EXISTS (SELECT 1 FROM session_lot p JOIN lot l ON l.id = p.lot_id JOIN beverage b ON b.id = l.beverage_id
             WHERE p.session_id = s.session_id AND (l.archived_at IS NOT NULL OR b.archived_at IS NOT NULL))
    OR EXISTS (SELECT 1 FROM invited i JOIN taster t ON t.id = i.taster_id WHERE i.session_id = s.session_id AND t.archived_at IS NOT NULL)))");
  if (inUse.executeStep()) refuse(change);
  std::map<std::string, int> names;
  SQLite::Statement people(db, "SELECT name FROM taster");
  while (people.executeStep())
    if (++names[folded(people.getColumn(0).getString())] > 1) refuse(change);
}

/// Nothing is written down while a change is taken back.
class Quiet {
 public:
  explicit Quiet(SQLite::Database& db) : db_(db) { db_.exec("SELECT undo_quiet(1)"); }
  ~Quiet() { db_.tryExec("SELECT undo_quiet(0)"); }
  Quiet(const Quiet&) = delete;
  Quiet& operator=(const Quiet&) = delete;

 private:
  SQLite::Database& db_;
};

void runInverses(SQLite::Database& db, const ShelfChange& change, Millis at) {
  std::vector<std::string> inverses;
  auto rows = store::bound(db, "SELECT inverse FROM undo_row WHERE change = ? AND inverse IS NOT NULL ORDER BY seq DESC", change.number);
  while (rows.executeStep()) inverses.push_back(rows.getColumn(0).getString());
  for (const std::string& inverse : inverses) {
    SQLite::Statement statement(db, inverse);
    if (statement.getBindParameterCount() > 0) statement.bind(1, at);
    if (statement.executeStep()) refuse(change);  // only what must find nothing gives a row
  }
}

}  // namespace

void rememberChanges(store::Store& store) {
  SQLite::Database& db = store.db();
  if (isRemembered(db)) return;
  auto counter = std::make_unique<Counter>();
  sqlite3_commit_hook(db.getHandle(), committed, counter.get());
  sqlite3_create_function_v2(db.getHandle(), "undo_change", 0, SQLITE_UTF8 | SQLITE_INNOCUOUS, counter.get(), numberNow, nullptr, nullptr, forget);
  sqlite3_create_function_v2(db.getHandle(), "undo_quiet", 1, SQLITE_UTF8 | SQLITE_DIRECTONLY, counter.get(), beQuiet, nullptr, nullptr, nullptr);
  counter.release();  // goes with the connection
  writeInversesFrom(db);
}

void takeBack(store::Store& store, Clock& clock, std::int64_t number) {
  const auto change = lastChange(store);
  if (!change || change->number != number) throw Problem(Trouble::undoneAlready, "change");
  store::write(store, [&](SQLite::Database& db) {
    const Quiet quiet(db);
    try {
      runInverses(db, *change, clock.now());
    } catch (const SQLite::Exception& error) {
      if (error.getErrorCode() == SQLITE_CONSTRAINT) refuse(*change);
      throw;
    }
    refuseWhatTheShelfWould(db, *change);
    store::run(db, "DELETE FROM undo_row WHERE change = ?", number);
  });
}

std::optional<ShelfChange> lastChange(store::Store& store) {
  try {
    return lastIn(store.db());
  } catch (const SQLite::Exception& error) {
    store::rethrow(error);
  }
}

}  // namespace oddglass::shelf
