#pragma once

#include "domain/numbers.h"
#include "domain/shelf.h"
#include "domain/uid.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass {

/// The families of tasting words, in the order in which they are listed: what a drink is made of, taste and feel, then where faults are hunted.
enum class WordClass { grain, roast, fruity, floral, hop, spice, sweet, sour, bitter, mouthfeel, yeast, air, sulphur, spoiled, cellar, other };

/// How a word is usually meant. Nearly every fault of one drink is wanted in another.
enum class Leaning { fault, either, wanted };

/// The usual caution that goes with a word.
enum class Care { none, pressure, sulphite, doNotSwallow };

/// A word that tasters use for what they smell, taste or feel.
struct TastingWord {
  WordId id;                           ///< the same in every store; those of the program's own list are fixed
  std::string text;                    ///< 1 to 60 letters; English in the program's own list, and what a file holds
  std::vector<std::string> alsoCalled; ///< other names that mean this word; of the program's own list only
  WordClass wordClass = WordClass::other;
  std::set<Kind> drinks;               ///< of which it is usually said; not empty
  std::string compound;                ///< where the trade names one; else empty
  Leaning leaning = Leaning::either;
  Care care = Care::none;
  std::string meaning;                 ///< what it means at this table, up to 1000 letters; own words only
  bool own = false;                    ///< added here, not of the program's own list
  bool retired = false;                ///< no longer offered; what was answered with it stays
  std::optional<WordId> sameAs;        ///< merged: answers with this word count as that one
  bool operator==(const TastingWord&) const = default;
};

/// The list that comes with the program, class by class. Wording is our own, over the trade's terms and compounds.
const std::vector<TastingWord>& builtInWords();

/// The word of the program's own list with this id, or null.
const TastingWord* builtInWord(const WordId& id);

/// The names in a text such as "stable; horse; leather".
std::vector<std::string> namesIn(std::string_view text);

enum class WordChangeKind { added, renamed, merged, takenApart, retired, broughtBack };

/// One change of the list, so that trends can mark where it is another one.
struct WordChange {
  Millis at = 0;
  WordChangeKind kind = WordChangeKind::added;
  WordId word;
  std::string text;             ///< what the word was called then; for `renamed` the former name
  std::optional<WordId> other;  ///< merged into, or taken apart from
  bool operator==(const WordChange&) const = default;
};

}  // namespace oddglass
