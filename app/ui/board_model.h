#pragma once
#include <QObject>
#include "tasting/board.h"
#include "tasting/flight.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <set>

namespace oddglass::ui {

/// One place at the table, as everybody may see it.
struct PlaceRow {
  Q_GADGET
  Q_PROPERTY(int number MEMBER number)
  Q_PROPERTY(QString place MEMBER place)
  Q_PROPERTY(QString who MEMBER who)
  Q_PROPERTY(QString step MEMBER step)
  Q_PROPERTY(QString shape MEMBER shape)
  Q_PROPERTY(QString rounds MEMBER rounds)
  Q_PROPERTY(QString hand MEMBER hand)
  Q_PROPERTY(QString section MEMBER section)
  Q_PROPERTY(bool seated MEMBER seated)

public:
  int number = 0;
  QString place, who, step, shape, rounds, hand, section;
  bool seated = false;
};

/// Places: who waits, tastes and has locked; and what may happen at a table.
class BoardModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString over MEMBER m_over NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(bool pourWaits MEMBER m_pourWaits NOTIFY changed)
  /// Hands hide the key: there is no pour sheet, there are steps.
  Q_PROPERTY(bool byHand MEMBER m_byHand NOTIFY changed)
  /// A locked flight can be read off now.
  Q_PROPERTY(bool readWaits MEMBER m_readWaits NOTIFY changed)
  Q_PROPERTY(bool canPour MEMBER m_canPour NOTIFY changed)
  Q_PROPERTY(bool allLocked MEMBER m_allLocked NOTIFY changed)
  Q_PROPERTY(bool lookIsDue MEMBER m_lookIsDue NOTIFY changed)
  /// The same although somebody who is expected has not sat down: whoever sits has locked what is open.
  Q_PROPERTY(bool canLook MEMBER m_canLook NOTIFY changed)
  Q_PROPERTY(QStringList how READ how NOTIFY changed)   ///< of going on or stopping, while that may be asked
  Q_PROPERTY(bool anybody MEMBER m_anybody NOTIFY changed)
  Q_PROPERTY(QString closeQuestion MEMBER m_closeQuestion NOTIFY changed)
  Q_PROPERTY(QString happening MEMBER m_happening NOTIFY changed)
  Q_PROPERTY(QStringList seatedPlaces MEMBER m_seatedPlaces NOTIFY changed)
  Q_PROPERTY(int happenedAt MEMBER m_happenedAt NOTIFY changed)
  Q_PROPERTY(int otherAt MEMBER m_otherAt NOTIFY changed)
  Q_PROPERTY(QStringList roundsThere MEMBER m_roundsThere NOTIFY changed)
  Q_PROPERTY(int happenedRound MEMBER m_happenedRound NOTIFY changed)
  /// What will come of it, before it is said for good; empty while something is still to be chosen.
  Q_PROPERTY(QString comesOfIt MEMBER m_comesOfIt NOTIFY changed)
  Q_PROPERTY(QStringList asideReasons READ asideReasons NOTIFY changed)
  Q_PROPERTY(QStringList codesThere MEMBER m_codesThere NOTIFY changed)
  Q_PROPERTY(QString saidWords MEMBER m_saidWords NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* places READ places CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* heardBy READ heardBy CONSTANT)

public:
  BoardModel(const Stage& stage, QObject* parent);
  Rows* places() { return &m_places; }
  Rows* heardBy() { return &m_heardBy; }
  QStringList how() const;
  static QStringList asideReasons();

  Q_INVOKABLE void load();
  /// This session's table was left in the middle, last written to at that time: so it says until somebody goes on.
  void goOnAfter(const oddglass::SessionId& session, qint64 lastAt);
  /// Hands the device to a place; the next one that waits when `row` is -1.
  Q_INVOKABLE void handOver(int row);
  Q_INVOKABLE void lateGuest();
  Q_INVOKABLE void pour() { go(m_byHand ? Router::Page::Alone : Router::Page::PourSheet); }
  /// Asks a sequential plan after a whole round whether to go on.
  Q_INVOKABLE void lookAfterRound();
  /// Ends the tasting; asks first, naming who has not locked, when somebody has not.
  Q_INVOKABLE void closeTable();
  Q_INVOKABLE void closeAnyway();
  Q_INVOKABLE void keepOpen();
  /// What happened: "said", "spilled", "aside", "swapped", "wrong", "back", or nothing.
  Q_INVOKABLE void startHappening(const QString& what);
  Q_INVOKABLE void tickHeard(int row);
  Q_INVOKABLE void noteSaid();
  Q_INVOKABLE void pickPlace(int index);
  /// The second of two places that had each other's cups.
  Q_INVOKABLE void pickOther(int index);
  Q_INVOKABLE void pickRound(int index);
  Q_INVOKABLE void noteSpilled(int code);
  Q_INVOKABLE void setAside(int reason);
  /// Puts on record what was chosen: mats swapped, the wrong person, or answers taken back.
  Q_INVOKABLE void confirmHappening();

signals:
  void seatRequested(int place);

private:
  void show(const tasting::Board& board);
  void endHappening();
  void showAfter(const tasting::Board& board);
  bool isOffered(const tasting::BoardPlace& place) const;
  const tasting::BoardPlace& at(int index) const;
  void showRounds();
  void showWhatComes();
  QString whoAt(const tasting::BoardPlace& place) const;
  void swapMats();
  void freeWrong();
  void takeBack();
  void sayInterrupted();
  /// The place that is handed to next; none when nobody is waited for.
  const tasting::BoardPlace* nextPlace() const;
  void change(std::function<void(Cellar&, const SessionId&)> work);
  Rows m_places, m_heardBy;
  tasting::Board m_board;
  std::vector<Place> m_seated, m_listening;
  std::set<int> m_heard;
  std::optional<tasting::Flight> m_flight;
  QString m_over, m_headline, m_lead, m_closeQuestion, m_happening, m_saidWords;
  QStringList m_seatedPlaces, m_codesThere;
  bool m_byHand = false, m_readWaits = false;
  bool m_pourWaits = false, m_canPour = false, m_allLocked = false, m_lookIsDue = false, m_canLook = false, m_anybody = false;
  std::vector<Round> m_roundValues;
  QStringList m_roundsThere;
  QString m_comesOfIt;
  int m_happenedAt = -1, m_otherAt = -1, m_happenedRound = -1;
  SessionId m_interrupted;   ///< empty: none was
  Millis m_interruptedAt = 0;
};

}  // namespace oddglass::ui
