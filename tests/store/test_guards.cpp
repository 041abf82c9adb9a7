#include "cellar.h"
#include "raw_session.h"
#include "store/schema.h"

using namespace oddglass;
using testing::Cellar;
using testing::RawSession;

// What the file itself keeps out, whatever program writes to it.
namespace {

struct Table : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;
};

using Catch::Matchers::Contains;

std::string logLine(const std::string& seq, const std::string& prev, const std::string& kind, const std::string& after) {
  return "INSERT INTO log SELECT session_id, " + seq + ", 5, '" + kind + "', '" + after + "', '{}', " + prev +
         ", zeroblob(32) FROM log WHERE session_id = ? ORDER BY seq DESC LIMIT 1";
}

}  // namespace

TEST_CASE("the log takes only the next entry, in the chain, that the state allows") {
  Table table;
  RawSession session(table.store, std::string(32, '1'), State::sealed);
  CHECK(session.refusal(logLine("seq + 1", "hash", "poured", "sealed")).empty());
  CHECK_THAT(session.refusal(logLine("seq + 2", "hash", "poured", "sealed")), Contains("out of order"));
  CHECK_THAT(session.refusal(logLine("seq", "hash", "poured", "sealed")), Contains("out of order"));
  CHECK_THAT(session.refusal(logLine("seq + 1", "zeroblob(32)", "poured", "sealed")), Contains("does not continue the chain"));
  CHECK_THAT(session.refusal(logLine("seq + 1", "hash", "revealed", "revealed")), Contains("not allowed in this state"));
  CHECK_THAT(session.refusal(logLine("seq + 1", "hash", "poured", "revealed")), Contains("not allowed in this state"));
  CHECK_THAT(session.refusal(logLine("seq + 1", "hash", "sealed", "sealed")), Contains("not allowed in this state"));
  CHECK_THAT(session.refusal(logLine("seq + 1", "hash", "nonsense", "sealed")), Contains("not allowed in this state"));
}

TEST_CASE("a broken chain cannot be begun either") {
  Table table;
  RawSession session(table.store, std::string(32, '1'), State::draft);
  const std::string first = "INSERT INTO log VALUES (?, ";
  CHECK(session.refusal(first + "1, 1, 'sealed', 'sealed', '{}', zeroblob(32), zeroblob(32))").empty());
  CHECK_THAT(session.refusal(first + "2, 1, 'sealed', 'sealed', '{}', zeroblob(32), zeroblob(32))"), Contains("out of order"));
  CHECK_THAT(session.refusal(first + "1, 1, 'sealed', 'sealed', '{}', randomblob(32), zeroblob(32))"), Contains("chain"));
  CHECK_THAT(session.refusal(first + "1, 1, 'opened', 'tasting', '{}', zeroblob(32), zeroblob(32))"), Contains("not allowed"));
}

TEST_CASE("rows that are kept are neither changed, nor deleted, nor written over") {
  Table table;
  RawSession session(table.store, std::string(32, '1'), State::revealed);
  SQLite::Database& db = table.store.db();
  store::write(table.store, [&](SQLite::Database&) {
    const std::string id = std::to_string(session.row);
    for (const std::string& sql : std::vector<std::string>{
             "INSERT INTO as_poured VALUES (" + id + ", 1, zeroblob(16), x'00')",
             "INSERT INTO key_opened VALUES (" + id + ", 1, zeroblob(32), zeroblob(32), 'g', 1)",
             "INSERT INTO key_line VALUES (" + id + ", 318, 1, 1)",
             "INSERT INTO place_left VALUES (" + id + ", 1, 1)",
             "INSERT INTO spilled VALUES (" + id + ", 318, 472, 1)",
             "INSERT INTO voided VALUES (" + id + ", 1, 1, 'other', 1)",
             "INSERT INTO said_aloud VALUES (" + id + ", 1, 1)",
             "INSERT INTO remark VALUES (" + id + ", 1, 'said', zeroblob(16), 'oh')",
             "INSERT INTO stock_move (lot_id, at, kind, bottles) SELECT id, 0, 'added', 3 FROM lot",
             std::string("INSERT INTO batch_note (uid, beverage_id, done_on, kind) SELECT '" + std::string(32, 'f') + "', id, '2026-03-14', 'racked' FROM beverage"),
             "INSERT INTO place_taken VALUES (" + id + ", 2, 1, 0, 'loose')",
             "INSERT INTO erasure VALUES (" + id + ", 2, 'words', 1)"})
      db.exec(sql);
  });
  std::vector<std::string> all = store::keptTables();
  all.insert(all.end(), store::unchangedTables().begin(), store::unchangedTables().end());
  for (const std::string& name : all) {
    CAPTURE(name);
    REQUIRE(db.execAndGet("SELECT count(*) FROM " + name).getInt() > 0);
    SQLite::Statement columns(db, "SELECT name FROM pragma_table_info(?)");
    columns.bind(1, name);
    REQUIRE(columns.executeStep());
    const std::string column = columns.getColumn(0).getString();
    CHECK_THAT(session.refusal("UPDATE " + name + " SET " + column + " = " + column), Contains(name + ": "));
  }
  for (const std::string& name : store::keptTables()) {
    CAPTURE(name);
    CHECK_THAT(session.refusal("DELETE FROM " + name), Contains(name + ": kept"));
    CHECK_THAT(session.refusal("INSERT OR REPLACE INTO " + name + " SELECT * FROM " + name), Contains(name == "log" ? "log: " : name + ": kept"));
  }
}

