#include "shelf/undo_rows.h"

#include <string>
#include <vector>

namespace oddglass::shelf {
namespace {

struct OnRow {
  const char* event;    ///< INSERT, UPDATE or DELETE
  const char* table;
  const char* when;     ///< beside that it is written down at all
  const char* what;     ///< SQL: thing, deed, name, taster
  std::vector<std::string> inverses;  ///< SQL that makes SQL; the last of them is run first
};

void put(SQLite::Database& db, const std::string& name, const OnRow& row) {
  std::string sql = "CREATE TEMP TRIGGER \"undo " + name + "\" AFTER " + row.event + " ON main." + row.table + " WHEN undo_change() IS NOT NULL AND " + row.when + " BEGIN ";
  for (const std::string& inverse : row.inverses)
    sql += std::string("INSERT INTO undo_row (change, thing, deed, name, taster, inverse) VALUES (undo_change(), ") + row.what + ", " + inverse + "); ";
  db.exec(sql + "END");
}

std::vector<std::string> columnsOf(SQLite::Database& db, const std::string& table) {
  std::vector<std::string> names;
  SQLite::Statement rows(db, "SELECT name FROM pragma_table_info(?) ORDER BY cid");
  rows.bind(1, table);
  while (rows.executeStep()) names.push_back('"' + rows.getColumn(0).getString() + '"');
  return names;
}

/// `"a" = ` and the old value of a, and so on for each column that may change.
std::string eachOld(SQLite::Database& db, const std::string& table) {
  std::string sql;
  for (const std::string& column : columnsOf(db, table))
    if (column != "\"id\"" && column != "\"uid\"") sql += (sql.empty() ? "'" : " || ', ") + column + " = ' || quote(OLD." + column + ")";
  return sql;
}

std::string asItWas(SQLite::Database& db, const std::string& table) { return "'UPDATE main." + table + " SET ' || " + eachOld(db, table) + " || ' WHERE id = ' || OLD.id"; }

constexpr const char* kept = "CASE WHEN OLD.archived_at IS NULL AND NEW.archived_at IS NOT NULL THEN 'put_away' WHEN OLD.archived_at IS NOT NULL AND NEW.archived_at IS NULL "
                             "THEN 'brought_back' ELSE 'changed' END";
constexpr const char* inDraft = "'SELECT 1 FROM session_draft WHERE instr(body, ' || quote(NEW.uid) || ')'";

/// A table of keys, whose rows come and go with the row they belong to.
void pairs(SQLite::Database& db, const std::string& table, const std::string& one, const std::string& other, const std::string& taster = {}) {
  const auto what = [&](const std::string& row) { return "NULL, NULL, NULL, " + (taster.empty() ? "NULL" : row + taster); };
  put(db, table + " in", {"INSERT", table.c_str(), "1", what("NEW.").c_str(),
                          {"'DELETE FROM main." + table + " WHERE " + one + " = ' || quote(NEW." + one + ") || ' AND " + other + " = ' || quote(NEW." + other + ")"}});
  put(db, table + " out", {"DELETE", table.c_str(), "1", what("OLD.").c_str(),
                           {"'INSERT INTO main." + table + " (" + one + ", " + other + ") VALUES (' || quote(OLD." + one + ") || ', ' || quote(OLD." + other + ") || ')'"}});
}

// What has bottles or notes in the record is put away rather than taken out.
void drinksUndone(SQLite::Database& db) {
  put(db, "drink", {"INSERT", "beverage", "1", "'drink', 'added', NEW.name, NULL",
                    {"'DELETE FROM beverage WHERE id = ' || NEW.id || ' AND id NOT IN (SELECT beverage_id FROM lot UNION SELECT beverage_id FROM batch_note)'",
                     "'UPDATE beverage SET archived_at = ?1 WHERE id = ' || NEW.id", "'SELECT 1 FROM lot WHERE archived_at IS NULL AND beverage_id = ' || NEW.id", inDraft}});
  put(db, "drink as it was", {"UPDATE", "beverage", "1", (std::string("'drink', ") + kept + ", NEW.name, NULL").c_str(), {asItWas(db, "beverage")}});
  pairs(db, "beverage_allergen", "beverage_id", "allergen");
  pairs(db, "beverage_maker", "beverage_id", "taster_id", "taster_id");
}

void lotsUndone(SQLite::Database& db) {
  put(db, "lot", {"INSERT", "lot", "1", "'lot', 'added', NEW.name, NULL",
                  {"'DELETE FROM lot WHERE id = ' || NEW.id || ' AND id NOT IN (SELECT lot_id FROM stock_move)'", "'UPDATE lot SET archived_at = ?1 WHERE id = ' || NEW.id",
                   "'SELECT 1 FROM session_lot WHERE lot_id = ' || NEW.id", "'SELECT 1 FROM series WHERE ' || NEW.id || ' IN (lot_id, control_id)'", inDraft}});
  put(db, "lot as it was", {"UPDATE", "lot", "1", (std::string("'lot', ") + kept + ", NEW.name, NULL").c_str(), {asItWas(db, "lot")}});
  put(db, "bottles", {"INSERT", "stock_move", "NEW.session_id IS NULL", "'bottles', 'changed', (SELECT name FROM lot WHERE id = NEW.lot_id), NULL",
                      {"'SELECT 1 WHERE (SELECT sum(bottles) FROM stock_move WHERE lot_id = ' || NEW.lot_id || ') < 0'",
                       "'INSERT INTO stock_move (lot_id, at, kind, bottles) VALUES (' || NEW.lot_id || ', ?1, ''counted'', ' || -NEW.bottles || ')'"}});
}

// Notes are only added to: what is taken back is withdrawn or said again, at the end of that note's corrections.
void notesUndone(SQLite::Database& db) {
  const std::string what = ", (SELECT name FROM beverage WHERE id = NEW.beverage_id), NULL";
  const std::string add = "'WITH RECURSIVE one (id) AS (SELECT ' || NEW.id || ' UNION ALL SELECT n.id FROM batch_note n JOIN one ON n.replaces = one.id) "
                          "INSERT INTO batch_note (uid, beverage_id, replaces, done_on, kind, gravity, level, word, note) SELECT lower(hex(randomblob(16))), ";
  const std::string end = "(SELECT max(id) FROM one), ";
  put(db, "note", {"INSERT", "batch_note", "NEW.replaces IS NULL", ("'note', 'added'" + what).c_str(),
                   {add + "beverage_id, " + end + "done_on, ''withdrawn'', NULL, NULL, '''', '''' FROM batch_note WHERE id = ' || NEW.id"}});
  put(db, "note corrected", {"INSERT", "batch_note", "NEW.replaces IS NOT NULL", ("'note', CASE NEW.kind WHEN 'withdrawn' THEN 'put_away' ELSE 'changed' END" + what).c_str(),
                             {add + "beverage_id, " + end + "done_on, kind, gravity, level, word, note FROM batch_note WHERE id = ' || NEW.replaces"}});
}

// An erased person is in no change any more, and no change brings one back.
void peopleUndone(SQLite::Database& db) {
  put(db, "person", {"INSERT", "taster", "1", "'person', 'added', NEW.name, NEW.id",
                     {"'DELETE FROM taster WHERE id = ' || NEW.id",
                      "'SELECT 1 FROM taster WHERE id = ' || NEW.id || ' AND id IN (SELECT taster_id FROM place_person UNION SELECT taster_id FROM invited UNION SELECT taster_id FROM beverage_maker UNION "
                      "SELECT taster_id FROM card)'", inDraft}});
  put(db, "person as they were", {"UPDATE", "taster", "1", (std::string("'person', ") + kept + ", NEW.name, NEW.id").c_str(), {asItWas(db, "taster")}});
  db.exec("CREATE TEMP TRIGGER \"undo forgets\" AFTER DELETE ON main.taster BEGIN "
          "DELETE FROM undo_row WHERE change IN (SELECT change FROM undo_row WHERE taster = OLD.id); "
          "INSERT INTO undo_row (change, thing) SELECT undo_change(), 'session' WHERE undo_change() IS NOT NULL; END");
}

// The list's own record says what was done to a word; its inverse is another entry there. A word that was added is retired: sheets may name it.
void wordsUndone(SQLite::Database& db) {
  const std::string name = "(SELECT word FROM own_word WHERE uid = ' || quote(NEW.word) || ')";
  const auto entry = [](const std::string& kind, const std::string& text, const std::string& other) {
    return "INSERT INTO word_change (at, kind, word, text, other) SELECT ?1, ''" + kind + "'', ' || quote(NEW.word) || ', " + text + ", " + other;
  };
  const std::string same = "' || quote(NEW.text) || '", other = "' || quote(NEW.other)";
  const auto on = [&](const char* kind, const char* deed, std::vector<std::string> inverses) {
    put(db, std::string("word ") + kind, {"INSERT", "word_change", (std::string("NEW.kind = '") + kind + "'").c_str(),
                                          (std::string("'word', '") + deed + "', coalesce((SELECT word FROM own_word WHERE uid = NEW.word), NEW.text), NULL").c_str(), std::move(inverses)});
  };
  on("renamed", "changed", {"'" + entry("renamed", name, "NULL") + "'"});
  on("merged", "merged", {"'" + entry("taken_apart", same, other)});
  on("taken_apart", "changed", {"'" + entry("merged", same, other)});
  on("retired", "put_away", {"'" + entry("brought_back", same, "NULL") + "'"});
  on("brought_back", "brought_back", {"'" + entry("retired", same, "NULL") + "'"});
  on("added", "added", {"'" + entry("retired", same, "NULL") + "'", "'INSERT INTO word_retired (word, at) VALUES (' || quote(NEW.word) || ', ?1)'"});
  db.exec("CREATE TEMP TRIGGER \"undo word stays\" AFTER INSERT ON main.word_change WHEN NEW.kind = 'added' BEGIN DELETE FROM undo_row WHERE change = undo_change() AND thing IS NULL; END");
  put(db, "word as it was", {"UPDATE", "own_word", "1", "'word', 'changed', NEW.word, NULL", {asItWas(db, "own_word")}});
  pairs(db, "own_word_drink", "own_word_id", "kind");
  pairs(db, "word_same_as", "word", "same_as");
  pairs(db, "word_retired", "word", "at");
}

}  // namespace

void writeInversesFrom(SQLite::Database& db) {
  db.exec("PRAGMA temp_store = MEMORY");
  db.exec("CREATE TEMP TABLE undo_row (seq INTEGER PRIMARY KEY, change INTEGER NOT NULL, thing TEXT, deed TEXT, name TEXT, taster INTEGER, inverse TEXT)");
  drinksUndone(db);
  lotsUndone(db);
  notesUndone(db);
  peopleUndone(db);
  wordsUndone(db);
  // What changes a session or a series too is not the shelf's alone.
  for (const char* table : {"session", "log", "session_draft", "series"})
    db.exec(std::string("CREATE TEMP TRIGGER \"undo not with ") + table + "\" AFTER INSERT ON main." + table +
            " WHEN undo_change() IS NOT NULL BEGIN INSERT INTO undo_row (change, thing) VALUES (undo_change(), 'session'); END");
}

}  // namespace oddglass::shelf
