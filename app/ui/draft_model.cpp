#include "ui/draft_model.h"

#include "insight/noticing.h"
#include "insight/past_spread.h"
#include "session/follow.h"
#include "session/known_differences.h"
#include "session/look.h"
#include "session/past.h"
#include "session/seal.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/people.h"
#include "shelf/vocabulary.h"
#include "ui/beverage_model.h"
#include "ui/voice.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "words/expectation.h"
#include "words/method.h"
#include "words/noticing.h"
#include "words/numbers.h"
#include "words/plan.h"
#include "words/problems.h"
#include "words/seal.h"
#include "words/units.h"

#include <algorithm>
#include <array>
#include <map>

namespace oddglass::ui {
namespace {

constexpr std::array limitsPm{100, 200, 300, 400, 500};
constexpr std::array alphasPm{100, 50, 10};

template <class Values>
int indexOf(const Values& values, int value) {
  const auto found = std::find(values.begin(), values.end(), value);
  return found == values.end() ? -1 : static_cast<int>(found - values.begin());
}

}  // namespace

struct DraftModel::Read {
  session::DraftFacts facts;
  std::vector<Lot> lots;
  std::vector<std::string> lotNames;
  std::vector<Taster> people;
  std::string lastDecision;
  std::string refusal;
  std::optional<planning::Amounts> amounts;
  std::optional<planning::Outlook> outlook;
  std::optional<planning::SheetOutlook> sheetOutlook;
  shelf::WordList words;
  std::string coverage;
  std::optional<planning::Recommendation> recommendation;
};

DraftModel::DraftModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent),
      m_sheet(m_draft, this),
      m_giveAways(m_draft, m_sheet, this),
      m_serving(m_draft, this),
      m_routine(m_draft, this),
      m_lots(TickRow::staticMetaObject, this),
      m_tasters(TickRow::staticMetaObject, this),
      m_ways(WayRow::staticMetaObject, this),
      m_methods(MethodRow::staticMetaObject, this),
      m_threeWays(CompareRow::staticMetaObject, this) {
  nameFields({"title", "guest_title", "rounds", "cup_ml", "spares", "pourer_name", "limit_pm", "attribute", "dose", "evenings", "wave", "cups_at_once", "pause_s", "cleanser", "expectation_pc", "vessel"});
  connect(&m_sheet, &SheetPlanModel::edited, this, &DraftModel::keep);
  connect(&m_giveAways, &GiveAwaysModel::edited, this, &DraftModel::keep);
  connect(&m_serving, &ServingModel::edited, this, &DraftModel::keep);
  connect(&m_routine, &RoutineModel::edited, this, &DraftModel::keep);
  connect(&m_sheet, &SheetPlanModel::refused, this, &DraftModel::fail);
}

QStringList DraftModel::questions() {
  QStringList all;
  for (const Question question : allOf<Question>()) all << shown(words::questionLine(voice(), question, {}));
  return all;
}

QStringList DraftModel::limits() {
  QStringList all;
  for (const int limit : limitsPm) all << shown(words::shareLimit(voice(), limit));
  return all;
}

QStringList DraftModel::alphas() {
  QStringList all;
  for (const int alpha : alphasPm) all << shown(words::timesIn(voice(), alpha / 1000.0));
  return all;
}

QString DraftModel::sealLimits() { return shown(words::sealLimits(voice())); }
QString DraftModel::expectationHint() { return shown(words::expectationHint(voice())); }

// Which words of the sheet nobody at this table is known to notice.
std::string DraftModel::coverageOf(store::Store& store, const session::DraftFacts& facts, const shelf::WordList& words) {
  const insight::Meaning meaning = [&](const std::string& word) { return shelf::nameMeant(words, word); };
  const auto panel = session::panelOf(facts);
  if (panel.empty()) return {};
  const auto noticing = insight::noticingOf(session::knownDifferences(store), meaning);
  return words::coverageLine(voice(), insight::unnoticed(noticing, panel, insight::wordsOf(facts.draft.sheet.items), meaning), !insight::wordsNoticed(noticing, panel).empty());
}

