#pragma once

#include "cli/answer.h"
#include "stats/ranks/arranged.h"
#include "stats/reason.h"

namespace oddglass::cli {

/// Adds `p_exact, p_permutation, permutation_error`; of an exact and a drawn p one at most is there.
void addArranged(Json& json, const stats::ArrangedP& p);
/// Why one of them is null, or with a reason all of them are.
std::string whyOf(const std::optional<stats::Reason>& reason, const stats::ArrangedP& p);

}  // namespace oddglass::cli
