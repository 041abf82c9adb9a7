#pragma once
#include <QObject>
#include "domain/card.h"
#include "domain/plan.h"
#include "domain/shelf.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// One person who tastes.
struct PersonRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(bool archived MEMBER archived)

public:
  QString name, line;
  bool archived = false;
};

/// People: who tastes, how they want to be shown, who asked for a card, what this table notices, and how somebody is forgotten. What stands on a card is
/// its person's: here it is read only when they let it be seen, and no further than they saw it themselves.
class PeopleModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool open MEMBER m_open NOTIFY changed)
  Q_PROPERTY(bool known MEMBER m_known NOTIFY changed)
  Q_PROPERTY(bool archived MEMBER m_archived NOTIFY changed)
  Q_PROPERTY(QString name MEMBER m_name NOTIFY changed)
  Q_PROPERTY(QString nickname MEMBER m_nickname NOTIFY changed)
  Q_PROPERTY(bool isBrewer MEMBER m_isBrewer NOTIFY changed)
  Q_PROPERTY(QString eraseWordsFirst MEMBER m_eraseWordsFirst NOTIFY changed)
  Q_PROPERTY(QString eraseWordsSecond MEMBER m_eraseWordsSecond NOTIFY changed)
  Q_PROPERTY(QString eraseAllFirst MEMBER m_eraseAllFirst NOTIFY changed)
  Q_PROPERTY(QString eraseAllSecond MEMBER m_eraseAllSecond NOTIFY changed)
  Q_PROPERTY(QString erasedLine MEMBER m_erasedLine NOTIFY changed)
  Q_PROPERTY(bool hasCard MEMBER m_hasCard NOTIFY changed)
  Q_PROPERTY(bool cardLet MEMBER m_cardLet NOTIFY changed)
  Q_PROPERTY(QString cardLine MEMBER m_cardLine NOTIFY changed)
  Q_PROPERTY(QString cardLink MEMBER m_cardLink NOTIFY changed)
  Q_PROPERTY(QStringList cardLines MEMBER m_cardLines NOTIFY changed)
  Q_PROPERTY(QStringList better MEMBER m_better NOTIFY changed)
  Q_PROPERTY(QStringList noticed MEMBER m_noticed NOTIFY changed)
  Q_PROPERTY(QString noticingRule READ noticingRule CONSTANT)
  Q_PROPERTY(bool archivedShown READ archivedShown WRITE setArchivedShown NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* people READ people CONSTANT)

public:
  PeopleModel(const Stage& stage, QObject* parent);
  static QString noticingRule();
  Rows* people() { return &m_people; }
  bool archivedShown() const { return m_archivedShown; }
  void setArchivedShown(bool shown);

  Q_INVOKABLE void load();
  Q_INVOKABLE void openNew();
  Q_INVOKABLE void openPerson(int row);
  Q_INVOKABLE void leave();
  Q_INVOKABLE void save();
  Q_INVOKABLE void archive(bool archived);
  /// The person asks for a card, has it shown to them, or takes the wish back.
  Q_INVOKABLE void askForCard();
  Q_INVOKABLE void showCard() { emit cardRequested(m_id); }
  Q_INVOKABLE void takeCardBack();
  /// Reads the card as its person let it be seen.
  Q_INVOKABLE void readCard();
  Q_INVOKABLE void eraseWords() { erase(ErasureKind::words); }
  Q_INVOKABLE void eraseEverything() { erase(ErasureKind::everything); }

signals:
  void cardRequested(const oddglass::TasterId& who);
  /// Somebody was erased.
  void forgotten();

private:
  struct Read;
  static Read look(Cellar& cellar, bool archived);
  void erase(ErasureKind kind);
  void show(Read read);
  void showPerson();
  bool m_hasCard = false, m_cardLet = false, m_loaded = false, m_open = false, m_known = false, m_archived = false, m_isBrewer = false, m_archivedShown = false;
  QString m_name, m_nickname, m_erasedLine, m_eraseWordsFirst, m_eraseWordsSecond, m_eraseAllFirst, m_eraseAllSecond;
  QString m_cardLine, m_cardLink;
  QStringList m_cardLines, m_better, m_noticed, m_brewersBetter;
  TasterId m_id;
  std::vector<CardWish> m_cards;
  std::vector<Taster> m_values;
  Rows m_people;
};

}  // namespace oddglass::ui
