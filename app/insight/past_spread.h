#pragma once

#include "domain/revealed.h"

#include <optional>
#include <vector>

namespace oddglass::insight {

/// How far a panel's answers spread at its past score sheets, in shares of a scale's length.
struct PastSpread {
  int tables = 0;            ///< sheets that told something
  double interaction = 0.0;  ///< standard deviation of what people find between drinks, beyond their own level and the drink's
  double repeat = 0.0;       ///< standard deviation of one person's answers to the same drink
  bool hasRepeats = false;   ///< enough was answered twice to tell the two apart; otherwise each is taken as half of the variance
};

/// From all questions with points, put together by their degrees of freedom. Repeats: answers of one person to one drink about their mean. Interaction: what is left
/// of the cell means after person + drink by least squares, less the repeats' share in it (not below 0). Nothing from fewer than 2 tables or fewer than 12
/// degrees of freedom (own rule), and where everybody said the same.
/// Source: Scheffe 1959, chapter 4 and 8 (components from mean squares).
std::optional<PastSpread> pastSpreadOf(const std::vector<RevealedSession>& sessions);

}  // namespace oddglass::insight
