#pragma once

#include "print/pages.h"

#include <vector>

namespace oddglass::print {

/// What is filled in by hand. Each draws where the page is written to, and turns it before when it would not fit.

/// A box to tick at x, y (its top left corner), of type size.
void box(Pages& pages, double x, double y, double size = 10);
/// Boxes with words behind them, side by side, in as many rows as they need.
void boxes(Pages& pages, const std::vector<std::string>& words);
/// Cups with their codes and an empty box above each to tick or to write a number in. A code of 0 is an empty box to write the code in.
struct FormCup {
  int code = 0;
  std::string below;   ///< where it stands
  bool hasBox = true;
};
void cupBoxes(Pages& pages, const std::vector<FormCup>& cups);
/// A line of 100 mm between two named ends.
void line(Pages& pages, const std::string& low, const std::string& high);
/// The same upright, with names along it; `at` in 1/1000 of its length from below.
struct FormMark {
  int at = 0;
  std::string word;
};
void uprightLine(Pages& pages, const std::string& low, const std::string& high, const std::vector<FormMark>& marks);
/// Dotted lines to write on.
void writingLines(Pages& pages, int count);
/// A label over what is to be filled in, kept together with `height` points below it.
void asked(Pages& pages, const std::string& label, double height);

}  // namespace oddglass::print
