#include "words/bottle_watch.h"
#include "words/denials.h"
#include "words/over_time.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::words;
using Catch::Matchers::Contains;

TEST_CASE("what was seen, and what was done against a fault, stand on the page of a series") {
  Series series;
  series.begunOn = "2026-01-01";
  insight::OverTime over;
  over.sittings = {{1, {}, "2026-01-15", 0.5, 6, 6}};
  over.mentions = {{{ItemKind::check, Part::main, "eggy", 0, 1}, {{0, 2, 5, 0, 0}}}};
  Note haze, deed, other;
  haze.kind = NoteKind::haze;
  haze.doneOn = "2026-01-15";
  haze.level = 1;
  deed.kind = NoteKind::racked;
  deed.doneOn = "2026-02-01";
  deed.word = "eggy";
  other.kind = NoteKind::addition;
  other.doneOn = "2026-02-02";
  other.word = "butter";
  other.text = "fresh yeast";
  const OverTimeWords out = overTimeWords(Voice{}, series, over, "", {haze, deed, other});
  REQUIRE(out.round.size() == 1);
  CHECK_THAT(out.round[0].lines.back(), Contains("Done against it: racked (2026-02-01)."));
  REQUIRE(out.seen.size() == 2);
  CHECK(out.seen[0].heading == "Haze");
  CHECK_THAT(out.seen[0].lines[0], Contains("no blind result"));
  CHECK(out.seen[0].rows == std::vector<std::vector<std::string>>{{"2 weeks", "a slight haze"}});
  CHECK(out.seen[1].heading == "Butter");
  CHECK_THAT(out.seen[1].lines[0], Contains("fresh yeast (2026-02-02)"));
  CHECK_THAT(out.seen[1].lines[1], Contains("not asked about"));
  CHECK(noteLine(Voice{}, haze) == "2026-01-15: haze, a slight haze");
  CHECK(noteLine(Voice{}, deed) == "2026-02-01: racked, against “eggy”");
  for (const auto* sections : {&out.round, &out.seen})
    for (const OutSection& section : *sections)
      for (const std::string& line : section.lines) {
        INFO(line);
        CHECK(forbiddenWordIn(line).empty());
      }
}
