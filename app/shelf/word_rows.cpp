#include "shelf/word_rows.h"

#include "shelf/fields.h"
#include "shelf/folded.h"
#include "shelf/rows.h"

#include <algorithm>
#include <map>

namespace oddglass::shelf {
namespace {

WordList ownWords(SQLite::Database& db) {
  WordList own;
  SQLite::Statement rows(db, "SELECT id, uid, word, class, leaning, meaning FROM own_word ORDER BY id");
  while (rows.executeStep()) {
    TastingWord word;
    word.id.text = rows.getColumn(1).getString();
    word.text = rows.getColumn(2).getString();
    word.wordClass = known<WordClass>(rows.getColumn(3));
    word.leaning = known<Leaning>(rows.getColumn(4));
    word.meaning = rows.getColumn(5).getString();
    word.own = true;
    auto drinks = store::bound(db, "SELECT kind FROM own_word_drink WHERE own_word_id = ?", rows.getColumn(0).getInt64());
    while (drinks.executeStep()) word.drinks.insert(known<Kind>(drinks.getColumn(0)));
    own.push_back(std::move(word));
  }
  std::ranges::stable_sort(own, {}, [](const TastingWord& word) { return folded(word.text); });
  return own;
}

}  // namespace

WordList readWords(SQLite::Database& db) {
  WordList list = builtInWords();
  std::ranges::move(ownWords(db), std::back_inserter(list));
  std::map<std::string, TastingWord*> byId;
  for (TastingWord& word : list) byId.emplace(word.id.text, &word);
  SQLite::Statement retired(db, "SELECT word FROM word_retired");
  while (retired.executeStep())
    if (const auto found = byId.find(retired.getColumn(0).getString()); found != byId.end()) found->second->retired = true;
  SQLite::Statement merged(db, "SELECT word, same_as FROM word_same_as");
  while (merged.executeStep())
    if (const auto found = byId.find(merged.getColumn(0).getString()); found != byId.end()) found->second->sameAs = WordId{merged.getColumn(1).getString()};
  return list;
}

const TastingWord& needed(const WordList& list, const WordId& id, const char* argument) {
  const TastingWord* word = wordWith(list, id);
  if (!word) throw Problem(Trouble::unknown, argument, {{"what", "word"}, {"text", id.text}});
  return *word;
}

void checkWord(TastingWord& word) {
  word.text = text(word.text, "word", 60, true);
  word.meaning = text(word.meaning, "meaning", 1000, false);
  if (word.drinks.empty()) throw Problem(Trouble::empty, "drinks");
}

const TastingWord* calledAlike(const WordList& list, const TastingWord& word, Merged merged) {
  const std::string name = folded(word.text);
  const auto is = [&](const std::string& other) { return folded(other) == name; };
  const auto found = std::ranges::find_if(list, [&](const TastingWord& other) {
    return other.id != word.id && (merged == Merged::asked || !other.sameAs) && (is(other.text) || std::ranges::any_of(other.alsoCalled, is));
  });
  return found == list.end() ? nullptr : &*found;
}

void writeWord(SQLite::Database& db, const TastingWord& word) {
  store::run(db, R"(INSERT INTO own_word (uid, word, class, leaning, meaning) VALUES (?, ?, ?, ?, ?)
      ON CONFLICT (uid) DO UPDATE SET word = ?2, class = ?3, leaning = ?4, meaning = ?5)",
             word.id.text, word.text, std::string(nameOf(word.wordClass)), std::string(nameOf(word.leaning)), word.meaning);
  store::run(db, "DELETE FROM own_word_drink WHERE own_word_id = (SELECT id FROM own_word WHERE uid = ?)", word.id.text);
  for (const Kind kind : word.drinks)
    store::run(db, "INSERT INTO own_word_drink SELECT id, ? FROM own_word WHERE uid = ?", std::string(nameOf(kind)), word.id.text);
}

void writeMerge(SQLite::Database& db, Millis at, const TastingWord& word, const WordId& into) {
  store::run(db, "DELETE FROM word_same_as WHERE word = ?", word.id.text);
  store::run(db, "INSERT INTO word_same_as VALUES (?, ?)", word.id.text, into.text);
  writeChange(db, {at, WordChangeKind::merged, word.id, word.text, into});
}

void writeRetired(SQLite::Database& db, Millis at, const TastingWord& word) {
  store::run(db, "INSERT INTO word_retired VALUES (?, ?)", word.id.text, at);
  writeChange(db, {at, WordChangeKind::retired, word.id, word.text, {}});
}

void writeChange(SQLite::Database& db, const WordChange& change) {
  auto put = store::bound(db, "INSERT INTO word_change (at, kind, word, text, other) VALUES (?, ?, ?, ?, ?5)", change.at,
                          std::string(nameOf(change.kind)), change.word.text, change.text);
  bindMaybe(put, 5, change.other ? change.other->text : std::string());
  put.exec();
}

}  // namespace oddglass::shelf
