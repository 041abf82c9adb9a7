#pragma once

#include "domain/chance.h"
#include "domain/vocabulary.h"
#include "shelf/word_list.h"
#include "store/store.h"

#include <functional>
#include <string>
#include <vector>

namespace oddglass::shelf {

/// The list of tasting words as it stands now: the program's own, class by class, then own words by name.
WordList vocabulary(store::Store& store);

/// The name that each word counts under as the list stands now, as `nameMeant` says.
std::function<std::string(const std::string&)> meaningNow(store::Store& store);

/// Adds an own word. Its id, `own`, `retired` and `sameAs` are not read.
/// Problems by argument: word (empty; tooLong, 60 letters; alreadyThere with the name that another word has), drinks (empty), meaning (tooLong, 1000 letters).
WordId addWord(store::Store& store, Clock& clock, Chance& chance, TastingWord word);

/// Changes an own word: its name, class, drinks, leaning and meaning. Problems as above; word (unknown, ofTheProgram).
void changeWord(store::Store& store, Clock& clock, TastingWord word);

/// Merges a word into another: from now on it counts as that one, in old answers too. What was merged into it goes along, and comes apart with it.
/// Problems: word, into (unknown), into (wordRetired; ringOfWords when it is the word itself or counts as it).
void mergeWord(store::Store& store, Clock& clock, const WordId& word, const WordId& into);

/// Lets a merged word stand for itself again. Problem alreadyThere ("word") while another word has its name. Nothing happens to a word that is not merged.
void takeApart(store::Store& store, Clock& clock, const WordId& word);

/// A retired word is no longer offered; what was answered with it stays. Problem unknown ("word"). Done twice, it is done once.
void retireWord(store::Store& store, Clock& clock, const WordId& word);
void bringBackWord(store::Store& store, Clock& clock, const WordId& word);

/// What was changed in the list from a moment on, the earliest first.
std::vector<WordChange> wordChanges(store::Store& store, Millis since = 0);

/// Words from elsewhere, under their own ids. What is here already stays as it is, and false comes back.
/// An own word that is called like one that is here comes in merged into it.
bool bring(store::Store& store, Clock& clock, TastingWord word);
/// Problem unknown ("id", "same_as"). A merge that would lead in a ring here is left out.
bool bringMerge(store::Store& store, Clock& clock, const WordId& word, const WordId& into);
/// Problem unknown ("id").
bool bringRetired(store::Store& store, Clock& clock, const WordId& word);

}  // namespace oddglass::shelf
