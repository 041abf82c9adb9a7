#include "exchange/found_files.h"

#include "domain/by_hand.h"
#include "domain/problem.h"
#include "exchange/csv.h"
#include "session/pour.h"
#include "session/record.h"

#include <algorithm>
#include <map>
#include <set>

namespace oddglass::exchange {
namespace {

void onlyColumns(const CsvTable& table, std::initializer_list<const char*> known) {
  for (const char* column : known) table.column(column);
  for (const std::string& column : table.columns)
    if (std::ranges::none_of(known, [&](const char* each) { return column == each; }))
      throw Problem(Trouble::badFile, column, {{"file", table.file}, {"line", "1"}, {"column", column}, {"text", "the column \"" + column + "\" is not known here"}});
}

// The lot that a row names; nothing where it says that it cannot be read.
std::optional<Slot> lotIn(store::Store& store, const SessionId& session, const CsvTable& table, const CsvRow& row) {
  const std::string& lot = table.text(row, "lot");
  if (isMissing(lot)) return std::nullopt;
  try {
    return session::slotNamed(store, session, lot);
  } catch (const Problem&) {
    table.refuse(row, "lot", '"' + lot + "\" names none, or more than one, of this session's lots");
  }
}

struct Where {
  Place place;
  Round round;
};

Where whereIn(const Plan& plan, const CsvTable& table, const CsvRow& row) { return {{table.whole(row, "place", 1, plan.places)}, {table.whole(row, "round", 1, plan.rounds)}}; }

Code codeIn(const Plan& plan, const Where& where, const CsvTable& table, const CsvRow& row) {
  const std::string& text = table.text(row, "code");
  if (text == "aside") return {0};
  const Code code{table.whole(row, "code", 100, 9999)};
  const auto cup = std::ranges::find(plan.cups, code, &Cup::code);
  if (cup == plan.cups.end() || cup->place != where.place || cup->round != where.round)
    table.refuse(row, "code", text + " is not a code of place " + std::to_string(where.place.value) + " in round " + std::to_string(where.round.value));
  return code;
}

std::string markIn(const CsvTable& table, const CsvRow& row) {
  const std::string& mark = table.text(row, "mark");
  if (isMissing(mark)) table.refuse(row, "mark", "no mark is named");
  return mark;
}

}  // namespace

std::vector<session::FoundFlight> readFound(store::Store& store, const SessionId& session, const std::filesystem::path& file) {
  const Plan plan = session::record(store, session).plan;
  const CsvTable table = readCsv(file);
  onlyColumns(table, {"place", "round", "code", "lot"});
  std::map<std::pair<Round, Place>, session::FoundFlight> flights;
  for (const CsvRow& row : table.rows) {
    const Where where = whereIn(plan, table, row);
    session::FoundFlight& flight = flights[{where.round, where.place}];
    flight.place = where.place;
    flight.round = where.round;
    const Code code = codeIn(plan, where, table, row);
    if (std::ranges::find(flight.lines, code, &session::FoundLine::code) != flight.lines.end()) table.refuse(row, "code", table.text(row, "code") + " stands twice");
    flight.lines.push_back({code, lotIn(store, session, table, row)});
  }
  std::vector<session::FoundFlight> all;
  for (auto& [key, flight] : flights) all.push_back(std::move(flight));
  return all;
}

std::vector<session::FoundFlight> readTwoSheets(store::Store& store, const SessionId& session, const std::filesystem::path& first, const std::filesystem::path& second) {
  const Plan plan = session::record(store, session).plan;
  using Mark = std::tuple<Place, Round, std::string>;
  std::set<Mark> once;
  std::vector<session::MarkedLot> lots;
  const CsvTable one = readCsv(first);
  onlyColumns(one, {"place", "round", "mark", "lot"});
  for (const CsvRow& row : one.rows) {
    const Where where = whereIn(plan, one, row);
    const std::string mark = markIn(one, row);
    if (!once.insert({where.place, where.round, mark}).second) one.refuse(row, "mark", "the mark \"" + mark + "\" stands twice for this place and round");
    lots.push_back({where.place, where.round, mark, lotIn(store, session, one, row)});
  }
  std::set<Mark> twice;
  std::vector<session::MarkedCode> codes;
  const CsvTable two = readCsv(second);
  onlyColumns(two, {"place", "round", "mark", "code"});
  for (const CsvRow& row : two.rows) {
    const Where where = whereIn(plan, two, row);
    const std::string mark = markIn(two, row);
    if (!once.contains({where.place, where.round, mark})) two.refuse(row, "mark", "the first sheet has no mark \"" + mark + "\" for this place and round");
    if (!twice.insert({where.place, where.round, mark}).second) two.refuse(row, "mark", "the mark \"" + mark + "\" stands twice for this place and round");
    codes.push_back({where.place, where.round, mark, codeIn(plan, where, two, row)});
  }
  return session::joined(lots, codes);
}

std::vector<session::Peeled> readPeeled(store::Store& store, const SessionId& session, const std::filesystem::path& file) {
  const Plan plan = session::record(store, session).plan;
  const CsvTable table = readCsv(file);
  onlyColumns(table, {"bottle", "lot"});
  const int bottles = letteredBottles(plan);
  std::vector<session::Peeled> all;
  for (const CsvRow& row : table.rows) {
    const std::string& text = table.text(row, "bottle");
    const bool isLetter = text.size() == 1 && ((text[0] >= 'A' && text[0] <= 'Z') || (text[0] >= 'a' && text[0] <= 'z'));
    const int bottle = isLetter ? (text[0] | 0x20) - 'a' + 1 : table.whole(row, "bottle", 1, 40);
    if (bottle > bottles) table.refuse(row, "bottle", "there is no bottle " + text + " in this session");
    if (std::ranges::find(all, bottle, &session::Peeled::bottle) != all.end()) table.refuse(row, "bottle", text + " stands twice");
    all.push_back({bottle, lotIn(store, session, table, row)});
  }
  return all;
}

}  // namespace oddglass::exchange
