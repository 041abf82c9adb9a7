#include "cli/families.h"
#include "cli/printer.h"
#include "domain/problem.h"
#include "shelf/series.h"
#include "tasting/paper.h"

namespace oddglass::cli {

void describePaper(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "paper", "Prints what a sealed session needs on paper, or tags for the bottles of a series; the pourer's sheet and the key card are the key, and each of their openings is logged and counted");
  const auto which = command.argument("SESSION", "The beginning of its id, or of a series'");
  const auto what = command.option("--what", "WHAT", "labels, mats, sheets (with each place's codes), blank (one sheet without codes), run, routine (where hands hide the key), pour or key; of a series: tags");
  const auto out = command.option("--out", "FILE", "FILE.pdf");
  const auto size = command.option("--size", "SIZE", "A4 or letter (A4)");
  const auto labels = command.option("--labels", "COLUMNSxROWS", "How many labels a sheet holds (3x8)");
  const auto margins = command.option("--margins", "T,R,B,L", "mm around all labels: top, right, bottom, left (10,10,10,10)");
  const auto gaps = command.option("--gaps", "ACROSS,DOWN", "mm between two labels (0,0)");
  const auto skip = command.option("--skip", "N", "Labels that a begun sheet lacks already (0)");
  command.does([=](Desk& desk) -> Answer {
    const std::string asked = what->oneOf({"labels", "mats", "sheets", "blank", "run", "routine", "pour", "key", "tags"});
    const std::filesystem::path file = out->text();
    if (file.extension() != ".pdf") throw Problem(Trouble::notAChoice, out->name, {{"text", file.filename().string()}, {"choices", "FILE.pdf"}});
    std::vector<std::pair<std::string, std::string>> options{{"print", asked}, {"out", file.string()}, {"size", size->isGiven() ? size->oneOf({"A4", "letter"}) : "A4"}};
    for (const auto& each : {labels, margins, gaps, skip}) {
      if (!each->isGiven()) continue;
      if (asked != "labels" && asked != "tags") throw Problem(Trouble::notAChoice, what->name, {{"text", asked}, {"choices", "labels, tags"}});
      options.emplace_back(each->name.substr(2), each->text());
    }
    auto store = desk.toRead();
    std::string id;
    if (asked == "tags") {
      id = shelf::seriesNamed(*store, idStart(*which)).text;
    } else {
      const SessionId session = sessionOf(*store, *which);
      tasting::tablePaper(*store, session);  // says what is wrong with the session before another program is started
      id = session.text;
    }
    store.reset();
    options.emplace_back("which", id);
    print(desk, options);
    return {Json{{"id", id}, {"what", asked}, {"file", file.string()}}, {file.string()}};
  });
}

}  // namespace oddglass::cli
