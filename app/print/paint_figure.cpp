#include "print/paint_figure.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainter>

namespace oddglass::print {
namespace {

/// Type is set large and scaled down, since pixel sizes are whole numbers.
constexpr int setAt = 64;

QFont typeface() {
  QFont font(figureFamily());
  font.setPixelSize(setAt);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

QString written(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

struct Brush {
  QPainter& painter;
  const Colours& colours;
  figures::Role role;

  QColor colour(figures::Role of) const {
    switch (of) {
      case figures::Role::ink: return colours.ink;
      case figures::Role::muted: return colours.muted;
      case figures::Role::hair: return colours.hair;
      case figures::Role::accent: return colours.accent;
      case figures::Role::soft: return colours.soft;
    }
    return colours.ink;
  }
  void operator()(const figures::Line& line) const {
    QPen pen(colour(role), line.stroke, Qt::SolidLine, Qt::FlatCap);
    if (line.dashed) pen.setDashPattern({figures::dash / line.stroke, figures::dash / line.stroke});
    painter.setPen(pen);
    painter.drawLine(QPointF(line.x1, line.y1), QPointF(line.x2, line.y2));
  }
  void operator()(const figures::Rect& rect) const {
    painter.setPen(rect.outlined ? QPen(colour(rect.outline), 1) : QPen(Qt::NoPen));
    painter.setBrush(colour(role));
    painter.drawRoundedRect(QRectF(rect.x, rect.y, rect.width, rect.height), rect.radius, rect.radius);
  }
  void operator()(const figures::Disc& disc) const {
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(role));
    painter.drawEllipse(QPointF(disc.x, disc.y), disc.radius, disc.radius);
  }
  void operator()(const figures::Ring& ring) const {
    painter.setPen(QPen(colour(role), ring.stroke));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QPointF(ring.x, ring.y), ring.radius, ring.radius);
  }
  void operator()(const figures::Ellipse& ellipse) const {
    painter.save();
    painter.translate(ellipse.x, ellipse.y);
    painter.rotate(ellipse.turn);
    painter.setPen(QPen(colour(role), ellipse.stroke));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QPointF(0, 0), ellipse.rx, ellipse.ry);
    painter.restore();
  }
  void operator()(const figures::Text& text) const {
    const QFont font = typeface();
    const QString words = written(text.text);
    const double scale = text.size / setAt;
    const double width = QFontMetricsF(font).horizontalAdvance(words);
    const double before = text.anchor == figures::Anchor::start ? 0 : text.anchor == figures::Anchor::middle ? width / 2 : width;
    painter.save();
    painter.translate(text.x, text.y);
    painter.scale(scale, scale);
    painter.setFont(font);
    painter.setPen(colour(role));
    painter.drawText(QPointF(-before, 0), words);
    painter.restore();
  }
};

}  // namespace

QString figureFamily() {
  static const QString family = QFontDatabase::families().contains("Inter") ? QStringLiteral("Inter") : QStringLiteral("DejaVu Sans");
  return family;
}

void paintFigure(QPainter& painter, const figures::Figure& figure, const Colours& colours) {
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  for (const figures::Mark& mark : figure.marks) std::visit(Brush{painter, colours, mark.role}, mark.shape);
  painter.restore();
}

figures::Measure figureMeasure() {
  return [](std::string_view text, double size) { return QFontMetricsF(typeface()).horizontalAdvance(written(text)) * size / setAt; };
}

}  // namespace oddglass::print
