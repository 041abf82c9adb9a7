#pragma once

#include "canon/canonical.h"
#include "domain/plan.h"

#include <string>

namespace oddglass::store {

/// A plan as JSON, whole numbers only: what is hashed at the seal and exported. The keys are described in demo_sessions/README.md.
canon::Json planJson(const Plan& plan);

/// The plan in such JSON. Throws Problem brokenReference naming the key that is missing, unknown or of the wrong kind.
Plan planFrom(const canon::Json& json);

/// A draft as JSON, as it is kept until the seal.
canon::Json draftJson(const Draft& draft);
Draft draftFrom(const canon::Json& json);

}  // namespace oddglass::store
