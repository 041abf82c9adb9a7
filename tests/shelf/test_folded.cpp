#include "shelf/fields.h"
#include "shelf/folded.h"

#include <catch2/catch.hpp>

using namespace oddglass::shelf;

// Unicode 15.0, CaseFolding.txt: 00DF; F; 0073 0073 and 03C2; C; 03C3. UnicodeData.txt: 00E9 = 0065 0301.
TEST_CASE("names are compared without case and in one form") {
  CHECK(folded("HEDGE Mead") == "hedge mead");
  CHECK(folded("STRASSE") == folded("stra\xC3\x9F" "e"));
  CHECK(folded("\xCE\xA3") == folded("\xCF\x82"));
  CHECK(folded("Caf\xC3\xA9") == folded("CAFE\xCC\x81"));
  CHECK(folded("hedge") != folded("ledge"));
  CHECK(folded("\xFF\xFE") == "\xFF\xFE");
  CHECK(folded("").empty());
}

TEST_CASE("numbers are shown as people write them") {
  CHECK(decimal(10550, 4) == "1.055");
  CHECK(decimal(9950, 4) == "0.995");
  CHECK(decimal(10000, 4) == "1");
  CHECK(decimal(5, 2) == "0.05");
  CHECK(decimal(0, 2) == "0");
  CHECK(decimal(-550, 2) == "-5.5");
}
