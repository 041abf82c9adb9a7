#include "cli/answer.h"

#include <cmath>

namespace oddglass::cli {

void addLines(std::vector<std::string>& lines, const std::vector<std::string>& more) { lines.insert(lines.end(), more.begin(), more.end()); }

Json numberOrNull(double value) { return std::isfinite(value) ? Json(value) : Json(nullptr); }

Json numberOrNull(const std::optional<double>& value) { return value ? numberOrNull(*value) : Json(nullptr); }

Json numberOrNull(const std::optional<int>& value) { return value ? Json(*value) : Json(nullptr); }

}  // namespace oddglass::cli
