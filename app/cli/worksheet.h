#pragma once

#include "session/pour.h"

#include <string>

namespace oddglass::cli {

/// The pourer's worksheet: in pouring order, then place by place, spare codes last. This text is the key in the open.
std::string worksheetText(const session::PourSheet& sheet);

/// The same as CSV: place, round, position, spare, code, lot.
std::string worksheetCsv(const session::PourSheet& sheet);

}  // namespace oddglass::cli
