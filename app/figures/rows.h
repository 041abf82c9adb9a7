#pragma once

#include "figures/figure.h"

namespace oddglass::figures {

/// The words of one row: what it is about, what came out, of how many. The last two say `readOut`.
struct RowWords {
  std::string label, word, count;
  std::string readOut = {};
};

/// Where the words and the marks of rows stand. Side by side where the marks keep room enough, else the words above the marks.
struct RowPlan {
  bool beside = false;
  double width = 0, labelWidth = 0, noteLeft = 0;
  double left = 0, right = 0;  ///< the two ends of the scale; marks may pass them by the inset
  double inset = 0;
};

/// From top to bottom, in points; `axis` is the middle.
struct Strip {
  double top = 0, axis = 0, bottom = 0;
};

/// Rows that have been given their place.
struct Rows {
  std::vector<Strip> strips;  ///< where the marks of each row may lie, in the order of the rows
  std::vector<Strip> panes;   ///< what goes through all rows is drawn in these: one beside the words, else one a row
  double bottom = 0;          ///< nothing of the rows is lower
};

/// Shares the width between words and marks. `inset` is how far marks at the ends of the scale may reach past them.
RowPlan planRows(const std::vector<RowWords>& rows, double width, double inset, const Measure& measure);

/// Adds the words of the rows from `top` down and leaves each a strip of its height, 1 point or more.
Rows addRows(Figure& figure, const RowPlan& plan, const std::vector<RowWords>& rows, const std::vector<double>& heights, double top, const Measure& measure);

/// Strokes from top to bottom of every pane.
void addUpright(Figure& figure, const Rows& rows, double x, double stroke, Role role, bool dashed = false, const std::string& readOut = {});
/// A hairline in dashes along every row, from end to end of the scale, so that nobody takes it for an interval.
void addGuides(Figure& figure, const Rows& rows, const RowPlan& plan);

}  // namespace oddglass::figures
