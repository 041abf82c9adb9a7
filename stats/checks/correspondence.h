#pragma once

#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// A map of the rows and columns of a table of counts: those that go together lie on one side.
struct Correspondence {
  std::vector<double> inertia;  ///< of each axis, falling; as many as the lesser of rows and columns less one. The sum times all counts is chi-square
  std::vector<std::optional<std::vector<double>>> rows;     ///< principal coordinates by axis; empty for a row without counts
  std::vector<std::optional<std::vector<double>>> columns;  ///< the same
  std::optional<Reason> why;  ///< fewSamples below two rows or two columns with counts, noSpread where all rows have one profile; the rest is empty then
};

/// Counts by row and column: rows of one length, finite, from 0, at most 1e12; at most 300 either way. BadInput otherwise. Rows and columns without
/// counts are left out. Each axis is signed so that the column farthest out lies on the positive side (of several equally far, to 1e-9, the first); axes of
/// equal inertia can be turned into each other.
/// Source: Greenacre 1984, Theory and Applications of Correspondence Analysis: singular values of (P - r c') / sqrt(r c'), principal coordinates of both sides.
Correspondence correspondence(const std::vector<std::vector<double>>& counts);

}  // namespace oddglass::stats
