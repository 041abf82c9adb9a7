#pragma once

#include "canon/digest.h"
#include "store/log.h"
#include "store/step.h"

namespace oddglass::testing {

/// A session written straight into the tables, past every use case: one lot twice on the plan, places 1 (taken) and 2, three cups each, items 1 (choose)
/// and 2 (sureness), a promise, and the log up to `state`. For tests of what the file itself guards.
struct RawSession {
  store::Store& store;
  std::int64_t row = 0;

  RawSession(store::Store& s, const std::string& uid, State state = State::sealed) : store(s) {
    store::write(store, [&](SQLite::Database& db) {
      db.exec("INSERT OR IGNORE INTO beverage (uid, origin, kind, name) VALUES ('" + std::string(32, 'b') + "', 'batch', 'mead', 'Hedge Mead')");
      db.exec("INSERT OR IGNORE INTO lot (uid, beverage_id, name, bottle_ml) SELECT '" + std::string(32, 'c') + "', id, 'first', 330 FROM beverage WHERE uid = '" +
              std::string(32, 'b') + "'");
      store::run(db, "INSERT INTO session (uid, title, came_from, created_at) VALUES (?, 'a table', 'here', 0)", uid);
      row = db.getLastInsertRowid();
      if (state == State::draft) return;
      store::Log::append(db, row, 1, Event::sealed, {{"commitment", ""}});
      const std::string id = std::to_string(row);
      db.exec("INSERT INTO session_plan VALUES (" + id + ", '{}', 'differ', zeroblob(32), 'kapo rilu 7')");
      db.exec("INSERT INTO session_lot SELECT " + id + ", 1, id FROM lot WHERE uid = '" + std::string(32, 'c') + "'");
      db.exec("INSERT INTO item (session_id, item, kind, low, high, required, per_cup, part, word) VALUES (" + id + ", 1, 'choose', NULL, NULL, 1, 0, 'main', ''), (" + id + ", 2, 'sureness', 1, 3, 1, 0, 'main', ''), (" + id + ", 3, 'words', NULL, NULL, 0, 0, 'main', '')");
      db.exec("INSERT INTO place VALUES (" + id + ", 1, 0), (" + id + ", 2, 1)");
      db.exec("INSERT INTO cup VALUES (" + id + ", 318, 1, 1, 1, 0), (" + id + ", 472, 1, 1, 2, 0), (" + id + ", 905, 1, 1, 3, 0), (" + id + ", 263, 2, 1, 1, 0)");
      db.exec("INSERT INTO promise VALUES (" + id + ", 'shown', zeroblob(16), 'name one thing')");
      db.exec("INSERT INTO sealed_key VALUES (" + id + ", x'00', zeroblob(32))");
      if (state == State::sealed) return;
      const Seq seat = append(Event::placeTaken);
      db.exec("INSERT INTO place_taken VALUES (" + id + ", 1, " + std::to_string(seat.value) + ", 0, 'signed')");
      append(Event::opened);
      if (state == State::tasting) return;
      handIn(append(Event::answered));
      append(Event::closed);
      if (state == State::revealed) append(Event::revealed);
    });
  }

  Seq append(Event event) { return store::Log::append(store.db(), row, 2, event, canon::Json::object()).seq(); }

  /// The answers of place 1, with words; the row of the hand-in.
  std::int64_t handIn(Seq seq) {
    SQLite::Database& db = store.db();
    store::run(db, "INSERT INTO hand_in (session_id, place, round, client_id, via, at, salt, seq) VALUES (?, 1, 1, zeroblob(16), 'device', 3, zeroblob(16), ?)", row,
               seq.value);
    const auto hand = db.getLastInsertRowid();
    store::run(db, "INSERT INTO answer VALUES (?, 1, 0, 472, NULL), (?1, 2, 0, 2, NULL), (?1, 3, 0, NULL, zeroblob(32))", hand);
    store::run(db, "INSERT INTO answer_words VALUES (?, 3, 0, zeroblob(16), 'thin')", hand);
    return hand;
  }

  /// Runs SQL with ? for the session's row; the words of the refusal, or "" when it went through. Nothing of it stays.
  std::string refusal(const std::string& sql) {
    SQLite::Database& db = store.db();
    SQLite::Transaction undone(db);
    try {
      SQLite::Statement statement(db, sql);
      for (int i = 1; i <= statement.getBindParameterCount(); ++i) statement.bind(i, row);
      statement.exec();
    } catch (const SQLite::Exception& error) {
      return error.what();
    }
    return {};
  }
};

}  // namespace oddglass::testing
