#pragma once
#include <QObject>
#include "domain/plan.h"
#include "domain/shelf.h"
#include "planning/amounts.h"
#include "tasting/board.h"
#include "ui/page_model.h"

#include <vector>

namespace oddglass::ui {

/// The hand-over: whoever sits at a place says that they are it. The first time they are asked what must be asked before the first cup.
class SeatModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString iAm MEMBER m_iAm NOTIFY changed)
  Q_PROPERTY(QString iAmReason READ iAmReason NOTIFY changed)
  Q_PROPERTY(bool firstTime MEMBER m_firstTime NOTIFY changed)
  Q_PROPERTY(bool spare MEMBER m_spare NOTIFY changed)
  Q_PROPERTY(QStringList names MEMBER m_names NOTIFY changed)
  Q_PROPERTY(int who MEMBER m_who NOTIFY changed)
  Q_PROPERTY(QString newName MEMBER m_newName NOTIFY changed)
  Q_PROPERTY(QString nickname MEMBER m_nickname NOTIFY changed)
  Q_PROPERTY(QStringList care MEMBER m_care NOTIFY changed)
  Q_PROPERTY(QString ofAgeWords MEMBER m_ofAgeWords NOTIFY changed)
  Q_PROPERTY(QString careWords MEMBER m_careWords NOTIFY changed)
  Q_PROPERTY(QString consentWords MEMBER m_consentWords NOTIFY changed)
  Q_PROPERTY(QString fewFriends MEMBER m_fewFriends NOTIFY changed)
  Q_PROPERTY(QString sitOut MEMBER m_sitOut NOTIFY changed)
  Q_PROPERTY(QStringList shownAsWords MEMBER m_shownAsWords NOTIFY changed)
  Q_PROPERTY(bool ofAge MEMBER m_ofAge NOTIFY changed)
  Q_PROPERTY(bool careHeard MEMBER m_careHeard NOTIFY changed)
  Q_PROPERTY(bool consents MEMBER m_consents NOTIFY changed)
  Q_PROPERTY(int heardAbout MEMBER m_heardAbout NOTIFY changed)
  Q_PROPERTY(int shownAs MEMBER m_shownAs NOTIFY changed)

public:
  SeatModel(const Stage& stage, QObject* parent);
  QString iAmReason() const;
  /// Gets the device ready for whoever sits at `place`.
  void open(int place);
  /// "I am place 4": sits down where nobody sat, and goes to the cups.
  Q_INVOKABLE void sit();
  Q_INVOKABLE void leave() { go(Router::Page::Places); }

signals:
  void seated(int place);

private:
  struct Read {
    tasting::Board board;
    std::vector<Ingredients> drinks;
    planning::Amounts amounts;
    int guessedAmong = 0;
    bool isDosed = false;   ///< something in a drink is there to be noticed
  };
  void fill(const Read& read);
  Place m_place;
  std::vector<tasting::Invited> m_invited;
  QString m_headline, m_lead, m_iAm, m_newName, m_nickname;
  QString m_ofAgeWords, m_careWords, m_consentWords, m_fewFriends, m_sitOut;
  QStringList m_names, m_care, m_shownAsWords;
  bool m_firstTime = true, m_spare = false, m_ofAge = false, m_careHeard = false, m_consents = false;
  int m_who = -1, m_heardAbout = -1, m_shownAs = -1;
};

}  // namespace oddglass::ui
