#include "print/pages.h"

#include "print/paint_figure.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace oddglass::print {
namespace {

constexpr int dotsPerInch = 1200;
const Type footType{8, false, quietColour};
constexpr double roomOfNumber = 90;   // points

/// Paints the whole file and gives its bytes and its pages.
std::pair<std::string, int> painted(PaperSize size, const PaperWords& words, int pageCount, const std::function<void(Pages&)>& write) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  int pages = 0;
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(dotsPerInch);
    writer.setPageSize(QPageSize(pointsOf(size), QPageSize::Point));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(QString::fromStdString(words.title));
    writer.setCreator(QStringLiteral("Oddglass"));
    QPainter painter(&writer);
    painter.scale(dotsPerInch / 72.0, dotsPerInch / 72.0);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    Pages paper(writer, painter, size, words, pageCount);
    write(paper);
    pages = paper.page();
  }
  return {buffer.data().toStdString(), pages};
}

}  // namespace

Pages::Pages(QPdfWriter& writer, QPainter& painter, PaperSize size, const PaperWords& words, int pageCount)
    : writer_(writer), painter_(painter), paper_(pointsOf(size)), words_(words), pageCount_(pageCount) {
  const SetText said(words_.foot, footType, width() - roomOfNumber);
  footTop_ = paper_.height() - margin_ + 8 - std::max(said.height(), leading(footType));
  foot();
}

void Pages::foot() {
  if (words_.pageOf) {
    const SetText number(words_.pageOf(page_, pageCount_), footType, roomOfNumber);
    number.draw(painter_, left() + width() - number.width(), footTop_);
  }
  if (!words_.foot.empty()) SetText(words_.foot, footType, width() - roomOfNumber).draw(painter_, left(), footTop_);
}

void Pages::turn() {
  writer_.newPage();
  ++page_;
  y_ = margin_;
  foot();
  if (!continued_.empty()) y_ += at(left(), y_, width(), continued_, {8, true, quietColour}) + 4;
  start_ = y_;
}

void Pages::need(double height) {
  if (y_ > start_ && y_ + height > bottom()) turn();
}

void Pages::paragraph(const std::string& text, const Type& type, double after) {
  if (text.empty()) return;
  const SetText set(text, type, width());
  for (int line = 0; line < set.lines();) {
    // Neither the first line nor the last one of a paragraph stands alone where that can be helped.
    const int atLeast = std::min(2, set.lines() - line);
    need(atLeast * leading(type));
    const int fit = std::max(atLeast, static_cast<int>((bottom() - y_) / leading(type)));
    const int to = std::min(set.lines(), line + fit);
    set.draw(painter_, left(), y_, line, to);
    y_ += (to - line) * leading(type);
    line = to;
  }
  y_ += after;
}

void Pages::heading(const std::string& text, double size, double with) {
  if (text.empty()) return;
  const Type type{size, true, Type{}.colour};
  const SetText set(text, type, width());
  if (y_ > start_) y_ += size * 0.8;
  need(set.height() + size * 0.3 + std::max(with, 3 * leading({})));
  paragraph(text, type, size * 0.3);
}

void Pages::rule() {
  painter_.setPen(QPen(lineColour, 0.35));
  painter_.drawLine(QPointF(left(), y_), QPointF(left() + width(), y_));
  y_ += 6;
}

double Pages::scaleOf(const figures::Figure& figure) const { return std::min({width() / figure.width, 1.0, (bottom() - start_) / figure.height}); }

double Pages::heightOf(const figures::Figure& figure) const { return figure.width <= 0 ? 0 : figure.height * scaleOf(figure); }

void Pages::figure(const figures::Figure& figure) {
  if (figure.width <= 0) return;
  const double scale = scaleOf(figure);
  need(figure.height * scale + 6);
  painter_.save();
  painter_.translate(left(), y_);
  painter_.scale(scale, scale);
  Colours colours;
  colours.hair = lineColour;
  paintFigure(painter_, figure, colours);
  painter_.restore();
  y_ += figure.height * scale + 6;
}

double Pages::at(double x, double y, double width, const std::string& text, const Type& type) {
  const SetText set(text, type, width);
  set.draw(painter_, x, y);
  return set.height();
}

double Pages::code(double x, double y, const std::string& digits, double size, double width) {
  const Type type{size, true, QColor(Qt::black)};
  const SetText set(digits, type, 10 * size);
  const double from = width > 0 ? x + (width - set.width()) / 2 : x;
  set.draw(painter_, from, y);
  painter_.setPen(QPen(Qt::black, size * 0.07, Qt::SolidLine, Qt::FlatCap));
  const double under = y + size * 1.2;
  painter_.drawLine(QPointF(from, under), QPointF(from + set.width(), under));
  return set.width();
}

std::string pdf(PaperSize size, const PaperWords& words, const std::function<void(Pages&)>& write) {
  return painted(size, words, painted(size, words, 1, write).second, write).first;
}

}  // namespace oddglass::print
