#pragma once
#include <QObject>
#include "figures/figure.h"
#include "figures/read_outs.h"
#include "print/paint_figure.h"

#include <QQuickPaintedItem>
#include <QStringList>
#include <QtQml/qqmlregistration.h>
#include <functional>
#include <vector>

namespace oddglass::ui {

/// A figure that is laid out anew for every width. Empty where a page has nothing to draw.
struct FigureSource {
  Q_GADGET
  QML_VALUE_TYPE(figureSource)
  Q_PROPERTY(bool drawn READ isDrawn)

public:
  std::function<figures::Figure(double width, const figures::Measure&)> layOut;
  bool isDrawn() const { return static_cast<bool>(layOut); }
};

/// Shows a figure on a page: its marks, a read-out of what pointer, finger or arrow keys are on, and its numbers as lines for who reads rather than looks.
class FigureItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_NAMED_ELEMENT(FigureCanvas)
  Q_PROPERTY(oddglass::ui::FigureSource source READ source WRITE setSource NOTIFY sourceChanged)
  Q_PROPERTY(qreal textScale MEMBER m_textScale WRITE setTextScale NOTIFY lookChanged)
  Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY lookChanged)
  Q_PROPERTY(QColor muted MEMBER m_muted NOTIFY lookChanged)
  Q_PROPERTY(QColor hair MEMBER m_hair NOTIFY lookChanged)
  Q_PROPERTY(QColor accent MEMBER m_accent NOTIFY lookChanged)
  Q_PROPERTY(QColor soft MEMBER m_soft NOTIFY lookChanged)
  Q_PROPERTY(QString sentence READ sentence NOTIFY laidOut)
  Q_PROPERTY(QStringList tableLines READ tableLines NOTIFY laidOut)
  Q_PROPERTY(QString readOut READ readOut NOTIFY readOutChanged)

public:
  explicit FigureItem(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;
  FigureSource source() const { return m_source; }
  void setSource(const FigureSource& source);
  void setTextScale(qreal scale);
  QString sentence() const;
  /// The numbers behind the figure, one row a line, with the names of their columns.
  QStringList tableLines() const;
  /// What is pointed at, in words; empty when nothing is.
  const QString& readOut() const { return m_readOut; }

signals:
  void sourceChanged();
  void lookChanged();
  void laidOut();
  void readOutChanged();

protected:
  void geometryChange(const QRectF& now, const QRectF& before) override;
  void hoverMoveEvent(QHoverEvent* event) override;
  void hoverLeaveEvent(QHoverEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  void layOut();
  void tell(const QString& readOut);
  void tellAt(const QPointF& position, double reach);
  FigureSource m_source;
  figures::Figure m_figure;
  std::vector<figures::ReadOut> m_told;  ///< everything the figure says mark by mark
  qreal m_textScale = 1;
  QColor m_ink, m_muted, m_hair, m_accent, m_soft;
  QString m_readOut;
};

}  // namespace oddglass::ui
