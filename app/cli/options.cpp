#include "cli/options.h"

#include "domain/problem.h"
#include "stats/psychometric.h"

namespace oddglass::cli {

stats::Method methodOf(const Given& given) {
  return stats::methodNamed(given.oneOf({"triangle", "duo-trio", "tetrad", "two-out-of-five", "pair", "three-afc", "preference"}));
}

std::shared_ptr<Given> methodOption(Command& command) {
  return command.option("--method", "M", "triangle, duo-trio, tetrad, two-out-of-five, pair, three-afc or preference");
}

std::shared_ptr<Given> alphaOption(Command& command) { return command.option("--alpha", "A", "Risk of a false alarm (0.05)"); }

std::shared_ptr<Given> levelOption(Command& command) { return command.option("--level", "L", "Level of the intervals (0.95)"); }

TrueDifference differenceOptions(Command& command, bool withPc) {
  TrueDifference difference;
  difference.pd = command.option("--pd", "P", "Share of people who can tell, 0 to 1");
  difference.dPrime = command.option("--d-prime", "D", "Difference in standard deviations, 0 or more");
  if (withPc) difference.pc = command.option("--pc", "P", "Chance of a right answer, 0 to 1");
  return difference;
}

const Given& TrueDifference::given() const {
  const Given* found = nullptr;
  for (const Given* each : {pd.get(), dPrime.get(), pc.get()}) {
    if (!each || !each->isGiven()) continue;
    if (found) throw Problem(Trouble::notAChoice, each->name, {{"text", each->text()}, {"choices", found->name + ", " + each->name}});
    found = each;
  }
  if (!found) throw Problem(Trouble::empty, pd->name);
  return *found;
}

double TrueDifference::rightAnswers(stats::Method method) const {
  const Given& one = given();
  if (&one == dPrime.get()) return stats::rightAnswers(method, one.number(0.0, 1000.0));
  const double share = one.number(0.0, 1.0);
  return &one == pd.get() ? stats::rightAnswersOfShare(method, share) : share;
}

}  // namespace oddglass::cli
