#pragma once
#include "domain/plan.h"
#include "planning/setup.h"

namespace oddglass::planning {

/// The numbers of a sealed plan; stock is not part of it.
Setup setupOf(const Plan& plan);

}  // namespace oddglass::planning
