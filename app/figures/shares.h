#pragma once

#include "figures/figure.h"

namespace oddglass::figures {

/// One bar: how often something would happen, 0..1, with its words.
struct ShareBar {
  std::string label;    ///< "if half of people can taste it"
  double share = 0;     ///< 0..1
  std::string value;    ///< "77 times in 100"
  std::string readOut;  ///< the bar in one sentence
};

/// The picture of what a panel would show: one bar for each size of difference.
struct SharesPicture {
  std::string title;
  std::vector<ShareBar> bars;
  std::string nothing, always;  ///< labels at the two ends of the scale
  std::string sentence;
  Table table;
};

/// Lays the picture out in `width` points, 300 to 1200; the height follows from the words.
/// Throws std::invalid_argument, naming the field, on a width below 120 or a share out of range.
Figure sharesFigure(const SharesPicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
