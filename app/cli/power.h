#pragma once

#include "cli/desk.h"
#include "cli/options.h"
#include "stats/size.h"

#include <memory>

namespace oddglass::cli {

/// What `power` and `size` were given. Each kind of method reads the options it needs; they throw Problem empty where one is missing.
struct PowerOptions {
  std::shared_ptr<Given> method, trials, power, rounds, gamma, limit, share, none, criterion, tau, alpha;
  TrueDifference difference;
  std::shared_ptr<bool> similarity;

  double risk() const { return alpha->openShareOr(0.05); }
};

/// What a null critical number means where no count is enough.
inline constexpr const char* noCount = "no count reaches this risk";

/// Problem notAChoice for the first of these that was given though this method has no use for it.
void refuseGiven(const PowerOptions& options, const std::vector<std::shared_ptr<Given>>& unused);

/// A preference: one vote a person.
Answer preferencePower(const PowerOptions& options);
Answer preferenceSize(const PowerOptions& options);

/// A-not-A and same-different: half of the trials hold the signal.
Answer signalPower(const PowerOptions& options);
Answer signalSize(const PowerOptions& options);

/// {trials, critical, power}; null for none.
Json sizeJson(const std::optional<stats::Size>& size);
Answer sizesAnswer(const stats::Sizes& sizes);

}  // namespace oddglass::cli
