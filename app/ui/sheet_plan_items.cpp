// The questions of a sheet: their list, and the form for one of them.
#include "domain/item_kinds.h"
#include "domain/names.h"
#include "ui/page_model.h"
#include "ui/sheet_kinds.h"
#include "ui/sheet_plan_model.h"
#include "ui/spoken_words.h"
#include "ui/voice.h"
#include "words/numbers.h"
#include "words/sheet_out.h"
#include "words/sheet_plan.h"
#include "words/vocabulary.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

constexpr std::size_t mostOffered = 12;

// The questions that stand for a ready sheet say which one it is.
int readyLike(const std::vector<SheetItem>& items) {
  const auto& all = words::readySheets();
  for (std::size_t i = 0; i < all.size(); ++i)
    if (words::readyItems(voice(), all[i]) == items) return static_cast<int>(i);
  return -1;
}

}  // namespace

void SheetPlanModel::showSheet() {
  const auto& items = m_draft.sheet.items;
  std::vector<AskedRow> rows(items.size());
  int about = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    rows[i].says = tr("%1. %2").arg(i + 1).arg(shown(words::sheetItemLine(voice(), items[i])));
    rows[i].isFirst = i == 0;
    rows[i].isLast = i + 1 == items.size();
    about += items[i].isMain;
  }
  m_asked.set(rows);
  m_taken = readyLike(items);
  const int recommended = static_cast<int>(std::ranges::find(words::readySheets(), words::readyFor(mainKind())) - words::readySheets().begin());
  const QString count = tr("Questions on it: %1. The plan is about %2 of them.").arg(items.size()).arg(about);
  if (m_taken == -1) m_readyNote = tr("A sheet of your own. %1").arg(count);
  else if (m_facts.lots.empty() || m_taken == recommended) m_readyNote = count;
  else m_readyNote = tr("%1 For this drink the program would take: %2.").arg(count, ready().at(recommended));
  m_impossible.clear();
  const auto wrong = firstImpossible(items, m_draft.marked.has_value());
  if (!wrong) return;
  if (*wrong == 0) m_impossible = tr("The sheet asks nothing about a cup. Take a ready sheet, or add a question.");
  else if (items[static_cast<std::size_t>(*wrong) - 1].kind == ItemKind::distance) m_impossible = tr("The sheet asks how far a cup is from the marked one. Choose which drink stands in the marked cup.");
  else m_impossible = tr("Question %1 cannot be asked like that: it lacks its word, or stands twice.").arg(*wrong);
}

void SheetPlanModel::move(int row, int by) {
  auto& items = m_draft.sheet.items;
  const int to = row + by;
  if (to < 0 || to >= static_cast<int>(items.size())) return;
  std::swap(items[static_cast<std::size_t>(row)], items[static_cast<std::size_t>(to)]);
  m_isPicked = true;
  m_isOpen = false;
  edit();
}

void SheetPlanModel::remove(int row) {
  m_draft.sheet.items.erase(m_draft.sheet.items.begin() + row);
  m_isPicked = true;
  m_isOpen = false;
  edit();
}

void SheetPlanModel::openNew() {
  m_row.reset();
  m_item = {};
  m_isOpen = true;
  chooseKind(0);
}

void SheetPlanModel::change(int row) {
  m_row = static_cast<std::size_t>(row);
  m_item = m_draft.sheet.items.at(*m_row);
  m_limitWrong = false;
  m_isOpen = true;
  showForm();
  emit changed();
}

void SheetPlanModel::leave() {
  m_isOpen = false;
  emit changed();
}

void SheetPlanModel::chooseKind(int index) {
  m_item.kind = sheetKinds().at(static_cast<std::size_t>(index));
  const auto parts = partsOf(m_item.kind);
  if (std::ranges::find(parts, m_item.part) == parts.end()) m_item.part = parts.front();
  if (!takesWord(m_item.kind)) m_item.word.clear();
  m_item.limit.reset();
  m_limitWrong = false;
  if (isGap() && hasPoints(m_item.kind)) m_item.limit = usualLimit(m_item.kind);
  if (!mayBeMain()) m_item.isMain = false;
  showForm();
  emit changed();
}

