#pragma once

#include "report/why.h"

namespace oddglass::cli {

/// Why one person cannot be set against a few others who all gave the same.
constexpr const char* friendsAlike = "friends do not differ";

using report::alikeJson;
using report::estimatedJson;

}  // namespace oddglass::cli
