#include "cli/count_file.h"
#include "cli/counted.h"
#include "cli/families.h"
#include "cli/options.h"
#include "domain/problem.h"

namespace oddglass::cli {

void describeCount(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "count", "What a count of right answers says: given as numbers, or as a table with one answer a row");
  const auto file = command.argument("FILE", "A CSV table, one answer a row");
  const auto method = methodOption(command);
  const auto trials = command.option("--trials", "N", "How many trials");
  const auto correct = command.option("--correct", "X", "How many were right; with FILE the column that holds 0 or 1");
  const auto limit = command.option("--limit-pd", "P", "Share of people who may tell, for alikeness");
  const auto taster = command.option("--taster", "T", "The column that names the taster");
  const auto prefers = command.option("--prefers", "P", "The column that says first, second or none");
  const auto none = command.option("--no-preference", "K", "Preference: how many more had none");
  const auto sure = command.option("--sure", "S", "The column of sureness: 1 a guess, 2 fairly, 3 sure");
  const auto alpha = alphaOption(command);
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const stats::Method how = methodOf(*method);
    if (limit->isGiven() && how == stats::Method::preference) throw Problem(Trouble::notAChoice, limit->name, {{"text", limit->text()}, {"choices", "methods with a right answer"}});
    const auto pd = limit->isGiven() ? std::optional(limit->openShare()) : std::nullopt;
    const double risk = alpha->openShareOr(0.05), within = level->openShareOr(0.95);
    const bool isPreference = how == stats::Method::preference;
    if (none->isGiven() && (!isPreference || file->isGiven())) throw Problem(Trouble::notAChoice, none->name, {{"text", none->text()}, {"choices", "a preference given as counts"}});
    if (file->isGiven()) {
      if (trials->isGiven()) throw Problem(Trouble::notAChoice, trials->name, {{"text", trials->text()}, {"choices", "FILE, or --trials with --correct"}});
      return {countFile(how, *file, {*taster, *correct, *prefers, *sure}, risk, within, pd), {}};
    }
    for (const auto& each : {taster, prefers, sure})
      if (each->isGiven()) throw Problem(Trouble::empty, "FILE");
    const int all = trials->whole(0, mostTrials);
    const int right = correct->whole(0, all);
    Json json = countedJson(how, right, all, risk, within, pd);
    if (isPreference) json["no_preference"] = noPreferenceJson(right, all - right, none->wholeOr(0, 0, mostTrials - all), risk);
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
