#include "cli/critical.h"

#include "cli/families.h"
#include "cli/options.h"
#include "stats/choice.h"

#include <map>
#include <string>
#include <vector>

namespace oddglass::cli {
namespace {

/// What answers for each name that --of may have; every other name is a method that counts right answers.
const std::map<std::string, Answer (*)(const CriticalOptions&)>& kinds() {
  static const std::map<std::string, Answer (*)(const CriticalOptions&)> list{{"studentized-range", criticalStudentizedRange}, {"dunnett", criticalDunnett}, {"friedman", criticalFriedman}, {"page", criticalPage}};
  return list;
}

}  // namespace

Answer criticalCount(const CriticalOptions& options) {
  const stats::Method method = methodOf(*options.of);
  const int all = options.trials->whole(1, mostTrials);
  const auto critical = stats::neededNumber(method, all, options.alpha->openShareOr(0.05));
  Json json{{"critical", numberOrNull(critical)}, {"alpha_actual", critical ? numberOrNull(stats::pValue(method, *critical, all)) : Json()}, {"by", "exact"}};
  if (!critical) json["why"] = "no count reaches this risk";
  return {std::move(json), {}};
}

void describeCritical(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "critical", "What a test has to reach at a given risk");
  CriticalOptions options;
  options.of = command.option("--of", "M", "triangle, duo-trio, tetrad, two-out-of-five, pair, three-afc, preference, studentized-range, dunnett, friedman or page");
  options.trials = command.option("--trials", "N", "How many trials");
  options.multiple = multipleOptions(command);
  options.samples = command.option("--samples", "K", "Samples that each taster ranks");
  options.tasters = command.option("--tasters", "N", "How many tasters rank them");
  options.alpha = alphaOption(command);
  command.does([=](Desk&) -> Answer {
    std::vector<std::string> names{"triangle", "duo-trio", "tetrad", "two-out-of-five", "pair", "three-afc", "preference"};
    for (const auto& [name, answer] : kinds()) names.push_back(name);
    const auto kind = kinds().find(options.of->oneOf(names));
    if (kind != kinds().end()) return kind->second(options);
    return criticalCount(options);
  });
}

}  // namespace oddglass::cli
