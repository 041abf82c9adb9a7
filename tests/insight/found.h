#pragma once

#include "insight/findings.h"

#include "table.h"

#include <algorithm>

/// What findings hold, asked in one word.
namespace found {

using namespace oddglass;
using namespace oddglass::insight;

inline int countOf(const Findings& findings, DeviationKind kind) {
  for (const auto& deviation : findings.deviations)
    if (deviation.kind == kind) return deviation.count;
  return 0;
}

inline bool says(const Findings& findings, Caution caution) {
  return std::find(findings.cautions.begin(), findings.cautions.end(), caution) != findings.cautions.end();
}

inline RevealedSession twelveOf18() { return table::panel({2, 2, 2, 2, 2, 2}, 3); }

}  // namespace found
