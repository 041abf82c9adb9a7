// Which method is taken: the recommended one until the brewer chooses another; and what a third drink is for.
#include "session/follow.h"
#include "ui/draft_model.h"
#include "ui/voice.h"
#include "words/recommend.h"

namespace oddglass::ui {

void DraftModel::chooseMethod(int row) {
  m_draft.method = m_methodValues.at(static_cast<std::size_t>(row));
  m_draft.methodChosen = true;
  keep();
}

void DraftModel::letProgramPick() {
  m_draft.methodChosen = false;
  keep();
}

void DraftModel::tickLingers() {
  m_draft.lingers = !m_draft.lingers;
  keep();
}

void DraftModel::chooseThreeWay(int row) {
  std::vector<LotId> lots;
  for (const int lot : m_threeValues.at(static_cast<std::size_t>(row))) lots.push_back(m_draft.lots.at(static_cast<std::size_t>(lot)));
  m_draft.lots = lots;
  m_draft.expected.reset();
  showLots();
  keep();
}

// The store may hold another method by now, with what it needs; all that is typed stays as it stands here.
void DraftModel::followWhatWasPicked(const Draft& kept) {
  m_draft.method = kept.method;
  m_draft.methodChosen = kept.methodChosen;
  m_draft.expected = kept.expected;
  m_draft.marked = kept.marked;
  m_draft.mayHaveNone = kept.mayHaveNone;
  m_draft.alsoPrefer = kept.alsoPrefer;
  m_draft.stopping = kept.stopping;
  m_draft.sought = kept.sought;
  m_draft.limitPm = kept.limitPm;
}

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
  m_methodChosen = m_draft.methodChosen;
  m_methodNote = recommendation ? shown(words::pickedLine(voice(), *recommendation, m_draft.method, m_draft.methodChosen)) : QString();
}

// With three drinks: one of them for another day, or all pair by pair, each with its price before anything else is decided.
void DraftModel::showThree(const std::optional<planning::Recommendation>& recommendation) {
  m_isThree = m_facts.lots.size() == 3;
  m_threeValues.clear();
  std::vector<CompareRow> rows;
  m_threeHeadline = tr("Three drinks. What is the third for?");
  m_threeAdvice = tr("Tick who tastes, and each way says what it costs and what it needs.");
  if (m_isThree && recommendation && recommendation->references) {
    std::vector<PlannedLot> lots;
    for (const session::DraftLot& each : m_facts.lots) lots.push_back(each.lot);
    const words::ReferencesWords words = words::referencesWords(voice(), *recommendation->references, planning::claimOf(session::setupOf(m_facts)), lots);
    m_threeHeadline = shown(words.headline);
    m_threeAdvice = shown(words.advice);
    for (const words::WayToCompare& way : words.ways) {
      m_threeValues.push_back(way.lots);
      QStringList price;
      for (const std::string& line : way.lines) price << shown(line);
      CompareRow row;
      row.says = shown(way.name);
      row.price = price.join(QLatin1Char(' '));
      row.taken = way.lots.size() == m_facts.lots.size();
      rows.push_back(row);
    }
  }
  m_threeWays.set(rows);
}

}  // namespace oddglass::ui
