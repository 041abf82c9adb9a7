#include "cli/families.h"
#include "cli/worksheet.h"
#include "domain/problem.h"
#include "exchange/file_out.h"
#include "session/drafts.h"
#include "session/pour.h"
#include "session/seal.h"
#include "store/together.h"
#include "words/seal.h"

namespace oddglass::cli {
namespace {

/// Opens the pour sheet, which is logged, and writes it out; both or nothing.
void writeWorksheet(Desk& desk, store::Store& store, const SessionId& session, const Given& out) {
  const std::filesystem::path file = out.text();
  const session::PourSheet sheet = session::openPourSheet(store, desk.clock(), session);
  try {
    exchange::writeWhole(file, file.extension() == ".csv" ? worksheetCsv(sheet) : worksheetText(sheet));
  } catch (const Problem& problem) {
    throw Problem(problem.trouble(), out.name, problem.values());
  }
}

void describeSealItself(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "seal", "Freezes a plan, draws orders and codes, and says the seal mark");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto worksheet = command.option("--worksheet", "FILE", "Where the pourer's worksheet goes (text, or a table as .csv); opening it is logged");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    store::Together together(*store);
    const session::DraftFacts facts = session::draftFacts(*store, id);
    const session::Sealed sealed = session::seal(*store, desk.clock(), desk.chance(), id);
    if (worksheet->isGiven()) writeWorksheet(desk, *store, id, *worksheet);
    together.commit();
    Json json{{"id", id.text}, {"state", "sealed"}, {"seal_mark", sealed.sealMark}, {"commitment", sealed.commitment}, {"worksheet", nullptr}};
    if (worksheet->isGiven()) json["worksheet"] = worksheet->text();
    return {std::move(json), {words::sealMarkLine(desk.voice(), sealed.sealMark), words::afterSealLine(desk.voice(), facts.pourerName, facts.draft.routine), words::sealLimits(desk.voice())}};
  });
}

void describeWorksheet(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "worksheet", "Opens the pourer's worksheet of a sealed session again; every opening is logged and counted");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto out = command.option("--out", "FILE", "Where it goes: text, or a table as .csv");
  command.does([=](Desk& desk) -> Answer {
    out->text();
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    store::Together together(*store);
    writeWorksheet(desk, *store, id, *out);
    together.commit();
    return {Json{{"id", id.text}, {"worksheet", out->text()}}, {out->text()}};
  });
}

}  // namespace

void describeSeal(CLI::App& app, Command::Work& chosen) {
  describeSealItself(app, chosen);
  describeWorksheet(app, chosen);
}

}  // namespace oddglass::cli
