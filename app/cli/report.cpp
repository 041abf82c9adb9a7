#include "cli/families.h"
#include "cli/printer.h"
#include "domain/problem.h"
#include "exchange/file_out.h"
#include "report/html.h"
#include "report/series_document.h"
#include "report/sheet_report.h"
#include "session/look.h"
#include "session/sittings.h"
#include "shelf/series.h"

namespace oddglass::cli {
namespace {

/// What is reported: a session, or a series.
struct Wanted {
  std::optional<SessionId> session;
  std::optional<SeriesId> series;
};

template <class Find>
auto ifThere(Find find) -> std::optional<decltype(find())> {
  try {
    return find();
  } catch (const Problem& problem) {
    if (problem.trouble() != Trouble::unknown) throw;
    return std::nullopt;
  }
}

/// Problems empty, unknown, ambiguous: also where a session and a series begin alike.
Wanted wantedOf(store::Store& store, const Given& which) {
  const std::string start = idStart(which);
  Wanted wanted{ifThere([&] { return session::sessionNamed(store, start); }), ifThere([&] { return shelf::seriesNamed(store, start); })};
  if (wanted.session.has_value() == wanted.series.has_value())
    throw Problem(wanted.session ? Trouble::ambiguous : Trouble::unknown, which.name, {{"what", "session or series"}, {"text", which.text()}});
  return wanted;
}

/// The old pages of a series stay closed while one of its sittings is sealed; `anyway` opens them, which is written down.
void openPages(Desk& desk, store::Store& store, const SeriesId& series, bool anyway, const Given& which) {
  if (!anyway) throw Problem(Trouble::pagesClosed, which.name, {{"text", shelf::series(store, series).title}});
  session::openOldPages(store, desk.clock(), series);
}

}  // namespace

void describeReport(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "report", "Writes what came out of a revealed session, or of a series so far");
  const auto which = command.argument("SESSION", "The beginning of its id, or of a series'");
  const auto out = command.option("--out", "FILE", "FILE.pdf, FILE.html or FILE.json");
  const auto size = command.option("--size", "SIZE", "of a PDF: A4 or letter (A4)");
  const auto whom = command.option("--for", "WHOM", "maker, or room: without any person (maker). The report of a series names nobody");
  const auto anyway = command.flag("--open-anyway", "Although another look of its series is sealed; that is written down beside it");
  command.does([=](Desk& desk) -> Answer {
    const std::filesystem::path file = out->text();
    const std::string ending = file.extension().string();
    if (ending != ".pdf" && ending != ".html" && ending != ".json")
      throw Problem(Trouble::notAChoice, out->name, {{"text", file.filename().string()}, {"choices", "FILE.pdf, FILE.html, FILE.json"}});
    const std::string paper = size->isGiven() ? size->oneOf({"A4", "letter"}) : "A4";
    const auto reader = whom->isGiven() && whom->oneOf({"maker", "room"}) == "room" ? report::For::room : report::For::maker;
    auto store = *anyway ? desk.toWrite() : desk.toRead();
    const Wanted wanted = wantedOf(*store, *which);
    const auto answer = [&](const std::string& id) { return Answer{Json{{"id", id}, {"file", file.string()}}, {file.string()}}; };
    if (wanted.series) {
      if (session::sealedSitting(*store, *wanted.series)) openPages(desk, *store, *wanted.series, *anyway, *which);
      if (ending == ".pdf") {
        store.reset();
        print(desk, {{"print", "series"}, {"which", wanted.series->text}, {"out", file.string()}, {"size", paper}});
      } else {
        const report::SeriesReport read = report::readSeriesReport(*store, *wanted.series);
        exchange::writeWhole(file, ending == ".json" ? report::seriesJson(desk.voice(), read) : report::html(desk.voice(), report::seriesDocument(desk.voice(), read)));
      }
      return answer(wanted.series->text);
    }
    if (const auto series = session::closedBy(*store, *wanted.session)) openPages(desk, *store, *series, *anyway, *which);
    const RevealedSession session = session::revealed(*store, *wanted.session);
    if (ending == ".pdf") {
      report::requireOpen(session);
      store.reset();
      print(desk, {{"print", "report"}, {"which", session.id.text}, {"out", file.string()}, {"size", paper}, {"for", reader == report::For::maker ? "maker" : "room"}});
    } else {
      exchange::writeWhole(file, ending == ".json" ? report::jsonOf(desk.voice(), session, reader)
                                                 : report::html(desk.voice(), report::documentOf(desk.voice(), session, reader)));
    }
    return answer(session.id.text);
  });
}

}  // namespace oddglass::cli
