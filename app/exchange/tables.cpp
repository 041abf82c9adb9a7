#include "domain/names.h"
#include "domain/problem.h"
#include "domain/trial.h"
#include "exchange/csv.h"
#include "exchange/file_out.h"
#include "exchange/score_table.h"
#include "exchange/write_out.h"
#include "session/look.h"
#include "session/record.h"

#include <algorithm>
#include <map>

namespace oddglass::exchange {
namespace {

using Row = std::vector<std::string>;

std::string number(int value) { return std::to_string(value); }

template <class T>
std::string maybe(const std::optional<T>& value) {
  return value ? number(value->value) : std::string();
}

std::string isRightText(const Plan& plan, const RevealedFlight& flight) {
  const auto right = flight.voided ? std::nullopt : isRight(plan, flight);
  return !right ? "" : *right ? "1" : "0";
}

std::string positions(const std::vector<Position>& all) {
  std::string text;
  for (Position each : all) text += (text.empty() ? "" : " ") + number(each.value);
  return text;
}

struct Sheet {
  std::vector<Row> answers, trials;
};

void add(Sheet& sheet, const RevealedSession& session, const RevealedFlight& flight, const char* who) {
  const auto person = std::ranges::find(session.people, flight.place, &ShownPerson::place);
  const std::string shown = person == session.people.end() ? "" : person->shown;
  const Row head{session.id.text, number(flight.place.value), shown, who, number(flight.round.value), flight.voided ? std::string(nameOf(*flight.voided)) : ""};
  const auto with = [&head](Row more) {
    Row row = head;
    row.insert(row.end(), more.begin(), more.end());
    return row;
  };
  const auto said = [&](ItemKind kind) {
    const auto item = std::ranges::find(session.plan.items, kind, &SheetItem::kind);
    return item == session.plan.items.end() ? std::string() : number(item->item.value);
  };
  const auto word = [](auto value) { return value ? std::string(nameOf(*value)) : std::string(); };
  const auto codeAt = [&](Position position) {
    const auto cup = std::ranges::find_if(session.plan.cups, [&](const Cup& each) {
      return each.place == flight.place && each.round == flight.round && each.position == position && each.spare == 0;
    });
    return cup == session.plan.cups.end() ? std::string() : number(cup->code.value);
  };
  const std::string sure = flight.sureness ? number(static_cast<int>(*flight.sureness)) : "";
  const std::string clue = flight.clue ? number(static_cast<int>(*flight.clue)) : "";
  const std::string right = isRightText(session.plan, flight);
  const std::string same = flight.saidSame ? (*flight.saidSame ? "same" : "different") : "";
  const std::string preferred = flight.preferredNone ? "none" : maybe(flight.preferred);
  const std::string lot = maybe(preferredLot(flight));
  sheet.trials.push_back(with({positions(flight.picks), positions(rightCups(session.plan, flight).value_or(std::vector<Position>{})), same, right, preferred, lot, sure, word(flight.clue)}));
  int pick = 0;
  for (const SheetItem& item : session.plan.items)
    if (item.kind == ItemKind::choose && pick < static_cast<int>(flight.picks.size()))
      sheet.answers.push_back(with({number(item.item.value), "choose", codeAt(flight.picks[static_cast<std::size_t>(pick++)]), "", right}));
  if (flight.saidSame) sheet.answers.push_back(with({said(ItemKind::same), "same", *flight.saidSame ? "1" : "2", same, right}));
  if (flight.preferred || flight.preferredNone)
    sheet.answers.push_back(with({said(ItemKind::prefer), "prefer", flight.preferred ? codeAt(*flight.preferred) : "0", flight.preferred ? "" : "no preference", ""}));
  if (flight.sureness) sheet.answers.push_back(with({said(ItemKind::sureness), "sureness", sure, word(flight.sureness), ""}));
  if (flight.clue) sheet.answers.push_back(with({said(ItemKind::clue), "clue", clue, word(flight.clue), ""}));
  if (!flight.words.empty()) sheet.answers.push_back(with({said(ItemKind::words), "words", "", flight.words, ""}));
}

std::string table(const std::vector<Row>& rows) {
  std::string text;
  for (const Row& row : rows) text += csvLine(row);
  return text;
}

std::vector<Row> cupsOf(const session::SessionRecord& record) {
  std::vector<Row> rows{{"place", "round", "position", "spare", "code"}};
  const bool isOpen = record.key.has_value();
  if (isOpen) rows[0].insert(rows[0].end(), {"drawn", "poured"});
  std::map<Code, std::string> drawn, poured;
  const auto lot = [&](Slot slot) {
    const auto found = std::ranges::find(record.plan.lots, slot, &PlannedLot::slot);
    return found == record.plan.lots.end() ? number(slot.value) : found->beverageName + ", " + found->lotName;
  };
  if (isOpen) {
    for (const auto& [code, slot] : record.key->lines) drawn[code] = poured[code] = lot(slot);
    for (const auto& each : record.key->poured) poured[each.code] = each.slot ? lot(*each.slot) : "not sure";
  }
  for (const Cup& cup : record.plan.cups) {
    Row row{number(cup.place.value), number(cup.round.value), number(cup.position.value), number(cup.spare), number(cup.code.value)};
    if (isOpen) row.insert(row.end(), {drawn[cup.code], poured[cup.code]});
    rows.push_back(std::move(row));
  }
  return rows;
}

const std::vector<Row> codebook{
    {"table", "column", "meaning"},
    {"answers, trials", "session", "the id of the session"},
    {"answers, trials, cups", "place", "the numbered seat"},
    {"answers, trials", "person", "the taster as they asked to be shown: a name, a nickname or a letter"},
    {"answers, trials", "who", "panel, or maker of one of the drinks; makers never count in the panel"},
    {"answers, trials, cups", "round", "the taster's first, second ... flight"},
    {"answers, trials", "set_aside", "why the flight does not count; empty when it does"},
    {"answers", "item", "the number of the question"},
    {"answers", "kind", "choose, same, prefer, sureness, clue or words"},
    {"answers", "value", "choose: the code of the cup picked (the one first set there, when it was spilled and replaced), in two rows where two are picked; same: 1 the same, 2 not; prefer: the code of the cup liked better, 0 for no preference; sureness: 1 to 3; clue: 1 to 6"},
    {"answers", "words", "the value in words, or the words written"},
    {"answers, trials", "right", "1 when the answer was right, 0 when it was not, by what was really poured; empty when it cannot be told or does not count"},
    {"trials", "chosen", "the position of the cup picked, from the left; two of them parted by a blank"},
    {"trials", "right_cups", "the positions that were right, as it was really poured; for a tetrad those of one of the two groups"},
    {"trials", "same", "same or different, where that was asked"},
    {"trials", "preferred", "the position of the cup liked better, or none"},
    {"trials", "preferred_lot", "the number in the plan of the lot that was in it"},
    {"trials", "sureness", "1 a guess, 2 fairly sure, 3 sure"},
    {"trials", "clue", "how they knew: taste, smell, mouthfeel, look, fizz or guess"},
    {"cups", "position", "where the cup stands in its flight, from the left"},
    {"cups", "spare", "0 the cup poured first; 1, 2 ... the code that takes its place when it is spilled"},
    {"cups", "code", "what stands on the cup"},
    {"cups", "drawn", "the lot that the key gives; after the reveal only"},
    {"cups", "poured", "the lot that was really poured, or \"not sure\"; after the reveal only"},
};

std::vector<Row> withHead(const std::vector<Row>& rows) {
  std::vector<Row> all{codebook.front()};
  all.insert(all.end(), rows.begin(), rows.end());
  for (const Row& row : codebook)
    if (row[0].find("cups") != std::string::npos) all.push_back(row);
  return all;
}

}  // namespace

std::vector<std::filesystem::path> exportCsv(store::Store& store, const SessionId& id, const std::filesystem::path& folder) {
  const auto record = session::record(store, id);
  const std::string stem = "oddglass-" + id.text.substr(0, 8);
  std::vector<std::filesystem::path> files;
  const auto write = [&](const std::string& name, const std::vector<Row>& rows) {
    files.push_back(folder / (stem + '-' + name + ".csv"));
    writeWhole(files.back(), table(rows));
  };
  if (record.key) {
    const RevealedSession session = session::revealed(store, id);
    if (session.plan.sheet) {
      write("scores", scoreRows(session));
      write("cups", cupsOf(record));
      write("codebook", withHead(scoreCodebook()));
      return files;
    }
    Sheet sheet;
    sheet.answers.push_back({"session", "place", "person", "who", "round", "set_aside", "item", "kind", "value", "words", "right"});
    sheet.trials.push_back({"session", "place", "person", "who", "round", "set_aside", "chosen", "right_cups", "same", "right", "preferred", "preferred_lot", "sureness", "clue"});
    for (const PanelFlight& flight : session.panel) add(sheet, session, flight, "panel");
    for (const MakerFlight& flight : session.makers) add(sheet, session, flight, "maker");
    write("answers", sheet.answers);
    write("trials", sheet.trials);
  }
  write("cups", cupsOf(record));
  write("codebook", codebook);
  return files;
}

}  // namespace oddglass::exchange
