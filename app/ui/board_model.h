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
  Q_PROPERTY(bool seated MEMBER seated)

public:
  int number = 0;
  QString place, who, step, shape, rounds, hand;
  bool seated = false;
};

/// Places: who waits, tastes and has locked; and the three things that may happen at a table.
class BoardModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString over MEMBER m_over NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(bool pourWaits MEMBER m_pourWaits NOTIFY changed)
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
  Q_PROPERTY(QStringList codesThere MEMBER m_codesThere NOTIFY changed)
  Q_PROPERTY(QString saidWords MEMBER m_saidWords NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* places READ places CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* heardBy READ heardBy CONSTANT)

public:
  BoardModel(const Stage& stage, QObject* parent);
  Rows* places() { return &m_places; }
  Rows* heardBy() { return &m_heardBy; }
  QStringList how() const;

  Q_INVOKABLE void load();
  /// The table was left in the middle, last written to at that time: so it says until somebody goes on.
  void goOnAfter(Millis lastAt);
  /// Hands the device to a place; the next one that waits when `row` is -1.
  Q_INVOKABLE void handOver(int row);
  Q_INVOKABLE void lateGuest();
  Q_INVOKABLE void pour() { go(Router::Page::PourSheet); }
  /// Asks a sequential plan after a whole round whether to go on.
  Q_INVOKABLE void lookAfterRound();
  /// Ends the tasting; asks first, naming who has not locked, when somebody has not.
  Q_INVOKABLE void closeTable();
  Q_INVOKABLE void closeAnyway();
  Q_INVOKABLE void keepOpen();
  /// What happened: "said", "spilled", "aside", or nothing.
  Q_INVOKABLE void startHappening(const QString& what);
  Q_INVOKABLE void tickHeard(int row);
  Q_INVOKABLE void noteSaid();
  Q_INVOKABLE void pickPlace(int index);
  Q_INVOKABLE void noteSpilled(int code);
  Q_INVOKABLE void setAside(int reason);

signals:
  void seatRequested(int place);

private:
  void show(const tasting::Board& board);
  void sayInterrupted();
  /// The place that is handed to next; none when nobody is waited for.
  const tasting::BoardPlace* nextPlace() const;
  void change(std::function<void(Cellar&, const SessionId&)> work);
  Rows m_places, m_heardBy;
  tasting::Board m_board;
  std::vector<Place> m_seated;
  std::set<int> m_heard;
  std::optional<tasting::Flight> m_flight;
  QString m_over, m_headline, m_lead, m_closeQuestion, m_happening, m_saidWords;
  QStringList m_seatedPlaces, m_codesThere;
  bool m_pourWaits = false, m_canPour = false, m_allLocked = false, m_lookIsDue = false, m_canLook = false, m_anybody = false;
  int m_happenedAt = -1;
  std::optional<Millis> m_interruptedAt;
};

}  // namespace oddglass::ui
