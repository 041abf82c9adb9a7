#include "exchange/form_columns.h"

#include "canon/folded.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/record.h"

#include <algorithm>
#include <charconv>

namespace oddglass::exchange {
namespace {

using Kind = ColumnMeaning::Kind;

/// Takes "@2" or "#2" off the end of a text.
std::optional<int> takeNumber(std::string_view& text, char sign) {
  const auto at = text.rfind(sign);
  if (at == std::string_view::npos || at + 1 == text.size()) return std::nullopt;
  int number = 0;
  const auto [end, error] = std::from_chars(text.data() + at + 1, text.data() + text.size(), number);
  if (error != std::errc{} || end != text.data() + text.size() || number < 1) return std::nullopt;
  text = text.substr(0, at);
  return number;
}

bool isNamed(const SheetItem& item, std::string_view text) {
  const std::string kind(nameOf(item.kind));
  return text == std::to_string(item.item.value) || canon::folded(text) == kind || (!item.word.empty() && canon::folded(text) == canon::folded(kind + ':' + item.word));
}

std::vector<const SheetItem*> itemsNamed(const Plan& plan, std::string_view text) {
  std::vector<const SheetItem*> found;
  for (const SheetItem& item : plan.items)
    if (isNamed(item, text)) found.push_back(&item);
  return found;
}

[[noreturn]] void refuseColumn(const CsvTable& table, const std::string& column, const std::string& text) {
  throw Problem(Trouble::badFile, column, {{"file", table.file}, {"line", "1"}, {"column", column}, {"text", text}});
}

}  // namespace

std::optional<ColumnMeaning> meaningOf(const Plan& plan, std::string_view text) {
  ColumnMeaning meaning;
  if (text == "-") return meaning;
  for (const auto& [word, kind] : {std::pair("place", Kind::place), {"name", Kind::name}, {"round", Kind::round}, {"cup", Kind::cup}})
    if (canon::folded(text) == word) {
      meaning.kind = kind;
      return meaning;
    }
  meaning.kind = Kind::answer;
  meaning.round = takeNumber(text, '#');
  meaning.cup = takeNumber(text, '@');
  meaning.items = itemsNamed(plan, text);
  if (meaning.items.empty()) return std::nullopt;
  const SheetItem& first = *meaning.items.front();
  meaning.isTicks = first.kind == ItemKind::check && canon::folded(text) == nameOf(first.kind);
  const bool isChoice = first.kind == ItemKind::choose;
  if (meaning.items.size() > 1 && !meaning.isTicks && !isChoice) return std::nullopt;   // the word is missing
  if ((meaning.cup && !first.perCup) || (meaning.round && *meaning.round > plan.rounds)) return std::nullopt;
  return meaning;
}

std::vector<ReadColumn> readColumns(const Plan& plan, const CsvTable& table, const Meanings& meanings) {
  for (const auto& [column, means] : meanings)
    if (!table.has(column)) refuseColumn(table, column, "there is no column \"" + column + '"');
  std::vector<ReadColumn> all;
  for (const std::string& name : table.columns) {
    const auto said = meanings.find(name);
    ReadColumn column{name, {}};
    const bool isNumber = name.find_first_not_of("0123456789") == std::string::npos;   // a bare number is no question unless somebody says so
    const auto meaning = said == meanings.end() && isNumber ? std::nullopt : meaningOf(plan, said == meanings.end() ? std::string_view(name) : std::string_view(said->second));
    if (!meaning && said != meanings.end())
      refuseColumn(table, name, '"' + said->second + "\" is no question of this session, and none of place, name, round, cup and -; several questions of one kind need a word or a number");
    if (meaning) column.meaning = *meaning;
    all.push_back(std::move(column));
  }
  return all;
}

std::string textOf(const ColumnMeaning& meaning) {
  switch (meaning.kind) {
    case Kind::leftOut: return "-";
    case Kind::place: return "place";
    case Kind::name: return "name";
    case Kind::round: return "round";
    case Kind::cup: return "cup";
    case Kind::answer: break;
  }
  const SheetItem& first = *meaning.items.front();
  std::string text = meaning.isTicks || meaning.items.size() > 1 ? std::string(nameOf(first.kind)) : std::to_string(first.item.value);
  if (meaning.cup) text += '@' + std::to_string(*meaning.cup);
  if (meaning.round) text += '#' + std::to_string(*meaning.round);
  return text;
}

std::vector<FormColumn> formColumns(store::Store& store, const SessionId& session, const std::filesystem::path& file, const Meanings& meanings) {
  const Plan plan = session::record(store, session).plan;
  const CsvTable table = readCsv(file);
  std::vector<FormColumn> all;
  for (const ReadColumn& column : readColumns(plan, table, meanings)) {
    FormColumn shown{column.name, textOf(column.meaning), {}};
    for (const CsvRow& row : table.rows)
      if (shown.example.empty() && !isMissing(table.text(row, column.name))) shown.example = table.text(row, column.name);
    all.push_back(std::move(shown));
  }
  return all;
}

}  // namespace oddglass::exchange
