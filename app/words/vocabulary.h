#pragma once

#include "domain/vocabulary.h"
#include "words/voice.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::words {

/// The word as people read it: an own word as it was typed, one of the program's list in the reader's language.
std::string wordText(const Voice& voice, const TastingWord& word);

/// Its other names, in the reader's language.
std::vector<std::string> otherNames(const Voice& voice, const TastingWord& word);

/// "Also stable, horse and leather. Compound: 4-ethylphenol."; empty where there is neither.
std::string otherNamesLine(const Voice& voice, const TastingWord& word);

/// "1 word", "7 words".
std::string wordCount(const Voice& voice, int count);

/// "Grain and malt", "Gone off"; and what a class is looked through for.
std::string className(const Voice& voice, WordClass wordClass);
std::string classLine(const Voice& voice, WordClass wordClass);

/// "usually a fault", "a fault or wanted, as the style has it", "usually wanted".
std::string leaningName(const Voice& voice, Leaning leaning);

/// "Said of beer, mead and cider."
std::string drinksLine(const Voice& voice, const TastingWord& word);

/// The usual caution, in sentences; empty where there is none.
std::string careSentence(const Voice& voice, Care care);

/// Usual causes and what brewers usually do about them. Never a diagnosis: `reservation` says so and goes with it wherever it is shown.
struct WordHint {
  std::string causes;
  std::string deeds;
  std::string source;
  std::string reservation;
};

/// The hint of a word of the program's own list; nothing for an own word.
std::optional<WordHint> wordHint(const Voice& voice, const TastingWord& word);

/// One change of the list in a sentence, with its day. `word` and `other` are what the two words are called now.
std::string changeLine(const Voice& voice, const WordChange& change, const std::string& word, const std::string& other);

}  // namespace oddglass::words
