#include "ui/alone_model.h"

#include "session/look.h"
#include "session/pour.h"
#include "session/record.h"
#include "ui/cups.h"
#include "ui/voice.h"
#include "words/paper.h"

#include <algorithm>
#include <map>

namespace oddglass::ui {

struct AloneModel::Read {
  Plan plan;
  tasting::Board board;
  std::vector<session::ToRead> flights;
};

AloneModel::AloneModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_cups(HandRow::staticMetaObject, this) {
  connect(&stage.router, &Router::pageChanged, this, [this] {
    if (m_stage.router.page() != Router::Page::Alone) forget();
  });
}

void AloneModel::forget() {
  m_asked.clear();
  m_flight.reset();
}

void AloneModel::load() {
  ask([id = m_stage.current.id()](Cellar& cellar) {
    Read read{session::record(cellar.store(), id).plan, tasting::board(cellar.store(), id), {}};
    if (!isDrawn(read.plan.routine)) read.flights = session::toRead(cellar.store(), id);
    return read;
  }, [this](const Read& read) { take(read); });
}

void AloneModel::take(const Read& read) {
  m_plan = read.plan;
  m_state = read.board.state;
  m_flights = read.flights;
  m_saidReady = read.board.pourReported;
  m_steps.clear();
  forget();
  const auto waits = [](const session::ToRead& each) { return each.mayRead && !each.isVoid; };
  const bool anyWaits = std::any_of(m_flights.begin(), m_flights.end(), waits);
  if (anyWaits) {
    m_flight = static_cast<std::size_t>(std::find_if(m_flights.begin(), m_flights.end(), waits) - m_flights.begin());
    startReading();
  } else if (isOpen() && !isAllDone()) {
    startSteps();
  }
  show();
  if (!m_toSay.isEmpty()) m_stage.notice.say(m_toSay);
  m_toSay.clear();
}

// Alone, once every round is locked or set aside, no step is left.
bool AloneModel::isAllDone() const { return m_plan.routine == Routine::alone && static_cast<int>(m_flights.size()) >= m_plan.rounds; }

void AloneModel::fail(const Problem& problem) {
  PageModel::fail(problem);
  // Refused: it is asked again from the first cup on.
  if (m_flight) show();
}

void AloneModel::startSteps() {
  m_steps = words::handSteps(voice(), words::handFacts(voice(), m_plan));
  m_step = 0;
}

void AloneModel::show() {
  m_answers.clear();
  m_marks.clear();
  if (m_flight && m_at < m_asked.size()) showQuestion();
  else if (m_flight) showTold();
  else if (isAtSteps()) showStep();
  else showEnd();
  showCups();
  emit changed();
}

void AloneModel::showStep() {
  const words::HandStep& step = m_steps.at(m_step);
  m_over = step.who.empty() ? tr("Step %1 of %2").arg(m_step + 1).arg(m_steps.size()) : tr("Step %1 of %2  ·  %3").arg(m_step + 1).arg(m_steps.size()).arg(shown(step.who));
  m_headline = shown(step.text);
  const bool isLast = m_step + 1 == m_steps.size();
  m_lead = isLast ? shown(words::thenTaste(voice(), words::handFacts(voice(), m_plan))) + QLatin1Char(' ') + shown(words::thenRead(voice(), words::handFacts(voice(), m_plan))) : QString();
  m_primary = isLast ? tr("Everything stands ready") : step.handsOver ? tr("Hand over to the other one") : tr("Next step");
  m_canGoBack = m_step > 0 && !m_steps.at(m_step - 1).handsOver;
}

void AloneModel::showEnd() {
  m_over.clear();
  m_canGoBack = false;
  const bool isClosed = m_state == State::closed;
  m_headline = isClosed || isAllDone() ? tr("Everything is read off.") : tr("There is nothing to read off now.");
  m_lead = isClosed || isAllDone() ? tr("What was read lies with the key, and stays shut until it is opened.") : QString();
  m_primary = isClosed ? tr("To the key") : tr("To the places");
}

// The codes, in the steps that need them: alone those of the next round, else all of them.
void AloneModel::showCups() {
  std::vector<HandRow> rows;
  if (isAtSteps() && m_steps.at(m_step).showsCodes) {
    std::map<std::pair<int, int>, std::vector<Cup>> groups;
    int next = 1;
    while (std::any_of(m_flights.begin(), m_flights.end(), [&](const auto& each) { return each.round.value == next; })) ++next;
    for (const Cup& cup : m_plan.cups) {
      if (cup.spare > 0 || (m_plan.routine == Routine::alone && cup.round.value != next)) continue;
      groups[m_plan.routine == Routine::bottles ? std::pair(cup.bottle, 0) : std::pair(cup.round.value, cup.place.value)].push_back(cup);
    }
    for (const auto& [at, cups] : groups) {
      HandRow row;
      for (const Cup& cup : cups) {
        row.codes << codeText(cup.code);
        row.spoken << spokenCode(cup.code);
      }
      row.where = m_plan.routine == Routine::bottles ? tr("Bottle %1").arg(shown(words::bottleLetter(at.first)))
                  : m_plan.routine == Routine::alone ? tr("Round %1").arg(at.first)
                                                     : shown(words::placeLine(voice(), {at.second}, {at.first}, m_plan.rounds));
      rows.push_back(row);
    }
  }
  m_cups.set(rows);
}

void AloneModel::next() {
  if (m_flight) {
    if (m_at == m_asked.size()) submit();
    return;
  }
  if (!isAtSteps()) return go(m_state == State::closed ? Router::Page::OpenKey : Router::Page::Places);
  if (m_step + 1 < m_steps.size()) {
    ++m_step;
    return show();
  }
  ask([id = m_stage.current.id(), said = m_saidReady](Cellar& cellar) {
    if (!said) session::sayPoured(cellar.store(), cellar.clock, id);
  }, [this] { go(Router::Page::Places); });
}

void AloneModel::stepBack() {
  if (m_flight && m_at > 0) --m_at;
  else if (!m_flight && m_step > 0) --m_step;
  show();
}

}  // namespace oddglass::ui
