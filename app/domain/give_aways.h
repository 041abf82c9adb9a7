#pragma once

#include "domain/plan.h"

namespace oddglass {

/// True where something that can be seen or felt was settled to tell by any means. That one of the drinks was had before is known by its taste, and is none of these.
bool byAnyMeans(const Plan& plan);

/// True where look and fizz may tell by the plan: any means were settled, or in a comparison the look or the fizz itself is what is asked. An answer by them then weakens
/// no verdict.
bool lookMayTell(const Plan& plan);

}  // namespace oddglass
