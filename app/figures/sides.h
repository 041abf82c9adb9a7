#pragma once

#include "figures/figure.h"

namespace oddglass::figures {

/// The answers on one side of about right.
struct Side {
  int times = 0;        ///< 0 or more
  std::string readOut;  ///< the side in one sentence, with the drop in liking
};

/// One property: how many found it too little, about right, too much.
struct SidesRow {
  std::string label;
  Side little, right, much;
  std::string count;  ///< of how many; needed
};

/// The picture of just-about-right answers, one row a property. The words come from whoever knows the language.
struct SidesPicture {
  std::string title;
  std::string little, right, much;  ///< what the three sides are called; needed
  std::vector<SidesRow> rows;       ///< drawn in this order
  std::string sentence;             ///< for screen readers
  Table table;
};

/// Bars to both sides of the count of about right, in people and never in percent; one answer is as long on either side and in every row.
/// Lays the picture out in `width` points, 300 to 860. Throws std::invalid_argument, naming the field, on a width below 120, on a
/// negative count and on words that are needed.
Figure sidesFigure(const SidesPicture& picture, double width, const Measure& measure = roomFor);

}  // namespace oddglass::figures
