#include "domain/text.h"
#include "domain/uid.h"

#include <catch2/catch.hpp>

using namespace oddglass;

TEST_CASE("text is cleaned where it enters") {
  CHECK(cleaned("  Heather mead \n") == "Heather mead");
  CHECK(cleaned("a\tb\r\nc") == "a b  c");
  CHECK(cleaned("evil\xE2\x80\xAEtxt") == "eviltxt");       // U+202E turns the reading direction
  CHECK(cleaned("nul\0byte" + std::string()) == "nul");
  CHECK(cleaned("M\xC3\xA9l") == "M\xC3\xA9l");
  CHECK(cleaned("bad\xFFx") == "bad\xEF\xBF\xBDx");
  CHECK(cleaned("\xC0\x80") == "\xEF\xBF\xBD\xEF\xBF\xBD");  // overlong
  CHECK(cleaned("\xED\xA0\x80").find('\xA0') == std::string::npos);  // half of a surrogate pair
  CHECK(cleaned(" \n ").empty());
  CHECK(lettersIn("M\xC3\xA9l") == 3);
}

TEST_CASE("a day must exist") {
  CHECK(isDay("2024-02-29"));
  CHECK_FALSE(isDay("2023-02-29"));
  CHECK_FALSE(isDay("2023-2-9"));
  CHECK_FALSE(isDay("2023-13-01"));
  CHECK_FALSE(isDay("+023-01-01"));
  CHECK_FALSE(isDay(""));
}

TEST_CASE("a record's name is 32 hex digits") {
  CHECK(looksLikeUid("0123456789abcdef0123456789abcdef"));
  CHECK_FALSE(looksLikeUid("0123456789ABCDEF0123456789abcdef"));
  CHECK_FALSE(looksLikeUid("0123"));
}
