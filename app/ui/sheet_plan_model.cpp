#include "ui/sheet_plan_model.h"

#include "domain/names.h"
#include "ui/kinds.h"
#include "ui/page_model.h"
#include "ui/sheet_kinds.h"
#include "ui/voice.h"
#include "words/came_out.h"
#include "words/numbers.h"
#include "words/sheet_plan.h"

#include <algorithm>

namespace oddglass::ui {
SheetPlanModel::SheetPlanModel(Draft& draft, QObject* parent)
    : QObject(parent), m_draft(draft), m_roles(RoleRow::staticMetaObject, this), m_asked(AskedRow::staticMetaObject, this) {
}

QStringList SheetPlanModel::roleChoices() {
  QStringList all;
  for (const LotRole role : allOf<LotRole>()) all << shown(words::roleName(voice(), role));
  return all;
}

QStringList SheetPlanModel::ready() {
  QStringList all;
  for (const words::ReadySheet sheet : words::readySheets()) all << shown(words::readyName(voice(), sheet));
  return all;
}

QStringList SheetPlanModel::kinds() {
  QStringList all;
  for (const ItemKind kind : sheetKinds()) all << shown(words::capitalised(words::kindName(voice(), kind)));
  return all;
}

void SheetPlanModel::begin() {
  m_isPicked = !m_draft.sheet.items.empty();
  m_isOpen = false;
  m_cupsAtOnce = QString::number(m_draft.sheet.cupsAtOnce);
  m_pause = QString::number(m_draft.sheet.pauseSeconds);
}

void SheetPlanModel::show(const session::DraftFacts& facts, shelf::WordList words) {
  m_facts = facts;
  m_words = std::move(words);
  if (isSheet() && followReady()) emit edited();
  showCups();
  showSheet();
  showForm();
  emit changed();
}

// The drink that the sheet is about: the first that is asked about.
Kind SheetPlanModel::mainKind() const {
  const auto found = std::ranges::find(m_facts.lots, LotRole::compared, [](const session::DraftLot& each) { return each.lot.role; });
  return found == m_facts.lots.end() ? Kind::other : found->lot.kind;
}

// As long as nobody has chosen a sheet, it is the one for the drink.
bool SheetPlanModel::followReady() {
  if (m_isPicked) return false;
  auto items = words::readyItems(voice(), words::readyFor(mainKind()));
  if (items == m_draft.sheet.items) return false;
  m_draft.sheet.items = std::move(items);
  return true;
}

void SheetPlanModel::ask() {
  m_draft.sheet.roles.clear();
  m_draft.marked.reset();
  followReady();
}

void SheetPlanModel::dropLot(int at) {
  if (at < static_cast<int>(m_draft.sheet.roles.size())) m_draft.sheet.roles.erase(m_draft.sheet.roles.begin() + at);
  if (!m_draft.marked || m_draft.marked->value <= at) return;
  if (m_draft.marked->value == at + 1) m_draft.marked.reset();
  else m_draft.marked = Slot{m_draft.marked->value - 1};
}

QString SheetPlanModel::missing() const {
  const auto count = [&](LotRole role) { return std::ranges::count(m_facts.lots, role, [](const session::DraftLot& each) { return each.lot.role; }); };
  if (count(LotRole::compared) == 0) return tr("Tick the drink that you want to know about.");
  if (isGap() && count(LotRole::reference) == 0) return m_lacksReference;
  return m_impossible;
}

void SheetPlanModel::showCups() {
  std::vector<RoleRow> rows;
  QStringList asked;
  m_markedChoices = {tr("no marked cup")};
  m_markedValues.clear();
  m_marked = 0;
  bool hasReference = false;
  for (const session::DraftLot& each : m_facts.lots) {
    const QString name = shown(words::lotTitle(voice(), each.lot));
    rows.push_back({});
    rows.back().name = name;
    rows.back().role = static_cast<int>(each.lot.role);
    if (each.lot.role == LotRole::compared) asked << name;
    if (each.lot.role != LotRole::reference) continue;
    hasReference = true;
    m_markedChoices << name;
    m_markedValues.push_back(each.lot.slot);
    if (m_draft.marked == each.lot.slot) m_marked = static_cast<int>(m_markedValues.size());
  }
  m_roles.set(rows);
  m_lacksReference = !isGap() || hasReference || asked.isEmpty() ? QString()
                     : m_facts.lots.size() > 1
                         ? tr("Nothing is there to hold %1 against. Say above which drink the others are held against, or tick another one.").arg(asked.join(tr(" and ")))
                         : tr("Nothing is there to hold %1 against. Tick a second drink: a bought one, or a batch that came out as you want it.").arg(asked.join(tr(" and ")));
}

void SheetPlanModel::chooseRole(int row, int role) {
  // What stands here may be older than the draft for a moment.
  if (m_facts.lots.size() != m_draft.lots.size()) return;
  m_draft.sheet.roles.clear();
  for (const session::DraftLot& each : m_facts.lots) m_draft.sheet.roles.push_back(each.lot.role);
  m_draft.sheet.roles.at(static_cast<std::size_t>(row)) = static_cast<LotRole>(role);
  if (m_draft.marked == Slot{row + 1} && static_cast<LotRole>(role) != LotRole::reference) m_draft.marked.reset();
  edit();
}

void SheetPlanModel::chooseMarked(int index) {
  if (index == 0) m_draft.marked.reset();
  else m_draft.marked = m_markedValues.at(static_cast<std::size_t>(index) - 1);
  edit();
}

void SheetPlanModel::tickDuplicate() {
  m_draft.sheet.hasDuplicate = !m_draft.sheet.hasDuplicate;
  edit();
}

void SheetPlanModel::takeReady(int index) {
  const words::ReadySheet sheet = words::readySheets().at(static_cast<std::size_t>(index));
  m_draft.sheet.items = words::readyItems(voice(), sheet);
  if (sheet == words::ReadySheet::marked && !m_draft.marked && !m_markedValues.empty()) m_draft.marked = m_markedValues.front();
  m_isPicked = true;
  m_isOpen = false;
  edit();
}

void SheetPlanModel::add(const SheetItem& item) {
  const auto isThere = [&](const SheetItem& each) { return each.kind == item.kind && each.part == item.part && each.word == item.word; };
  if (std::ranges::any_of(m_draft.sheet.items, isThere)) return;
  // What is looked at comes before the first sip.
  const auto after = std::ranges::find_if(m_draft.sheet.items, [&](const SheetItem& each) { return each.part > item.part; });
  m_draft.sheet.items.insert(after, item);
  m_isPicked = true;
  edit();
}

void SheetPlanModel::setCleanser(const QString& text) {
  if (cleanser() == text) return;
  m_draft.sheet.cleanser = plain(text);
  emit edited();
}

void SheetPlanModel::read(const QString& text, int low, int high, const char* argument, int& value) {
  try {
    value = typedBetween(text, low, high, argument);
    emit edited();
  } catch (const Problem& problem) {
    emit refused(problem);
  }
  emit changed();
}

void SheetPlanModel::typeCupsAtOnce(const QString& text) { read(m_cupsAtOnce = text, 2, 12, "cups_at_once", m_draft.sheet.cupsAtOnce); }
void SheetPlanModel::typePause(const QString& text) { read(m_pause = text, 0, 600, "pause_s", m_draft.sheet.pauseSeconds); }
void SheetPlanModel::stepCupsAtOnce(int by) { typeCupsAtOnce(QString::number(std::clamp(m_draft.sheet.cupsAtOnce + by, 2, 12))); }
void SheetPlanModel::stepPause(int by) { typePause(QString::number(std::clamp(m_draft.sheet.pauseSeconds + 10 * by, 0, 600))); }

void SheetPlanModel::edit() {
  emit edited();
  showCups();
  showSheet();
  showForm();
  emit changed();
}

}  // namespace oddglass::ui
