#include "exchange/form_answers.h"

#include "canon/folded.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "domain/replies.h"
#include "domain/text.h"
#include "exchange/answer_cells.h"
#include "exchange/form_columns.h"
#include "session/record.h"
#include "tasting/board.h"
#include "tasting/paper.h"

#include <algorithm>
#include <set>

namespace oddglass::exchange {
namespace {

using Kind = ColumnMeaning::Kind;

std::vector<std::string> partsOf(const std::string& cell, const char* between) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at <= cell.size();) {
    const std::size_t end = std::min(cell.find_first_of(between, at), cell.size());
    const std::string part = cleaned(cell.substr(at, end - at));
    if (!part.empty()) parts.push_back(part);
    at = end + 1;
  }
  return parts;
}

/// Reads one table, row after row.
class Form {
 public:
  Form(store::Store& store, const SessionId& session, const CsvTable& table, const Meanings& meanings)
      : plan_(session::record(store, session).plan), table_(table), columns_(readColumns(plan_, table, meanings)), board_(tasting::board(store, session)), paper_(tasting::tablePaper(store, session)) {
    for (const ReadColumn& column : columns_) {
      const Kind kind = column.meaning.kind;
      if (kind == Kind::leftOut || kind == Kind::answer) continue;
      if (rowColumns_.contains(kind)) refuseHead(column.name, "two columns mean the same: \"" + rowColumns_[kind] + "\" and \"" + column.name + '"');
      rowColumns_[kind] = column.name;
    }
    if (!rowColumns_.contains(Kind::place) && !rowColumns_.contains(Kind::name)) refuseHead("place", "no column says whose answers a row holds: one has to mean place or name");
    if (std::ranges::none_of(columns_, [](const ReadColumn& column) { return column.meaning.kind == Kind::answer; })) refuseHead("item", "no column means a question of this session");
  }

  Flights read() {
    for (const CsvRow& row : table_.rows) readRow(row);
    for (const auto& [at, in] : flights_) requireWhole(at, in);
    return std::move(flights_);
  }

 private:
  [[noreturn]] void refuseHead(const std::string& column, const std::string& text) const {
    throw Problem(Trouble::badFile, column, {{"file", table_.file}, {"line", "1"}, {"column", column}, {"text", text}});
  }

  Place placeOf(const CsvRow& row) const {
    if (const auto column = rowColumns_.find(Kind::place); column != rowColumns_.end()) return {table_.whole(row, column->second, 1, plan_.places)};
    const std::string &column = rowColumns_.at(Kind::name), wanted = canon::folded(table_.text(row, column));
    std::vector<Place> found;
    for (const tasting::BoardPlace& place : board_.places)
      if (!place.who.empty() && canon::folded(place.who) == wanted) found.push_back(place.place);
    if (found.size() != 1) table_.refuse(row, column, '"' + table_.text(row, column) + "\" is the name of nobody, or of more than one, at this table; whoever asked to be only in the sums is named by place");
    return found.front();
  }

  Round roundOf(const CsvRow& row, const ReadColumn& column) const {
    if (column.meaning.round) return {*column.meaning.round};
    if (const auto of = rowColumns_.find(Kind::round); of != rowColumns_.end()) return {table_.whole(row, of->second, 1, plan_.rounds)};
    if (plan_.rounds > 1) table_.refuse(row, column.name, "which round is this? A column has to mean round, or this one ends with #1, #2 and so on");
    return {1};
  }

  const std::vector<tasting::FlightCup>& cupsOf(Place place, Round round) const {
    static const std::vector<tasting::FlightCup> none;
    const auto at = std::ranges::find(paper_.places, place, &tasting::PaperPlace::place);
    if (at == paper_.places.end()) return none;
    const auto flight = std::ranges::find(at->flights, round, &tasting::Flight::round);
    return flight == at->flights.end() ? none : flight->cups;
  }

