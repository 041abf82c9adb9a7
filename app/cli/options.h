#pragma once

#include "cli/desk.h"
#include "stats/methods.h"

#include <limits>

namespace oddglass::cli {

inline constexpr int mostTrials = 10'000'000;

/// The method named; Problem empty, notAChoice.
stats::Method methodOf(const Given& given);

/// The options that more than one command of numbers has.
std::shared_ptr<Given> methodOption(Command& command);
std::shared_ptr<Given> alphaOption(Command& command);
std::shared_ptr<Given> levelOption(Command& command);

/// A true difference, given as one of --pd, --d-prime and (where it is offered) --pc.
struct TrueDifference {
  std::shared_ptr<Given> pd, dPrime, pc;

  bool isGiven() const { return pd->isGiven() || dPrime->isGiven() || (pc && pc->isGiven()); }
  /// Chance of a right answer. Problem empty when none is given, notAChoice when more than one is.
  double rightAnswers(stats::Method method) const;
  /// The option that was given, for errors.
  const Given& given() const;
};
TrueDifference differenceOptions(Command& command, bool withPc = false);

}  // namespace oddglass::cli
