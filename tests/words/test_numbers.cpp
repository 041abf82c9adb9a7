#include "words/numbers.h"

#include <catch2/catch.hpp>

#include <string>

using namespace oddglass;
using namespace oddglass::words;

namespace {

Voice continental() {
  Voice voice;
  voice.decimal = ",";
  voice.group = ".";
  return voice;
}

}  // namespace

TEST_CASE("numbers are written as the reader writes them") {
  const Voice voice;
  CHECK(whole(voice, 0) == "0");
  CHECK(whole(voice, 999) == "999");
  CHECK(whole(voice, 1000) == "1,000");
  CHECK(whole(voice, -1234567) == "−1,234,567");
  CHECK(whole(continental(), 1234567) == "1.234.567");
  CHECK(decimal(voice, 3.6, 1) == "3.6");
  CHECK(decimal(continental(), 3.6, 1) == "3,6");
  CHECK(decimal(voice, 1234.5, 1) == "1,234.5");
  CHECK(decimal(voice, -0.04, 1) == "0.0");  // no minus before nothing
  CHECK(decimal(voice, -0.06, 1) == "−0.1");
  CHECK(decimal(voice, 2, 0) == "2");
  CHECK(strength(voice, 1200) == "12 %");
  CHECK(strength(voice, 1250) == "12.5 %");
  CHECK(strength(continental(), 475) == "4,75 %");
}

TEST_CASE("numbers are read with a comma or a point") {
  CHECK(readNumber("1.050") == 1.05);
  CHECK(readNumber(" 1,050 ") == 1.05);
  CHECK(readNumber("-2") == -2);
  CHECK(readNumber("−2") == -2);  // as it is written out
  for (const char* text : {"", " ", "1,050.5", "12a", "nan", "inf", "1e5", "+1", "0x10", "١"}) {
    INFO(text);
    CHECK_FALSE(readNumber(text));
  }
  CHECK(readWhole("12 ") == 12);
  for (const char* text : {"", "1.0", "12x", "99999999999999999999"}) {
    INFO(text);
    CHECK_FALSE(readWhole(text));
  }
}

TEST_CASE("a probability never becomes never, always or 0") {
  const Voice voice;
  for (int i = 0; i <= 100000; ++i) {
    const double p = i / 100000.0;
    for (const std::string& words : {timesIn(voice, p), roughlyOften(voice, p), roughlyMissed(voice, p)}) {
      const bool bad = words.find("never") != std::string::npos || words.find("always") != std::string::npos ||
                       words.find(" 0 ") != std::string::npos || words.find("100 times in 100") != std::string::npos || words.find('{') != std::string::npos;
      if (bad) FAIL("at " << p << ": " << words);
    }
  }
  CHECK(timesIn(voice, 0) == "less than once in 1,000");
  CHECK(timesIn(voice, 0.00099) == "less than once in 1,000");
  CHECK(timesIn(voice, 0.001) == "about once in 1,000");
  CHECK(timesIn(voice, 0.0039) == "about 4 times in 1,000");   // 12 or more of 18 at 1/3 is 0.0039 (exact binomial)
  CHECK(timesIn(voice, 0.0095) == "about once in 100");
  CHECK(timesIn(voice, 0.031) == "about 3 times in 100");
  CHECK(timesIn(voice, 0.43) == "about 43 times in 100");
  CHECK(timesIn(voice, 1) == "more than 99 times in 100");
}

TEST_CASE("what a panel would find is rounded down, what it would miss is the other side of it") {
  const Voice voice;
  CHECK(roughlyOften(voice, 0.35) == "about once in three");
  CHECK(roughlyMissed(voice, 0.35) == "about two times in three");
  CHECK(roughlyOften(voice, 0.52) == "about half the time");
  CHECK(roughlyOften(voice, 0.86) == "more than 8 times in 10");
  CHECK(roughlyMissed(voice, 0.86) == "less than 2 times in 10");
  CHECK(roughlyOften(voice, 0.77) == "about 3 times in 4");
  CHECK(roughlyOften(voice, 0.02) == "less than once in 20");
  CHECK(roughlyMissed(voice, 0.02) == "more than 19 times in 20");
  CHECK(roughlyOften(voice, 0.999) == "more than 19 times in 20");
  CHECK(roughlyMissed(voice, 0.999) == "less than once in 20");
}

TEST_CASE("the ends of a range are rounded outwards; none and all only when they are meant") {
  const Voice voice;
  CHECK(shareEnd(voice, 0, End::low) == "none");
  CHECK(shareEnd(voice, 0.01, End::low) == "hardly any");
  CHECK(shareEnd(voice, 0.26, End::low) == "about 2 in 10");
  CHECK(shareEnd(voice, 0.48, End::low) == "about half");
  CHECK(shareEnd(voice, 0.52, End::high) == "about half");
  CHECK(shareEnd(voice, 0.54, End::high) == "about 6 in 10");
  CHECK(shareEnd(voice, 0.96, End::high) == "nearly all");
  CHECK(shareEnd(voice, 0.999, End::low) == "nearly all");
  CHECK(shareEnd(voice, 1, End::high) == "all");
  CHECK(shareRange(voice, 0, 0.5) == "from none to about half");
  for (int i = 1; i < 1000; ++i) {
    for (const End end : {End::low, End::high}) {
      const std::string words = shareEnd(voice, i / 1000.0, end);
      if (words == "none" || words == "all" || words.find('%') != std::string::npos) FAIL(i << ": " << words);
    }
  }
  CHECK(shareLimit(voice, 300) == "3 in 10");
  CHECK(shareLimit(voice, 250) == "1 in 4");
  CHECK(shareLimit(voice, 500) == "half");
  CHECK(shareLimit(voice, 120) == "12 in 100");
  CHECK(shareLimit(voice, 333) == "333 in 1,000");
}

TEST_CASE("one and many of what the program counts") {
  const Voice voice;
  CHECK(people(voice, 1) == "1 person");
  CHECK(people(voice, 2) == "2 people");
  CHECK(bottles(voice, 1) == "1 bottle");
  CHECK(bottles(voice, 12) == "12 bottles");
  CHECK(tastings(voice, 1) == "1 tasting");
  CHECK(rounds(voice, 3) == "3 rounds");
  CHECK(cups(voice, 1) == "1 cup");
  CHECK(minutes(voice, 1) == "1 minute");
  CHECK(places(voice, 2) == "2 places");
  CHECK(risk(voice, 50) == "5 times in 100");
  CHECK(risk(voice, 10) == "once in 100");
  CHECK(risk(voice, 5) == "5 times in 1,000");
  CHECK(spelled(voice, 6) == "six");
  CHECK(spelled(voice, 13) == "13");
  CHECK(spelled(voice, 0) == "0");
}
