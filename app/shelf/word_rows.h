#pragma once

#include "shelf/word_list.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace oddglass::shelf {

/// The list inside the running transaction.
WordList readWords(SQLite::Database& db);

/// The word with this id; Problem unknown, naming `argument`.
const TastingWord& needed(const WordList& list, const WordId& id, const char* argument);

/// Cleans the texts of a word and refuses what cannot be stored. Called before the transaction.
void checkWord(TastingWord& word);

/// Another word that has this name already, or null. Merged words are asked too, or not.
enum class Merged { asked, passedOver };
const TastingWord* calledAlike(const WordList& list, const TastingWord& word, Merged merged = Merged::asked);

/// Writes an own word: a new one, or over the one with its id.
void writeWord(SQLite::Database& db, const TastingWord& word);

void writeMerge(SQLite::Database& db, Millis at, const TastingWord& word, const WordId& into);
void writeRetired(SQLite::Database& db, Millis at, const TastingWord& word);
void writeChange(SQLite::Database& db, const WordChange& change);

}  // namespace oddglass::shelf
