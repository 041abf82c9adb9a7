#pragma once
#include <QObject>
#include "ui/figure_item.h"
#include "ui/page_model.h"
#include "ui/rows.h"

namespace oddglass::ui {

/// One line about a tasting: which one; what was written or how far one moved; what came or how far the others moved.
struct ExpectedRow {
  Q_GADGET
  Q_PROPERTY(QString when MEMBER when)
  Q_PROPERTY(QString wrote MEMBER wrote)
  Q_PROPERTY(QString came MEMBER came)

public:
  QString when, wrote, came;
};

/// You and the room: how far the brewer leans to their own beside the others, and how their expectations hold. Opened tastings only.
class RoomModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool known MEMBER m_known NOTIFY changed)
  Q_PROPERTY(QString nobody MEMBER m_nobody NOTIFY changed)
  Q_PROPERTY(QString shape MEMBER m_shape NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(oddglass::ui::FigureSource figure READ figure NOTIFY changed)
  Q_PROPERTY(QStringList lines MEMBER m_lines NOTIFY changed)
  Q_PROPERTY(QStringList how READ how NOTIFY changed)
  Q_PROPERTY(QString expectedHeading MEMBER m_expectedHeading NOTIFY changed)
  Q_PROPERTY(QStringList expectedLines MEMBER m_expectedLines NOTIFY changed)
  Q_PROPERTY(QString labelHeading MEMBER m_labelHeading NOTIFY changed)
  Q_PROPERTY(QStringList labelLines MEMBER m_labelLines NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* label READ label CONSTANT)
  Q_PROPERTY(oddglass::ui::FigureSource curve READ curve NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* expected READ expected CONSTANT)

public:
  RoomModel(const Stage& stage, QObject* parent);
  /// How it is worked out, and after whom.
  QStringList how() const;
  FigureSource figure() const { return m_figure; }
  FigureSource curve() const { return m_curve; }
  Rows* expected() { return &m_expected; }
  Rows* label() { return &m_label; }
  Q_INVOKABLE void load();
  /// On to the plan that is being made, or to a new one: what is expected is written on its last page.
  Q_INVOKABLE void expectNext();
  Q_INVOKABLE void toPeople() { go(Router::Page::People); }

signals:
  void planRequested(const oddglass::SessionId& draft);

private:
  struct Read;
  void take(const Read& read);
  bool m_loaded = false, m_known = true;
  QString m_nobody, m_shape, m_headline, m_lead, m_expectedHeading, m_labelHeading;
  QStringList m_lines, m_expectedLines, m_labelLines;
  FigureSource m_figure, m_curve;
  Rows m_expected, m_label;
  SessionId m_draft;
};

}  // namespace oddglass::ui
