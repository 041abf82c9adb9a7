// What is asked, and how: the question, the thing that is named, the method, and what only some methods have.
#include "domain/flight_form.h"
#include "domain/names.h"
#include "session/follow.h"
#include "ui/beverage_model.h"
#include "ui/draft_model.h"
#include "ui/voice.h"
#include "words/seal.h"
#include "words/method.h"
#include "words/plan.h"

#include <algorithm>

namespace oddglass::ui {

void DraftModel::fitToMethod() {
  const int evenings = m_draft.evenings, spares = m_draft.spares;
  session::fit(m_draft, m_facts);
  if (m_draft.spares != spares) m_spares = QString::number(m_draft.spares);
  if (m_draft.evenings != evenings) m_evenings = QString::number(m_draft.evenings);
}

void DraftModel::chooseQuestion(int index) {
  const Question question = allOf<Question>().at(static_cast<std::size_t>(index));
  if (question == m_draft.question) return;
  m_draft.question = question;
  m_draft.methodChosen = false;
  const bool wasSheet = m_sheet.isSheet();
  m_draft.method = usualMethod(question);
  m_draft.mayHaveNone = question == Question::prefer;
  m_draft.marked.reset();
  m_draft.expectationPc.reset();
  m_expectation.clear();
  // More drinks stand on a sheet than can be compared.
  if (!m_sheet.isSheet() && m_draft.lots.size() > 3) m_draft.lots.resize(3);
  if (m_sheet.isSheet()) {
    if (!wasSheet) m_sheet.begin();
    m_sheet.ask();
  }
  showLots();
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

void DraftModel::setDose(const QString& text) {
  if (dose() == text) return;
  m_draft.dose = plain(text);
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

void DraftModel::showAsking() {
  const FlightForm form = formOf(m_draft.method);
  m_question = static_cast<int>(m_draft.question);
  m_questionHeadline = shown(words::questionLine(voice(), m_draft.question, m_draft.attribute));
  m_questionLead = m_lastDecision;
  m_lotsLabel = m_sheet.isSheet() ? tr("Which drinks? What each of them is there for is said below.") : m_draft.question == Question::differ ? tr("Which two? A third may be ticked as well, such as another vintage.") : tr("Which two?");
  m_lotChoices.clear();
  for (std::size_t i = 0; i < m_facts.lots.size() && i < 2; ++i)
    m_lotChoices << tr("%1, %2").arg(shown(m_facts.lots[i].lot.beverageName), shown(m_facts.lots[i].lot.lotName));
  m_expected = m_draft.expected ? m_draft.expected->value - 1 : -1;
  m_knownDifference = m_draft.question == Question::notice;
  m_namesThing = holdsAThing(m_draft.method, m_draft.question);
  m_mayBeAlike = mayBeAlike(m_draft.method) && !m_draft.stopping;
  m_asksLiking = !form.hasRight && !m_sheet.isSheet();
  m_mayAlsoPrefer = m_draft.question != Question::prefer && mayAlsoPrefer(m_draft.method) && m_draft.lots.size() == 2;
  m_alsoPrefer = m_draft.alsoPrefer;
  m_mayHaveNone = m_draft.mayHaveNone;
  m_hasMarked = form.hasMarked && m_draft.lots.size() == 2;
  m_markedChoices = m_lotChoices;
  if (m_draft.method != Method::aNotA) m_markedChoices << tr("either, drawn");
  m_marked = m_draft.marked ? m_draft.marked->value - 1 : 2;
  m_mayStopEarly = mayStopEarly(m_draft.method, m_draft.lots.size()) && m_draft.rounds >= 2;
  m_stopsEarly = m_draft.stopping.has_value();
  m_lingers = m_draft.lingers;
  m_outcomeLabels.clear();
  for (const Outcome outcome : {Outcome::shown, Outcome::notShown}) m_outcomeLabels << shown(words::outcomeIf(voice(), outcome, m_draft.method, m_draft.question));
}

}  // namespace oddglass::ui