DraftModel::Read DraftModel::look(Cellar& cellar, const SessionId& id) {
  store::Store& store = cellar.store();
  Read read;
  read.facts = session::draftFacts(store, id);
  std::map<BeverageId, std::string> names;
  for (const shelf::OnShelf& on : shelf::find(store, "")) names[on.beverage.id] = on.beverage.name;
  for (const Lot& lot : shelf::lotsToPour(store)) {
    read.lots.push_back(lot);
    read.lotNames.push_back(names[lot.beverage]);
  }
  read.people = shelf::people(store);
  if (!read.facts.draft.lots.empty()) read.lastDecision = session::lastDecision(store, read.facts.draft.lots);
  try {
    session::requireReady(read.facts);
  } catch (const Problem& problem) {
    read.refusal = words::sentence(voice(), problem);
  }
  const planning::Setup setup = session::setupOf(read.facts);
  const bool isAsked = setup.sheet ? session::isCoded(read.facts) : setup.lots.size() >= 2;
  if (isAsked && setup.places() > 0) read.amounts = planning::amountsOf(setup);
  if (setup.sheet && isAsked && setup.counting() > 0) {
    const auto past = insight::pastSpreadOf(session::pastSheets(store, session::panelOf(read.facts)));
    read.sheetOutlook = planning::sheetOutlook(setup, read.facts.draft.sheet.items, past ? planning::Spread{past->interaction, past->repeat, true, past->tables} : planning::Spread{});
  }
  if (!setup.sheet && setup.counting() > 0) read.outlook = planning::outlookFor(setup);
  if (setup.sheet) {
    read.words = shelf::vocabulary(store);
    read.coverage = coverageOf(store, read.facts, read.words);
  }
  read.recommendation = session::recommendationFor(read.facts);
  return read;
}

// As long as nobody has chosen a method the recommended one is taken, before anything is shown.
DraftModel::Read DraftModel::read(Cellar& cellar, const SessionId& id) {
  Read first = look(cellar, id);
  const auto method = session::methodToFollow(first.facts.draft, first.recommendation);
  if (!method) return first;
  Draft draft = session::draft(cellar.store(), id);
  draft.method = *method;
  session::fit(draft, first.facts);
  session::saveDraft(cellar.store(), cellar.clock, draft);
  return look(cellar, id);
}

void DraftModel::open(const SessionId& id) {
  ask([id](Cellar& cellar) {
    return id.empty() ? session::newDraft(cellar.store(), cellar.clock, cellar.chance) : id;
  }, [this](const SessionId& draft) {
    m_draft = {};
    m_draft.id = draft;
    m_sealMark.clear();
    load();
    go(Router::Page::Question);
  });
}

void DraftModel::load() {
  if (m_draft.id.empty() || !m_sealMark.isEmpty()) return;
  askNewest(m_lane, [id = m_draft.id](Cellar& cellar, const std::stop_token&) { return read(cellar, id); }, [this](Read read) {
    m_rounds = QString::number(read.facts.draft.rounds);
    m_cupMl = shown(words::volumeTyped(voice(), read.facts.draft.cupMl));
    m_spares = QString::number(read.facts.draft.spares);
    m_evenings = QString::number(read.facts.draft.evenings);
    m_wave = QString::number(read.facts.draft.wave);
    m_expectation = read.facts.draft.expectationPc ? QString::number(*read.facts.draft.expectationPc) : QString();
    m_draft = read.facts.draft;
    m_sheet.begin();
    take(std::move(read));
  });
}

