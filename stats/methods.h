#pragma once

#include <string_view>

namespace oddglass::stats {

/// The forced-choice methods. `preference` is the paired preference: two-sided, with no guessing model.
enum class Method { triangle, duoTrio, tetrad, twoOutOfFive, pair, threeAfc, preference };

/// Probability of a right answer by guessing alone, in (0, 1).
/// Source: ISO 4120 (triangle 1/3), ISO 10399 (duo-trio 1/2), ISO 5495 (pair 1/2); by counting for the others.
double guessing(Method method);

/// The method of this name as the command line spells it ("two-out-of-five"); throws BadInput on any other word.
Method methodNamed(std::string_view name);

}  // namespace oddglass::stats
