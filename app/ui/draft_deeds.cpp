// What is ticked, typed and done on the pages of a plan: drinks, people, numbers, the seal.
#include "ui/draft_model.h"

#include "domain/names.h"
#include "session/seal.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/seal.h"
#include "words/units.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

constexpr int leastCupMl = 5, mostCupMl = 200;

}  // namespace

void DraftModel::tickLot(int row) {
  const LotId lot = m_lotValues.at(static_cast<std::size_t>(row)).id;
  if (m_sheet.isSheet()) {
    tickSheetLot(lot);
  } else if (!std::erase(m_draft.lots, lot)) {
    // One more than can be compared takes the place of the one ticked last.
    const std::size_t most = m_draft.question == Question::differ ? 3 : 2;
    if (m_draft.lots.size() >= most) m_draft.lots.pop_back();
    m_draft.lots.push_back(lot);
  }
  m_draft.expected.reset();
  m_giveAways.forget();
  showLots();
  keep();
}

void DraftModel::tickTaster(int row) {
  const TasterId person = m_people.at(static_cast<std::size_t>(row)).id;
  if (!std::erase(m_draft.tasters, person)) m_draft.tasters.push_back(person);
  if (m_draft.pourer == person) m_draft.pourer.reset();
  showTasters();
  keep();
}

void DraftModel::toPour() { go(m_routine.isByHand() ? Router::Page::Alone : Router::Page::PourSheet); }

void DraftModel::type(QString& shownText, const QString& text, int& value, int low, int high, const char* argument) {
  shownText = text;
  try {
    value = typedBetween(text, low, high, argument);
    keep();
  } catch (const Problem& problem) {
    fail(problem);
  }
  emit changed();
}

void DraftModel::typeRounds(const QString& text) { type(m_rounds, text, m_draft.rounds, 1, 20, "rounds"); }
void DraftModel::typeCupMl(const QString& text) {
  m_cupMl = text;
  try {
    const int ml = typedVolume(text, "cup_ml");
    if (ml < leastCupMl || ml > mostCupMl)
      throw Problem(Trouble::outOfRange, "cup_ml", {{"text", std::to_string(ml)}, {"low", std::to_string(leastCupMl)}, {"high", std::to_string(mostCupMl)}});
    m_draft.cupMl = ml;
    keep();
  } catch (const Problem& problem) {
    fail(problem);
  }
  emit changed();
}
void DraftModel::typeSpares(const QString& text) { type(m_spares, text, m_draft.spares, 0, 12, "spares"); }
void DraftModel::stepRounds(int by) { typeRounds(QString::number(std::clamp(m_draft.rounds + by, 1, 20))); }
void DraftModel::stepCupMl(int by) { typeCupMl(shown(words::volumeTyped(voice(), std::clamp(words::volumeStepped(voice(), m_draft.cupMl, by), leastCupMl, mostCupMl)))); }
void DraftModel::stepSpares(int by) { typeSpares(QString::number(std::clamp(m_draft.spares + by, 0, 12))); }

void DraftModel::typeExpectation(const QString& text) {
  m_expectation = text;
  try {
    const bool isEmpty = text.trimmed().isEmpty();
    m_draft.expectationPc = isEmpty ? std::nullopt : std::optional(typedBetween(text, 1, 99, "expectation_pc"));
    keep();
  } catch (const Problem& problem) {
    // A number that is not shown any more is not sealed.
    m_draft.expectationPc.reset();
    keep();
    fail(problem);
  }
  emit changed();
}

void DraftModel::stepExpectation(int by) { typeExpectation(QString::number(m_draft.expectationPc ? std::clamp(*m_draft.expectationPc + 5 * by, 1, 99) : 50)); }

void DraftModel::takeWay(int row) {
  const planning::WayOut& way = m_wayValues.at(static_cast<std::size_t>(row));
  if (way.cupMl) m_draft.cupMl = *way.cupMl;
  if (way.rounds && way.way == planning::Way::moreRounds) m_draft.rounds = *way.rounds;
  m_cupMl = shown(words::volumeTyped(voice(), m_draft.cupMl));
  m_rounds = QString::number(m_draft.rounds);
  keep();
}

void DraftModel::settleGiveAways() {
  m_giveAways.settle();
  if (m_giveAways.isSettled()) toCare();
}

void DraftModel::settleCare(bool settled) {
  m_draft.careSettled = settled;
  m_careSettled = settled;
  emit changed();
  keep();
}

void DraftModel::seal() {
  ask([id = m_draft.id](Cellar& cellar) { return session::seal(cellar.store(), cellar.clock, cellar.chance, id); },
      [this](const session::Sealed& sealed) {
        m_sealMark = shown(sealed.sealMark);
        m_sealMarkLine = shown(words::sealMarkLine(voice(), sealed.sealMark));
        m_afterSeal = shown(words::afterSealLine(voice(), m_facts.pourerName, m_draft.routine));
        m_stage.current.set(m_draft.id, guestTitle(), m_sealMark);
        emit changed();
      });
}

void DraftModel::discard() {
  ask([id = m_draft.id](Cellar& cellar) { session::discardDraft(cellar.store(), id); }, [this] {
    m_draft = {};
    go(Router::Page::Today);
  });
}

}  // namespace oddglass::ui
