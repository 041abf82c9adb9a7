#include "cli/families.h"
#include "cli/options.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/psychometric.h"

namespace oddglass::cli {

void describeLink(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "link", "One difference in three scales: right answers, people who tell, standard deviations");
  const auto method = methodOption(command);
  const TrueDifference difference = differenceOptions(command, true);
  command.does([=](Desk&) -> Answer {
    const stats::Method how = methodOf(*method);
    if (how == stats::Method::preference) throw Problem(Trouble::notAChoice, method->name, {{"text", "preference"}, {"choices", "methods with a right answer"}});
    const double pc = difference.rightAnswers(how);
    const bool fromDPrime = difference.dPrime->isGiven();
    const auto dPrime = fromDPrime ? std::optional(difference.dPrime->number(0.0, 1000.0)) : stats::dPrimeOf(how, pc);
    Json json{{"pc", numberOrNull(pc)}, {"pd", numberOrNull(stats::shareOf(how, pc))}, {"d_prime", numberOrNull(dPrime)}};
    if (!dPrime) json["why"] = "no difference of finite size is always right";
    else if (pc < stats::guessing(how)) json["note"] = "below guessing: taken as no difference";
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
