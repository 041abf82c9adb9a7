#include "print/tag_pages.h"

#include "print/pages.h"

#include <QPainter>

#include <algorithm>
#include <utility>

namespace oddglass::print {
namespace {

constexpr double smallest = 5.5;

/// A text in the largest type in which all of its lines stand in `height` points; in the smallest, as many as do.
struct Fitted {
  SetText text;
  int lines;
  double high;
};

Fitted fitted(const std::string& text, double width, double height, bool isBold) {
  for (double size = 11;; size -= 0.5) {
    const Type type{size, isBold, QColor(Qt::black)};
    SetText set(text, type, width);
    const int lines = std::min(set.lines(), static_cast<int>(height / leading(type)));
    if (lines == set.lines() || size <= smallest) return {std::move(set), lines, lines * leading(type)};
  }
}

void drawTag(Pages& pages, const QRectF& label, const words::BottleTag& tag) {
  const double inset = 6, width = label.width() - 2 * inset, height = label.height() - 2 * inset;
  const double ofLetters = widthOf(tag.letters, {10, true, {}}) / 10;
  const double size = std::clamp(std::min(height * 0.6, width * 0.28 / ofLetters), 8.0, 40.0);
  const double side = size * ofLetters + 8;
  QPainter& painter = pages.painter();
  painter.save();
  painter.setClipRect(label);
  pages.at(label.left() + inset, label.top() + inset, side, tag.letters, {size, true, QColor(Qt::black)});
  const Fitted drink = fitted(tag.drink, width - side, height * 0.55, true), keptFor = fitted(tag.keptFor, width - side, height * 0.4, false);
  const double left = label.left() + inset + side;
  drink.text.draw(painter, left, label.top() + inset, 0, drink.lines);
  keptFor.text.draw(painter, left, label.bottom() - inset - keptFor.high, 0, keptFor.lines);
  painter.restore();
}

}  // namespace

std::string tagsPdf(const std::string& title, const std::vector<words::BottleTag>& tags, PaperSize size, const LabelSheet& sheet) {
  requireLabels(sheet, size);
  return pdf(size, {title, {}, {}}, [&](Pages& pages) {
    int at = sheet.skip;
    for (const words::BottleTag& tag : tags) {
      if (at == labelsOn(sheet)) {
        pages.turn();
        at = 0;
      }
      const QRectF label = labelAt(sheet, size, at++);
      cutMarks(pages.painter(), label);
      drawTag(pages, label, tag);
    }
  });
}

}  // namespace oddglass::print
