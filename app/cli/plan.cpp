#include "cli/families.h"
#include "cli/plan_facts.h"
#include "exchange/plan_file.h"
#include "insight/past_spread.h"
#include "session/drafts.h"
#include "session/past.h"

namespace oddglass::cli {

void describePlan(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "plan", "Keeps the plan of a file, and says what it takes, finds and would miss");
  const auto file = command.argument("FILE", "A file in the interchange form with a plan");
  command.does([=](Desk& desk) -> Answer {
    file->text();
    const auto store = desk.toWriteOrMake();
    const SessionId id = exchange::planFromFile(*store, desk.clock(), desk.chance(), file->text());
    const session::DraftFacts facts = session::draftFacts(*store, id);
    if (facts.draft.method != Method::sheet) return planAnswer(desk.voice(), facts);
    const auto past = insight::pastSpreadOf(session::pastSheets(*store, session::panelOf(facts)));
    return planAnswer(desk.voice(), facts, past ? planning::Spread{past->interaction, past->repeat, true, past->tables} : planning::Spread{});
  });
}

}  // namespace oddglass::cli
