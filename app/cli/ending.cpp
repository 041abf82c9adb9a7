#include "cli/families.h"
#include "cli/last_entry.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "insight/findings.h"
#include "report/made.h"
#include "session/ending.h"
#include "session/look_after.h"
#include "words/came_out.h"
#include "words/problems.h"
#include "words/sheet_out.h"

namespace oddglass::cli {
namespace {

void describeLook(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "look", "Looks at a sequential plan after a whole round: go on, or stop");
  const auto which = command.argument("SESSION", "The beginning of its id");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const session::LookedAfter looked = session::lookAfterRound(*store, desk.clock(), id);
    return {Json{{"id", id.text}, {"round", looked.round.value}, {"go_on", looked.goOn}}, {entryLine(desk.voice(), lastEntry(*store, id, Event::judged))}};
  });
}

void describeClose(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "close", "Ends the tasting; missing answers stay missing");
  const auto which = command.argument("SESSION", "The beginning of its id");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const session::Closed closed = session::close(*store, desk.clock(), id);
    return {Json{{"id", id.text}, {"state", "closed"}, {"answered", closed.answered}, {"missing", closed.missing}, {"voided", closed.voided}},
            {entryLine(desk.voice(), lastEntry(*store, id, Event::closed))}};
  });
}

void describeReveal(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "reveal", "Opens the key, says what came out, and makes a backup");
  const auto which = command.argument("SESSION", "The beginning of its id");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const session::Revealed revealed = session::reveal(*store, desk.clock(), id);
    const RevealedSession result = session::revealed(*store, id);
    Json json{{"id", id.text}, {"state", "revealed"}, {"commitment_holds", revealed.commitmentHolds}};
    words::CameOut out;
    if (result.plan.sheet) {
      const insight::SheetFindings findings = insight::sheetFindingsOf(result);
      out = words::sheetOut(desk.voice(), result, findings);
      json.update({{"people", findings.people}, {"flights", findings.flights}, {"missing", findings.missing}});
    } else {
      const insight::Findings findings = insight::findingsOf(result);
      out = words::cameOut(desk.voice(), result, findings);
      json.update({{"verdict", report::nameOf(findings.verdict)}, {"right", findings.printed().right}, {"trials", findings.printed().trials}});
    }
    json["headline"] = out.headline;
    json["backup"] = nullptr;
    Answer answer{std::move(json), {out.headline}};
    for (const words::OutSection& section : out.sections) {
      answer.lines.push_back(section.heading);
      for (const std::string& line : section.lines) answer.lines.push_back("  " + line);
    }
    const auto sentences = out.lines();
    answer.lines.insert(answer.lines.begin(), out.first.begin(), out.first.end());
    answer.lines.insert(answer.lines.end(), sentences.begin(), sentences.end());
    if (!revealed.backup.empty()) answer.json["backup"] = revealed.backup.string();
    if (revealed.backupProblem) {
      answer.json["why"] = words::sentence(desk.voice(), *revealed.backupProblem);
      answer.lines.push_back(words::sentence(desk.voice(), *revealed.backupProblem));
    }
    return answer;
  });
}

void describeDecide(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "decide", "One line on what you will do");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto text = command.option("--text", "TEXT", "The line");
  command.does([=](Desk& desk) -> Answer {
    text->text();
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    session::decide(*store, desk.clock(), desk.chance(), id, text->text());
    return {Json{{"id", id.text}, {"decision", session::revealed(*store, id).decision}}, {entryLine(desk.voice(), lastEntry(*store, id, Event::decided))}};
  });
}

void describeBreak(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "break", "Opens the key early: the session ends without a verdict, on record for good");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto reason = command.option("--reason", "TEXT", "Why");
  const auto sure = command.flag("--yes-break-the-seal", "Says it a second time");
  command.does([=](Desk& desk) -> Answer {
    reason->text();
    if (!*sure) throw Problem(Trouble::askTwice, "--yes-break-the-seal");
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    session::breakSeal(*store, desk.clock(), desk.chance(), id, reason->text(), true);
    return {Json{{"id", id.text}, {"state", "broken"}}, {entryLine(desk.voice(), lastEntry(*store, id, Event::broken))}};
  });
}

void describeAbandon(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "abandon", "Gives a session up without opening the key, on record for good");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto reason = command.option("--reason", "TEXT", "Why; giving one says it a second time");
  command.does([=](Desk& desk) -> Answer {
    reason->text();
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    session::abandon(*store, desk.clock(), desk.chance(), id, reason->text(), true);
    return {Json{{"id", id.text}, {"state", "abandoned"}}, {entryLine(desk.voice(), lastEntry(*store, id, Event::abandoned))}};
  });
}

}  // namespace

void describeEnding(CLI::App& app, Command::Work& chosen) {
  describeLook(app, chosen);
  describeClose(app, chosen);
  describeReveal(app, chosen);
  describeDecide(app, chosen);
  describeBreak(app, chosen);
  describeAbandon(app, chosen);
}

}  // namespace oddglass::cli
