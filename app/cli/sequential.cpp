#include "cli/families.h"
#include "cli/listed.h"
#include "cli/options.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/sequential/sprt.h"

namespace oddglass::cli {
namespace {

const char* wordOf(stats::SequentialVerdict verdict) {
  switch (verdict) {
    case stats::SequentialVerdict::goOn: return "go on";
    case stats::SequentialVerdict::difference: return "difference";
    case stats::SequentialVerdict::none: return "none";
    case stats::SequentialVerdict::undecided: return "undecided";
  }
  return "";
}

Json outcomeJson(const std::optional<stats::SequentialOutcome>& outcome) {
  if (!outcome) return nullptr;
  return {{"difference", numberOrNull(outcome->difference)}, {"none", numberOrNull(outcome->none)}, {"undecided", numberOrNull(outcome->undecided)},
          {"expected_trials", numberOrNull(outcome->expectedTrials)}};
}

std::vector<bool> answersIn(const Given& given) {
  if (!given.isGiven()) return {};
  std::vector<bool> answers;
  for (const int each : wholesIn(given, 0, 1)) answers.push_back(each == 1);
  return answers;
}

}  // namespace

void describeSequential(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "sequential", "A plan that is looked at on the way: its lines, what answers come to, and how it ends");
  const auto method = methodOption(command);
  const TrueDifference difference = differenceOptions(command);
  const auto alpha = alphaOption(command);
  const auto beta = command.option("--beta", "B", "Risk of missing the difference");
  const auto answers = command.option("--answers", "A", "Answers in their order, such as 1,0,1: 1 is right");
  const auto truncate = command.option("--truncate", "N", "Stop after so many trials at the latest");
  const auto every = command.option("--every", "K", "Look only after every K trials (1)");
  command.does([=](Desk&) -> Answer {
    const stats::Method how = methodOf(*method);
    if (how == stats::Method::preference) throw Problem(Trouble::notAChoice, method->name, {{"text", "preference"}, {"choices", "methods with a right answer"}});
    const double p0 = stats::guessing(how), p1 = difference.rightAnswers(how);
    const Given& size = difference.given();
    if (p1 <= p0 || p1 >= 1.0) throw Problem(Trouble::outOfRange, size.name, {{"text", size.text()}, {"low", "just above 0"}, {"high", p1 >= 1.0 ? "less than certainty" : "1"}});
    const stats::SequentialPlan plan{p0, p1, alpha->openShareOr(0.05), beta->openShare()};
    stats::Looks looks{every->wholeOr(1, 1, 100'000), std::nullopt};
    if (truncate->isGiven()) looks.last = truncate->whole(1, 100'000);
    const stats::SequentialLines lines = stats::linesOf(plan);
    const stats::WaldExpected wald = stats::waldExpected(plan);
    const stats::SequentialDecision decision = stats::decide(lines, answersIn(*answers), looks);
    const auto none = stats::outcomeOf(lines, p0, looks), some = stats::outcomeOf(lines, p1, looks);
    Json json{{"p0", p0}, {"p1", numberOrNull(p1)}, {"slope", numberOrNull(lines.slope)}, {"accept_intercept", numberOrNull(lines.acceptIntercept)},
              {"reject_intercept", numberOrNull(lines.rejectIntercept)}, {"expected_trials", {{"none", numberOrNull(wald.none)}, {"p1", numberOrNull(wald.p1)}}},
              {"decision", wordOf(decision.verdict)}, {"after", decision.after}, {"correct", decision.right},
              {"exact", {{"none", outcomeJson(none)}, {"p1", outcomeJson(some)}}}};
    if (!none || !some) json["why"] = why(stats::Reason::tooLarge);
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
