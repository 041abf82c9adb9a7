#pragma once

#include "figures/figure.h"

#include <optional>

namespace oddglass::figures {

/// The picture of an interval for a share of people, from none to all. The words come from whoever knows the language.
struct IntervalPicture {
  double low = 0, high = 1;      ///< 0 <= low <= high <= 1
  std::optional<double> point;   ///< the estimate, 0..1; may lie outside the interval's rounding, never outside 0..1
  std::optional<double> limit;   ///< the limit set before, 0..1; drawn as a tick with its label
  std::string title;             ///< "How many people like these can tell"
  std::string none, half, all;   ///< labels at 0, 1/2 and 1
  std::string range;             ///< "from none to about half"
  std::string limitLabel;        ///< "your limit"
  std::string sentence;          ///< for screen readers
  Table table;
};

/// Lays the picture out in `width` points, 300 to 1200; the height follows from the words.
/// Throws std::invalid_argument, naming the field, on a width below 120 or numbers out of range.
Figure intervalFigure(const IntervalPicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
