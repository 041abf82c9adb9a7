#include "cli/families.h"
#include "cli/last_entry.h"
#include "domain/names.h"
#include "exchange/take_in.h"
#include "domain/problem.h"
#include "session/record.h"
#include "words/history.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

template <class T>
void add(Json& json, const char* key, const std::optional<T>& number) {
  if (number) json[key] = number->value;
}

Json entryJson(const words::Voice& voice, const session::HistoryLine& line) {
  Json json{{"seq", line.seq.value}, {"at", line.at}, {"kind", nameOf(line.event)}, {"state", nameOf(line.after)}};
  add(json, "place", line.place);
  add(json, "round", line.round);
  add(json, "code", line.code);
  add(json, "by", line.byCode);
  if (line.reason) json["reason"] = nameOf(*line.reason);
  if (line.event == Event::said) {
    json["heard_by"] = Json::array();
    for (Place place : line.heardBy) json["heard_by"].push_back(place.value);
  }
  if (!line.places.empty()) {
    json["places"] = Json::array();
    for (Place place : line.places) json["places"].push_back(place.value);
  }
  if (line.clockBack) json["clock_back"] = true;
  if (line.commitmentHolds) json["commitment_holds"] = *line.commitmentHolds;
  if (line.missing) json["missing"] = *line.missing;
  if (!line.words.empty()) json["words"] = line.words;
  json["text"] = entryLine(voice, line);
  return json;
}

void describeHistory(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "history", "The log of a session in plain words");
  const auto which = command.argument("SESSION", "The beginning of its id");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    const SessionId id = sessionOf(*store, *which);
    Answer answer{Json{{"id", id.text}, {"entries", Json::array()}}, {}};
    for (const session::HistoryLine& line : session::history(*store, id)) {
      answer.json["entries"].push_back(entryJson(desk.voice(), line));
      answer.lines.push_back(words::day(desk.voice(), line.at) + ' ' + words::timeOfDay(desk.voice(), line.at) + "  " + entryLine(desk.voice(), line));
    }
    return answer;
  });
}

/// One session that was checked, from the store or from a file.
struct Checked {
  SessionId id;
  std::string title;
  bool isKeyOpen = false;
  session::Verification found;
};

/// What the checks of one or more sessions come to. Status 1 when one does not hold.
Answer checkedAnswer(const words::Voice& voice, const std::vector<Checked>& all) {
  Json checks = Json::array(), sessions = Json::array();
  int erased = 0, openings = 0;
  Answer answer;
  bool holds = true;
  for (const Checked& one : all) {
    for (const session::Check& check : one.found.checks) {
      const std::string text = words::checkLine(voice, check.what, check.holds, check.where);
      checks.push_back({{"session", one.id.text}, {"what", check.what}, {"holds", check.holds}, {"where", check.where}, {"text", text}});
      answer.lines.push_back("  " + text);
    }
    answer.lines.insert(answer.lines.end() - static_cast<std::ptrdiff_t>(one.found.checks.size()), one.title + ": " + words::checkHeadline(voice, one.found.holds(), one.isKeyOpen));
    sessions.push_back({{"id", one.id.text}, {"title", one.title}, {"holds", one.found.holds()}, {"key_open", one.isKeyOpen}});
    erased += one.found.erased;
    openings += one.found.pourSheetOpenings;
    holds = holds && one.found.holds();
  }
  answer.json = Json{{"holds", holds}, {"checks", std::move(checks)}, {"erased", erased}, {"pour_sheet_openings", openings}, {"sessions", std::move(sessions)}};
  answer.status = holds ? Status::done : Status::doesNotHold;
  return answer;
}

/// A file whose parts do not fit together is a break that was found, not a request that cannot be understood.
Answer brokenFile(const words::Voice& voice, const Problem& problem) {
  const auto value = [&](const char* key) { return problem.values().contains(key) ? problem.values().at(key) : std::string(); };
  const std::string where = problem.argument() + (value("line").empty() ? "" : ", line " + value("line")) + (value("text").empty() ? "" : ": " + value("text"));
  return checkedAnswer(voice, {Checked{{}, value("file"), true, {{{"references", false, where}}, 0, 0}}});
}

Answer verifyFile(const words::Voice& voice, const std::string& file) {
  std::vector<Checked> all;
  try {
    for (const exchange::CheckedSession& each : exchange::verifyFile(file)) all.push_back({each.id, each.title, !each.isSealedPlan, each.found});
  } catch (const Problem& problem) {
    if (problem.trouble() == Trouble::brokenReference || problem.trouble() == Trouble::doesNotVerify) return brokenFile(voice, problem);
    throw;
  }
  Answer answer = checkedAnswer(voice, all);
  if (all.empty()) answer.json["why"] = "there is no session in this file";
  if (all.empty()) answer.lines.push_back("There is no session in this file.");
  return answer;
}

bool isHex(const std::string& text) { return std::ranges::all_of(text, [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F'); }); }

void describeVerify(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "verify", "Checks all that a session, or a file of sessions, proves");
  const auto which = command.argument("SESSION", "The beginning of its id, or a file in the interchange form");
  command.does([=](Desk& desk) -> Answer {
    std::error_code error;
    if (std::filesystem::is_regular_file(which->text(), error) || !isHex(which->text())) return verifyFile(desk.voice(), which->text());
    const auto store = desk.toRead();
    const SessionId id = sessionOf(*store, *which);
    const session::SessionRecord record = session::record(*store, id);
    return checkedAnswer(desk.voice(), {{id, record.title, record.key.has_value(), session::verify(*store, id)}});
  });
}

}  // namespace

void describeLooking(CLI::App& app, Command::Work& chosen) {
  describeHistory(app, chosen);
  describeVerify(app, chosen);
}

}  // namespace oddglass::cli