TEST_CASE("answers go only with an erasure, words with either kind") {
  Table table;
  RawSession session(table.store, std::string(32, '1'), State::revealed);
  CHECK_THAT(session.refusal("DELETE FROM hand_in"), Contains("hand_in: kept for good"));
  CHECK_THAT(session.refusal("DELETE FROM answer"), Contains("answer: kept for good"));
  CHECK_THAT(session.refusal("DELETE FROM answer_words"), Contains("words: kept until erased"));
  CHECK_THAT(session.refusal("INSERT OR REPLACE INTO hand_in SELECT * FROM hand_in"), Contains("answers: not while"));
  CHECK_FALSE(session.refusal("INSERT OR REPLACE INTO answer SELECT * FROM answer").empty());
  const std::string id = std::to_string(session.row);
  SECTION("words only") {
    store::write(table.store, [&](SQLite::Database& db) { db.exec("INSERT INTO erasure VALUES (" + id + ", 1, 'words', 1)"); });
    CHECK(session.refusal("DELETE FROM answer_words").empty());
    CHECK_THAT(session.refusal("DELETE FROM hand_in"), Contains("hand_in: kept for good"));
    CHECK_THAT(session.refusal("DELETE FROM answer"), Contains("answer: kept for good"));
  }
  SECTION("everything") {
    store::write(table.store, [&](SQLite::Database& db) { db.exec("INSERT INTO erasure VALUES (" + id + ", 1, 'everything', 1)"); });
    CHECK(session.refusal("DELETE FROM hand_in").empty());
  }
}

TEST_CASE("the host's own words go only with their erasure") {
  Table table;
  RawSession session(table.store, std::string(32, '1'), State::revealed);
  const std::string id = std::to_string(session.row);
  store::write(table.store, [&](SQLite::Database& db) {
    db.exec("INSERT INTO remark VALUES (" + id + ", 1, 'said', zeroblob(16), 'oh')");
    db.exec("INSERT INTO erasure VALUES (" + id + ", 1, 'everything', 1)");
  });
  CHECK_THAT(session.refusal("DELETE FROM remark"), Contains("remark: kept until erased"));
  CHECK_THAT(session.refusal("DELETE FROM promise"), Contains("promise: kept until erased"));
  CHECK_THAT(session.refusal("INSERT OR REPLACE INTO promise SELECT * FROM promise"), Contains("promise: kept"));
  store::write(table.store, [&](SQLite::Database& db) { db.exec("INSERT INTO erasure VALUES (" + id + ", 0, 'words', 1)"); });
  CHECK(session.refusal("DELETE FROM remark").empty());
  CHECK(session.refusal("DELETE FROM promise").empty());
}

