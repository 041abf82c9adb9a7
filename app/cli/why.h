#pragma once

#include "stats/reason.h"

#include <string>

namespace oddglass::cli {

/// Why a number cannot be had, for the "why" beside a null.
std::string why(stats::Reason reason);

}  // namespace oddglass::cli
