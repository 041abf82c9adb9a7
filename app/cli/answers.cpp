#include "cli/families.h"
#include "domain/problem.h"
#include "exchange/form_answers.h"
#include "exchange/sheets.h"
#include "tasting/typing.h"
#include "words/history.h"

namespace oddglass::cli {
namespace {

/// "How sweet?=line:sweet@1": the column, and after the last equals sign what it means.
exchange::Meanings meaningsOf(const std::vector<std::string>& given) {
  exchange::Meanings meanings;
  for (const std::string& each : given) {
    const std::size_t at = each.rfind('=');
    if (at == std::string::npos || at == 0 || at + 1 == each.size()) throw Problem(Trouble::notAChoice, "--map", {{"text", each}, {"choices", "\"COLUMN=MEANING\""}});
    if (!meanings.emplace(each.substr(0, at), each.substr(at + 1)).second) throw Problem(Trouble::alreadyThere, "--map", {{"text", each.substr(0, at)}});
  }
  return meanings;
}

/// Nobody: a person who is not on the shelf.
std::optional<TasterId> typistOf(store::Store& store, const Given& given) {
  if (given.text() == "nobody-here") return std::nullopt;
  return tasterOf(store, given);
}

/// Who types is named on the command line by its option.
[[noreturn]] void rethrow(const Problem& problem, const Given& typist) {
  const bool isTypist = problem.argument() == "typist" || problem.argument() == "taster";
  throw isTypist ? Problem(problem.trouble(), typist.name, problem.values()) : problem;
}

/// Hands in what somebody typed in or took from a table; nobody, where it is not said.
std::vector<tasting::Receipt> handedIn(Desk& desk, store::Store& store, const SessionId& id, const Given& typist, const std::vector<tasting::HandIn>& all) {
  if (!typist.isGiven()) return tasting::handInAll(store, desk.clock(), desk.chance(), id, all);
  try {
    return tasting::handInTable(store, desk.clock(), desk.chance(), id, typistOf(store, typist), all);
  } catch (const Problem& problem) {
    rethrow(problem, typist);
  }
}

}  // namespace

void describeAnswer(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "answer", "Hands in answers; what is printed is locked and on disk");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto file = command.argument("FILE", "A CSV table with the columns place, round, item, code, value: all of it or nothing");
  const auto wide = command.flag("--wide", "The table has a row a person, a person and round, or a cup, and columns of any names");
  const auto map = command.options("--map", "COLUMN=MEANING", "Of such a table, once for a column: place, name, round, cup, or a question (liking, line:sweet, a number), with @2 for the second cup from the left and #2 for a round; - leaves it out. A column whose name is a meaning needs none");
  const auto typist = command.option("--typed-by", "TASTER", "Who types paper or a form's table in: name or id of somebody who made and pours none of it and has nothing open, or nobody-here for somebody who is not on the shelf; with --wide always");
  command.does([=](Desk& desk) -> Answer {
    file->text();
    if (*wide) typist->text();
    else if (!map->empty()) throw Problem(Trouble::notAChoice, "--map", {{"text", map->front()}, {"choices", "--wide"}});
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const exchange::Meanings meanings = meaningsOf(*map);
    const std::vector<tasting::HandIn> all = *wide ? exchange::readForm(*store, id, file->text(), meanings) : exchange::readAnswers(*store, id, file->text());
    const std::vector<tasting::Receipt> receipts = handedIn(desk, *store, id, *typist, all);
    Json list = Json::array(), leftOut = Json::array();
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < receipts.size(); ++i) {
      list.push_back({{"place", all[i].place.value}, {"round", all[i].round.value}, {"seq", receipts[i].seq().value}, {"at", receipts[i].at()}, {"was_there", receipts[i].wasThere()}});
      lines.push_back(words::eventLine(desk.voice(), {receipts[i].seq(), receipts[i].at(), Event::answered, all[i].place, all[i].round}));
    }
    Answer answer{Json{{"id", id.text}, {"answered", receipts.size()}, {"receipts", std::move(list)}}, std::move(lines)};
    if (*wide) {
      for (const exchange::FormColumn& column : exchange::formColumns(*store, id, file->text(), meanings))
        if (column.means == "-") leftOut.push_back(column.name);
      answer.json["left_out"] = leftOut;
      for (const Json& each : leftOut) answer.lines.push_back("Left out: " + each.get<std::string>());
    }
    return answer;
  });
}

}  // namespace oddglass::cli
