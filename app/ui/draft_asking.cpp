// What is asked, and how: the question, the thing that is named, the method, and what only some methods have.
#include "domain/flight_form.h"
#include "domain/names.h"
#include "planning/recommend.h"
#include "ui/beverage_model.h"
#include "ui/draft_model.h"
#include "ui/voice.h"
#include "words/method.h"
#include "words/plan.h"
#include "words/recommend.h"

#include <algorithm>

namespace oddglass::ui {

// Leaves out of the draft what does not go with its question and method, and fills in what they need.
void DraftModel::fitToMethod() {
  if (m_draft.question != Question::differ && m_draft.lots.size() > 2) m_draft.lots.resize(2);
  if (m_draft.lots.size() == 3 && !comparesThree(m_draft.method)) m_draft.method = Method::triangle;
  const FlightForm form = formOf(m_draft.method);
  const auto own = [this]() -> Slot {
    for (std::size_t i = 0; i < m_facts.lots.size(); ++i)
      if (m_facts.lots[i].lot.origin == Origin::batch && i < m_draft.lots.size() && m_draft.lots[i] == m_facts.lots[i].lot.lot) return Slot{static_cast<int>(i) + 1};
    return Slot{1};
  };
  if (!namesAThing(m_draft.method)) {
    m_draft.attribute.clear();
    m_draft.expected.reset();
  } else if (!m_draft.expected || m_draft.expected->value > 2) {
    m_draft.expected = own();
  }
  if (!form.hasMarked || m_draft.lots.size() == 3) m_draft.marked.reset();
  else if (m_draft.method == Method::aNotA && !m_draft.marked) m_draft.marked = Slot{3 - own().value};
  if (!mayAlsoPrefer(m_draft.method) || m_draft.lots.size() == 3) m_draft.alsoPrefer = false;
  if (form.hasRight && !m_draft.alsoPrefer) m_draft.mayHaveNone = false;
  if (!mayStopEarly(m_draft.method, m_draft.lots.size()) || m_draft.rounds < 2) m_draft.stopping.reset();
  if (!mayBeAlike(m_draft.method) || m_draft.stopping) {
    m_draft.sought = Sought::difference;
    m_draft.limitPm.reset();
  }
  if (m_draft.evenings > m_draft.rounds) {
    m_draft.evenings = m_draft.rounds;
    m_evenings = QString::number(m_draft.evenings);
  }
}

void DraftModel::chooseQuestion(int index) {
  const Question question = allOf<Question>().at(static_cast<std::size_t>(index));
  if (question == m_draft.question) return;
  m_draft.question = question;
  m_draft.methodChosen = false;
  m_draft.method = question == Question::differ ? Method::triangle : question == Question::more ? Method::pair : Method::preference;
  m_draft.mayHaveNone = question == Question::prefer;
  keep();
}

void DraftModel::chooseMethod(int row) {
  m_draft.method = m_methodValues.at(static_cast<std::size_t>(row));
  m_draft.methodChosen = true;
  keep();
}

void DraftModel::chooseExpected(int index) {
  m_draft.expected = Slot{index + 1};
  keep();
}

void DraftModel::chooseMarked(int index) {
  if (index < 2) m_draft.marked = Slot{index + 1};
  else m_draft.marked.reset();
  keep();
}

void DraftModel::setAttribute(const QString& text) {
  if (attribute() == text) return;
  m_draft.attribute = plain(text);
  keep();
}

void DraftModel::tickAlsoPrefer() {
  m_draft.alsoPrefer = !m_draft.alsoPrefer;
  keep();
}

void DraftModel::tickMayHaveNone() {
  m_draft.mayHaveNone = !m_draft.mayHaveNone;
  keep();
}

void DraftModel::tickStopsEarly() {
  if (m_draft.stopping) m_draft.stopping.reset();
  else m_draft.stopping = Stopping{};
  keep();
}

void DraftModel::typeEvenings(const QString& text) { type(m_evenings, text, m_draft.evenings, 1, std::min(6, m_draft.rounds), "evenings"); }
void DraftModel::typeWave(const QString& text) { type(m_wave, text, m_draft.wave, 0, 60, "wave"); }
void DraftModel::stepEvenings(int by) { typeEvenings(QString::number(std::clamp(m_draft.evenings + by, 1, std::min(6, m_draft.rounds)))); }
void DraftModel::stepWave(int by) { typeWave(QString::number(std::clamp(m_draft.wave + 6 * by, 0, 60))); }

// The recommended way first, with its reasons; then the others, with what they find and cost.
void DraftModel::showMethods(const std::optional<planning::Recommendation>& recommendation) {
  m_methodValues.clear();
  std::vector<MethodRow> rows;
  const Claim claim = planning::claimOf(session::setupOf(m_facts));
  for (const planning::Choice& choice : recommendation ? recommendation->choices : std::vector<planning::Choice>{}) {
    m_methodValues.push_back(choice.method);
    const std::vector<std::string> lines = words::choiceLines(voice(), choice, m_draft.attribute.empty() ? "…" : m_draft.attribute);
    MethodRow row;
    row.says = rows.empty() ? tr("Recommended. %1").arg(shown(lines.front())) : shown(lines.front());
    QStringList why;
    for (std::size_t i = 1; i < lines.size(); ++i) why << shown(lines[i]);
    why << shown(words::choiceChance(voice(), choice, claim)) << shown(words::choicePrice(voice(), choice));
    row.why = why.join(QLatin1Char(' '));
    row.taken = choice.method == m_draft.method;
    rows.push_back(row);
  }
  m_methods.set(rows);
}

void DraftModel::showAsking() {
  const FlightForm form = formOf(m_draft.method);
  m_question = static_cast<int>(m_draft.question);
  m_questionHeadline = shown(words::questionLine(voice(), m_draft.question, m_draft.attribute));
  m_questionLead = m_lastDecision;
  m_lotsLabel = m_draft.question == Question::differ ? tr("Which two? (Three are compared pair by pair.)") : tr("Which two?");
  m_lotChoices.clear();
  for (std::size_t i = 0; i < m_facts.lots.size() && i < 2; ++i)
    m_lotChoices << tr("%1, %2").arg(shown(m_facts.lots[i].lot.beverageName), shown(m_facts.lots[i].lot.lotName));
  m_expected = m_draft.expected ? m_draft.expected->value - 1 : -1;
  m_namesThing = namesAThing(m_draft.method);
  m_mayBeAlike = mayBeAlike(m_draft.method) && !m_draft.stopping;
  m_asksLiking = !form.hasRight;
  m_mayAlsoPrefer = m_draft.question != Question::prefer && mayAlsoPrefer(m_draft.method) && m_draft.lots.size() == 2;
  m_alsoPrefer = m_draft.alsoPrefer;
  m_mayHaveNone = m_draft.mayHaveNone;
  m_hasMarked = form.hasMarked && m_draft.lots.size() == 2;
  m_markedChoices = m_lotChoices;
  if (m_draft.method != Method::aNotA) m_markedChoices << tr("either, drawn");
  m_marked = m_draft.marked ? m_draft.marked->value - 1 : 2;
  m_mayStopEarly = mayStopEarly(m_draft.method, m_draft.lots.size()) && m_draft.rounds >= 2;
  m_stopsEarly = m_draft.stopping.has_value();
  switch (m_draft.question) {
    case Question::differ: m_outcomeLabels = {tr("If they are told apart"), tr("If no difference is shown")}; break;
    case Question::more: m_outcomeLabels = {tr("If it is shown to be more so"), tr("If that is not shown")}; break;
    case Question::prefer: m_outcomeLabels = {tr("If a preference is shown"), tr("If none is shown")}; break;
  }
}

}  // namespace oddglass::ui
