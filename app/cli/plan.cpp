#include "cli/families.h"
#include "cli/plan_facts.h"
#include "exchange/plan_file.h"
#include "session/drafts.h"

namespace oddglass::cli {

void describePlan(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "plan", "Keeps the plan of a file, and says what it takes, finds and would miss");
  const auto file = command.argument("FILE", "A file in the interchange form with a plan");
  command.does([=](Desk& desk) -> Answer {
    file->text();
    const auto store = desk.toWriteOrMake();
    const SessionId id = exchange::planFromFile(*store, desk.clock(), desk.chance(), file->text());
    return planAnswer(desk.voice(), session::draftFacts(*store, id));
  });
}

}  // namespace oddglass::cli
