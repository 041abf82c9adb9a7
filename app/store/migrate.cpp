#include "store/migrate.h"

#include "canon/digest.h"
#include "domain/names.h"
#include "domain/state.h"
#include "store/keep.h"
#include "store/schema.h"
#include "store/step.h"

#include <string>
#include <vector>

namespace oddglass::store {
namespace {

void keepRows(SQLite::Database& db) {
  for (const std::string& table : keptTables()) {
    db.exec("CREATE TRIGGER " + table + "_no_update BEFORE UPDATE ON " + table + " BEGIN SELECT RAISE(ABORT, '" + table + ": kept as it is'); END");
    db.exec("CREATE TRIGGER " + table + "_no_delete BEFORE DELETE ON " + table + " BEGIN SELECT RAISE(ABORT, '" + table + ": kept as it is'); END");
  }
  for (const std::string& table : unchangedTables())
    db.exec("CREATE TRIGGER " + table + "_no_update BEFORE UPDATE ON " + table + " BEGIN SELECT RAISE(ABORT, '" + table + ": never changed'); END");
}

void putTransitions(SQLite::Database& db) {
  SQLite::Statement step(db, "INSERT OR IGNORE INTO transition VALUES (?, ?, ?)");
  for (const Transition& row : transitions()) {
    step.bind(1, std::string(nameOf(row.state)));
    step.bind(2, std::string(nameOf(row.event)));
    step.bind(3, std::string(nameOf(row.after)));
    step.exec();
    step.reset();
  }
}

void firstShape(SQLite::Database& db, Clock& clock, Chance& chance) {
  db.exec("PRAGMA application_id = " + std::to_string(applicationId));
  db.exec(schema1);
  putTransitions(db);
  keepRows(db);
  SQLite::Statement store(db, "INSERT INTO store VALUES (1, ?, ?, ?)");
  store.bind(1, canon::hex(chance.bytes<16>()));
  store.bind(2, clock.now());
  store.bind(3, ODDGLASS_VERSION);
  store.exec();
  db.exec("INSERT INTO house_rules (one) VALUES (1)");
}

void moreMethods(SQLite::Database& db, Clock&, Chance&) {
  db.exec(schema2);
  putTransitions(db);
}

void tastingWords(SQLite::Database& db, Clock&, Chance&) { db.exec(schema3); }
void scoreSheets(SQLite::Database& db, Clock&, Chance&) { db.exec(schema4); }
void overTime(SQLite::Database& db, Clock&, Chance&) { db.exec(schema5); }
void batchesAndPeople(SQLite::Database& db, Clock&, Chance&) { db.exec(schema6); }

void handsAndMishaps(SQLite::Database& db, Clock&, Chance&) {
  db.exec(schema7);
  putTransitions(db);
}

}  // namespace

const std::vector<Step>& steps() {
  static const std::vector<Step> all{firstShape, moreMethods, tastingWords, scoreSheets, overTime, batchesAndPeople, handsAndMishaps};
  return all;
}

int newestVersion() { return static_cast<int>(steps().size()); }

int versionOf(SQLite::Database& db) { return db.execAndGet("PRAGMA user_version").getInt(); }

void bringUp(Store& store, const std::vector<Step>& steps, Clock& clock, Chance& chance) {
  const int newest = static_cast<int>(steps.size());
  const int version = versionOf(store.db());
  if (version > 0 && version < newest) keepCopy(store, clock, BackupReason::beforeMigration);
  for (int at = version; at < newest; ++at)
    write(store, [&](SQLite::Database& db) {
      steps[static_cast<std::size_t>(at)](db, clock, chance);
      db.exec("PRAGMA user_version = " + std::to_string(at + 1));
    });
}

}  // namespace oddglass::store
