#include "print/pages.h"
#include "print/table_pages.h"
#include "words/paper.h"

#include <QPainter>

#include <algorithm>

namespace oddglass::print {
namespace {

constexpr double biggestCup = 170;   // points, 60 mm: a glass stands in it
constexpr int cupsInARow = 5;

/// One flight in a frame of its own: circles from left to right, the code in each, the taster's edge below.
void drawMat(Pages& pages, const words::Voice& voice, const words::TablePaperText& text, const tasting::Flight& flight, double y, double height) {
  QPainter& painter = pages.painter();
  const double x = pages.left(), width = pages.width();
  pages.at(x, y, width * 0.6, words::placeLine(voice, flight.place, flight.round, flight.rounds), {20, true, QColor(Qt::black)});
  pages.at(x, y + 30, width, text.leftToRight, {10, false, quietColour});
  const SetText edge(text.tasterSits, {9, false, Type{}.colour}, width);
  const double floor = y + height - edge.height() - 10;
  painter.setPen(QPen(Qt::black, 1.2));
  painter.drawLine(QPointF(x, floor), QPointF(x + width, floor));
  edge.drawInTheMiddle(painter, x, floor + 4, width);

  const int cups = static_cast<int>(flight.cups.size()), rows = (cups + cupsInARow - 1) / cupsInARow, inRow = (cups + rows - 1) / std::max(rows, 1);
  const double top = y + 50, roomHigh = (floor - top) / std::max(rows, 1), roomWide = width / std::max(inRow, 1);
  const double across = std::min({biggestCup, roomWide - 10, roomHigh - 26});
  for (int i = 0; i < cups; ++i) {
    const tasting::FlightCup& cup = flight.cups[static_cast<std::size_t>(i)];
    const double middle = x + roomWide * (i % inRow + 0.5), high = top + roomHigh * (i / inRow) + (roomHigh - across) / 2 - 8;
    painter.setPen(QPen(lineColour, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QPointF(middle, high + across / 2), across / 2, across / 2);
    const double size = std::min(across / 4, 34.0);
    pages.code(middle - across / 2, high + across / 2 - size * 0.7, std::to_string(cup.code.value), size, across);
    const std::string where = cup.isMarked ? text.markedCup + " (" + text.mark + ")" : words::positionWord(voice, cup.position, cups);
    SetText(where, {9, false, Type{}.colour}, roomWide - 4).drawInTheMiddle(painter, middle - roomWide / 2 + 2, high + across + 3, roomWide - 4);
  }
}

}  // namespace

std::string matsPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size) {
  const words::TablePaperText text = words::tablePaperText(voice);
  return pdf(size, {text.mats, words::paperFoot(voice, paper.guestTitle, paper.sealMark), {}}, [&](Pages& pages) {
    const double all = pages.bottom() - pages.top();
    bool isFirst = true;
    int half = 0;
    for (const tasting::PaperPlace& place : paper.places) {
      for (const tasting::Flight& flight : place.flights) {
        const bool isHalf = flight.cups.size() <= 3;
        if (!isFirst && (half == 0 || !isHalf)) {
          pages.turn();
          half = 0;
        }
        isFirst = false;
        const double y = pages.top() + (half == 1 ? all / 2 + 8 : 0);
        drawMat(pages, voice, text, flight, y, isHalf ? all / 2 - 16 : all - 8);
        if (isHalf && half == 0) {
          pages.painter().setPen(QPen(lineColour, 0.5, Qt::DashLine));
          pages.painter().drawLine(QPointF(0, pages.top() + all / 2 - 4), QPointF(pages.paper().width(), pages.top() + all / 2 - 4));
        }
        half = isHalf ? (half + 1) % 2 : 0;
      }
    }
  });
}

}  // namespace oddglass::print