void SheetPlanModel::choosePart(int index) {
  m_item.part = m_partValues.at(static_cast<std::size_t>(index));
  showForm();
  emit changed();
}

void SheetPlanModel::typeWord(const QString& text) {
  m_item.word = plain(text);
  showForm();
  emit changed();
}

void SheetPlanModel::takeWord(int index) { typeWord(m_offered.at(index)); }

void SheetPlanModel::typeLimit(const QString& text) {
  m_limit = text;
  const auto number = words::readWhole(plain(text.trimmed()));
  if (number && *number > 0 && *number <= 1000) m_item.limit = static_cast<int>(*number);
  else m_item.limit.reset();
  m_limitWrong = !m_item.limit && !text.trimmed().isEmpty();
  showForm();
  emit changed();
}

void SheetPlanModel::stepLimit(int by) {
  const AnswerForm form = answerForm(m_item.kind);
  m_limitWrong = false;
  const int now = m_item.limit.value_or(0) + by * std::max(1, usualLimit(m_item.kind) / 2);
  m_item.limit.reset();
  if (now >= 1) m_item.limit = std::min(now, form.high.value_or(1) - form.low.value_or(0));
  showForm();
  emit changed();
}

void SheetPlanModel::tickMain() {
  m_item.isMain = !m_item.isMain;
  emit changed();
}

void SheetPlanModel::tickLeftOut() {
  m_item.required = !m_item.required;
  emit changed();
}

std::vector<SheetItem> SheetPlanModel::wouldBe() const {
  auto items = m_draft.sheet.items;
  SheetItem item = m_item;
  item.word = plain(word().simplified());
  if (m_row && *m_row < items.size()) items[*m_row] = item;
  else items.push_back(item);
  return items;
}

void SheetPlanModel::showForm() {
  if (!m_isOpen) return;
  m_kind = static_cast<int>(std::ranges::find(sheetKinds(), m_item.kind) - sheetKinds().begin());
  m_partValues = partsOf(m_item.kind);
  m_parts.clear();
  for (const Part part : m_partValues) m_parts << partWord(part);
  m_part = static_cast<int>(std::ranges::find(m_partValues, m_item.part) - m_partValues.begin());
  m_mayHaveWord = takesWord(m_item.kind);
  m_offered.clear();
  if (m_mayHaveWord) {
    shelf::WordsWanted wanted;
    wanted.text = plain(word().trimmed());
    if (mainKind() != Kind::other) wanted.drink = mainKind();
    for (const TastingWord& each : wordsSpoken(m_words, wanted))
      if (m_offered.size() < static_cast<qsizetype>(mostOffered)) m_offered << shown(words::wordText(voice(), each));
  }
  m_mayHaveLimit = isGap() && hasPoints(m_item.kind);
  if (!m_limitWrong) m_limit = m_item.limit ? QString::number(*m_item.limit) : QString();
  m_limitUnit = shown(words::outOf(voice(), m_item.kind));
  const auto items = wouldBe();
  const std::size_t at = m_row.value_or(items.size() - 1);
  const SheetItem& item = items.at(std::min(at, items.size() - 1));
  const auto isLikeIt = [&](const SheetItem& other) { return other.kind == item.kind && other.part == item.part && other.word == item.word; };
  const AnswerForm form = answerForm(item.kind);
  m_notYet.clear();
  if (form.needsWord && item.word.empty()) m_notYet = tr("Say what it asks about: a word or two.");
  else if (word().simplified().size() > 60) m_notYet = tr("At most 60 letters, please.");
  else if (std::ranges::count_if(items, isLikeIt) > 1) m_notYet = tr("The sheet asks that already.");
  else if (item.kind == ItemKind::distance && !m_draft.marked) m_notYet = tr("Choose above which drink stands in the marked cup.");
  else if (m_limitWrong) m_notYet = tr("“%1” is no limit: a whole number from 1 on, or nothing.").arg(m_limit);
  else if (item.limit && form.high && *item.limit > *form.high - *form.low) m_notYet = tr("That is as long as the whole scale or longer.");
}

void SheetPlanModel::put() {
  showForm();
  if (!m_notYet.isEmpty()) return;
  m_draft.sheet.items = wouldBe();
  m_isPicked = true;
  m_isOpen = false;
  edit();
}

}  // namespace oddglass::ui
