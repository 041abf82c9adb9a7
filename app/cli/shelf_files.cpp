#include "cli/families.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "exchange/demo.h"
#include "exchange/take_in.h"
#include "exchange/write_out.h"
#include "session/look.h"
#include "store/together.h"
#include "words/history.h"

namespace oddglass::cli {
namespace {

Json shelfJson(const exchange::Brought& brought) {
  return {{"beverages", brought.beverages}, {"lots", brought.lots}, {"notes", brought.notes}, {"tasters", brought.tasters}, {"words", brought.words}, {"merged_words", brought.mergedWords},
          {"retired_words", brought.retiredWords}, {"series", brought.series}, {"already_there", brought.alreadyThere}};
}

Json idsJson(const std::vector<SessionId>& sessions) {
  Json ids = Json::array();
  for (const SessionId& each : sessions) ids.push_back(each.text);
  return ids;
}

void describeDemo(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "demo", "Loads an invented shelf with finished sessions, and seals one more that waits to be tasted");
  command.does([](Desk& desk) -> Answer {
    std::error_code error;
    for (const auto& folder : desk.demoFolders()) {
      if (!std::filesystem::is_directory(folder, error)) continue;
      const auto store = desk.toWriteOrMake();
      const exchange::Demo demo = exchange::loadDemo(*store, desk.clock(), desk.chance(), folder);
      return {Json{{"sessions", idsJson(demo.revealed)}, {"waiting", demo.waiting.text}, {"seal_mark", demo.sealMark}}, {}};
    }
    throw Problem(Trouble::storeMissing, "demo", {{"file", "demo_sessions"}});
  });
}

void describePut(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "put", "Puts drinks, lots, notes, tasters and words of a file onto the shelf");
  const auto file = command.argument("FILE", "A file in the interchange form");
  command.does([=](Desk& desk) -> Answer {
    file->text();
    return {shelfJson(exchange::put(*desk.toWriteOrMake(), desk.clock(), file->text())), {}};
  });
}

void describeImport(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "import", "Takes in sessions with their shelf, after checking all that they prove");
  const auto files = command.arguments("FILE", "Files in the interchange form");
  command.does([=](Desk& desk) -> Answer {
    if (files->empty()) throw Problem(Trouble::empty, "FILE");
    exchange::Brought all;
    const auto store = desk.toWriteOrMake();
    store::Together together(*store);
    for (const std::string& file : *files) {
      const exchange::Brought one = exchange::importFile(*store, desk.clock(), desk.chance(), file);
      all.beverages += one.beverages, all.lots += one.lots, all.notes += one.notes, all.tasters += one.tasters, all.alreadyThere += one.alreadyThere;
      all.series += one.series, all.words += one.words, all.mergedWords += one.mergedWords, all.retiredWords += one.retiredWords;
      all.sessions.insert(all.sessions.end(), one.sessions.begin(), one.sessions.end());
      all.leftOut.insert(all.leftOut.end(), one.leftOut.begin(), one.leftOut.end());
    }
    together.commit();
    Json json = shelfJson(all);
    json["sessions"] = idsJson(all.sessions);
    json["left_out"] = idsJson(all.leftOut);
    return {std::move(json), {}};
  });
}

void describeExport(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "export", "Writes a session into a folder; before the reveal its plan only");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto all = command.flag("--all", "The whole shelf and every session");
  const auto as = command.option("--as", "FORM", "json or csv (json)");
  const auto out = command.option("--out", "DIR", "The folder");
  command.does([=](Desk& desk) -> Answer {
    const bool isCsv = as->isGiven() && as->oneOf({"json", "csv"}) == "csv";
    const std::filesystem::path folder = out->text();
    if (*all && which->isGiven()) throw Problem(Trouble::notAChoice, "--all", {{"text", which->text()}, {"choices", "SESSION, --all"}});
    const auto store = desk.toRead();
    std::vector<std::filesystem::path> files;
    if (!*all) {
      const SessionId session = sessionOf(*store, *which);
      if (isCsv) files = exchange::exportCsv(*store, session, folder);
      else files.push_back(exchange::exportJson(*store, desk.clock(), session, folder));
    } else if (isCsv) {
      for (const auto& each : session::sessions(*store))
        if (each.state != State::draft)
          for (const auto& file : exchange::exportCsv(*store, each.id, folder)) files.push_back(file);
    } else {
      files.push_back(exchange::exportAllJson(*store, desk.clock(), folder));
    }
    Json names = Json::array();
    for (const auto& file : files) names.push_back(file.string());
    std::vector<std::string> lines;
    for (const auto& file : files) lines.push_back(file.string());
    return {Json{{"files", names}}, std::move(lines)};
  });
}

void describeList(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "list", "All sessions");
  command.does([](Desk& desk) -> Answer {
    Json list = Json::array();
    for (const auto& each : session::sessions(*desk.toRead()))
      list.push_back({{"id", each.id.text}, {"title", each.title}, {"state", nameOf(each.state)}, {"question", nameOf(each.question)},
                      {"came_from", nameOf(each.cameFrom)}, {"answered", each.answered}, {"places", each.places}});
    return {Json{{"sessions", std::move(list)}}, {}};
  });
}

}  // namespace

void describeShelf(CLI::App& app, Command::Work& chosen) {
  describeDemo(app, chosen);
  describePut(app, chosen);
  describeImport(app, chosen);
  describeExport(app, chosen);
  describeList(app, chosen);
}

}  // namespace oddglass::cli
