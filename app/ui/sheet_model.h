#pragma once
#include <QObject>
#include "tasting/filling.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <QTimer>
#include <array>
#include <optional>

namespace oddglass::ui {

/// One question of a score sheet as it stands before the taster. `form` says how it is answered: choice, line, ticks, words, worst, rank, points.
struct QuestionRow {
  Q_GADGET
  Q_PROPERTY(int item MEMBER item)
  Q_PROPERTY(QString form MEMBER form)
  Q_PROPERTY(QString label MEMBER label)
  Q_PROPERTY(QStringList options MEMBER options)
  Q_PROPERTY(QList<int> marks MEMBER marks)
  Q_PROPERTY(int current MEMBER current)
  Q_PROPERTY(int low MEMBER low)
  Q_PROPERTY(int high MEMBER high)
  Q_PROPERTY(QString readOut MEMBER readOut)
  Q_PROPERTY(QString lowEnd MEMBER lowEnd)
  Q_PROPERTY(QString highEnd MEMBER highEnd)
  Q_PROPERTY(QString text MEMBER text)
  Q_PROPERTY(QString pass MEMBER pass)
  Q_PROPERTY(bool passed MEMBER passed)
  Q_PROPERTY(QString nudge MEMBER nudge)

public:
  int item = 0;
  QString form, label;
  QStringList options;      ///< answers, words to tick, or cups
  QList<int> marks;         ///< for ticks, ranks and points: what each option has; for a labelled line where its words stand, in 1/1000 of it
  int current = -1;         ///< the option taken, or the place on the line; -1 where there is none yet
  int low = 0, high = 0;
  QString readOut;          ///< what is answered, in words
  QString lowEnd, highEnd;  ///< the ends of a line
  QString text;
  QString pass;             ///< "I don't judge colour", "I looked and found none"; empty where it cannot be passed
  bool passed = false;
  QString nudge;            ///< asks to look again before nothing is found; empty when it was not asked
  bool operator==(const QuestionRow&) const = default;
};

/// My sheet: the score sheet of one flight, one cup after the other, up to the lock.
class SheetModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString placeLine MEMBER m_placeLine NOTIFY changed)
  Q_PROPERTY(QString sealMark READ sealMark NOTIFY changed)
  Q_PROPERTY(QString stepLine MEMBER m_stepLine NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString code MEMBER m_code NOTIFY changed)
  Q_PROPERTY(QString spokenCode MEMBER m_spokenCode NOTIFY changed)
  Q_PROPERTY(QString position MEMBER m_position NOTIFY changed)
  Q_PROPERTY(bool waits MEMBER m_waits NOTIFY changed)
  Q_PROPERTY(bool canGoBack MEMBER m_canGoBack NOTIFY changed)
  Q_PROPERTY(bool isLast MEMBER m_isLast NOTIFY changed)
  Q_PROPERTY(QString goWords MEMBER m_goWords NOTIFY changed)
  Q_PROPERTY(QString goReason MEMBER m_goReason NOTIFY changed)
  Q_PROPERTY(int stepNumber MEMBER m_stepNumber NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* questions READ questions CONSTANT)

public:
  SheetModel(const Stage& stage, QObject* parent);
  Rows* questions() { return &m_questions; }
  const QString& sealMark() const { return m_stage.current.sealMark(); }

  /// The sheet of a flight whose cups were confirmed.
  void open(const tasting::Flight& flight);
  /// Takes an option of a choice, or a place on a line; `row` is the question's.
  Q_INVOKABLE void answer(int row, int value);
  /// Steps a line by so many points.
  Q_INVOKABLE void step(int row, int by);
  /// Ticks a word or takes the tick back; ranks a cup; gives a cup a point or takes one back (`by`).
  Q_INVOKABLE void touch(int row, int option, int by);
  Q_INVOKABLE void write(int row, const QString& text);
  /// "I don't judge colour"; "I looked and found none", which asks once to look again.
  Q_INVOKABLE void passOver(int row);
  Q_INVOKABLE void next();
  Q_INVOKABLE void back();
  Q_INVOKABLE void lock();

signals:
  /// The sheet is locked since this moment.
  void locked(oddglass::Millis at);

private:
  void show();
  void showStep();
  void keep();
  void startWait();
  void tick();
  QuestionRow rowOf(const SheetItem& item) const;
  QString reason() const;
  bool judged(Item item) const;
  void forget();

  Rows m_questions;
  QTimer m_wait{this}, m_keep;   ///< the wait is a child, so that tests find it and need not wait
  int m_secondsLeft = 0;
  std::optional<tasting::Filling> m_filling;
  std::array<std::uint8_t, 16> m_clientId{};
  std::vector<std::vector<Item>> m_rowItems;   ///< which questions a row stands for: one, or all words to tick
  std::vector<std::pair<Item, Code>> m_passed; ///< questions that were passed over
  std::optional<std::pair<Item, Code>> m_nudged;
  bool m_waits = false, m_canGoBack = false, m_isLast = false, m_isLocking = false;
  int m_stepNumber = 0;
  QString m_placeLine, m_stepLine, m_headline, m_lead, m_code, m_spokenCode, m_position, m_goWords, m_goReason;
};

}  // namespace oddglass::ui
