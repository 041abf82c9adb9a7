#include "print/set_text.h"

#include "print/paint_figure.h"
#include "print/paper_size.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace oddglass::print {
namespace {

/// Type is laid out large and scaled down, since pixel sizes are whole numbers.
constexpr int laidOutAt = 64;

QFont fontOf(const Type& type) {
  QFont font(figureFamily());
  font.setPixelSize(laidOutAt);
  font.setHintingPreference(QFont::PreferNoHinting);
  // Otherwise 3x4 becomes another sign, and what is read back from the paper is not what was written.
  font.setStyleStrategy(QFont::PreferNoShaping);
  if (type.isBold) font.setWeight(QFont::DemiBold);
  return font;
}

QString inOneParagraph(std::string_view text) {
  QString clean = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
  for (QChar& each : clean)
    if (each.category() == QChar::Other_Control || each == QChar::LineSeparator || each == QChar::ParagraphSeparator) each = QLatin1Char(' ');
  return clean;
}

}  // namespace

QSizeF pointsOf(PaperSize size) { return size == PaperSize::a4 ? QSizeF(points(210), points(297)) : QSizeF(612, 792); }

SetText::SetText(std::string_view text, const Type& type, double width)
    : type_(type), layout_(std::make_unique<QTextLayout>(inOneParagraph(text), fontOf(type))) {
  QTextOption option;
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  option.setTextDirection(Qt::LeftToRight);
  layout_->setTextOption(option);
  layout_->setCacheEnabled(true);
  layout_->beginLayout();
  const double room = std::max(width, type.size) * laidOutAt / type.size;
  for (QTextLine line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
    line.setLineWidth(room);
    line.setPosition({0, 0});
  }
  layout_->endLayout();
}

double SetText::width() const {
  double widest = 0;
  for (int i = 0; i < lines(); ++i) widest = std::max(widest, layout_->lineAt(i).naturalTextWidth());
  return widest * type_.size / laidOutAt;
}

void SetText::drawLine(QPainter& painter, int line, double x, double y) const {
  const QTextLine each = layout_->lineAt(line);
  const double scale = type_.size / laidOutAt;
  painter.save();
  painter.setPen(type_.colour);
  // Baselines are spaced evenly, also where another script brings a taller typeface.
  painter.translate(x, y + 1.03 * type_.size);
  painter.scale(scale, scale);
  each.draw(&painter, {0, -each.ascent()});
  painter.restore();
}

void SetText::draw(QPainter& painter, double x, double y, int from, int to) const {
  for (int i = from; i < to; ++i) drawLine(painter, i, x, y + (i - from) * leading(type_));
}

void SetText::drawInTheMiddle(QPainter& painter, double x, double y, double room) const {
  for (int i = 0; i < lines(); ++i) {
    const double width = layout_->lineAt(i).naturalTextWidth() * type_.size / laidOutAt;
    drawLine(painter, i, x + (room - width) / 2, y + i * leading(type_));
  }
}

double widthOf(std::string_view text, const Type& type) { return QFontMetricsF(fontOf(type)).horizontalAdvance(inOneParagraph(text)) * type.size / laidOutAt; }

double widestWordOf(std::string_view text, const Type& type) {
  double widest = 0;
  for (const QString& word : inOneParagraph(text).split(QLatin1Char(' '))) widest = std::max(widest, QFontMetricsF(fontOf(type)).horizontalAdvance(word));
  return widest * type.size / laidOutAt;
}

}  // namespace oddglass::print
