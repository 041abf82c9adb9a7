#pragma once

#include "stats/long_rows.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// Sums of squares of a full table: every taster scored every sample `rounds` times.
struct BalancedTable {
  int samples = 0, tasters = 0, rounds = 0;
  std::vector<double> means;  ///< of the samples
  /// Exactly 0 where there is nothing but rounding (1e-13 of the size of the scores).
  double ofSamples = 0.0, ofTasters = 0.0, ofInteraction = 0.0, ofResidual = 0.0;

  double dfSamples() const { return samples - 1.0; }
  double dfTasters() const { return tasters - 1.0; }
  double dfInteraction() const { return dfSamples() * dfTasters(); }
  double dfResidual() const { return static_cast<double>(samples) * tasters * (rounds - 1.0); }
};

/// The table, where every taster scored every sample equally often. Rows must be sound. Source: Fisher 1925; textbook two-way layout.
std::optional<BalancedTable> balancedTable(const ScoreRows& rows);

}  // namespace oddglass::stats
