#pragma once
#include <QObject>
#include "ui/page_model.h"

namespace oddglass::ui {

/// Open the key: who is missing, what happened so far, and the opening. Also the two other ways a sealed session can end.
class KeyModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(bool canOpen MEMBER m_canOpen NOTIFY changed)
  /// Flights that count have not been read off where hands hid the key: that comes first.
  Q_PROPERTY(bool readFirst MEMBER m_readFirst NOTIFY changed)
  Q_PROPERTY(bool canEnd MEMBER m_canEnd NOTIFY changed)
  Q_PROPERTY(QStringList happened MEMBER m_happened NOTIFY changed)
  Q_PROPERTY(QString reason MEMBER m_reason NOTIFY changed)

public:
  KeyModel(const Stage& stage, QObject* parent);
  Q_INVOKABLE void load();
  Q_INVOKABLE void open();
  Q_INVOKABLE void toCups() { go(Router::Page::Alone); }
  /// Looks early: the session ends without a verdict, for good.
  Q_INVOKABLE void breakSeal();
  /// Gives the session up with its key shut, for good.
  Q_INVOKABLE void abandon();

private:
  QString m_headline, m_lead, m_reason;
  bool m_readFirst = false, m_canOpen = false, m_canEnd = false;
  QStringList m_happened;
};

}  // namespace oddglass::ui
