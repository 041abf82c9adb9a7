#pragma once

#include "insight/counts.h"
#include "insight/points.h"
#include "words/sheet_asked.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// The words around the picture of a lot's gaps to the reference.
struct GapPictureWords {
  std::string title, zero, range, limit, less, more, why;
  std::vector<std::string> headers;
};
GapPictureWords gapPictureWords(const Voice& voice, const Plan& plan, Slot target, Slot lot);

/// The same by names.
GapPictureWords gapWordsBetween(const Voice& voice, const std::string& drink, const std::string& reference);

/// The verdict of a gap in a word or three: "less", "within the limit", "cannot tell yet".
std::string gapWord(const Voice& voice, insight::GapVerdict verdict);
/// How many people it is from: "8 people".
std::string gapCount(const Voice& voice, int people);

/// The words around the pictures of one question's points: the means of the drinks, and every answer.
struct PointsPictureWords {
  std::string means, answers;  ///< titles
  Ends ends;
  std::vector<ScaleMark> marks;
  std::string why;             ///< why a drink has no range
  std::vector<std::string> meanHeaders, answerHeaders;
};
PointsPictureWords pointsPictureWords(const Voice& voice, const insight::PointsLine& line);
/// Some people who gave one drink the same points: "Heather mead: 45 of 100 by 3 people".
std::string heapLine(const Voice& voice, const std::string& drink, ItemKind kind, double value, int people);

/// The words around the pictures of what is counted.
struct CountPictureWords {
  std::string title;
  std::vector<std::string> headers;  ///< of the table behind it
};
CountPictureWords countPictureWords(const Voice& voice, const insight::RightLine& line);
CountPictureWords countPictureWords(const Voice& voice, const insight::RankedLine& line);
CountPictureWords countPictureWords(const Voice& voice, const insight::BehaviourLine& line);
CountPictureWords countPictureWords(const Voice& voice, const insight::SplitLine& line);
CountPictureWords countPictureWords(const Voice& voice, const insight::SaidLine& line);
CountPictureWords countPictureWords(const Voice& voice, const insight::SheetSureLine& line);
CountPictureWords tickedPictureWords(const Voice& voice);

/// "Heather mead, too little: 3 of 8 people, who liked it 1.2 points less"; the drop is left out where there is none.
std::string rightSideLine(const Voice& voice, const std::string& drink, const std::string& side, int count, int of, const std::optional<double>& drop);
/// "Heather mead, thin: 3 of 8".
std::string mentionLine(const Voice& voice, const std::string& drink, const std::string& word, int count, int of);
/// The three sides of about right, as the table of that question calls them.
struct SideNames {
  std::string little, right, much;
};
SideNames sideNames(const Voice& voice);
/// What stands at the two ends of a forced order.
Ends rankEnds(const Voice& voice, const std::string& word);
/// "Heather mead, rank 2: 3 of 8 people".
std::string rankLine(const Voice& voice, const std::string& drink, int rank, int count, int of);
std::string rankSumWord(const Voice& voice, double sum);
/// "1.4 of 5".
std::string splitWord(const Voice& voice, double points);
/// What stands at the two ends of the points that were split.
Ends splitEnds(const Voice& voice);
std::string sheetsWord(const Voice& voice, int count);
std::string foundNone(const Voice& voice);

}  // namespace oddglass::words
