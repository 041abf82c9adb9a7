#include "ui/give_aways_model.h"

#include "domain/flight_form.h"
#include "domain/names.h"
#include "planning/give_aways.h"
#include "ui/page_model.h"
#include "ui/sheet_plan_model.h"
#include "ui/voice.h"
#include "words/give_aways.h"

#include <algorithm>

namespace oddglass::ui {

GiveAwaysModel::GiveAwaysModel(Draft& draft, SheetPlanModel& sheet, QObject* parent)
    : QObject(parent), m_draft(draft), m_sheet(sheet), m_checks(GiveAwayRow::staticMetaObject, this) {}

// The question may have been changed since: what was to be asked is then not asked any more.
void GiveAwaysModel::dropWhatIsNotAsked() {
  for (auto& [check, way] : m_found) {
    if (!way) continue;
    Draft alone = m_draft;
    alone.giveAways = GiveAways{{check, *way}};
    if (planning::firstUnfit(alone)) way.reset();
  }
}

void GiveAwaysModel::show() {
  if (m_of != m_draft.id || m_draft.giveAways) {
    if (m_of != m_draft.id) m_before.reset();
    m_of = m_draft.id;
    m_found.clear();
    for (const auto& [check, way] : m_draft.giveAways.value_or(GiveAways{})) m_found[check] = way;
  }
  dropWhatIsNotAsked();
  m_asked.clear();
  m_notYet.clear();
  std::vector<GiveAwayRow> rows;
  for (const GiveAway check : allOf<GiveAway>()) {
    GiveAwayRow row;
    row.name = shown(words::checkName(voice(), check));
    row.hint = shown(words::checkHint(voice(), check));
    const auto found = m_found.find(check);
    row.different = found != m_found.end();
    row.leaveOut = row.different && check == GiveAway::hadBefore;
    const auto ways = planning::waysOf(check, m_draft.method, m_draft.lots.size());
    for (std::size_t i = 0; i < ways.size(); ++i) {
      row.ways << shown(words::wayOutName(voice(), ways[i]));
      if (!row.different || found->second != ways[i]) continue;
      row.way = static_cast<int>(i);
      row.says = shown(words::wayOutHint(voice(), check, ways[i], m_draft.method));
      if (ways[i] == WayOut::ask && !m_sheet.isSheet()) m_asked = tr("“%1”: which of them may have more of it?").arg(shown(m_draft.attribute));
    }
    if (row.different && row.way < 0 && m_notYet.isEmpty()) m_notYet = tr("%1: choose a way out first.").arg(row.name);
    rows.push_back(row);
  }
  m_checks.set(rows);
  emit changed();
}

void GiveAwaysModel::forget() {
  m_found.clear();
  m_draft.giveAways.reset();
}

void GiveAwaysModel::settle() {
  GiveAways settled;
  for (const auto& [check, way] : m_found) {
    if (!way) return;
    settled[check] = *way;
  }
  m_draft.giveAways = settled;
  m_draft.giveAwaysUnasked = false;
  emit edited();
}

void GiveAwaysModel::tick(int row) {
  const GiveAway check = allOf<GiveAway>().at(static_cast<std::size_t>(row));
  askAsBefore(check);
  if (m_found.erase(check) == 0) m_found[check] = std::nullopt;
  m_draft.giveAways.reset();
  show();
  emit edited();
}

void GiveAwaysModel::choose(int row, int way) {
  const GiveAway check = allOf<GiveAway>().at(static_cast<std::size_t>(row));
  const auto ways = planning::waysOf(check, m_draft.method, m_draft.lots.size());
  m_draft.giveAways.reset();
  askAsBefore(check);
  m_found[check] = ways.at(static_cast<std::size_t>(way));
  if (m_found[check] == WayOut::ask) askAbout(check);
  show();
  emit edited();
}

void GiveAwaysModel::askAbout(GiveAway check) {
  const std::string word = words::askedWord(voice(), check);
  if (m_sheet.isSheet()) {
    SheetItem item;
    item.kind = ItemKind::line;
    item.part = check == GiveAway::fizz ? Part::main : Part::look;
    item.word = word;
    m_sheet.add(item);
    return;
  }
  if (!m_before) m_before = m_draft;
  // One comparison asks about one thing.
  for (auto& [other, way] : m_found)
    if (other != check && way == WayOut::ask) way.reset();
  m_draft.question = Question::more;
  m_draft.method = usualMethod(Question::more);
  m_draft.methodChosen = false;
  m_draft.attribute = word;
  m_draft.dose.clear();
  m_draft.mayHaveNone = false;
  m_draft.marked.reset();
  m_draft.expectationPc.reset();
}

// What was asked instead is not asked any more: the question is what it was.
void GiveAwaysModel::askAsBefore(GiveAway check) {
  const auto found = m_found.find(check);
  if (found == m_found.end() || found->second != WayOut::ask) return;
  const std::string word = words::askedWord(voice(), check);
  if (m_sheet.isSheet()) {
    std::erase_if(m_draft.sheet.items, [&](const SheetItem& each) { return each.kind == ItemKind::line && each.word == word; });
    return;
  }
  if (!m_before || m_draft.question != Question::more || m_draft.attribute != word) return;
  m_draft.question = m_before->question;
  m_draft.method = m_before->method;
  m_draft.methodChosen = m_before->methodChosen;
  m_draft.attribute = m_before->attribute;
  m_draft.expected = m_before->expected;
  m_draft.dose = m_before->dose;
  m_draft.mayHaveNone = m_before->mayHaveNone;
  m_draft.marked = m_before->marked;
  m_draft.expectationPc = m_before->expectationPc;
  m_before.reset();
}

}  // namespace oddglass::ui
