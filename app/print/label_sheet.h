#pragma once

#include "print/paper_size.h"

#include <QRectF>

class QPainter;

namespace oddglass::print {

/// How the labels lie on a sheet, in millimetres. What is left between margins and gaps is shared out evenly.
struct LabelSheet {
  int columns = 3, rows = 8;
  double top = 10, right = 10, bottom = 10, left = 10;   ///< margins
  double across = 0, down = 0;                            ///< gaps between neighbours
  int skip = 0;                                           ///< labels that a begun sheet lacks already, counted row by row
  bool operator==(const LabelSheet&) const = default;
};

/// Throws Problem outOfRange naming "columns", "rows", "margins", "gaps" or "skip"; labelsDoNotFit where a label would be smaller than 18 by 10 mm.
void requireLabels(const LabelSheet& sheet, PaperSize size);

/// How many labels a sheet holds.
constexpr int labelsOn(const LabelSheet& sheet) { return sheet.columns * sheet.rows; }

/// Where a label lies, in points from the sheet's top left corner; counted from 0, row by row.
QRectF labelAt(const LabelSheet& sheet, PaperSize size, int label);

/// Corners to cut along, outside of the label where a gap leaves room for them.
void cutMarks(QPainter& painter, const QRectF& label);

}  // namespace oddglass::print
