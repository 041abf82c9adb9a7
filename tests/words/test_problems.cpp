#include "words/problems.h"

#include <catch2/catch.hpp>

#include <ctime>
#include <set>

using namespace oddglass;
using namespace oddglass::words;

namespace {

constexpr int troubles = static_cast<int>(Trouble::fileNewer) + 1;

}  // namespace

TEST_CASE("every trouble has a sentence of its own, also when it brings no values") {
  const Voice voice;
  std::set<std::string> seen;
  for (int i = 0; i < troubles; ++i) {
    const std::string text = sentence(voice, Problem(static_cast<Trouble>(i), "rounds"));
    INFO(i << ": " << text);
    CHECK(text.size() > 30);
    CHECK(text.find_first_of("{}") == std::string::npos);
    CHECK((text.back() == '.' || text.back() == '?'));
    CHECK(seen.insert(text).second);
  }
}

TEST_CASE("problems say what happened, what is kept and what to do") {
  const Voice voice;
  CHECK(sentence(voice, Problem(Trouble::tooFewBottles, "lots", {{"have", "5"}, {"lot", "Heather mead"}, {"need", "7"}})) ==
        "There are 5 bottles of Heather mead; this plan needs 7. The plan is kept. Pour less into each cup, or leave out a round.");
  CHECK(sentence(voice, Problem(Trouble::codeNotHere, "value", {{"code", "590"}, {"place", "4"}, {"codes", "318, 472 and 905"}})) ==
        "590 is not a code at place 4. Nothing was changed. This place has 318, 472 and 905.");
  CHECK(sentence(voice, Problem(Trouble::codeNotHere, "code", {{"code", "590"}})) ==
        "590 is not a code that can be meant here. Nothing was changed. Read the cup again.");
  CHECK_THAT(sentence(voice, Problem(Trouble::notANumber, "original_gravity", {{"text", "1.O5"}})), Catch::StartsWith("The original gravity: “1.O5” is not a number."));
  CHECK_THAT(sentence(voice, Problem(Trouble::empty, "--limit-pd")), Catch::StartsWith("--limit-pd is empty."));
  CHECK_THAT(sentence(voice, Problem(Trouble::wrongState, "session", {{"state", "closed"}})), Catch::Contains("closed, with the key still sealed"));
}

TEST_CASE("the time of a lock is told as a time") {
  Voice voice;
  voice.timeOfDay = [](Millis at) { return at == 1764000000000 ? std::string("20:31") : std::string("wrong"); };
  CHECK_THAT(sentence(voice, Problem(Trouble::flightLocked, "round", {{"at", "1764000000000"}})), Catch::StartsWith("This answer was already locked at 20:31."));
}

TEST_CASE("hostile names stay names") {
  const Voice voice;
  const std::string text = sentence(voice, Problem(Trouble::sameLotTwice, "lots", {{"lot", "{lot}{name}{{"}}));
  CHECK_THAT(text, Catch::StartsWith("{lot}{name}{{ stands on both sides."));
}
