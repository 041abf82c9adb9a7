#pragma once

#include "domain/sheet.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// How a question of a score sheet stands before the taster. No lot, no limit, no aim in any of it.

/// "How sweet?", "Sweet: too little, too much?", "How do you like it?".
std::string askedLabel(const Voice& voice, const SheetItem& item);
/// Above all words to tick.
std::string ticksLabel(const Voice& voice);
/// The answers of a question with a few of them, from its lowest value up; empty for lines and words. Nine points of liking are those of
/// Peryam and Pilgrim 1957 (the words, not the numbers).
std::vector<std::string> answerWords(const Voice& voice, ItemKind kind);
/// The two ends of a line; empty for everything else.
struct Ends {
  std::string low, high;
};
Ends scaleEnds(const Voice& voice, ItemKind kind);
/// The words on a labelled magnitude line and where they stand, in 1/1000 of its length: barely detectable 1.4, weak 6.1, moderate 17.2, strong 34.7,
/// very strong 52.5 per cent. Source: Green, Shaffer and Gilmore 1993, Chem Senses 18:683.
struct ScaleMark {
  int at = 0;
  std::string word;
};
std::vector<ScaleMark> magnitudeMarks(const Voice& voice);
/// A place on a line as it is read out: "40 of 100"; on a labelled line the nearest word below it too.
std::string scaleReadOut(const Voice& voice, ItemKind kind, int value);
/// What is tapped by somebody who does not judge this: "I don't judge colour".
std::string passWords(const Voice& voice, const SheetItem& item);

}  // namespace oddglass::words
