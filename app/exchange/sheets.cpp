#include "exchange/sheets.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "exchange/answer_cells.h"
#include "session/record.h"

#include <algorithm>
#include <map>

namespace oddglass::exchange {
namespace {

/// The question meant: by its number, its kind, or kind and word ("line:bitter"). Where two cups are picked, the word "choose" means the first of the
/// two that has no answer yet; a kind that several questions about cups have needs the word beside it.
const SheetItem& itemOf(const Plan& plan, const tasting::HandIn& in, const CsvTable& table, const CsvRow& row) {
  const std::string& cell = table.text(row, "item");
  const SheetItem* last = nullptr;
  for (const SheetItem& item : plan.items) {
    const std::string kind(nameOf(item.kind));
    if (cell == std::to_string(item.item.value) || (!item.word.empty() && cell == kind + ':' + item.word)) return item;
    if (cell != kind) continue;
    if (last && item.perCup) table.refuse(row, "item", "this sheet has several questions \"" + cell + "\"; write \"" + cell + ":\" and the word, or the number");
    last = &item;
    if (!item.perCup && std::ranges::find(in.replies, item.item, &tasting::Reply::item) == in.replies.end()) return item;
  }
  if (last) return *last;
  table.refuse(row, "item", "this sheet has no question \"" + cell + '"');
}

}  // namespace

std::vector<tasting::HandIn> readAnswers(store::Store& store, const SessionId& session, const std::filesystem::path& file) {
  const Plan plan = session::record(store, session).plan;
  const CsvTable table = readCsv(file);
  for (const char* column : {"place", "round", "item", "code", "value"}) table.column(column);
  for (const std::string& column : table.columns)
    if (std::ranges::none_of(std::initializer_list<const char*>{"place", "round", "item", "code", "value"}, [&](const char* known) { return column == known; }))
      throw Problem(Trouble::badFile, column, {{"file", table.file}, {"line", "1"}, {"column", column}, {"text", "the column \"" + column + "\" is not known here"}});
  Flights flights;
  for (const CsvRow& row : table.rows) {
    const Place place{table.whole(row, "place", 1, plan.places)};
    const Round round{table.whole(row, "round", 1, plan.rounds)};
    auto& in = flights[{round, place}];
    const SheetItem& item = itemOf(plan, in, table, row);
    in.place = place;
    in.round = round;
    in.via = tasting::Via::file;
    const bool isChoiceByCode = (item.kind == ItemKind::choose || item.kind == ItemKind::prefer) && !isFlightWide(table.text(row, "code"));
    if (isMissing(table.text(row, "value")) && !isChoiceByCode) continue;
    tasting::Reply reply = replyOf(item, {table, row, {"code", table.text(row, "code")}, {"value", table.text(row, "value")}});
    if (answersAlready(in, reply))
      table.refuse(row, "item", "place " + std::to_string(place.value) + " answers this question twice in round " + std::to_string(round.value));
    in.replies.push_back(std::move(reply));
  }
  return handInsOf(session, std::move(flights));
}

namespace {

Slot slotIn(store::Store& store, const SessionId& session, const CsvTable& table, const CsvRow& row, const char* column) {
  const std::string& lot = table.text(row, column);
  try {
    return session::slotNamed(store, session, lot);
  } catch (const Problem&) {
    table.refuse(row, column, '"' + lot + "\" names none, or more than one, of this session's lots");
  }
}

}  // namespace

std::vector<session::OpenAnswers> readOpen(store::Store& store, const SessionId& session, const std::filesystem::path& file) {
  const Plan plan = session::record(store, session).plan;
  const CsvTable table = readCsv(file);
  const char* lot = table.has("slot") && !table.has("lot") ? "slot" : "lot";
  for (const char* column : {"place", lot, "value"}) table.column(column);
  std::map<Place, session::OpenAnswers> places;
  for (const CsvRow& row : table.rows) {
    const Place place{table.whole(row, "place", 1, plan.places)};
    session::OpenAnswers& answers = places[place];
    answers.place = place;
    const Slot slot = slotIn(store, session, table, row, lot);
    if (!answers.values.emplace(slot, table.whole(row, "value", 1, 9)).second) table.refuse(row, lot, "place " + std::to_string(place.value) + " scores this drink twice");
  }
  std::vector<session::OpenAnswers> all;
  for (auto& [place, answers] : places) all.push_back(std::move(answers));
  return all;
}

std::vector<session::ReallyPoured> readPoured(store::Store& store, const SessionId& session, const std::filesystem::path& file) {
  const Plan plan = session::record(store, session).plan;
  const CsvTable table = readCsv(file);
  for (const char* column : {"code", "lot"}) table.column(column);
  std::vector<session::ReallyPoured> all;
  for (const CsvRow& row : table.rows) {
    const Code code{table.whole(row, "code", 100, 9999)};
    if (std::ranges::find(plan.cups, code, &Cup::code) == plan.cups.end()) table.refuse(row, "code", table.text(row, "code") + " is not a code of this session");
    if (std::ranges::find(all, code, &session::ReallyPoured::code) != all.end()) table.refuse(row, "code", table.text(row, "code") + " stands twice");
    const std::string& lot = table.text(row, "lot");
    if (lot.empty()) table.refuse(row, "lot", "no lot is named; write \"not sure\" when it is not known");
    std::optional<Slot> slot;
    if (lot != "not sure") slot = slotIn(store, session, table, row, "lot");
    all.push_back({code, slot});
  }
  return all;
}

}  // namespace oddglass::exchange
