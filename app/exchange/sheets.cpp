#include "exchange/sheets.h"

#include "canon/canonical.h"
#include "canon/digest.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "exchange/csv.h"
#include "session/record.h"

#include <algorithm>
#include <charconv>
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

template <class E>
int wordOrNumber(const CsvTable& table, const CsvRow& row, int low, int high) {
  if (const auto value = named<E>(table.text(row, "value"))) return static_cast<int>(*value);
  return table.whole(row, "value", low, high);
}

bool isFlightWide(const std::string& code) { return isMissing(code) || code == "0"; }

int chosenCode(const CsvTable& table, const CsvRow& row) {
  const std::string &code = table.text(row, "code"), &value = table.text(row, "value");
  if (isFlightWide(code)) return table.whole(row, "value", 100, 9999);
  const int named = table.whole(row, "code", 100, 9999);
  if (isMissing(value) || value == "1" || value == code) return named;
  table.refuse(row, "value", "two different cups are named: " + code + " and " + value);
}

int sameOrNot(const CsvTable& table, const CsvRow& row) {
  const std::string& cell = table.text(row, "value");
  if (cell == "same") return 1;
  if (cell == "different") return 2;
  return table.whole(row, "value", 1, 2);
}

tasting::Reply replyOf(const SheetItem& item, const CsvTable& table, const CsvRow& row) {
  tasting::Reply reply;
  reply.item = item.item;
  if (item.kind == ItemKind::prefer && isFlightWide(table.text(row, "code")) && (table.text(row, "value") == "none" || table.text(row, "value") == "0")) return reply;
  if (item.kind == ItemKind::choose || item.kind == ItemKind::prefer) {
    reply.value = chosenCode(table, row);
    return reply;
  }
  if (item.perCup) {
    reply.code = {table.whole(row, "code", 100, 9999)};
    const std::string& value = table.text(row, "value");
    const bool saysNone = item.kind == ItemKind::worst && (value == "0" || value == "none");
    if (answerForm(item.kind).isText && !saysNone) reply.text = value;
    else if (!saysNone) reply.value = table.whole(row, "value", item.low.value_or(0), item.high.value_or(9999));
    return reply;
  }
  if (!isFlightWide(table.text(row, "code"))) table.refuse(row, "code", "this question is about the whole flight; leave the code empty");
  switch (item.kind) {
    case ItemKind::sureness: reply.value = wordOrNumber<Sureness>(table, row, item.low.value_or(1), item.high.value_or(3)); break;
    case ItemKind::clue: reply.value = wordOrNumber<Clue>(table, row, item.low.value_or(1), item.high.value_or(6)); break;
    case ItemKind::words: reply.text = table.text(row, "value"); break;
    case ItemKind::same: reply.value = sameOrNot(table, row); break;
    default: break;
  }
  return reply;
}

/// Made of what is handed in, so that the same answers read twice are one hand-in.
canon::Salt clientIdOf(const SessionId& session, const tasting::HandIn& in) {
  canon::Json all{session.text, in.place.value, in.round.value};
  for (const auto& reply : in.replies) {
    all.push_back({reply.item.value, reply.value, reply.text.value_or("")});
    if (reply.code.value != 0) all.back().push_back(reply.code.value);
  }
  const auto digest = canon::sha256({canon::bytesOf(canon::canonical(all))});
  canon::Salt id{};
  std::copy_n(digest.begin(), id.size(), id.begin());
  return id;
}

}  // namespace

std::vector<tasting::HandIn> readAnswers(store::Store& store, const SessionId& session, const std::filesystem::path& file) {
  const Plan plan = session::record(store, session).plan;
  const CsvTable table = readCsv(file);
  for (const char* column : {"place", "round", "item", "code", "value"}) table.column(column);
  for (const std::string& column : table.columns)
    if (std::ranges::none_of(std::initializer_list<const char*>{"place", "round", "item", "code", "value"}, [&](const char* known) { return column == known; }))
      throw Problem(Trouble::badFile, column, {{"file", table.file}, {"line", "1"}, {"column", column}, {"text", "the column \"" + column + "\" is not known here"}});
  std::map<std::pair<Round, Place>, tasting::HandIn> flights;  // round by round, as the table takes them
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
    tasting::Reply reply = replyOf(item, table, row);
    if (std::ranges::any_of(in.replies, [&](const tasting::Reply& before) { return before.item == reply.item && before.code == reply.code; }))
      table.refuse(row, "item", "place " + std::to_string(place.value) + " answers this question twice in round " + std::to_string(round.value));
    in.replies.push_back(std::move(reply));
  }
  std::vector<tasting::HandIn> all;
  for (auto& [flight, in] : flights) {
    std::ranges::sort(in.replies, {}, [](const tasting::Reply& reply) { return std::pair(reply.item, reply.code); });
    in.clientId = clientIdOf(session, in);
    all.push_back(std::move(in));
  }
  return all;
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
