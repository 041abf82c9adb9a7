#pragma once
#include <QObject>
#include "ui/page_model.h"
#include "ui/rows.h"

namespace oddglass::ui {

/// One entry of the log in words.
struct HistoryRow {
  Q_GADGET
  Q_PROPERTY(QString number MEMBER number)
  Q_PROPERTY(QString when MEMBER when)
  Q_PROPERTY(QString says MEMBER says)

public:
  QString number, when, says;
};

/// History: the log of a session in plain words, with the check of its chain and commitment.
class HistoryModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString shape MEMBER m_shape NOTIFY changed)
  Q_PROPERTY(QStringList checks MEMBER m_checks NOTIFY changed)
  Q_PROPERTY(QString checkedAt MEMBER m_checkedAt NOTIFY changed)
  Q_PROPERTY(bool revealed MEMBER m_revealed NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* entries READ entries CONSTANT)

public:
  HistoryModel(const Stage& stage, QObject* parent);
  Rows* entries() { return &m_entries; }
  Q_INVOKABLE void load();
  Q_INVOKABLE void toOutcome() { go(Router::Page::CameOut); }

private:
  QString m_headline, m_lead, m_shape, m_checkedAt;
  QStringList m_checks;
  bool m_revealed = false;
  Rows m_entries;
};

}  // namespace oddglass::ui