TEST_CASE("answers come only while tasting, to questions and cups of their own flight") {
  Table table;
  RawSession session(table.store, std::string(32, '1'), State::tasting);
  SQLite::Database& db = table.store.db();
  const std::string hand = "INSERT INTO hand_in (session_id, place, round, client_id, via, at, salt, seq) SELECT ?, 1, 1, zeroblob(16), 'device', 3, zeroblob(16), ";
  CHECK(session.refusal(hand + "2").empty());
  std::int64_t row = 0;
  store::write(table.store, [&](SQLite::Database&) {
    const Seq seq = session.append(Event::answered);
    store::run(db, "INSERT INTO hand_in (session_id, place, round, client_id, via, at, salt, seq) VALUES (?, 1, 1, zeroblob(16), 'device', 3, zeroblob(16), ?)",
               session.row, seq.value);
    row = db.getLastInsertRowid();
  });
  const auto answer = [&](int item, const std::string& value) {
    return session.refusal("INSERT INTO answer VALUES (" + std::to_string(row) + ", " + std::to_string(item) + ", 0, " + value + ", NULL)");
  };
  CHECK(answer(1, "472").empty());
  CHECK_THAT(answer(1, "263"), Contains("no such cup in this flight"));
  CHECK_THAT(answer(1, "999"), Contains("no such cup in this flight"));
  CHECK(answer(2, "3").empty());
  CHECK_THAT(answer(2, "4"), Contains("no such question"));
  CHECK_THAT(answer(9, "1"), Contains("no such question"));
  store::write(table.store, [&](SQLite::Database&) {
    const Seq seq = session.append(Event::placeLeft);
    store::run(db, "INSERT INTO place_left VALUES (?, 1, ?)", session.row, seq.value);
  });
  CHECK_THAT(session.refusal("INSERT INTO hand_in (session_id, place, round, client_id, via, at, salt, seq) SELECT ?, 1, 2, randomblob(16), 'device', 3, zeroblob(16), 1"),
             Contains("has stopped"));
  for (State state : {State::draft, State::sealed, State::closed, State::revealed}) {
    RawSession other(table.store, std::string(31, '2') + std::to_string(static_cast<int>(state)), state);
    CHECK_THAT(other.refusal("INSERT INTO hand_in (session_id, place, round, client_id, via, at, salt, seq) SELECT ?, 1, 2, randomblob(16), 'device', 3, zeroblob(16), 1"),
               Contains("not while the session is in this state"));
  }
}

TEST_CASE("the key's rows cannot exist before the key is open") {
  Table table;
  int n = 0;
  for (State state : {State::sealed, State::tasting, State::closed, State::revealed}) {
    RawSession session(table.store, std::string(31, '3') + std::to_string(n++), state);
    const std::string line = session.refusal("INSERT INTO key_line VALUES (?, 318, 1, 1)");
    const std::string opened = session.refusal("INSERT INTO key_opened VALUES (?, 1, zeroblob(32), zeroblob(32), 'g', 1)");
    if (state == State::revealed) {
      CHECK(line.empty());
      CHECK(opened.empty());
    } else {
      CHECK_THAT(line, Contains("still sealed"));
      CHECK_THAT(opened, Contains("still sealed"));
    }
  }
}

TEST_CASE("a sealed session has no draft again and stays") {
  Table table;
  RawSession draft(table.store, std::string(32, '4'), State::draft);
  RawSession sealed(table.store, std::string(32, '5'), State::sealed);
  CHECK(draft.refusal("INSERT INTO session_draft VALUES (?, '{}', 0)").empty());
  CHECK_THAT(sealed.refusal("INSERT INTO session_draft VALUES (?, '{}', 0)"), Contains("the plan is sealed"));
  CHECK(draft.refusal("DELETE FROM session WHERE id = ?").empty());
  CHECK_THAT(sealed.refusal("DELETE FROM session WHERE id = ?"), Contains("once sealed it stays"));
}

TEST_CASE("references and ranges hold") {
  Table table;
  RawSession session(table.store, std::string(32, '6'));
  CHECK_THAT(session.refusal("INSERT INTO cup VALUES (?, 111, 77, 1, 1, 0)"), Contains("FOREIGN KEY"));
  CHECK_THAT(session.refusal("INSERT INTO cup VALUES (?, 99, 1, 2, 1, 0)"), Contains("CHECK"));
  CHECK_THAT(session.refusal("INSERT INTO cup VALUES (?, 318, 1, 2, 1, 0)"), Contains("UNIQUE"));
  CHECK_THAT(session.refusal("INSERT INTO cup VALUES (?, '318a', 1, 2, 1, 0)"), Contains("cannot store TEXT"));
  CHECK_THAT(session.refusal("INSERT INTO stock_move (lot_id, at, kind, bottles) SELECT id, 0, 'given', 3 FROM lot"), Contains("CHECK"));
}

