#include "print/label_sheet.h"

#include "domain/problem.h"
#include "print/pages.h"

#include <QPainter>

#include <algorithm>
#include <charconv>
#include <string>

namespace oddglass::print {
namespace {

constexpr double leastWide = 18, leastHigh = 10;   // mm: a code in 20 pt and a line below it

std::string inFigures(double value) {
  char text[32];
  return {text, std::to_chars(text, text + sizeof text, value, std::chars_format::general, 6).ptr};
}

void require(double value, double low, double high, const char* argument) {
  if (!(value >= low && value <= high)) throw Problem(Trouble::outOfRange, argument, {{"text", inFigures(value)}, {"low", inFigures(low)}, {"high", inFigures(high)}});
}

QSizeF labelSize(const LabelSheet& sheet, PaperSize size) {
  const QSizeF paper = pointsOf(size);
  return {(paper.width() - points(sheet.left + sheet.right + sheet.across * (sheet.columns - 1))) / sheet.columns,
          (paper.height() - points(sheet.top + sheet.bottom + sheet.down * (sheet.rows - 1))) / sheet.rows};
}

}  // namespace

void requireLabels(const LabelSheet& sheet, PaperSize size) {
  require(sheet.columns, 1, 12, "columns");
  require(sheet.rows, 1, 30, "rows");
  for (const double margin : {sheet.top, sheet.right, sheet.bottom, sheet.left}) require(margin, 0, 80, "margins");
  for (const double gap : {sheet.across, sheet.down}) require(gap, 0, 50, "gaps");
  require(sheet.skip, 0, labelsOn(sheet) - 1, "skip");
  const QSizeF label = labelSize(sheet, size);
  const auto fits = [](double have, double least, int count, const char* argument) {
    if (have < points(least)) throw Problem(Trouble::labelsDoNotFit, argument, {{"have", inFigures(std::max(0, static_cast<int>(have * 25.4 / 72)))}, {"need", inFigures(least)}, {"text", std::to_string(count)}});
  };
  fits(label.width(), leastWide, sheet.columns, "columns");
  fits(label.height(), leastHigh, sheet.rows, "rows");
}

QRectF labelAt(const LabelSheet& sheet, PaperSize size, int label) {
  const QSizeF one = labelSize(sheet, size);
  const int column = label % sheet.columns, row = label / sheet.columns;
  return {points(sheet.left) + column * (one.width() + points(sheet.across)), points(sheet.top) + row * (one.height() + points(sheet.down)), one.width(), one.height()};
}

void cutMarks(QPainter& painter, const QRectF& label) {
  const double mark = std::min(8.0, label.height() / 8);
  painter.setPen(QPen(lineColour, 0.5));
  for (const double x : {label.left(), label.right()})
    for (const double y : {label.top(), label.bottom()}) {
      painter.drawLine(QPointF(x - mark, y), QPointF(x + mark, y));
      painter.drawLine(QPointF(x, y - mark), QPointF(x, y + mark));
    }
}

}  // namespace oddglass::print