  /// The code of a cup that was named by code, or by its position from the left.
  std::string codeOf(const AnswerCells& cells, const NamedCell& cell, Place place, Round round) const {
    const int number = cells.whole(cell, 1, 9999);
    std::string all;
    for (const tasting::FlightCup& cup : cupsOf(place, round)) {
      if (cup.isMarked) continue;
      if (number == cup.code.value || number == cup.position.value) return std::to_string(cup.code.value);
      all += (all.empty() ? "" : ", ") + std::to_string(cup.code.value);
    }
    cells.refuse(cell, "no cup " + cell.text + " stands at place " + std::to_string(place.value) + " in round " + std::to_string(round.value) + " to be judged; there are " + all);
  }

  void readRow(const CsvRow& row) {
    const Place place = placeOf(row);
    std::set<Round> answered;   // rounds of which this row says anything
    for (const ReadColumn& column : columns_)
      if (column.meaning.kind == Kind::answer && !isMissing(table_.text(row, column.name))) answered.insert(roundOf(row, column));
    for (const ReadColumn& column : columns_) {
      if (column.meaning.kind != Kind::answer) continue;
      const bool isSaid = !isMissing(table_.text(row, column.name));
      if (!isSaid && (answered.empty() || !answered.contains(roundOf(row, column)))) continue;
      readCell(row, column, place, roundOf(row, column), isSaid);
    }
  }

  void readCell(const CsvRow& row, const ReadColumn& column, Place place, Round round, bool isSaid) {
    const SheetItem& first = *column.meaning.items.front();
    AnswerCells cells{table_, row, {column.name, {}}, {column.name, isSaid ? table_.text(row, column.name) : std::string()}};
    if (first.perCup) {
      NamedCell cup{column.name, column.meaning.cup ? std::to_string(*column.meaning.cup) : std::string()};
      if (const auto of = rowColumns_.find(Kind::cup); !column.meaning.cup && of != rowColumns_.end()) cup = {of->second, table_.text(row, of->second)};
      if (cup.text.empty()) table_.refuse(row, column.name, "which cup is this about? A column has to mean cup, or this one ends with @1, @2 and so on");
      cells.code = {cup.column, codeOf(cells, cup, place, round)};
    }
    if (column.meaning.isTicks) return ticks(cells, column, place, round);
    if (!isSaid) {
      if (first.kind != ItemKind::check && first.kind != ItemKind::split) return;
      cells.value.text = "0";
    }
    if (first.kind == ItemKind::choose || first.kind == ItemKind::prefer) return chosen(cells, column, place, round);
    add(cells, first, place, round, column);
  }

  // "butter; green apple": each of the words is 1, all others of the sheet are 0.
  void ticks(AnswerCells cells, const ReadColumn& column, Place place, Round round) {
    const std::vector<std::string> words = partsOf(cells.value.text, ",;\n");
    for (const std::string& word : words)
      if (std::ranges::none_of(column.meaning.items, [&](const SheetItem* item) { return canon::folded(item->word) == canon::folded(word); }))
        cells.refuse(cells.value, '"' + word + "\" is none of the words to tick");
    for (const SheetItem* item : column.meaning.items) {
      cells.value.text = std::ranges::any_of(words, [&](const std::string& word) { return canon::folded(item->word) == canon::folded(word); }) ? "1" : "0";
      add(cells, *item, place, round, column);
    }
  }

  void chosen(AnswerCells cells, const ReadColumn& column, Place place, Round round) {
    const std::string cell = cells.value.text;
    for (const std::string& part : partsOf(cell, ",; ")) {
      const auto open = std::ranges::find_if(column.meaning.items, [&](const SheetItem* item) {
        const auto flight = flights_.find({round, place});
        return flight == flights_.end() || !answersAlready(flight->second, {item->item, 0, std::nullopt, {}});
      });
      if (open == column.meaning.items.end()) cells.refuse(cells.value, "more cups are named than were to be picked: " + cell);
      const bool isNone = (*open)->kind == ItemKind::prefer && (part == "none" || part == "0");
      cells.value.text = isNone ? part : codeOf(cells, {column.name, part}, place, round);
      add(cells, **open, place, round, column);
    }
  }

