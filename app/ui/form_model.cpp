#include "ui/form_model.h"

#include "exchange/form_answers.h"
#include "tasting/paper.h"
#include "tasting/typing.h"
#include "ui/cups.h"
#include "ui/voice.h"
#include "words/paper.h"
#include "words/sheet_asked.h"
#include "words/typing.h"

#include <algorithm>
#include <charconv>
#include <filesystem>

namespace oddglass::ui {
namespace {

/// The choices before it are the place, the name and so on.
constexpr int firstAnswer = 5;

struct FormRead {
  tasting::Flight flight;
  std::vector<exchange::FormColumn> columns;
};

QString cutOff(const std::string& text) {
  const QString all = shown(text).simplified();
  return all.size() > 60 ? all.left(60) + QStringLiteral("…") : all;
}

int numberAfter(const std::string& text, char sign) {
  int number = 0;
  const auto at = text.find(sign);
  if (at != std::string::npos) std::from_chars(text.data() + at + 1, text.data() + text.size(), number);
  return number;
}

}  // namespace

FormModel::FormModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_rows(ColumnRow::staticMetaObject, this) { nameFields({"table", "file"}); }

// Once the columns are read, the field of the file is gone from the page.
void FormModel::fail(const Problem& problem) {
  if (isRead()) m_stage.notice.say(sentenceOf(problem));
  else PageModel::fail(problem);
}

void FormModel::open() {
  ask([id = m_stage.current.id(), file = std::filesystem::path(plain(m_file.trimmed()))](Cellar& cellar) {
    if (file.empty()) throw Problem(Trouble::empty, "table");
    const tasting::TablePaper paper = tasting::tablePaper(cellar.store(), id);
    return FormRead{paper.places.front().flights.front(), exchange::formColumns(cellar.store(), id, file, {})};
  }, [this](const FormRead& read) {
    // Somebody's answers stand in it: it is not kept for a page that was left.
    if (m_stage.router.page() != Router::Page::TypeIn) return;
    m_flight = read.flight;
    nameChoices();
    m_columns.clear();
    for (const exchange::FormColumn& each : read.columns) {
      m_columns.push_back({each.name, each.example});
      readMeaning(m_columns.back(), each.means);
    }
    m_at = -1;
    show();
  });
}

// What a column can mean, in words and as the reader takes it.
void FormModel::nameChoices() {
  m_meanings = {tr("left out"), tr("the place"), tr("the name"), tr("the round"), tr("the cup: its code, or where it stands")};
  m_codes = {"-", "place", "name", "round", "cup"};
  const auto ticks = std::ranges::count(m_flight->items, ItemKind::check, &SheetItem::kind), picks = std::ranges::count(m_flight->items, ItemKind::choose, &SheetItem::kind);
  if (ticks > 0) {
    m_meanings << shown(words::ticksLabel(voice()));
    m_codes.emplace_back("check");
  }
  std::vector<std::string> codes;
  for (const tasting::FlightCup& cup : m_flight->cups)
    if (!cup.isMarked) codes.push_back(std::to_string(cup.code.value));
  bool isFirstPick = true;
  for (const SheetItem& item : m_flight->items) {
    if (item.kind == ItemKind::choose && !std::exchange(isFirstPick, false)) continue;
    m_meanings << shown(words::typedQuestion(voice(), m_flight->method, m_flight->attribute, item, words::listed(voice(), codes), static_cast<int>(codes.size())).label);
    m_codes.push_back(item.kind == ItemKind::choose && picks > 1 ? "choose" : std::to_string(item.item.value));
  }
  m_allCups = {tr("the cup of the row")};
  for (const tasting::FlightCup& cup : m_flight->cups) m_allCups << shown(words::positionWord(voice(), cup.position, static_cast<int>(m_flight->cups.size())));
  m_allRounds = {tr("the round of the row")};
  for (int round = 1; round <= m_flight->rounds; ++round) m_allRounds << tr("round %1").arg(round);
}

bool FormModel::isPerCup(const Column& column) const {
  const std::string& code = m_codes.at(static_cast<std::size_t>(column.meaning));
  if (code == "check") return true;
  return std::ranges::any_of(m_flight->items, [&](const SheetItem& item) { return item.perCup && std::to_string(item.item.value) == code; });
}

std::string FormModel::meansOf(const Column& column) const {
  std::string means = m_codes.at(static_cast<std::size_t>(column.meaning));
  if (column.meaning < firstAnswer) return means;
  if (isPerCup(column) && column.cup > 0) means += '@' + std::to_string(column.cup);
  if (column.round > 0) means += '#' + std::to_string(column.round);
  return means;
}

void FormModel::readMeaning(Column& column, const std::string& means) const {
  const auto found = std::ranges::find(m_codes, means.substr(0, means.find_first_of("@#")));
  column.meaning = found == m_codes.end() ? 0 : static_cast<int>(found - m_codes.begin());
  const int cup = numberAfter(means, '@'), round = numberAfter(means, '#');
  if (cup < m_allCups.size()) column.cup = cup;
  if (round < m_allRounds.size()) column.round = round;
}

void FormModel::choose(int column) {
  m_at = column == m_at ? -1 : column;
  show();
}

void FormModel::setMeaning(int meaning) {
  m_columns.at(static_cast<std::size_t>(m_at)).meaning = meaning;
  show();
}

void FormModel::setCup(int cup) {
  m_columns.at(static_cast<std::size_t>(m_at)).cup = cup;
  show();
}

void FormModel::setRound(int round) {
  m_columns.at(static_cast<std::size_t>(m_at)).round = round;
  show();
}

void FormModel::show() {
  std::vector<ColumnRow> rows;
  for (std::size_t i = 0; i < m_columns.size(); ++i) {
    const Column& each = m_columns[i];
    QString means = m_meanings.at(each.meaning);
    if (each.meaning >= firstAnswer && each.cup > 0 && isPerCup(each)) means += QStringLiteral(", ") + m_allCups.at(each.cup);
    if (each.meaning >= firstAnswer && each.round > 0) means += QStringLiteral(", ") + m_allRounds.at(each.round);
    ColumnRow row;
    row.name = cutOff(each.name);
    row.says = each.example.empty() ? means : tr("%1 (first in it: %2)").arg(means, cutOff(each.example));
    row.here = static_cast<int>(i) == m_at;
    rows.push_back(row);
  }
  m_rows.set(rows);
  const bool isAnswer = isChoosing() && column().meaning >= firstAnswer;
  m_asked = isChoosing() ? tr("What does “%1” hold?").arg(cutOff(column().name)) : QString();
  m_cups = isAnswer && isPerCup(column()) ? m_allCups : QStringList();
  m_rounds = isAnswer && m_flight->rounds > 1 ? m_allRounds : QStringList();
  emit changed();
}

void FormModel::take() {
  exchange::Meanings meanings;
  for (const Column& each : m_columns) meanings[each.name] = meansOf(each);
  ask([id = m_stage.current.id(), file = std::filesystem::path(plain(m_file.trimmed())), meanings, typist = m_typist](Cellar& cellar) {
    const auto all = exchange::readForm(cellar.store(), id, file, meanings);
    return static_cast<int>(tasting::handInTable(cellar.store(), cellar.clock, cellar.chance, id, typist, all).size());
  }, [this](int flights) {
    forget();
    if (m_stage.router.page() == Router::Page::TypeIn) emit taken(flights);
  });
}

void FormModel::forget() {
  m_columns.clear();
  m_at = -1;
  m_file.clear();
  m_flight.reset();
  m_rows.set(std::vector<ColumnRow>());
  settle();
  emit changed();
}

}  // namespace oddglass::ui
