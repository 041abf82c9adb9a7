#pragma once
#include "domain/plan.h"
#include "planning/setup.h"

namespace oddglass::ui {

/// The numbers of a sealed plan; stock is not part of it.
planning::Setup setupOf(const Plan& plan);

}  // namespace oddglass::ui
