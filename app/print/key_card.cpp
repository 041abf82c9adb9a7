#include "print/pages.h"
#include "print/pour_pages.h"
#include "words/paper.h"

#include <QPainter>

#include <algorithm>
#include <map>

namespace oddglass::print {
namespace {

constexpr double inset = 14;   // points kept free at the edges of a quarter
const Type insideType{8, false, QColor(Qt::black)};

/// What is inside: the drinks by letter, then flight by flight each code with its letter.
std::vector<std::string> inside(const words::Voice& voice, const session::PourSheet& sheet) {
  std::vector<std::string> lines;
  std::map<Slot, std::string> letters;
  for (const session::PourLot& lot : sheet.bottleByBottle) {
    letters[lot.slot] = std::string(1, static_cast<char>('A' + lot.slot.value - 1));
    lines.push_back(letters[lot.slot] + ": " + lot.name);
  }
  const words::PourPaperText text = words::pourPaperText(voice, sheet.cupMl);
  std::pair<Place, Round> before{};
  bool isSpares = false;
  for (const session::PourLine& line : sheet.placeByPlace) {
    const std::string cup = std::to_string(line.code.value) + ' ' + letters[line.slot];
    const bool isNew = line.spare > 0 ? !isSpares : before != std::pair(line.place, line.round);
    if (isNew) lines.push_back((line.spare > 0 ? text.spare : words::placeLine(voice, line.place, line.round, sheet.rounds)) + ": " + cup);
    else lines.back() += ", " + cup;
    isSpares = line.spare > 0;
    before = {line.place, line.round};
  }
  return lines;
}

/// A pattern that nothing printed behind it can be read through, against the light.
void hatch(QPainter& painter, const QRectF& area) {
  painter.save();
  painter.setPen(QPen(QColor("#5a5a5a"), 0.7));
  for (double x = area.left() - area.height(); x < area.right(); x += 3) {
    const double from = std::max(x, area.left()), to = std::min(x + area.height(), area.right());
    painter.drawLine(QPointF(from, area.bottom() - (from - x)), QPointF(to, area.bottom() - (to - x)));
    painter.drawLine(QPointF(from, area.top() + (from - x)), QPointF(to, area.top() + (to - x)));
  }
  painter.restore();
}

}  // namespace

std::string keyCardPdf(const words::Voice& voice, const session::PourSheet& sheet, PaperSize size) {
  const words::PourPaperText text = words::pourPaperText(voice, sheet.cupMl);
  const std::vector<std::string> lines = inside(voice, sheet);
  return pdf(size, {text.keyTitle, {}, {}}, [&](Pages& pages) {
    const double quarter = pages.paper().height() / 4, width = pages.width();
    std::size_t next = 0;
    int part = 0;   // lines of the text that is cut over two cards
    do {
      if (next > 0 || part > 0) pages.turn();
      QPainter& painter = pages.painter();
      // From the top: cover behind, front, the key, cover over it.
      hatch(painter, {0, quarter * 3, pages.paper().width(), quarter});
      for (int i = 0; i < 4; ++i) {
        painter.setPen(QPen(lineColour, 0.6, Qt::DashLine));
        if (i > 0) painter.drawLine(QPointF(0, quarter * i), QPointF(pages.paper().width(), quarter * i));
        const SetText how(text.folds[static_cast<std::size_t>(i)], {8, false, quietColour}, width);
        if (i == 3) painter.fillRect(QRectF(pages.left() - 4, quarter * i + inset - 4, how.width() + 8, how.height() + 8), Qt::white);
        if (i != 2) how.draw(painter, pages.left(), quarter * i + inset);
      }
      double y = quarter + inset + 18;
      for (const auto& [line, type] : {std::pair(text.keyHead, Type{20, true, QColor(Qt::black)}), std::pair(words::paperFoot(voice, sheet.guestTitle, sheet.sealMark), Type{11, false, Type{}.colour}),
                                       std::pair(text.keyHow, Type{10, false, Type{}.colour}), std::pair(text.keyWhen, Type{10, false, Type{}.colour})})
        y += pages.at(pages.left(), y, width, line, type) + 3;
      y = quarter * 2 + inset;
      y += pages.at(pages.left(), y, width, text.folds[2], {8, false, quietColour}) + 2;
      y += pages.at(pages.left(), y, width, text.keyInside, {8, true, QColor(Qt::black)});
      const double floor = quarter * 3 - inset;
      while (next < lines.size()) {
        const SetText set(lines[next], insideType, width);
        const int fit = std::min(set.lines() - part, static_cast<int>((floor - y) / leading(insideType)));
        if (fit < 1) break;
        set.draw(painter, pages.left(), y, part, part + fit);
        y += fit * leading(insideType);
        part += fit;
        if (part < set.lines()) break;
        part = 0;
        ++next;
      }
    } while (next < lines.size());
  });
}

}  // namespace oddglass::print