TEST_CASE("words are retired and never deleted, merges lead in no ring, and changes of the list stay") {
  Table table;
  RawSession session(table.store, std::string(32, '7'));
  SQLite::Database& db = table.store.db();
  const auto uid = [](char digit) { return "'" + std::string(32, digit) + "'"; };
  store::write(table.store, [&](SQLite::Database&) {
    db.exec("INSERT INTO own_word (uid, word, class, leaning) VALUES (" + uid('1') + ", 'hedge', 'floral', 'wanted')");
    db.exec("INSERT INTO word_same_as VALUES (" + uid('1') + ", " + uid('2') + "), (" + uid('2') + ", " + uid('3') + ")");
    db.exec("INSERT INTO word_change (at, kind, word, text) VALUES (0, 'added', " + uid('1') + ", 'hedge')");
  });
  CHECK_THAT(session.refusal("DELETE FROM own_word"), Contains("own_word: retired"));
  CHECK_THAT(session.refusal("UPDATE own_word SET uid = " + uid('4')), Contains("own_word: its uid is kept"));
  CHECK_THAT(session.refusal("INSERT INTO own_word (uid, word, class, leaning) VALUES (" + uid('4') + ", 'x', 'wheel', 'wanted')"), Contains("CHECK"));
  CHECK_THAT(session.refusal("INSERT INTO own_word (uid, word, class, leaning) VALUES (" + uid('4') + ", '  ', 'hop', 'wanted')"), Contains("CHECK"));
  CHECK_THAT(session.refusal("INSERT INTO own_word_drink VALUES (77, 'mead')"), Contains("FOREIGN KEY"));
  CHECK_THAT(session.refusal("INSERT INTO word_same_as VALUES (" + uid('3') + ", " + uid('1') + ")"), Contains("a ring of words"));
  CHECK_THAT(session.refusal("INSERT INTO word_same_as VALUES (" + uid('4') + ", " + uid('4') + ")"), Contains("CHECK"));
  CHECK_THAT(session.refusal("INSERT INTO word_same_as VALUES (" + uid('1') + ", " + uid('4') + ")"), Contains("UNIQUE"));
  CHECK_THAT(session.refusal("UPDATE word_same_as SET same_as = " + uid('4')), Contains("word_same_as: taken apart"));
  CHECK(session.refusal("INSERT INTO word_same_as VALUES (" + uid('3') + ", " + uid('4') + ")").empty());
  CHECK_THAT(session.refusal("UPDATE word_change SET at = 1"), Contains("word_change: kept"));
  CHECK_THAT(session.refusal("DELETE FROM word_change"), Contains("word_change: kept"));
  CHECK_THAT(session.refusal("INSERT OR REPLACE INTO word_change SELECT * FROM word_change"), Contains("word_change: kept"));
  CHECK_THAT(session.refusal("INSERT INTO word_change (at, kind, word, text) VALUES (0, 'merged', " + uid('1') + ", 'hedge')"), Contains("CHECK"));
}

TEST_CASE("no trigger is lost") {
  Table table;
  // Two for each of the 19 tables that are kept, one for each of the 5 that are only unchanged, the 12 that are written out in the first schema,
  // the 6 of the vocabulary, the 3 that let go of what was typed, the 6 of series, and the 2 of answers with the labels known.
  CHECK(store::keptTables().size() == 19);
  CHECK(store::unchangedTables().size() == 5);
  CHECK(table.store.db().execAndGet("SELECT count(*) FROM sqlite_schema WHERE type = 'trigger'").getInt() == 2 * 19 + 5 + 12 + 6 + 3 + 6 + 2 + 2);
  SQLite::Statement loose(table.store.db(), "SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND schema = 'main' AND name NOT LIKE 'sqlite_%'");
  CHECK_FALSE(loose.executeStep());
}
