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
  CHECK(capitalised("überschäumend") == "Überschäumend");
  CHECK(capitalised("÷").compare("÷") == 0);
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
  LogDetails typed;
  typed.typedBy = Place{0};
  CHECK(eventLine(voice, {Seq{9}, 0, Event::answered, Place{4}, Round{2}}, typed) == "Place 4 locked round 2: typed in by somebody not at the table.");
  typed.typedBy = Place{3};
  CHECK(eventLine(voice, {Seq{9}, 0, Event::answered, Place{4}, Round{2}}, typed) == "Place 4 locked round 2: typed in by place 3.");
}

TEST_CASE("an entry tells what it holds") {
  const Voice voice;
  const auto line = [&](Event event, const LogDetails& details) { return eventLine(voice, {Seq{7}, 0, event, Place{4}, Round{2}}, details); };
  LogDetails spilled;
  spilled.code = Code{472};
  spilled.byCode = Code{318};
  CHECK(line(Event::spilled, spilled) == "Cup 472 was spilled and poured again as 318.");
  LogDetails aside;
  aside.reason = VoidReason::mixedUp;
  CHECK(line(Event::voided, aside) == "Round 2 at place 4 was set aside and does not count. Reason: cups mixed up.");
  LogDetails said;
  said.heardBy = {Place{1}, Place{3}};
  said.words = "butter {n}";
  CHECK(line(Event::said, said) == "Something was said aloud, heard at places 1 and 3. “butter {n}”");
  said.heardBy = {Place{1}};
  CHECK_THAT(line(Event::said, said), Catch::StartsWith("Something was said aloud, heard at place 1."));
  LogDetails closing;
  closing.missing = 1;
  CHECK(line(Event::closed, closing) == "The table was closed. 1 answer is missing.");
  LogDetails opening;
  opening.commitmentHolds = false;
  CHECK_THAT(line(Event::revealed, opening), Catch::Contains("not what was sealed"));
}

TEST_CASE("the check of a record says what broke, and never more than was checked") {
  const Voice voice;
  std::set<std::string> seen;
  for (const char* what : {"chain", "states", "plan", "commitment", "orders", "answers", "words", "promises", "remarks", "poured", "another"}) {
    INFO(what);
    CHECK(seen.insert(checkLine(voice, what, true, "")).second);
    CHECK(seen.insert(checkLine(voice, what, false, "")).second);
    CHECK_THAT(checkLine(voice, what, false, "entry 41"), Catch::EndsWith("First at: entry 41."));
    CHECK_THAT(checkLine(voice, what, true, "entry 41"), !Catch::Contains("41"));
  }
  CHECK_THAT(checkHeadline(voice, false, true), Catch::Contains("does not check"));
  CHECK_THAT(checkHeadline(voice, true, false), Catch::Contains("once the key is open"));
  CHECK(checkHeadline(voice, true, true) == "This record checks.");
}
