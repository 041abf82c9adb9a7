#include "print/form.h"

#include <QPainter>

#include <algorithm>

namespace oddglass::print {
namespace {

const Type optionType{9.5, false, Type{}.colour};
const Type besideType{8, false, quietColour};

}  // namespace

void box(Pages& pages, double x, double y, double size) {
  pages.painter().setPen(QPen(Qt::black, 0.8));
  pages.painter().setBrush(Qt::NoBrush);
  pages.painter().drawRect(QRectF(x, y + size * 0.15, size, size));
}

void boxes(Pages& pages, const std::vector<std::string>& words) {
  constexpr double square = 10, after = 5, apart = 16;
  double x = pages.left(), high = 0;
  const double most = pages.width() - square - after;
  pages.need(leading(optionType) + 6);
  for (const std::string& word : words) {
    const SetText set(word, optionType, most);
    if (x > pages.left() && x + square + after + set.width() > pages.left() + pages.width()) {
      pages.space(high + 5);
      pages.need(set.height() + 5);
      x = pages.left();
      high = 0;
    }
    box(pages, x, pages.y(), square);
    set.draw(pages.painter(), x + square + after, pages.y());
    high = std::max(high, set.height());
    x += square + after + set.width() + apart;
  }
  pages.space(high + 8);
}

void cupBoxes(Pages& pages, const std::vector<FormCup>& cups) {
  constexpr int mostInARow = 7;
  constexpr double square = 20, size = 20, height = 78;
  const double room = pages.width() / std::clamp(static_cast<int>(cups.size()), 3, mostInARow);
  for (std::size_t first = 0; first < cups.size(); first += mostInARow) {
    pages.need(height);
    const double y = pages.y();
    for (std::size_t i = first; i < std::min(cups.size(), first + mostInARow); ++i) {
      const double x = pages.left() + room * static_cast<double>(i - first);
      if (cups[i].hasBox) box(pages, x + (room - square) / 2, y, square);
      if (cups[i].code > 0) {
        pages.code(x, y + 30, std::to_string(cups[i].code), size, room);
      } else {
        pages.painter().setPen(QPen(lineColour, 0.8));
        pages.painter().drawRect(QRectF(x + room / 2 - 27, y + 32, 54, 24));
      }
      SetText(cups[i].below, besideType, room - 4).drawInTheMiddle(pages.painter(), x + 2, y + 60, room - 4);
    }
    pages.space(height);
  }
}

void line(Pages& pages, const std::string& low, const std::string& high) {
  const double length = points(100), side = (pages.width() - length) / 2 - 8;
  const SetText left(low, optionType, side), right(high, optionType, side);
  const double height = std::max({left.height(), right.height(), 22.0});
  pages.need(height);
  const double from = pages.left() + (pages.width() - length) / 2, y = pages.y() + 8;
  left.draw(pages.painter(), from - 8 - left.width(), pages.y());
  right.draw(pages.painter(), from + length + 8, pages.y());
  pages.painter().setPen(QPen(Qt::black, 1));
  pages.painter().drawLine(QPointF(from, y), QPointF(from + length, y));
  for (const double end : {from, from + length}) pages.painter().drawLine(QPointF(end, y - 5), QPointF(end, y + 5));
  pages.space(height + 4);
}

void uprightLine(Pages& pages, const std::string& low, const std::string& high, const std::vector<FormMark>& marks) {
  const double length = points(100), x = pages.left() + 60;
  pages.need(length + 24);
  const double foot = pages.y() + length + 10;
  const auto mark = [&](double share, const std::string& word, double reach) {
    const double y = foot - share * length;
    pages.painter().setPen(QPen(Qt::black, 1));
    pages.painter().drawLine(QPointF(x - reach, y), QPointF(x + reach, y));
    pages.at(x + 12, y - besideType.size * 0.75, pages.width() - 80, word, besideType);
  };
  pages.painter().setPen(QPen(Qt::black, 1));
  pages.painter().drawLine(QPointF(x, foot), QPointF(x, foot - length));
  pages.at(x + 12, foot + 1, pages.width() - 80, low, besideType);
  mark(0, {}, 6);
  mark(1, high, 6);
  for (const FormMark& each : marks) mark(each.at / 1000.0, each.word, 3);
  pages.space(length + 24);
}

void writingLines(Pages& pages, int count) {
  for (int i = 0; i < count; ++i) {
    pages.need(22);
    pages.space(20);
    pages.painter().setPen(QPen(lineColour, 0.6, Qt::DotLine));
    pages.painter().drawLine(QPointF(pages.left(), pages.y()), QPointF(pages.left() + pages.width(), pages.y()));
  }
  pages.space(8);
}

void asked(Pages& pages, const std::string& label, double height) {
  const Type type{10.5, true, Type{}.colour};
  pages.need(SetText(label, type, pages.width()).height() + 3 + height);
  pages.paragraph(label, type, 3);
}

}  // namespace oddglass::print
