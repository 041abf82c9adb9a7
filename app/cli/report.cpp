#include "cli/families.h"
#include "domain/problem.h"
#include "exchange/file_out.h"
#include "report/html.h"
#include "report/sheet_report.h"
#include "session/look.h"

namespace oddglass::cli {

void describeReport(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "report", "Writes what came out of a revealed session");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto out = command.option("--out", "FILE", "FILE.html or FILE.json");
  const auto whom = command.option("--for", "WHOM", "maker, or room: without any person (maker)");
  command.does([=](Desk& desk) -> Answer {
    const std::filesystem::path file = out->text();
    const std::string ending = file.extension().string();
    if (ending != ".html" && ending != ".json")
      throw Problem(Trouble::notAChoice, out->name, {{"text", ending == ".pdf" ? "PDF, which is not there yet" : file.filename().string()}, {"choices", "FILE.html, FILE.json"}});
    const auto reader = whom->isGiven() && whom->oneOf({"maker", "room"}) == "room" ? report::For::room : report::For::maker;
    const auto store = desk.toRead();
    const RevealedSession session = session::revealed(*store, sessionOf(*store, *which));
    exchange::writeWhole(file, ending == ".json" ? report::jsonOf(desk.voice(), session, reader)
                                                 : report::html(desk.voice(), report::documentOf(desk.voice(), session, reader)));
    return {Json{{"id", session.id.text}, {"file", file.string()}}, {file.string()}};
  });
}

}  // namespace oddglass::cli
