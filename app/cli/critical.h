#pragma once

#include "cli/multiple.h"

#include <memory>

namespace oddglass::cli {

/// What `critical` was given. Each kind of test reads the options it needs; they throw Problem empty where one is missing.
struct CriticalOptions {
  std::shared_ptr<Given> of, trials, alpha, samples, tasters;
  MultipleOptions multiple;
};

/// The count of right answers (of the larger side, for a preference).
Answer criticalCount(const CriticalOptions& options);
/// Friedman's statistic and Page's L of untied ranks.
Answer criticalFriedman(const CriticalOptions& options);
Answer criticalPage(const CriticalOptions& options);

}  // namespace oddglass::cli
