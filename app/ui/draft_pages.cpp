// What the five pages of a plan say: lists to tick, what it takes, care, the seal.
#include "ui/draft_model.h"

#include "figures/shares.h"
#include "report/pictures.h"
#include "shelf/lots.h"
#include "ui/beverage_model.h"
#include "ui/voice.h"
#include "words/care.h"
#include "words/expectation.h"
#include "words/numbers.h"
#include "words/plan.h"
#include "words/seal.h"
#include "words/sources.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

FigureSource pictureOf(const planning::Outlook& outlook) {
  FigureSource source;
  source.layOut = [picture = report::picture(words::outlookPicture(voice(), outlook))](double width, const figures::Measure& measure) { return figures::sharesFigure(picture, width, measure); };
  return source;
}

}  // namespace

void DraftModel::showLots() {
  std::vector<TickRow> rows;
  for (std::size_t i = 0; i < m_lotValues.size(); ++i) {
    const Lot& lot = m_lotValues[i];
    TickRow row;
    row.name = tr("%1, %2").arg(shown(m_lotNames[i]), shown(lot.name));
    row.note = tr("%1 free").arg(shown(words::bottles(voice(), shelf::freeBottles(lot))));
    row.ticked = std::find(m_draft.lots.begin(), m_draft.lots.end(), lot.id) != m_draft.lots.end();
    rows.push_back(row);
  }
  m_lots.set(rows);
}

void DraftModel::showTasters() {
  std::vector<TickRow> rows;
  for (const Taster& person : m_people) {
    TickRow row;
    row.name = shown(person.name);
    const bool maker = std::any_of(m_facts.makers.begin(), m_facts.makers.end(), [&](const auto& one) { return one.taster == person.id; });
    row.note = maker && m_draft.routine == Routine::alone ? tr("alone: the answers speak of this person only") : maker ? tr("made one of these: stands beside the panel and does not count") : QString();
    row.ticked = std::find(m_draft.tasters.begin(), m_draft.tasters.end(), person.id) != m_draft.tasters.end();
    rows.push_back(row);
  }
  m_tasters.set(rows);
}

void DraftModel::showTakes(const planning::Amounts& amounts, const planning::Outlook& outlook) {
  const planning::Setup setup = session::setupOf(m_facts);
  std::vector<std::string> names;
  for (const session::DraftLot& lot : m_facts.lots) names.push_back(lot.lot.beverageName);
  m_takesHeadline = shown(words::outlookHeadline(voice(), outlook, m_draft.sought));
  const std::vector<std::string> found = words::outlookLines(voice(), outlook, m_draft.sought);
  // The picture below says how often each size of difference would be found; the rest is said here.
  QStringList lead;
  for (std::size_t i = 0; i < found.size(); ++i)
    if (i == 0 || i > outlook.findings.size()) lead << shown(found[i]);
  m_takesLead = lead.join(QLatin1Char(' '));
  m_panelLine = shown(words::panelLine(voice(), setup, m_routine.hasPourer()));
  m_figure = pictureOf(outlook);
  m_amounts = shownAll(words::amountLines(voice(), setup, amounts, names));
  m_small.clear();
  for (const planning::TooSmall rule : outlook.tooSmall) m_small << shown(words::tooSmallLine(voice(), outlook, rule));
  m_how = shownAll(words::planSources(voice(), outlook.method, outlook, setup.gammaPm));
  m_wayValues = outlook.waysOut;
  std::vector<WayRow> rows;
  for (const planning::WayOut& way : m_wayValues) {
    WayRow row;
    row.says = shown(words::wayOutLine(voice(), way, outlook, m_draft.sought));
    row.taken = way.way == planning::Way::pourLess || way.way == planning::Way::moreRounds;
    rows.push_back(row);
  }
  m_ways.set(rows);
}

void DraftModel::showNothing(const QString& why) {
  m_takesHeadline = tr("Who tastes, and what?");
  m_takesLead = why;
  m_panelLine.clear();
  m_figure = {};
  m_amounts.clear();
  m_how.clear();
  m_small.clear();
  m_ways.set(std::vector<WayRow>());
}

void DraftModel::showCare(const planning::Amounts& amounts) {
  words::CareFacts facts;
  for (const session::DraftLot& lot : m_facts.lots) facts.drinks.push_back(lot.lot.ingredients);
  facts.gramsAtMost = amounts.grams.value_or(0);
  facts.drinksAtMost = amounts.drinks;
  facts.drinkGrams = amounts.drinkGrams;
  facts.isDosed = m_draft.question == Question::notice;
  const words::CarePage page = words::care(voice(), facts);
  m_careHeadline = shown(page.headline);
  m_care = shownAll(page.all());
}

void DraftModel::showSeal(const planning::Outlook& outlook, const std::string& refusal) {
  std::vector<std::string> drinks;
  for (const session::DraftLot& lot : m_facts.lots) drinks.push_back(plain(tr("%1, %2").arg(shown(lot.lot.beverageName), shown(lot.lot.lotName))));
  const words::SealFacts facts = words::sealFacts(m_draft, session::setupOf(m_facts), outlook, drinks, m_facts.pourerName);
  m_sealReason = shown(refusal);
  showSealPage(facts.drinks.size() < 2 ? words::SealPage{} : words::sealPage(voice(), facts));
}

void DraftModel::showSealPage(const words::SealPage& page) {
  m_sealQuestion = page.question.empty() ? tr("There is nothing to seal yet.") : shown(page.question);
  m_sealRule = shownAll(page.rule);
  m_sealPromises = shownAll(page.promises);
  m_sealBinding = shown(page.binding);
}

// What was expected of something that can no longer come out is dropped.
void DraftModel::showExpectation() {
  words::ExpectationFacts facts{m_draft.method, {}, m_draft.marked, m_draft.sheet.items};
  for (const session::DraftLot& each : m_facts.lots) facts.lots.push_back(each.lot);
  const bool isAsked = m_draft.lots.size() == facts.lots.size() && mayExpect(facts.method, planning::claimOf(session::setupOf(m_facts)), facts.lots, facts.marked, facts.items);
  m_expectationAsked = isAsked ? shown(words::expectationAsked(voice(), facts)) : QString();
  m_expectationLine = isAsked && m_draft.expectationPc ? shown(words::expectationLine(voice(), facts, *m_draft.expectationPc)) : QString();
  if (isAsked || !m_draft.expectationPc) return;
  m_draft.expectationPc.reset();
  m_expectation.clear();
  keep();
}

}  // namespace oddglass::ui
