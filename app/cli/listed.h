#pragma once

#include "cli/given.h"

#include <vector>

namespace oddglass::cli {

/// Numbers with commas between them, such as "6,3,2,1": whole ones from low to high, at most 1,000,000 of them. Problems: empty, notANumber, outOfRange,
/// which name the option.
std::vector<int> wholesIn(const Given& given, int low, int high);

}  // namespace oddglass::cli
