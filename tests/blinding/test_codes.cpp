#include "blinding/codes.h"
#include "domain/problem.h"
#include "blinding/seeds.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <string>

using namespace oddglass;
using namespace oddglass::blinding;

namespace {

std::vector<std::vector<Code>> drawn(int flights, int perFlight, std::uint8_t which) {
  Stream stream(seedOf(which), StreamName::codes);
  return drawCodes(flights, perFlight, stream);
}

void checkAll(const std::vector<std::vector<Code>>& flights, std::size_t digits) {
  std::set<Code> seen;
  for (const auto& flight : flights)
    for (std::size_t i = 0; i < flight.size(); ++i) {
      if (std::to_string(flight[i].value).size() != digits) FAIL("a code of a wrong length: " << flight[i].value);
      if (!seen.insert(flight[i]).second) FAIL("a code stands twice: " << flight[i].value);
      for (std::size_t j = 0; j < i; ++j)
        if (lookAlike(flight[i], flight[j])) FAIL("look-alikes: " << flight[i].value << ' ' << flight[j].value);
    }
}

}  // namespace

// By counting: 9 x 9 x 8 numbers of three different digits, less the 4 x 4 x 3 made of 0 1 6 8 9 alone; of four, 4536 less 96.
TEST_CASE("There are 600 codes of three digits and 4440 of four") {
  CHECK(allCodes(3).size() == 9 * 9 * 8 - 4 * 4 * 3);
  CHECK(allCodes(4).size() == 9 * 9 * 8 * 7 - 4 * 4 * 3 * 2);
  for (int digits : {3, 4})
    for (Code code : allCodes(digits)) {
      const auto text = std::to_string(code.value);
      CHECK(text.size() == static_cast<std::size_t>(digits));
      CHECK(std::set<char>(text.begin(), text.end()).size() == text.size());
      CHECK(text.find_first_of("23457") != std::string::npos);
    }
  CHECK_THROWS_AS(allCodes(5), Problem);
}

TEST_CASE("Codes look alike with two digits in place, or with the same digits") {
  CHECK(lookAlike(Code{482}, Code{487}));
  CHECK(lookAlike(Code{482}, Code{432}));
  CHECK(lookAlike(Code{482}, Code{582}));
  CHECK(lookAlike(Code{482}, Code{284}));
  CHECK(lookAlike(Code{482}, Code{482}));
  CHECK_FALSE(lookAlike(Code{482}, Code{475}));
  CHECK_FALSE(lookAlike(Code{482}, Code{537}));
  CHECK_FALSE(lookAlike(Code{482}, Code{248 * 10 + 7}));
}

TEST_CASE("Codes are unique in a session, and no flight has look-alikes") {
  for (std::uint8_t which = 0; which < 60; ++which) checkAll(drawn(24, 6, which), 3);
}

TEST_CASE("All 600 codes can be used up, for many seeds and sizes of flight") {
  for (std::uint8_t which = 0; which < 40; ++which) checkAll(drawn(100, 6, which), 3);
  for (int perFlight : {3, 4, 5, 8, 10, 12}) checkAll(drawn(600 / perFlight, perFlight, 3), 3);
}

TEST_CASE("From the 601st cup on codes have four digits") {
  checkAll(drawn(101, 6, 1), 4);
  checkAll(drawn(740, 6, 2), 4);
}

TEST_CASE("More cups than codes are refused") {
  try {
    drawn(741, 6, 0);
    FAIL("nothing was thrown");
  } catch (const Problem& problem) {
    CHECK(problem.trouble() == Trouble::tooManyCups);
    CHECK(problem.values().at("need") == "4446");
  }
  CHECK_THROWS_AS(drawn(0, 3, 0), Problem);
  CHECK_THROWS_AS(drawn(3, 0, 0), Problem);
}

TEST_CASE("A flight that cannot be without look-alikes is refused, not drawn wrong") {
  // Codes of one flight differ in their first two digits taken together, and of these there are 9 x 9.
  CHECK_THROWS_AS(drawn(1, 100, 0), Problem);
}
