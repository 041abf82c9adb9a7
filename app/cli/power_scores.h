#pragma once

#include "cli/desk.h"

#include <memory>

namespace oddglass::cli {

/// What `power --scores` reads beside --rounds and --alpha.
struct ScorePlanOptions {
  std::shared_ptr<Given> tasters, samples, difference, sdInteraction, sdRepeat, wanted;

  /// The first of them that was given; nullptr when none was.
  const Given* anyGiven() const;
};
ScorePlanOptions scorePlanOptions(Command& command);

/// Power of a plan of score sheets, and the smallest difference that it would show.
Answer scorePowerOf(const ScorePlanOptions& options, const Given& rounds, const Given& alpha);

}  // namespace oddglass::cli
