#pragma once
#include <QObject>
#include "tasting/flight.h"
#include "tasting/hand_in.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <array>
#include <optional>

namespace oddglass::ui {

/// One cup before the taster.
struct CupRow {
  Q_GADGET
  Q_PROPERTY(QString code MEMBER code)
  Q_PROPERTY(QString spoken MEMBER spoken)
  Q_PROPERTY(QString position MEMBER position)
  Q_PROPERTY(bool chosen MEMBER chosen)
  Q_PROPERTY(bool marked MEMBER marked)

public:
  QString code, spoken, position;
  bool chosen = false, marked = false;
};

/// My cups and Locked: one flight of one place, from "are these your cups?" to the receipt.
class CupsModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString placeLine MEMBER m_placeLine NOTIFY changed)
  Q_PROPERTY(QString sealMark READ sealMark NOTIFY changed)
  Q_PROPERTY(bool confirmed MEMBER m_confirmed NOTIFY changed)
  Q_PROPERTY(QString confirmSentence MEMBER m_confirmSentence NOTIFY changed)
  Q_PROPERTY(QString question MEMBER m_question NOTIFY changed)
  Q_PROPERTY(QString hint MEMBER m_hint NOTIFY changed)
  Q_PROPERTY(int cupCount READ cupCount NOTIFY changed)
  Q_PROPERTY(bool choosesCups READ choosesCups NOTIFY changed)
  Q_PROPERTY(QStringList sameWords MEMBER m_sameWords NOTIFY changed)
  Q_PROPERTY(int same MEMBER m_same NOTIFY changed)
  Q_PROPERTY(QStringList likings MEMBER m_likings NOTIFY changed)
  Q_PROPERTY(int liking MEMBER m_liking NOTIFY changed)
  Q_PROPERTY(QString likingLabel MEMBER m_likingLabel NOTIFY changed)
  Q_PROPERTY(bool asksSureness MEMBER m_asksSureness NOTIFY changed)
  Q_PROPERTY(bool asksClue MEMBER m_asksClue NOTIFY changed)
  Q_PROPERTY(bool asksWords MEMBER m_asksWords NOTIFY changed)
  Q_PROPERTY(int sureness MEMBER m_sureness NOTIFY changed)
  Q_PROPERTY(int clue MEMBER m_clue NOTIFY changed)
  Q_PROPERTY(QString comment MEMBER m_comment NOTIFY changed)
  Q_PROPERTY(QString lockWords READ lockWords NOTIFY changed)
  Q_PROPERTY(QString lockReason READ lockReason NOTIFY changed)
  Q_PROPERTY(QString lockedHeadline MEMBER m_lockedHeadline NOTIFY changed)
  Q_PROPERTY(QString lockedLead MEMBER m_lockedLead NOTIFY changed)
  Q_PROPERTY(bool more MEMBER m_more NOTIFY changed)
  /// Alone the cups are turned over before anything else.
  Q_PROPERTY(bool turnsOver MEMBER m_turnsOver NOTIFY changed)
  Q_PROPERTY(QString notMine MEMBER m_notMine NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* cups READ cups CONSTANT)

public:
  CupsModel(const Stage& stage, QObject* parent);
  Rows* cups() { return &m_cups; }
  int cupCount() const { return m_flight ? static_cast<int>(m_flight->cups.size()) : 0; }
  /// True where the answer, or a part of it, is a cup of the row.
  bool choosesCups() const;
  const QString& sealMark() const { return m_stage.current.sealMark(); }
  QString lockWords() const;
  QString lockReason() const;

  /// The next flight of a place, from its beginning.
  void open(int place);
  Q_INVOKABLE void confirm();
  /// Picks a cup, or takes a pick back where two are picked; `row` counts from the left. The marked cup is never picked.
  Q_INVOKABLE void choose(int row);
  /// One of `likings`.
  Q_INVOKABLE void like(int index);
  Q_INVOKABLE void say(int same) { m_same = same; emit changed(); }
  Q_INVOKABLE void lock();
  /// Whoever sits here stops; what is not locked is counted as missing.
  Q_INVOKABLE void stop();
  Q_INVOKABLE void sayNotMine();
  Q_INVOKABLE void nextRound() { open(m_place.value); }
  Q_INVOKABLE void toCups() { go(Router::Page::Alone); }
  Q_INVOKABLE void passOn() { go(Router::Page::Places); }
  /// Thanks whoever sits here for a flight that was locked at this moment, and offers the next one.
  void showLocked(Millis at);

signals:
  /// The cups of a score sheet were confirmed: it has a page of its own.
  void sheetRequested(const oddglass::tasting::Flight& flight);

private:
  struct Read {
    std::optional<tasting::Flight> flight;
    std::array<std::uint8_t, 16> clientId{};
    bool loose = false;
  };
  static Read read(Cellar& cellar, const SessionId& id, Place place);
  void show();
  void prepareQuestions();
  void clearAnswers();
  /// What is asked of the cups of the row: how many are picked.
  int picks() const;
  bool likesOnly() const;
  std::optional<int> likedCode() const;
  void forget();
  Place m_place;
  Rows m_cups;
  std::optional<tasting::Flight> m_flight;
  std::array<std::uint8_t, 16> m_clientId{};
  std::vector<int> m_picked;    ///< rows of the cups picked, in the order of the taps
  int m_same = -1, m_liking = -1, m_sureness = -1, m_clue = -1;
  bool m_confirmed = false, m_asksSureness = false, m_asksClue = false, m_asksWords = false, m_more = false, m_turnsOver = false, m_loose = false;
  QStringList m_sameWords, m_likings;
  QString m_question, m_hint, m_likingLabel, m_placeLine, m_confirmSentence, m_comment, m_lockedHeadline, m_lockedLead, m_notMine;
};

}  // namespace oddglass::ui
