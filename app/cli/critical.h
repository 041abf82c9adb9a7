#pragma once

#include "cli/multiple.h"

#include <memory>

namespace oddglass::cli {

/// What `critical` was given. Each kind of test reads the options it needs; they throw Problem empty where one is missing.
struct CriticalOptions {
  std::shared_ptr<Given> of, trials, alpha;
  MultipleOptions multiple;
};

/// The count of right answers (of the larger side, for a preference).
Answer criticalCount(const CriticalOptions& options);

}  // namespace oddglass::cli
