#pragma once
#include "domain/plan.h"
#include "planning/setup.h"
#include "session/drafts.h"

namespace oddglass::ui {

/// The numbers of a draft, for planning.
planning::Setup setupOf(const session::DraftFacts& facts);
/// The numbers of a sealed plan; stock is not part of it.
planning::Setup setupOf(const Plan& plan);

}  // namespace oddglass::ui
