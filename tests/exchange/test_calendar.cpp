#include "exchange/calendar.h"

#include <catch2/catch.hpp>

#include <sstream>
#include <stdexcept>

using namespace oddglass;
using Catch::Matchers::Contains;

namespace {

Series aged() {
  Series series;
  series.id.text = "0123456789abcdef0123456789abcdef";
  return series;
}

/// The text with its folded lines put together again, as RFC 5545, 3.1 has it.
std::string unfolded(const std::string& text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text.compare(i, 3, "\r\n ") == 0) i += 2;
    else out += text[i];
  }
  return out;
}

}  // namespace

// RFC 5545, 3.6, 3.4, 3.6.1 (UID and DTSTAMP are needed), 3.3.4 (DATE), 3.3.5 (UTC time).
TEST_CASE("sittings become all-day events of a calendar") {
  const std::string text = exchange::calendarOf(aged(), {{1, "2026-01-24", std::nullopt}, {2, "2027-01-10", std::nullopt}}, {"Hedge mead: look 1", "Hedge mead: look 2"}, 1764000000000);
  CHECK(text ==
        "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Oddglass//Oddglass//EN\r\n"
        "BEGIN:VEVENT\r\nUID:0123456789abcdef0123456789abcdef-1@oddglass.invalid\r\nDTSTAMP:20251124T160000Z\r\nDTSTART;VALUE=DATE:20260124\r\nSUMMARY:Hedge mead: look 1\r\nTRANSP:TRANSPARENT\r\nEND:VEVENT\r\n"
        "BEGIN:VEVENT\r\nUID:0123456789abcdef0123456789abcdef-2@oddglass.invalid\r\nDTSTAMP:20251124T160000Z\r\nDTSTART;VALUE=DATE:20270110\r\nSUMMARY:Hedge mead: look 2\r\nTRANSP:TRANSPARENT\r\nEND:VEVENT\r\n"
        "END:VCALENDAR\r\n");
}

// RFC 5545, 3.3.11 (escapes) and 3.1 (75 octets a line, letters kept whole).
TEST_CASE("a hostile title neither ends its line nor makes another") {
  std::string title = "a,b;c\\d\r\nEND:VEVENT\n";
  for (int i = 0; i < 60; ++i) title += "\xC3\xA9\xE2\x82\xAC";   // two bytes and three
  const std::string text = exchange::calendarOf(aged(), {{1, "2026-01-24", std::nullopt}}, {title}, 0);
  std::istringstream lines(text);
  std::string line;
  int ends = 0;
  while (std::getline(lines, line)) {
    REQUIRE(line.size() >= 1);
    CHECK(line.back() == '\r');
    CHECK(line.size() - 1 <= 75);
    CHECK((static_cast<unsigned char>(line[line[0] == ' ' ? 1 : 0]) & 0xC0) != 0x80);
    ends += line == "END:VEVENT\r";
  }
  CHECK(ends == 1);
  CHECK_THAT(unfolded(text), Contains("SUMMARY:a\\,b\\;c\\\\d\\nEND:VEVENT\\n\xC3\xA9\xE2\x82\xAC\xC3\xA9"));
  CHECK_THROWS_AS(exchange::calendarOf(aged(), {{1, "2026-01-24", std::nullopt}}, {}, 0), std::invalid_argument);
  CHECK_THAT(exchange::calendarOf(aged(), {}, {}, 0), !Contains("VEVENT"));
}
