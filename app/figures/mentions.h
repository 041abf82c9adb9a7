#pragma once

#include "figures/figure.h"

namespace oddglass::figures {

/// How many said a word of one sample.
struct Mention {
  int times = 0, of = 0;  ///< 0 <= times <= of
  std::string value;      ///< "3 of 7"; needed
  std::string readOut;    ///< in one sentence
};

/// One word and its mentions, as many as there are samples and in their order.
struct MentionRow {
  std::string word;
  std::vector<Mention> mentions;
};

/// The picture of words ticked or written, for one sample or several side by side.
struct MentionPicture {
  std::string title;
  std::vector<std::string> samples;  ///< one to six names
  std::vector<MentionRow> rows;
  std::string sentence;              ///< for screen readers
  Table table;
};

/// A bar for each word and sample, as long as the share of people; the words said most come first, equal ones as they came.
/// Lays the picture out in `width` points, 300 to 860. Throws std::invalid_argument, naming the field, on a width below 120, on
/// numbers out of range and on words that are needed.
Figure mentionFigure(const MentionPicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
