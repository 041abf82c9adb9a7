#pragma once

#include <string>
#include <string_view>

namespace oddglass {

/// Text as it may enter the store: valid UTF-8, no control or text-direction characters (they are dropped; line ends become spaces),
/// no blanks at either end. Invalid bytes become U+FFFD.
std::string cleaned(std::string_view text);

/// How many characters (not bytes) a UTF-8 text has.
std::size_t lettersIn(std::string_view text);

/// True for a day that exists, written 2026-03-14.
bool isDay(std::string_view text);

}  // namespace oddglass
