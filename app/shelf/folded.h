#pragma once

#include "canon/folded.h"

namespace oddglass::shelf {

using canon::folded;

}  // namespace oddglass::shelf
