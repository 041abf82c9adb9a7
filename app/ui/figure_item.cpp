#include "ui/figure_item.h"

#include <QPainter>
#include <algorithm>

namespace oddglass::ui {
namespace {

constexpr double narrowest = 300, widest = 1200;

QRectF around(const figures::Mark& mark) {
  struct Box {
    QRectF operator()(const figures::Line& l) const { return QRectF(QPointF(l.x1, l.y1), QPointF(l.x2, l.y2)).normalized().adjusted(-4, -4, 4, 4); }
    QRectF operator()(const figures::Rect& r) const { return {r.x, r.y - 4, r.width, r.height + 8}; }
    QRectF operator()(const figures::Disc& d) const { return {d.x - d.radius - 4, d.y - d.radius - 4, 2 * d.radius + 8, 2 * d.radius + 8}; }
    QRectF operator()(const figures::Ring& r) const { return {r.x - r.radius - 4, r.y - r.radius - 4, 2 * r.radius + 8, 2 * r.radius + 8}; }
    QRectF operator()(const figures::Text&) const { return {}; }
  };
  return std::visit(Box{}, mark.shape);
}

}  // namespace

FigureItem::FigureItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAcceptHoverEvents(true);
  connect(this, &FigureItem::lookChanged, this, [this] { update(); });
}

void FigureItem::setSource(const FigureSource& source) {
  m_source = source;
  layOut();
  emit sourceChanged();
}

void FigureItem::setTextScale(qreal scale) {
  if (scale == m_textScale) return;
  m_textScale = scale;
  layOut();
  emit lookChanged();
}

QString FigureItem::sentence() const { return QString::fromStdString(m_figure.sentence); }

QStringList FigureItem::tableLines() const {
  QStringList lines;
  for (const auto& row : m_figure.table.rows) {
    QStringList cells;
    for (std::size_t i = 0; i < row.size() && i < m_figure.table.headers.size(); ++i)
      cells << QString::fromStdString(m_figure.table.headers[i]) + QStringLiteral(": ") + QString::fromStdString(row[i]);
    lines << cells.join(QStringLiteral(", "));
  }
  return lines;
}

void FigureItem::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickPaintedItem::geometryChange(now, before);
  if (now.width() != before.width()) layOut();
}

void FigureItem::layOut() {
  if (!m_source.isDrawn() || width() <= 0) {
    m_figure = {};
  } else {
    m_figure = m_source.layOut(std::clamp(width() / m_textScale, narrowest, widest), print::figureMeasure());
  }
  setImplicitHeight(m_figure.height * m_textScale);
  emit laidOut();
  update();
}

void FigureItem::paint(QPainter* painter) {
  painter->scale(m_textScale, m_textScale);
  print::paintFigure(*painter, m_figure, {m_ink, m_muted, m_hair, m_accent, m_soft});
}

void FigureItem::hoverMoveEvent(QHoverEvent* event) {
  const QPointF at = event->position() / m_textScale;
  const auto hit = std::find_if(m_figure.marks.rbegin(), m_figure.marks.rend(),
                                [&](const figures::Mark& mark) { return !mark.readOut.empty() && around(mark).contains(at); });
  tell(hit == m_figure.marks.rend() ? QString() : QString::fromStdString(hit->readOut));
}

void FigureItem::hoverLeaveEvent(QHoverEvent*) { tell({}); }

void FigureItem::tell(const QString& readOut) {
  if (readOut == m_readOut) return;
  m_readOut = readOut;
  emit readOutChanged();
}

}  // namespace oddglass::ui
