#pragma once

#include "figures/scale.h"

#include <optional>

namespace oddglass::figures {

/// One drink that was poured twice under two codes: the two means, joined.
struct Twice {
  double first = 0, second = 0;  ///< on the scale
  std::string label;             ///< that it is the same drink twice; needed
  std::string word;              ///< how far it moved
  std::string count;             ///< of how many; needed
  std::string readOut;           ///< in one sentence
};

/// One sample: its mean and how sure that is.
struct MeanRow {
  std::string label;
  std::optional<double> mean;    ///< on the scale; none: words only
  std::optional<Span> interval;  ///< of the mean; may run off the scale
  std::string word;              ///< the mean in words or figures; may be empty
  std::string count;             ///< of how many; needed
  std::string readOut;           ///< the row in one sentence
  std::string why;               ///< why there is no interval or no mean; needed then
  std::optional<Twice> twice;    ///< drawn in a row of its own below
};

/// The picture of the means of several samples on one scale. The words come from whoever knows the language.
struct MeanPicture {
  std::string title;
  Scale scale;
  std::vector<MeanRow> rows;  ///< drawn in this order
  std::string sentence;       ///< for screen readers
  Table table;
};

/// A filled dot with its interval for each sample, two joined rings for a drink poured twice. Lays the picture out in `width` points, 300 to 860.
/// Throws std::invalid_argument, naming the field, on a width below 120, on numbers out of range and on words that are needed.
Figure meanFigure(const MeanPicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
