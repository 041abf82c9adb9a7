#include "domain/day.h"

#include <catch2/catch.hpp>

using namespace oddglass;

// POSIX.1-2017, 4.16 "Seconds since the Epoch": 1970-01-01 is day 0 and days have 86,400 s; 10,957 days later is 2000-01-01. Leap years as in ISO 8601.
TEST_CASE("days are counted by the calendar") {
  CHECK(daysBetween("1970-01-01", "2000-01-01") == 10957);
  CHECK(daysBetween("2024-02-28", "2024-03-01") == 2);
  CHECK(daysBetween("2023-02-28", "2023-03-01") == 1);
  CHECK(daysBetween("1900-02-28", "1900-03-01") == 1);
  CHECK(daysBetween("2026-03-14", "2026-03-14") == 0);
  CHECK(daysBetween("2026-03-14", "2026-03-01") == -13);
  CHECK_FALSE(daysBetween("2026-02-30", "2026-03-01"));
  CHECK_FALSE(daysBetween("2026-03-01", ""));
}

TEST_CASE("a day and so many days after it") {
  CHECK(dayAfter("2024-02-28", 2) == "2024-03-01");
  CHECK(dayAfter("2025-12-31", 1) == "2026-01-01");
  CHECK(dayAfter("2026-01-01", -1) == "2025-12-31");
  CHECK(dayAfter("2000-01-01", -10957) == "1970-01-01");
  CHECK_FALSE(dayAfter("9999-12-31", 1));
  CHECK_FALSE(dayAfter("tomorrow", 1));
  for (int days = -800; days <= 800; days += 13) CHECK(daysBetween("2026-11-29", dayAfter("2026-11-29", days).value()) == days);
}

TEST_CASE("the day of a moment") {
  CHECK(dayOf(0) == "1970-01-01");
  CHECK(dayOf(-1) == "1969-12-31");
  CHECK(dayOf(946684800000 - 1) == "1999-12-31");
  CHECK(dayOf(946684800000) == "2000-01-01");
}
