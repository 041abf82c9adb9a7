#include "cli/aging.h"
#include "cli/families.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "report/series_document.h"
#include "session/sittings.h"
#include "shelf/series.h"
#include "words/over_time.h"

namespace oddglass::cli {
namespace {

std::vector<std::string> overTimeLines(const words::Voice& voice, const report::SeriesRead& read) {
  const insight::OverTime& over = read.over;
  const session::SittingNow* next = session::nextSitting(read.now);
  const words::OverTimeWords said = words::overTimeWords(voice, read.series, over, next ? next->dueOn : std::string(), read.notes);
  std::vector<std::string> lines{read.series.title, said.word + ": " + said.headline};
  addLines(lines, said.lines);
  addLines(lines, said.cautions);
  for (std::size_t i = 0; i < over.sittings.size(); ++i) {
    lines.push_back("  " + words::sittingLine(voice, over.sittings[i], i == 0));
    if (const std::string differs = words::setupLine(voice, read.setup[i]); !differs.empty()) lines.push_back("    " + differs);
  }
  for (const words::OutSection& section : said.round)
    for (const std::string& line : section.lines) lines.push_back("  " + line);
  for (const words::OutSection& section : said.seen) {
    lines.push_back(section.heading);
    for (const std::string& line : section.lines) lines.push_back("  " + line);
    for (const auto& row : section.rows) lines.push_back("  " + row[0] + ": " + row[1]);
  }
  if (!said.next.empty()) lines.push_back(said.next);
  return lines;
}

}  // namespace

void describeOverTime(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "over-time", "What an aging series has shown so far");
  const auto which = command.argument("SERIES", "The beginning of its id");
  const auto anyway = command.flag("--open-anyway", "Although one of its sittings is sealed; that is written down beside it");
  command.does([=](Desk& desk) -> Answer {
    const auto store = *anyway ? desk.toWrite() : desk.toRead();
    const Series series = shelf::series(*store, seriesOf(*store, *which));
    if (session::sealedSitting(*store, series.id) && !*anyway) throw Problem(Trouble::pagesClosed, "SERIES", {{"text", series.title}});
    if (*anyway) session::openOldPages(*store, desk.clock(), series.id);
    const report::SeriesRead read = report::readSeries(*store, series.id);
    Answer answer{report::overTimeJson(series, read.over), overTimeLines(desk.voice(), read)};
    answer.json["seen"] = report::seenJson(series, read.notes);
    answer.json["deeds"] = Json::array();
    for (const Note& note : read.notes)
      if (!note.word.empty()) answer.json["deeds"].push_back({{"done_on", note.doneOn}, {"kind", nameOf(note.kind)}, {"against", note.word}, {"text", note.text}});
    return answer;
  });
}

}  // namespace oddglass::cli
