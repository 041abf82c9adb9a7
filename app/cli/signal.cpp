#include "cli/families.h"
#include "cli/listed.h"
#include "cli/options.h"
#include "cli/said_rows.h"
#include "cli/why.h"
#include "domain/problem.h"
#include "stats/signal/r_index.h"
#include "stats/signal/yes_no.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

stats::YesNo countsIn(const std::vector<SaidRow>& rows) {
  stats::YesNo counts;
  for (const SaidRow& row : rows) {
    if (row.isSignal) ++(*row.saidSignal ? counts.hits : counts.misses);
    else ++(*row.saidSignal ? counts.falseAlarms : counts.correctRejections);
  }
  return counts;
}

Json signalJson(bool isSameDifferent, const stats::YesNo& counts) {
  const stats::SignalFound found = isSameDifferent ? stats::sameDifferent(counts) : stats::aNotA(counts);
  const std::string criterion = isSameDifferent ? "tau" : "criterion";
  Json json{{"hits", counts.hits}, {"misses", counts.misses}, {"false_alarms", counts.falseAlarms}, {"correct_rejections", counts.correctRejections},
            {"d_prime", numberOrNull(found.dPrime)}, {"d_prime_se", numberOrNull(found.standardError)}, {"d_prime_corrected", numberOrNull(found.corrected)},
            {criterion, numberOrNull(found.criterion)}, {criterion + "_corrected", numberOrNull(found.criterionCorrected)}, {"p_value", numberOrNull(found.pValue)}};
  if (found.why) json["why"] = why(*found.why);
  return json;
}

void describeSignalItself(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "signal", "How far signal and noise lie apart in A-not-A or same-different, where \"different\" is the signal");
  const auto file = command.argument("FILE", "A CSV table, one answer a row, in place of the four counts");
  const auto method = command.option("--method", "M", "a-not-a or same-different");
  const auto hits = command.option("--hits", "H", "Signals that were called signal");
  const auto misses = command.option("--misses", "M", "Signals that were called noise");
  const auto alarms = command.option("--false-alarms", "F", "Noises that were called signal");
  const auto rejections = command.option("--correct-rejections", "C", "Noises that were called noise");
  const auto signal = command.option("--signal", "S", "With FILE: the column that holds 1 where a signal was served and 0 for a noise");
  const auto said = command.option("--said", "S", "With FILE: the column that holds 1 where it was called a signal");
  command.does([=](Desk&) -> Answer {
    const bool isSameDifferent = method->oneOf({"a-not-a", "same-different"}) == "same-different";
    if (!file->isGiven()) {
      for (const auto& each : {signal, said})
        if (each->isGiven()) throw Problem(Trouble::empty, "FILE");
      return {signalJson(isSameDifferent, {hits->whole(0, mostTrials), misses->whole(0, mostTrials), alarms->whole(0, mostTrials), rejections->whole(0, mostTrials)}), {}};
    }
    for (const auto& each : {hits, misses, alarms, rejections})
      if (each->isGiven()) throw Problem(Trouble::notAChoice, each->name, {{"text", each->text()}, {"choices", "FILE, or the four counts"}});
    said->text();
    return {signalJson(isSameDifferent, countsIn(readSaid(*file, *signal, *said, Given{"--sure", {}}, 1))), {}};
  });
}

/// Answers by class, from "sure it is the signal" to "sure it is not".
struct Classes {
  std::vector<int> signal, noise;
};

/// With a column of what was said, sureness is 1 a guess, 2 fairly, 3 sure of that; without one the classes stand in the column as they are.
Classes classesIn(const std::vector<SaidRow>& rows, bool withSaid) {
  int most = withSaid ? 6 : 2;
  for (const SaidRow& row : rows)
    if (!withSaid) most = std::max(most, *row.sure);
  Classes classes{std::vector<int>(static_cast<std::size_t>(most)), std::vector<int>(static_cast<std::size_t>(most))};
  for (const SaidRow& row : rows) {
    const int rank = !withSaid ? *row.sure : *row.saidSignal ? 4 - *row.sure : 3 + *row.sure;
    ++(row.isSignal ? classes.signal : classes.noise)[static_cast<std::size_t>(rank - 1)];
  }
  return classes;
}

Json rIndexJson(const Classes& classes, double level) {
  const auto found = stats::rIndexOf(classes.signal, classes.noise, level);
  if (!found) return {{"r_index", nullptr}, {"low", nullptr}, {"high", nullptr}, {"p_value", nullptr}, {"by", nullptr}, {"signal", classes.signal}, {"noise", classes.noise}, {"why", why(stats::Reason::emptyCell)}};
  return {{"r_index", numberOrNull(found->rIndex)}, {"low", numberOrNull(found->low)}, {"high", numberOrNull(found->high)}, {"p_value", numberOrNull(found->pValue)},
          {"by", found->isExact ? "exact" : "normal"}, {"signal", classes.signal}, {"noise", classes.noise}};
}

void describeRIndex(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "rindex", "How well sureness parts signal from noise: from counts by class, or from a table");
  const auto file = command.argument("FILE", "A CSV table, one answer a row");
  const auto method = command.option("--method", "M", "a-not-a, same-different or pair; it changes no number");
  const auto signal = command.option("--signal", "S", "Signals by class, sure signal first, such as 6,3,2,1; with FILE the column that holds 1 for a signal and 0 for a noise");
  const auto noise = command.option("--noise", "N", "Noises by class, in the same order");
  const auto said = command.option("--said", "S", "With FILE: the column that holds 1 where it was called a signal");
  const auto sure = command.option("--sure", "S", "With FILE: the column of sureness, 1 a guess, 2 fairly, 3 sure; without --said the class, 1 for sure signal");
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    if (method->isGiven()) method->oneOf({"a-not-a", "same-different", "pair"});
    const double within = level->openShareOr(0.95);
    if (file->isGiven()) {
      if (noise->isGiven()) throw Problem(Trouble::notAChoice, noise->name, {{"text", noise->text()}, {"choices", "FILE, or --signal with --noise"}});
      sure->text();
      return {rIndexJson(classesIn(readSaid(*file, *signal, *said, *sure, said->isGiven() ? 3 : 100), said->isGiven()), within), {}};
    }
    for (const auto& each : {said, sure})
      if (each->isGiven()) throw Problem(Trouble::empty, "FILE");
    return {rIndexJson({wholesIn(*signal, 0, mostTrials), wholesIn(*noise, 0, mostTrials)}, within), {}};
  });
}

}  // namespace

void describeSignal(CLI::App& app, Command::Work& chosen) {
  describeSignalItself(app, chosen);
  describeRIndex(app, chosen);
}

}  // namespace oddglass::cli
