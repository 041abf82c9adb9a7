#include "cli/families.h"
#include "cli/printer.h"
#include "domain/problem.h"
#include "exchange/file_out.h"
#include "report/html.h"
#include "report/sheet_report.h"
#include "session/look.h"
#include "session/sittings.h"
#include "shelf/series.h"

namespace oddglass::cli {

void describeReport(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "report", "Writes what came out of a revealed session");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto out = command.option("--out", "FILE", "FILE.pdf, FILE.html or FILE.json");
  const auto size = command.option("--size", "SIZE", "of a PDF: A4 or letter (A4)");
  const auto whom = command.option("--for", "WHOM", "maker, or room: without any person (maker)");
  const auto anyway = command.flag("--open-anyway", "Although another look of its series is sealed; that is written down beside it");
  command.does([=](Desk& desk) -> Answer {
    const std::filesystem::path file = out->text();
    const std::string ending = file.extension().string();
    if (ending != ".pdf" && ending != ".html" && ending != ".json")
      throw Problem(Trouble::notAChoice, out->name, {{"text", file.filename().string()}, {"choices", "FILE.pdf, FILE.html, FILE.json"}});
    const std::string paper = size->isGiven() ? size->oneOf({"A4", "letter"}) : "A4";
    const auto reader = whom->isGiven() && whom->oneOf({"maker", "room"}) == "room" ? report::For::room : report::For::maker;
    auto store = *anyway ? desk.toWrite() : desk.toRead();
    const SessionId id = sessionOf(*store, *which);
    if (const auto series = session::closedBy(*store, id)) {
      if (!*anyway) throw Problem(Trouble::pagesClosed, which->name, {{"text", shelf::series(*store, *series).title}});
      session::openOldPages(*store, desk.clock(), *series);
    }
    const RevealedSession session = session::revealed(*store, id);
    if (ending == ".pdf") {
      report::requireOpen(session);
      store.reset();
      print(desk, {{"print", "report"}, {"which", session.id.text}, {"out", file.string()}, {"size", paper}, {"for", reader == report::For::maker ? "maker" : "room"}});
    } else {
      exchange::writeWhole(file, ending == ".json" ? report::jsonOf(desk.voice(), session, reader)
                                                 : report::html(desk.voice(), report::documentOf(desk.voice(), session, reader)));
    }
    return {Json{{"id", session.id.text}, {"file", file.string()}}, {file.string()}};
  });
}

}  // namespace oddglass::cli
