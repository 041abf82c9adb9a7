#pragma once
#include <QObject>
#include "domain/shelf.h"
#include "ui/page_model.h"

namespace oddglass::ui {

/// A person's card on a page of its own: the device is handed over first, and the person says who else may see it.
class CardModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool opened MEMBER m_opened NOTIFY changed)
  Q_PROPERTY(QString headline READ headline NOTIFY changed)
  Q_PROPERTY(QString lead READ lead NOTIFY changed)
  Q_PROPERTY(QString iAm MEMBER m_iAm NOTIFY changed)
  Q_PROPERTY(QStringList scores READ scores NOTIFY changed)
  Q_PROPERTY(QStringList noticed READ noticed NOTIFY changed)
  Q_PROPERTY(QString limits READ limits NOTIFY changed)
  Q_PROPERTY(QString asked READ asked NOTIFY changed)

public:
  using oddglass::ui::PageModel::PageModel;
  QString headline() const { return m_opened ? m_title : m_handOver; }
  QString lead() const { return m_opened ? m_lead : tr("Hand it over. What comes next is theirs to read."); }
  // Nothing of the card stands on the page before the person has it in hand.
  QStringList scores() const { return m_opened ? m_scores : QStringList(); }
  QStringList noticed() const { return m_opened ? m_noticed : QStringList(); }
  QString limits() const { return m_opened ? m_limits : QString(); }
  QString asked() const { return m_opened ? m_asked : QString(); }

  /// Reads somebody's card and asks for the device to be handed over.
  void open(const TasterId& who);
  /// The person has it in hand.
  Q_INVOKABLE void read();
  /// They keep it to themselves.
  Q_INVOKABLE void keep() { leave(); }
  /// They let the brewer see it, as it is today.
  Q_INVOKABLE void letBeSeen();
  /// They want it forgotten.
  Q_INVOKABLE void takeBack();

private:
  void leave();
  TasterId m_who;
  bool m_opened = false;
  QString m_handOver, m_title, m_lead, m_iAm, m_limits, m_asked;
  QStringList m_scores, m_noticed;
};

}  // namespace oddglass::ui
