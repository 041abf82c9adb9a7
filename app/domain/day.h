#pragma once

#include "domain/numbers.h"

#include <optional>
#include <string>
#include <string_view>

namespace oddglass {

/// Whole days from one day (YYYY-MM-DD) to another; below zero when the second comes first. Nothing where one is no day.
std::optional<int> daysBetween(std::string_view from, std::string_view to);

/// The day so many days after another; nothing where it is no day, or beyond the year 9999.
std::optional<std::string> dayAfter(std::string_view day, int days);

/// The day of a moment, by UTC.
std::string dayOf(Millis at);

}  // namespace oddglass
