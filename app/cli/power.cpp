#include "cli/families.h"
#include "cli/options.h"
#include "cli/power_scores.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/power.h"
#include "stats/psychometric.h"
#include "stats/similarity.h"
#include "stats/size.h"

namespace oddglass::cli {
namespace {

stats::Method methodWithAnswer(const Given& given) {
  const stats::Method method = methodOf(given);
  if (method == stats::Method::preference) throw Problem(Trouble::notAChoice, given.name, {{"text", "preference"}, {"choices", "methods with a right answer"}});
  return method;
}

/// People when each tastes `rounds` times; the trials must divide.
int peopleOf(const Given& trials, const Given& rounds) {
  const int all = trials.whole(1, 20'000), each = rounds.whole(1, 200);
  if (all % each != 0) throw Problem(Trouble::notAChoice, trials.name, {{"text", trials.text()}, {"choices", "multiples of " + rounds.text()}});
  return all / each;
}

/// Adds the word for a critical number that is not there.
Json withWhy(Json json, const char* reason) {
  if (json["critical"].is_null()) json["why"] = reason;
  return json;
}

constexpr const char* noCount = "no count reaches this risk";

Json differencePower(stats::Method method, int trials, double pc, double alpha) {
  const stats::Power found = stats::powerOf(method, trials, pc, alpha);
  return withWhy({{"critical", numberOrNull(found.critical)}, {"alpha_actual", numberOrNull(found.alphaActual)}, {"power", numberOrNull(found.power)}}, noCount);
}

Json roundsPower(stats::Method method, int people, int rounds, double pd, double gamma, double alpha) {
  const stats::RoundsPower found = stats::powerOfRounds(method, people, rounds, pd, gamma, alpha);
  return withWhy({{"critical", numberOrNull(found.critical)}, {"alpha_actual", numberOrNull(found.alphaActual)}, {"power", numberOrNull(found.power)},
                  {"power_independent", numberOrNull(found.independent)}, {"gamma", found.gamma}, {"people", people}, {"rounds", rounds}}, noCount);
}

Json alikeJson(stats::Method method, int trials, double limit, std::optional<int> largest, double power) {
  const double guess = stats::guessing(method);
  const double risk = largest ? stats::alikePValue(*largest, trials, guess, limit) : 0.0;
  return withWhy({{"critical", numberOrNull(largest)}, {"alpha_actual", numberOrNull(risk)}, {"power", numberOrNull(power)}}, why(stats::Reason::neverAlike).c_str());
}

void describePowerItself(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "power", "How often a plan shows a difference, or alikeness, of a given size");
  const auto method = methodOption(command);
  const auto trials = command.option("--trials", "N", "All trials together");
  const TrueDifference difference = differenceOptions(command);
  const auto rounds = command.option("--rounds", "R", "Trials of each person; the person is the unit then");
  const auto gamma = command.option("--gamma", "G", "How much people differ, 0 to 1 (0.3)");
  const auto similarity = command.flag("--similarity", "The chance to end alike instead");
  const auto limit = command.option("--limit-pd", "P", "Share of people who may tell, for alikeness");
  const auto isScores = command.flag("--scores", "A plan of score sheets instead");
  const ScorePlanOptions scores = scorePlanOptions(command);
  const auto alpha = alphaOption(command);
  command.does([=](Desk&) -> Answer {
    if (*isScores) {
      for (const auto& other : {method, trials, difference.pd, difference.dPrime, gamma, limit})
        if (other->isGiven()) throw Problem(Trouble::notAChoice, other->name, {{"text", other->text()}, {"choices", "options of --scores"}});
      return scorePowerOf(scores, *rounds, *alpha);
    }
    if (scores.anyGiven()) throw Problem(Trouble::empty, "--scores");
    const stats::Method how = methodWithAnswer(*method);
    const double risk = alpha->openShareOr(0.05), spread = gamma->numberOr(stats::usualGamma, 0.0, 1.0);
    if (!*similarity) {
      if (limit->isGiven()) throw Problem(Trouble::empty, "--similarity");
      const double pc = difference.rightAnswers(how);
      if (!rounds->isGiven()) return {differencePower(how, trials->whole(1, mostTrials), pc, risk), {}};
      return {roundsPower(how, peopleOf(*trials, *rounds), rounds->whole(1, 200), stats::shareOf(how, pc), spread, risk), {}};
    }
    const double most = limit->openShare();
    const double pd = difference.isGiven() ? stats::shareOf(how, difference.rightAnswers(how)) : 0.0;
    if (!rounds->isGiven()) {
      const int all = trials->whole(1, mostTrials);
      const double guess = stats::guessing(how);
      return {alikeJson(how, all, most, stats::largestAlike(all, guess, most, risk), stats::alikePower(all, guess, most, risk, pd)), {}};
    }
    const int people = peopleOf(*trials, *rounds), each = rounds->whole(1, 200);
    const stats::AlikePower found = stats::alikePowerOfRounds(how, people, each, most, pd, spread, risk);
    Json json = alikeJson(how, people * each, most, found.largest, found.power);
    json["power_independent"] = numberOrNull(found.independent);
    json["gamma"] = found.gamma;
    return {std::move(json), {}};
  });
}

Json sizeJson(const std::optional<stats::Size>& size) {
  return size ? Json{{"trials", size->trials}, {"critical", size->critical}, {"power", numberOrNull(size->power)}} : Json();
}

void describeSize(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "size", "How many trials a wanted power takes");
  const auto method = methodOption(command);
  const auto power = command.option("--power", "W", "The wanted power, such as 0.8");
  const TrueDifference difference = differenceOptions(command);
  const auto alpha = alphaOption(command);
  command.does([=](Desk&) -> Answer {
    const stats::Method how = methodWithAnswer(*method);
    const double wanted = power->openShare(), risk = alpha->openShareOr(0.05), pc = difference.rightAnswers(how);
    if (pc <= stats::guessing(how)) throw Problem(Trouble::outOfRange, difference.given().name, {{"text", difference.given().text()}, {"low", "just above 0"}, {"high", "1"}});
    const stats::Sizes sizes = stats::sizeFor(how, pc, wanted, risk);
    Json json{{"first", sizeJson(sizes.first)}, {"stable", sizeJson(sizes.stable)}};
    if (sizes.why) json["why"] = why(*sizes.why);
    return {std::move(json), {}};
  });
}

}  // namespace

void describePower(CLI::App& app, Command::Work& chosen) {
  describePowerItself(app, chosen);
  describeSize(app, chosen);
}

}  // namespace oddglass::cli
