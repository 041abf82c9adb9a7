#include "shelf/notes.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "shelf/fields.h"
#include "shelf/rows.h"

namespace oddglass::shelf {
namespace {

struct Former {
  std::int64_t row;
  std::string beverage;
  std::string doneOn;
};

// The note that is corrected or taken back: it must still stand.
Former former(SQLite::Database& db, const NoteId& id) {
  auto row = store::bound(db, R"(SELECT n.id, b.uid, n.done_on, EXISTS (SELECT 1 FROM batch_note r WHERE r.replaces = n.id) OR n.kind = 'withdrawn'
      FROM batch_note n JOIN beverage b ON b.id = n.beverage_id WHERE n.uid = ?)", id.text);
  if (!row.executeStep()) throw Problem(Trouble::unknown, "note", {{"what", "note"}, {"text", id.text}});
  if (row.getColumn(3).getInt() != 0) throw Problem(Trouble::alreadyThere, "note", {{"text", row.getColumn(2).getString()}});
  return {row.getColumn(0).getInt64(), row.getColumn(1).getString(), row.getColumn(2).getString()};
}

void askBeforeStabilisingAgain(SQLite::Database& db, const Note& note) {
  auto earlier = store::bound(db, R"(SELECT n.done_on FROM batch_note n WHERE n.beverage_id = ? AND n.kind = 'stabilised' AND n.uid <> ?
       AND NOT EXISTS (SELECT 1 FROM batch_note r WHERE r.replaces = n.id) ORDER BY n.done_on LIMIT 1)",
                              rowOf(db, Family::beverage, note.beverage.text, "beverage"), note.replaces ? note.replaces->text : std::string());
  if (earlier.executeStep()) throw Problem(Trouble::alreadyStabilised, "kind", {{"day", earlier.getColumn(0).getString()}});
}

}  // namespace

void checkNote(Note& note) {
  note.doneOn = day(note.doneOn, "done_on");
  if (note.doneOn.empty()) throw Problem(Trouble::empty, "done_on");
  checkGravity(note.gravity, "gravity");
  const bool speaksForItself = note.kind == NoteKind::stabilised || note.kind == NoteKind::racked || note.kind == NoteKind::bottled || note.kind == NoteKind::gusher ||
                               hasLevel(note.kind);
  note.text = text(note.text, "text", 4000, !note.withdrawn && !speaksForItself && note.kind != NoteKind::reading);
  if (!note.withdrawn && note.kind == NoteKind::reading && !note.gravity && note.text.empty()) throw Problem(Trouble::empty, "gravity");
  if (note.withdrawn && !note.replaces) throw Problem(Trouble::empty, "note");
  note.word = text(note.word, "word", 60, false);
  if (note.withdrawn || !hasLevel(note.kind)) note.level.reset();
  else if (!note.level) throw Problem(Trouble::empty, "level");
  else if (*note.level < 0 || *note.level > 3) throw Problem(Trouble::outOfRange, "level", {{"text", std::to_string(*note.level)}, {"low", "0"}, {"high", "3"}});
}

void writeNote(SQLite::Database& db, const Note& note) {
  auto put = store::bound(db, "INSERT INTO batch_note (uid, beverage_id, done_on, kind, note, word, replaces, gravity, level) VALUES (?, ?, ?, ?, ?, ?, ?7, ?8, ?9)",
                          note.id.text, rowOf(db, Family::beverage, note.beverage.text, "beverage"), note.doneOn,
                          std::string(note.withdrawn ? "withdrawn" : nameOf(note.kind)), note.text, note.word);
  if (note.replaces) {
    const Former old = former(db, *note.replaces);
    if (old.beverage != note.beverage.text) throw Problem(Trouble::notAChoice, "note", {{"text", note.replaces->text}});
    put.bind(7, old.row);
  }
  bindMaybe(put, 8, note.gravity);
  bindMaybe(put, 9, note.level);
  put.exec();
}

NoteId add(store::Store& store, Chance& chance, Note note, bool yesAgain) {
  checkNote(note);
  return store::write(store, [&](SQLite::Database& db) {
    note.id.text = newUid(chance);
    if (note.kind == NoteKind::stabilised && !note.withdrawn && !yesAgain) askBeforeStabilisingAgain(db, note);
    writeNote(db, note);
    return note.id;
  });
}

void withdraw(store::Store& store, Chance& chance, const NoteId& id) {
  store::write(store, [&](SQLite::Database& db) {
    const Former old = former(db, id);
    Note note;
    note.id.text = newUid(chance);
    note.beverage.text = old.beverage;
    note.replaces = id;
    note.withdrawn = true;
    note.doneOn = old.doneOn;
    writeNote(db, note);
  });
}

std::vector<Note> notesOf(store::Store& store, const BeverageId& beverage) {
  return store::read(store, [&](SQLite::Database& db) {
    auto rows = store::bound(db, R"(SELECT n.uid, o.uid, n.done_on, n.kind, n.gravity, n.note, n.level, n.word FROM batch_note n LEFT JOIN batch_note o ON o.id = n.replaces
      WHERE n.beverage_id = ? AND n.kind <> 'withdrawn' AND NOT EXISTS (SELECT 1 FROM batch_note r WHERE r.replaces = n.id)
      ORDER BY n.done_on DESC, n.id DESC)", rowOf(db, Family::beverage, beverage.text, "beverage"));
    std::vector<Note> all;
    while (rows.executeStep()) {
      Note note;
      note.id.text = rows.getColumn(0).getString();
      note.beverage = beverage;
      if (!rows.getColumn(1).isNull()) note.replaces = NoteId{rows.getColumn(1).getString()};
      note.doneOn = rows.getColumn(2).getString();
      note.kind = known<NoteKind>(rows.getColumn(3));
      note.gravity = maybeInt(rows.getColumn(4));
      note.text = rows.getColumn(5).getString();
      note.level = maybeInt(rows.getColumn(6));
      note.word = rows.getColumn(7).getString();
      all.push_back(std::move(note));
    }
    return all;
  });
}

}  // namespace oddglass::shelf
