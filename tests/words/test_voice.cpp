#include "domain/names.h"
#include "words/history.h"
#include "words/voice.h"

#include <catch2/catch.hpp>

#include <set>

using namespace oddglass;
using namespace oddglass::words;

TEST_CASE("a sentence is filled once, and what is filled in is never read again") {
  const Voice voice;
  CHECK(say(voice, "{a} and {b}", {{"a", "{b}"}, {"b", "{a}"}}) == "{b} and {a}");
  CHECK(say(voice, "{a} {unknown", {{"a", "x"}}) == "x {unknown");
  CHECK(say(voice, "{unknown}.", {}) == "{unknown}.");
  CHECK(say(voice, "", {}).empty());
}

TEST_CASE("the reader's language comes from the translate function, context and sentence as marked") {
  Voice voice;
  std::string context;
  voice.translate = [&](const char* c, const char* source) {
    context = c;
    return std::string(source) == "{list} and {last}" ? std::string("{list} und {last}") : std::string(source);
  };
  CHECK(listed(voice, {"a", "b"}) == "a und b");
  CHECK(context == "words");
}

TEST_CASE("one and many") {
  const Voice voice;
  CHECK(sayCount(voice, "1 person", "{n} people", 1) == "1 person");
  CHECK(sayCount(voice, "1 person", "{n} people", 0) == "0 people");
  CHECK(sayCount(voice, "1 person", "{n} people", 1234) == "1,234 people");
  CHECK(listed(voice, {}).empty());
  CHECK(listed(voice, {"a"}) == "a");
  CHECK(listed(voice, {"a", "b", "c"}) == "a, b and c");
  CHECK(capitalised("place") == "Place");
  CHECK(capitalised("").empty());
}

TEST_CASE("every event, state and reason has words of its own") {
  const Voice voice;
  std::set<std::string> seen;
  for (const Event event : allOf<Event>()) {
    const std::string bare = eventLine(voice, {Seq{1}, 0, event, std::nullopt, std::nullopt});
    const std::string placed = eventLine(voice, {Seq{1}, 0, event, Place{4}, Round{2}});
    INFO(bare << " / " << placed);
    CHECK(bare.find('{') == std::string::npos);
    CHECK(placed.find('{') == std::string::npos);
    CHECK(bare.back() == '.');
    CHECK(seen.insert(bare).second);
  }
  for (const State state : allOf<State>()) CHECK(seen.insert(stateName(voice, state)).second);
  for (const VoidReason reason : allOf<VoidReason>()) CHECK(seen.insert(voidReason(voice, reason)).second);
  for (const CameFrom from : allOf<CameFrom>()) CHECK(seen.insert(cameFrom(voice, from)).second);
  CHECK(eventLine(voice, {Seq{9}, 0, Event::answered, Place{4}, Round{2}}) == "Place 4 locked round 2.");
}

TEST_CASE("the check of a record says which entry broke, and never more than was checked") {
  const Voice voice;
  CHECK(checkLine(voice, Seq{41}, true) ==
        "This record does not check: entry 41 was altered or is missing. The rest is shown, not trusted. Compare with your backup.");
  CHECK_THAT(checkLine(voice, std::nullopt, std::nullopt), Catch::Contains("once the key is open"));
  CHECK_THAT(checkLine(voice, std::nullopt, false), Catch::Contains("not what was sealed"));
  CHECK_THAT(checkLine(voice, std::nullopt, true), !Catch::Contains("not"));
}
