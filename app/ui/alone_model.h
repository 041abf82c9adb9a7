#pragma once
#include <QObject>
#include "session/found.h"
#include "tasting/board.h"
#include "ui/page_model.h"
#include "ui/rows.h"
#include "words/routine.h"

#include <optional>
#include <vector>

namespace oddglass::ui {

/// The codes of one flight as its cups stand, or the cups that are poured from one lettered bottle.
struct HandRow {
  Q_GADGET
  Q_PROPERTY(QString where MEMBER where)
  Q_PROPERTY(QStringList codes MEMBER codes)
  Q_PROPERTY(QStringList spoken MEMBER spoken)

public:
  QString where;
  QStringList codes, spoken;
};

/// Alone: a routine in which hands hide the key, one step a screen; and afterwards what stood under the cups, one cup a screen. It holds what was typed until the
/// flight is complete and nothing as soon as it is left.
class AloneModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString over MEMBER m_over NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString primary MEMBER m_primary NOTIFY changed)
  Q_PROPERTY(bool canGoBack MEMBER m_canGoBack NOTIFY changed)
  Q_PROPERTY(bool atSteps READ isAtSteps NOTIFY changed)
  Q_PROPERTY(bool mayGoToPlaces READ mayGoToPlaces NOTIFY changed)   ///< beside the primary deed, which is another one then
  Q_PROPERTY(QStringList answers MEMBER m_answers NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* cups READ cups CONSTANT)

public:
  AloneModel(const Stage& stage, QObject* parent);
  Rows* cups() { return &m_cups; }
  bool isAtSteps() const { return !m_flight && !m_steps.empty() && isOpen(); }
  bool mayGoToPlaces() const { return m_flight || isAtSteps() || m_state == State::closed; }
  /// Begins where the evening stands: at the steps, or at the next cup to read off.
  Q_INVOKABLE void load();
  /// The next step; from the last one on to the table, and from the last cup to what comes then.
  Q_INVOKABLE void next();
  Q_INVOKABLE void stepBack();
  /// One of `answers`.
  Q_INVOKABLE void answer(int index);
  Q_INVOKABLE void toPlaces() { go(Router::Page::Places); }
  Q_INVOKABLE void toPaper() { go(Router::Page::Paper); }

protected:
  void fail(const Problem& problem) override;

private:
  /// One question of the reading off: what a cup held, which mark a cup had, what a letter held, or who reads.
  struct Asked {
    enum class What { lot, markedLot, markOfCup, bottle, reader } what = What::lot;
    Code code;
    int mark = 0, bottle = 0;
    std::optional<int> answer;
  };
  struct Read;
  void take(const Read& read);
  bool isAllDone() const;
  bool isOpen() const { return m_state == State::sealed || m_state == State::tasting; }
  void startSteps();
  void startReading();
  void show();
  void showStep();
  void showQuestion();
  void showTold();
  void showEnd();
  void showCups();
  void submit();
  void read(const std::vector<std::optional<VoidReason>>& reasons, const std::vector<std::pair<Place, Round>>& where);
  void forget();

  Plan m_plan;
  State m_state = State::sealed;
  std::vector<session::ToRead> m_flights;
  std::vector<words::HandStep> m_steps;
  std::size_t m_step = 0;
  std::vector<Asked> m_asked;
  std::size_t m_at = 0;
  std::optional<std::size_t> m_flight;   ///< the one that is read off
  std::vector<int> m_marks;              ///< of `answers`, where they are marks: those that no cup got yet
  bool m_saidReady = false;
  Rows m_cups;
  QString m_toSay;   ///< once what comes next is read
  QString m_over, m_headline, m_lead, m_primary;
  bool m_canGoBack = false;
  QStringList m_answers;
};

}  // namespace oddglass::ui
