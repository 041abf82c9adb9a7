// A score sheet's plan on the pages that it shares with the others: its drinks, what it takes, the seal.
#include "ui/draft_model.h"

#include "ui/voice.h"
#include "words/plan.h"
#include "words/seal_sheet.h"
#include "words/sheet_plan.h"
#include "words/sources.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

constexpr std::size_t mostOnSheet = 12;

}  // namespace

void DraftModel::tickSheetLot(LotId lot) {
  const auto found = std::ranges::find(m_draft.lots, lot);
  if (found != m_draft.lots.end()) {
    m_sheet.dropLot(static_cast<int>(found - m_draft.lots.begin()));
    m_draft.lots.erase(found);
  } else if (m_draft.lots.size() < mostOnSheet) {
    m_draft.lots.push_back(lot);
  }
}

void DraftModel::showSheetTakes(const planning::Amounts& amounts, const planning::SheetOutlook& outlook) {
  const planning::Setup setup = session::setupOf(m_facts);
  const words::SheetPlanWords found = words::sheetPlanWords(voice(), outlook);
  std::vector<std::string> names;
  for (const session::DraftLot& lot : m_facts.lots) names.push_back(lot.lot.beverageName);
  showNothing(shownAll(found.lines).join(QLatin1Char(' ')));
  m_takesHeadline = shown(found.headline);
  m_small = shownAll(found.cautions);
  m_panelLine = shown(words::panelLine(voice(), setup, m_routine.hasPourer()));
  m_amounts = shownAll(words::amountLines(voice(), setup, amounts, names));
  m_how = shownAll(words::sheetPlanSources(voice(), m_draft.sheet.items));
}

void DraftModel::showSheetSeal(const std::optional<planning::SheetOutlook>& outlook, const std::string& refusal) {
  m_sealReason = shown(refusal);
  if (!outlook) {
    showSealPage({});
    return;
  }
  const planning::Setup setup = session::setupOf(m_facts);
  words::SheetSealFacts facts;
  facts.draft = m_draft;
  for (const session::DraftLot& each : m_facts.lots) facts.lots.push_back(each.lot);
  facts.outlook = *outlook;
  facts.claim = planning::claimOf(setup);
  facts.makers = setup.panel > 0 ? setup.makers : 0;
  facts.pourer = m_facts.pourerName;
  showSealPage(words::sheetSealPage(voice(), facts));
}

}  // namespace oddglass::ui
