#include "cli/power.h"

#include "cli/families.h"
#include "cli/power_scores.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/power.h"
#include "stats/psychometric.h"
#include "stats/similarity.h"
#include "stats/size.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

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

Answer differenceAnswer(const PowerOptions& options) {
  refuseGiven(options, {options.limit, options.share, options.none, options.criterion, options.tau});
  const stats::Method how = methodOf(*options.method);
  const double pc = options.difference.rightAnswers(how);
  if (options.rounds->isGiven())
    return {roundsPower(how, peopleOf(*options.trials, *options.rounds), options.rounds->whole(1, 200), stats::shareOf(how, pc), options.gamma->numberOr(stats::usualGamma, 0.0, 1.0), options.risk()), {}};
  return {differencePower(how, options.trials->whole(1, mostTrials), pc, options.risk()), {}};
}

Answer alikeAnswer(const PowerOptions& options) {
  refuseGiven(options, {options.share, options.none, options.criterion, options.tau});
  const stats::Method how = methodOf(*options.method);
  const double most = options.limit->openShare(), risk = options.risk();
  const double pd = options.difference.isGiven() ? stats::shareOf(how, options.difference.rightAnswers(how)) : 0.0;
  if (!options.rounds->isGiven()) {
    const int all = options.trials->whole(1, mostTrials);
    const double guess = stats::guessing(how);
    return {alikeJson(how, all, most, stats::largestAlike(all, guess, most, risk), stats::alikePower(all, guess, most, risk, pd)), {}};
  }
  const int people = peopleOf(*options.trials, *options.rounds), each = options.rounds->whole(1, 200);
  const stats::AlikePower found = stats::alikePowerOfRounds(how, people, each, most, pd, options.gamma->numberOr(stats::usualGamma, 0.0, 1.0), risk);
  Json json = alikeJson(how, people * each, most, found.largest, found.power);
  json["power_independent"] = numberOrNull(found.independent);
  json["gamma"] = found.gamma;
  json["people"] = people;
  json["rounds"] = each;
  return {std::move(json), {}};
}

Answer choiceSize(const PowerOptions& options) {
  refuseGiven(options, {options.share, options.criterion, options.tau});
  const stats::Method how = methodOf(*options.method);
  const TrueDifference& difference = options.difference;
  const double pc = difference.rightAnswers(how);
  if (pc <= stats::guessing(how)) throw Problem(Trouble::outOfRange, difference.given().name, {{"text", difference.given().text()}, {"low", "just above 0"}, {"high", "1"}});
  return sizesAnswer(stats::sizeFor(how, pc, options.power->openShare(), options.risk()));
}

/// Kinds of methods that are planned in a way of their own.
enum class Kind { choice, preference, signal };

Kind kindOf(const Given& method) {
  const std::string& name = method.oneOf({"triangle", "duo-trio", "tetrad", "two-out-of-five", "pair", "three-afc", "preference", "a-not-a", "same-different"});
  if (name == "preference") return Kind::preference;
  return name == "a-not-a" || name == "same-different" ? Kind::signal : Kind::choice;
}

/// The options that `power` and `size` share.
PowerOptions sharedOptions(Command& command) {
  PowerOptions options;
  options.method = command.option("--method", "M", "triangle, duo-trio, tetrad, two-out-of-five, pair, three-afc, preference, a-not-a or same-different");
  options.difference = differenceOptions(command);
  options.share = command.option("--share", "S", "Preference: the share of votes for the first, such as 0.7");
  options.criterion = command.option("--criterion", "C", "A-not-A: where the criterion stands, 0 without a bias (0)");
  options.tau = command.option("--tau", "T", "Same-different: how far apart two cups are called different, in standard deviations (1)");
  options.alpha = alphaOption(command);
  options.rounds = options.gamma = options.limit = options.none = options.trials = options.power = std::make_shared<Given>();
  return options;
}

void describePowerItself(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "power", "How often a plan shows a difference, or alikeness, of a given size");
  PowerOptions options = sharedOptions(command);
  options.trials = command.option("--trials", "N", "All trials together");
  options.rounds = command.option("--rounds", "R", "Trials of each person; the person is the unit then");
  options.gamma = command.option("--gamma", "G", "How much people differ, 0 to 1 (0.3)");
  options.similarity = command.flag("--similarity", "The chance to end alike instead");
  options.limit = command.option("--limit-pd", "P", "Share of people who may tell, for alikeness");
  options.none = command.option("--no-preference", "Q", "Preference: the share of people who will have none (0)");
  const auto isScores = command.flag("--scores", "A plan of score sheets instead");
  const ScorePlanOptions scores = scorePlanOptions(command);
  command.does([=](Desk&) -> Answer {
    if (*isScores) {
      for (const auto& other : {options.method, options.trials, options.difference.pd, options.difference.dPrime, options.gamma, options.limit, options.share, options.none, options.criterion, options.tau})
        if (other->isGiven()) throw Problem(Trouble::notAChoice, other->name, {{"text", other->text()}, {"choices", "options of --scores"}});
      return scorePowerOf(scores, *options.rounds, *options.alpha);
    }
    if (scores.anyGiven()) throw Problem(Trouble::empty, "--scores");
    const Kind kind = kindOf(*options.method);
    if (*options.similarity && kind != Kind::choice) throw Problem(Trouble::notAChoice, "--method", {{"text", options.method->text()}, {"choices", "methods with a right answer"}});
    if (kind == Kind::preference) return preferencePower(options);
    if (kind == Kind::signal) return signalPower(options);
    if (*options.similarity) return alikeAnswer(options);
    if (options.limit->isGiven()) throw Problem(Trouble::empty, "--similarity");
    return differenceAnswer(options);
  });
}

void describeSize(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "size", "How many trials a wanted power takes");
  PowerOptions options = sharedOptions(command);
  options.power = command.option("--power", "W", "The wanted power, such as 0.8");
  command.does([=](Desk&) -> Answer {
    switch (kindOf(*options.method)) {
      case Kind::preference: return preferenceSize(options);
      case Kind::signal: return signalSize(options);
      case Kind::choice: break;
    }
    return choiceSize(options);
  });
}

}  // namespace

void refuseGiven(const PowerOptions& options, const std::vector<std::shared_ptr<Given>>& unused) {
  for (const auto& each : unused)
    if (each->isGiven()) throw Problem(Trouble::notAChoice, each->name, {{"text", each->text()}, {"choices", "options that " + options.method->text() + " has"}});
}

Json sizeJson(const std::optional<stats::Size>& size) {
  return size ? Json{{"trials", size->trials}, {"critical", size->critical}, {"power", numberOrNull(size->power)}} : Json();
}

Answer sizesAnswer(const stats::Sizes& sizes) {
  Json json{{"first", sizeJson(sizes.first)}, {"stable", sizeJson(sizes.stable)}};
  if (sizes.why) json["why"] = why(*sizes.why);
  return {std::move(json), {}};
}

void describePower(CLI::App& app, Command::Work& chosen) {
  describePowerItself(app, chosen);
  describeSize(app, chosen);
}

}  // namespace oddglass::cli
