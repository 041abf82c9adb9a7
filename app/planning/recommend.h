#pragma once

#include "planning/setup.h"

#include <vector>

namespace oddglass::planning {

/// Why a method is recommended.
enum class Because {
  natureUnknown,  ///< nobody has said what the difference would be, so the question is which cup is odd
  fewerCups,      ///< three cups instead of four: less to drink and less carry-over
  strong,         ///< at the strength of spirits four cups tire
};

struct Recommendation {
  Method method = Method::triangle;
  std::vector<Because> because;
};

/// A method for a question, with its reasons. Strong means 20 % and above (own figure). *Common practice*.
Recommendation recommend(Question question, const Setup& setup);

}  // namespace oddglass::planning
