#pragma once

#include "cli/desk.h"

#include <memory>

namespace oddglass::cli {

struct CriticalOptions;

/// The options of the distributions behind many comparisons, and what `critical` answers about them.
struct MultipleOptions {
  std::shared_ptr<Given> groups, treatments, df, sides;
};
MultipleOptions multipleOptions(Command& command);

Answer criticalStudentizedRange(const CriticalOptions& options);
Answer criticalDunnett(const CriticalOptions& options);

}  // namespace oddglass::cli
