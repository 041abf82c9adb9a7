#include "shelf/vocabulary.h"

#include "shelf/fields.h"
#include "shelf/rows.h"
#include "shelf/word_rows.h"

namespace oddglass::shelf {
namespace {

void refuseAlike(const WordList& list, const TastingWord& word, Merged merged = Merged::asked) {
  if (calledAlike(list, word, merged)) throw Problem(Trouble::alreadyThere, "word", {{"text", word.text}});
}

bool leadsTo(const WordList& list, const WordId& from, const WordId& to) {
  if (from == to) return true;
  for (const TastingWord* at = wordWith(list, from); at && at->sameAs; at = wordWith(list, *at->sameAs))
    if (*at->sameAs == to) return true;
  return false;
}

}  // namespace

WordList vocabulary(store::Store& store) { return store::read(store, readWords); }

WordId addWord(store::Store& store, Clock& clock, Chance& chance, TastingWord word) {
  checkWord(word);
  return store::write(store, [&](SQLite::Database& db) {
    word.id.text = newUid(chance);
    refuseAlike(readWords(db), word);
    writeWord(db, word);
    writeChange(db, {clock.now(), WordChangeKind::added, word.id, word.text, {}});
    return word.id;
  });
}

std::function<std::string(const std::string&)> meaningNow(store::Store& store) {
  return [words = vocabulary(store)](const std::string& word) { return nameMeant(words, word); };
}

void changeWord(store::Store& store, Clock& clock, TastingWord word) {
  checkWord(word);
  store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    const TastingWord& former = needed(list, word.id, "word");
    if (!former.own) throw Problem(Trouble::ofTheProgram, "word", {{"text", former.text}});
    if (!former.sameAs) refuseAlike(list, word);
    writeWord(db, word);
    if (former.text != word.text) writeChange(db, {clock.now(), WordChangeKind::renamed, word.id, former.text, {}});
  });
}

void mergeWord(store::Store& store, Clock& clock, const WordId& word, const WordId& into) {
  store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    const TastingWord& one = needed(list, word, "word");
    const TastingWord& other = needed(list, into, "into");
    if (leadsTo(list, into, word)) throw Problem(Trouble::ringOfWords, "into", {{"text", other.text}, {"other", one.text}});
    if (standsFor(list, into)->retired) throw Problem(Trouble::wordRetired, "into", {{"text", other.text}});
    if (one.sameAs != into) writeMerge(db, clock.now(), one, into);
  });
}

void takeApart(store::Store& store, Clock& clock, const WordId& word) {
  store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    const TastingWord& one = needed(list, word, "word");
    if (!one.sameAs) return;
    refuseAlike(list, one, Merged::passedOver);
    store::run(db, "DELETE FROM word_same_as WHERE word = ?", word.text);
    writeChange(db, {clock.now(), WordChangeKind::takenApart, word, one.text, one.sameAs});
  });
}

void retireWord(store::Store& store, Clock& clock, const WordId& word) {
  store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    if (const TastingWord& one = needed(list, word, "word"); !one.retired) writeRetired(db, clock.now(), one);
  });
}

void bringBackWord(store::Store& store, Clock& clock, const WordId& word) {
  store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    const TastingWord& one = needed(list, word, "word");
    if (!one.retired) return;
    store::run(db, "DELETE FROM word_retired WHERE word = ?", word.text);
    writeChange(db, {clock.now(), WordChangeKind::broughtBack, word, one.text, {}});
  });
}

std::vector<WordChange> wordChanges(store::Store& store, Millis since) {
  return store::read(store, [&](SQLite::Database& db) {
    std::vector<WordChange> changes;
    auto rows = store::bound(db, "SELECT at, kind, word, text, other FROM word_change WHERE at >= ? ORDER BY id", since);
    while (rows.executeStep()) {
      WordChange change{rows.getColumn(0).getInt64(), known<WordChangeKind>(rows.getColumn(1)), {rows.getColumn(2).getString()}, rows.getColumn(3).getString(), {}};
      if (!rows.getColumn(4).isNull()) change.other = WordId{rows.getColumn(4).getString()};
      changes.push_back(std::move(change));
    }
    return changes;
  });
}

bool bring(store::Store& store, Clock& clock, TastingWord word) {
  checkUid(word.id.text);
  checkWord(word);
  return store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    if (wordWith(list, word.id)) return false;
    writeWord(db, word);
    const Millis now = clock.now();
    writeChange(db, {now, WordChangeKind::added, word.id, word.text, {}});
    if (const TastingWord* alike = calledAlike(list, word)) writeMerge(db, now, word, alike->id);
    return true;
  });
}

bool bringMerge(store::Store& store, Clock& clock, const WordId& word, const WordId& into) {
  return store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    const TastingWord& one = needed(list, word, "id");
    needed(list, into, "same_as");
    if (one.sameAs || leadsTo(list, into, word)) return false;
    writeMerge(db, clock.now(), one, into);
    return true;
  });
}

bool bringRetired(store::Store& store, Clock& clock, const WordId& word) {
  return store::write(store, [&](SQLite::Database& db) {
    const WordList list = readWords(db);
    const TastingWord& one = needed(list, word, "id");
    if (one.retired) return false;
    writeRetired(db, clock.now(), one);
    return true;
  });
}

}  // namespace oddglass::shelf
