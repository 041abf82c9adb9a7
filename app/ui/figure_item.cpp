#include "ui/figure_item.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace oddglass::ui {
namespace {

/// How much further than their ink marks are met, in points: by a pointer, by a finger.
constexpr double pointerReach = 4, fingerReach = 16;
constexpr double narrowest = 300, widest = 1200;

}  // namespace

FigureItem::FigureItem(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAcceptHoverEvents(true);
  setAcceptedMouseButtons(Qt::LeftButton);
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
  m_told = figures::readOuts(m_figure);
  setImplicitHeight(m_figure.height * m_textScale);
  tell({});
  emit laidOut();
  update();
}

void FigureItem::paint(QPainter* painter) {
  painter->scale(m_textScale, m_textScale);
  print::paintFigure(*painter, m_figure, {m_ink, m_muted, m_hair, m_accent, m_soft});
  constexpr double apart = 3;
  const QRectF inside = QRectF(0, 0, m_figure.width, m_figure.height).adjusted(0.5, 0.5, -0.5, -0.5);
  for (const figures::ReadOut& each : m_told) {
    if (QString::fromStdString(each.sentence) != m_readOut) continue;
    const QRectF area(QPointF(each.area.left, each.area.top), QPointF(each.area.right, each.area.bottom));
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(m_ink, 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRoundedRect(area.adjusted(-apart, -apart, apart, apart).intersected(inside), apart, apart);
  }
}

void FigureItem::tellAt(const QPointF& position, double reach) {
  const QPointF at = position / m_textScale;
  tell(QString::fromStdString(figures::readOutAt(m_figure, at.x(), at.y(), reach)));
}

void FigureItem::hoverMoveEvent(QHoverEvent* event) { tellAt(event->position(), pointerReach); }

void FigureItem::mousePressEvent(QMouseEvent* event) {
  tellAt(event->position(), event->source() == Qt::MouseEventNotSynthesized ? pointerReach : fingerReach);
}

void FigureItem::keyPressEvent(QKeyEvent* event) {
  const std::vector<figures::ReadOut>& all = m_told;
  const auto now = std::find_if(all.begin(), all.end(), [&](const figures::ReadOut& each) { return QString::fromStdString(each.sentence) == m_readOut; });
  const auto tellOne = [&](auto which) { tell(QString::fromStdString(which->sentence)); };
  if (all.empty()) return event->ignore();
  switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Down: return tellOne(now == all.end() ? all.begin() : now + 1 == all.end() ? now : now + 1);
    case Qt::Key_Left:
    case Qt::Key_Up: return tellOne(now == all.begin() || now == all.end() ? all.begin() : now - 1);
    case Qt::Key_Home: return tellOne(all.begin());
    case Qt::Key_End: return tellOne(all.end() - 1);
    case Qt::Key_Escape:
      if (!m_readOut.isEmpty()) return tell({});
      break;
    default: break;
  }
  event->ignore();
}

void FigureItem::hoverLeaveEvent(QHoverEvent*) { tell({}); }

void FigureItem::tell(const QString& readOut) {
  if (readOut == m_readOut) return;
  m_readOut = readOut;
  emit readOutChanged();
  update();
}

}  // namespace oddglass::ui