  void add(const AnswerCells& cells, const SheetItem& item, Place place, Round round, const ReadColumn& column) {
    tasting::HandIn& in = flights_.try_emplace({round, place}, tasting::HandIn{place, round, {}, tasting::Via::file, {}, {}}).first->second;
    lines_.try_emplace({round, place}, &cells.row);
    tasting::Reply reply = replyOf(item, cells);
    const auto before = std::ranges::find_if(in.replies, [&](const tasting::Reply& each) { return each.item == reply.item && each.code == reply.code; });
    if (before == in.replies.end()) {
      in.replies.push_back(std::move(reply));
      return;
    }
    // In a table with a row a cup, what was said of the flight may stand in each of its rows.
    if (item.perCup || before->value != reply.value || before->text != reply.text)
      table_.refuse(cells.row, column.name, "place " + std::to_string(place.value) + " answers this question twice in round " + std::to_string(round.value));
  }

  bool isAbout(const ColumnMeaning& meaning, const FaultyReply& fault, const std::pair<Round, Place>& at) const {
    if (std::ranges::none_of(meaning.items, [&](const SheetItem* item) { return item->item == fault.item; }) || (meaning.round && *meaning.round != at.first.value)) return false;
    return !meaning.cup || fault.code.value == 0 ||
           std::ranges::any_of(cupsOf(at.second, at.first), [&](const tasting::FlightCup& cup) { return cup.code == fault.code && (*meaning.cup == cup.code.value || *meaning.cup == cup.position.value); });
  }

  // What the table would refuse is told with its line here.
  void requireWhole(const std::pair<Round, Place>& at, const tasting::HandIn& in) const {
    std::vector<Code> cups;
    for (const tasting::FlightCup& cup : cupsOf(at.second, at.first))
      if (!cup.isMarked) cups.push_back(cup.code);
    std::vector<GivenReply> given;
    for (const tasting::Reply& reply : in.replies) given.push_back({reply.item, reply.code, reply.text ? std::nullopt : std::optional(reply.value), reply.text.has_value()});
    const auto fault = firstFault(plan_.items, cups, given);
    if (!fault) return;
    const auto column = std::ranges::find_if(columns_, [&](const ReadColumn& each) { return isAbout(each.meaning, *fault, at); });
    const auto item = std::ranges::find(plan_.items, fault->item, &SheetItem::item);
    const std::string question = item == plan_.items.end() ? std::to_string(fault->item.value) : std::string(nameOf(item->kind)) + (item->word.empty() ? "" : ':' + item->word);
    const std::string where = "place " + std::to_string(at.second.value) + ", round " + std::to_string(at.first.value) + (fault->code.value > 0 ? ", cup " + std::to_string(fault->code.value) : std::string());
    const auto say = [&]() -> std::string {
      switch (fault->fault) {
        case ReplyFault::missing: return "an answer is missing: ";
        case ReplyFault::notARanking: return "a rank is given twice: ";
        case ReplyFault::notFivePoints: return "the points do not add up to five: ";
        case ReplyFault::twice: return "one cup is named twice: ";
        default: return "this is no answer: ";
      }
    };
    table_.refuse(*lines_.at(at), column == columns_.end() ? "item" : column->name, say() + question + ", " + where);
  }

  Plan plan_;
  const CsvTable& table_;
  std::vector<ReadColumn> columns_;
  tasting::Board board_;
  tasting::TablePaper paper_;
  std::map<Kind, std::string> rowColumns_;
  Flights flights_;
  std::map<std::pair<Round, Place>, const CsvRow*> lines_;
};

}  // namespace

std::vector<tasting::HandIn> readForm(store::Store& store, const SessionId& session, const std::filesystem::path& file, const Meanings& meanings) {
  const CsvTable table = readCsv(file);
  return handInsOf(session, Form(store, session, table, meanings).read());
}

}  // namespace oddglass::exchange
