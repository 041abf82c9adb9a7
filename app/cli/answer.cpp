#include "cli/answer.h"

#include <cmath>

namespace oddglass::cli {

Json numberOrNull(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

Json numberOrNull(const std::optional<double>& value) { return value ? numberOrNull(*value) : Json(nullptr); }

Json numberOrNull(const std::optional<int>& value) { return value ? Json(*value) : Json(nullptr); }

}  // namespace oddglass::cli
