#pragma once

#include "figures/scale.h"

namespace oddglass::figures {

/// An answer and how often it was given; by whom is not told.
struct Heap {
  double at = 0;        ///< on the scale
  int times = 0;        ///< 0 or more
  std::string readOut;  ///< the heap in one sentence
};

/// The answers of one row, every one a dot.
struct StripRow {
  std::string label;
  std::vector<Heap> heaps;  ///< in any order
  std::string word;         ///< what came out, for one a rank sum; may be empty
  std::string count;        ///< of how many; needed
};

/// The picture of every answer on its scale, one row a sample or an item. The words come from whoever knows the language.
struct StripPicture {
  std::string title;
  Scale scale;
  std::vector<StripRow> rows;  ///< drawn in this order
  std::string sentence;        ///< for screen readers
  Table table;
};

/// Each answer as a dot at its value, equal and near ones stacked upwards without any jitter; the dots shrink before they pile too high.
/// The order of heaps in a row changes nothing. Lays the picture out in `width` points, 300 to 860.
/// Throws std::invalid_argument, naming the field, on a width below 120, on numbers out of range and on words that are needed.
Figure stripFigure(const StripPicture& picture, double width, const Measure& measure = roomFor);

/// One sample of a forced ranking.
struct RankRow {
  std::string label;
  std::vector<int> times;             ///< how often it was given each rank, first to last; as many in every row, two or more
  std::vector<std::string> readOuts;  ///< one sentence for each rank
  std::string rankSum;                ///< the sum of its ranks in words; needed
  std::string count;                  ///< of how many; needed
};

/// The picture of ranks, one row a sample.
struct RankPicture {
  std::string title;
  std::string firstName, lastName;  ///< what the first and the last rank say; needed
  std::vector<RankRow> rows;        ///< drawn in this order
  std::string sentence;             ///< for screen readers
  Table table;
};

/// For each sample how often each rank was given, one dot an answer, over columns numbered from 1. As stripFigure otherwise.
Figure rankFigure(const RankPicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
