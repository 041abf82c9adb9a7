#pragma once

#include "domain/vocabulary.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass::shelf {

/// The whole list of tasting words as it stands: the program's own and those added here, merged and retired ones too.
using WordList = std::vector<TastingWord>;

/// The word with this id, or null.
const TastingWord* wordWith(const WordList& list, const WordId& id);

/// The word that an answer with this one counts as: itself, or the end of its merges. Null when the list does not hold it.
const TastingWord* standsFor(const WordList& list, const WordId& id);

/// The word that was meant by what was typed, or null: compared without case and in one Unicode form with every name and other name, then followed
/// through its merges. A word's own name goes before another word's other name.
const TastingWord* resolve(const WordList& list, std::string_view typed);

/// The name that a word counts under: that of the word that was meant, or, where the list does not hold it, what was typed, folded.
std::string nameMeant(const WordList& list, std::string_view typed);

/// Every word that counts as this one, itself left out.
WordList mergedInto(const WordList& list, const WordId& id);

/// Which words are wanted. Empty fields ask for nothing.
struct WordsWanted {
  std::string text = {};                ///< a part of one of its names, or of its compound
  std::optional<WordClass> wordClass = {};
  std::optional<Kind> drink = {};       ///< said of this drink
  bool withRetired = false;
  bool withMerged = false;
};

/// The wanted words, class by class; in a class the program's own first, as they stand there, then own words by name.
WordList wordsOf(const WordList& list, const WordsWanted& wanted = {});

}  // namespace oddglass::shelf