// What stands here is newer than what the store gives back, and texts are typed with blanks that the store takes away: they are not read back.
void DraftModel::keep() {
  fitToMethod();
  settle();
  askNewest(m_lane, [draft = m_draft](Cellar& cellar, const std::stop_token&) {
    session::saveDraft(cellar.store(), cellar.clock, draft);
    return read(cellar, draft.id);
  }, [this](Read read) { take(std::move(read)); });
}

void DraftModel::take(Read read) {
  m_facts = std::move(read.facts);
  followWhatWasPicked(m_facts.draft);
  m_lotValues = std::move(read.lots);
  m_lotNames = std::move(read.lotNames);
  m_people = std::move(read.people);
  m_anyLots = m_lotValues.size() >= (m_sheet.isSheet() ? 1U : 2U);
  m_lastDecision = read.lastDecision.empty() ? QString() : tr("Last time you wrote: %1").arg(shown(words::quoted(voice(), read.lastDecision)));
  m_sought = static_cast<int>(m_draft.sought);
  m_limit = m_draft.limitPm ? indexOf(limitsPm, *m_draft.limitPm) : -1;
  m_alpha = indexOf(alphasPm, m_draft.alphaPm);
  m_careSettled = m_draft.careSettled;
  m_giveAways.show();
  m_serving.show();
  showAsking();
  showMethods(read.recommendation);
  showThree(read.recommendation);
  showLots();
  showTasters();
  m_routine.show(m_people);
  m_sheet.show(m_facts, std::move(read.words));
  m_coverage = shown(read.coverage);
  m_notYet = notYet();
  const planning::Amounts amounts = read.amounts.value_or(planning::Amounts{});
  if (read.amounts && read.sheetOutlook) showSheetTakes(amounts, *read.sheetOutlook);
  else if (read.amounts && read.outlook) showTakes(amounts, *read.outlook);
  else showNothing(m_notYet.isEmpty() ? tr("Nobody is left who did not make it. Add at least one such person, or taste alone.") : m_notYet);
  showCare(amounts);
  if (m_sheet.isSheet()) showSheetSeal(read.sheetOutlook, read.refusal);
  else showSeal(read.outlook.value_or(planning::Outlook{}), read.refusal);
  showExpectation();
  emit changed();
}

QString DraftModel::notYet() const {
  if (m_sheet.isSheet() && !m_sheet.missing().isEmpty()) return m_sheet.missing();
  if (holdsAThing(m_draft.method, m_draft.question) && m_draft.attribute.empty()) return m_knownDifference ? tr("Say what there is to notice.") : tr("Say what one of them has more of.");
  if (!m_sheet.isSheet() && m_draft.lots.size() < 2) return tr("A comparison needs a second drink. Tick two of them.");
  return m_draft.tasters.empty() ? tr("Tick at least one person who tastes.") : QString();
}

QString DraftModel::promise(Outcome outcome) const {
  const auto found = m_draft.promises.find(outcome);
  return found == m_draft.promises.end() ? QString() : shown(found->second);
}

void DraftModel::setPromise(Outcome outcome, const QString& text) {
  if (promise(outcome) == text) return;
  m_draft.promises[outcome] = plain(text);
  keep();
}

void DraftModel::setTitle(const QString& text) {
  if (title() == text) return;
  m_draft.title = plain(text);
  keep();
}

void DraftModel::setGuestTitle(const QString& text) {
  if (guestTitle() == text) return;
  m_draft.guestTitle = plain(text);
  keep();
}

void DraftModel::chooseSought(int index) {
  m_draft.sought = static_cast<Sought>(index);
  if (m_draft.sought != Sought::difference && !m_draft.limitPm) m_draft.limitPm = limitsPm[2];
  keep();
}

void DraftModel::chooseLimit(int index) {
  m_draft.limitPm = limitsPm.at(static_cast<std::size_t>(index));
  keep();
}

void DraftModel::chooseAlpha(int index) {
  m_draft.alphaPm = alphasPm.at(static_cast<std::size_t>(index));
  keep();
}

}  // namespace oddglass::ui
