#include "insight/bottle_watch.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinRel;

namespace {

Note noted(NoteKind kind, const std::string& day, std::optional<int> level, const std::string& word = {}) {
  Note note;
  note.kind = kind;
  note.doneOn = day;
  note.level = level;
  note.word = word;
  return note;
}

}  // namespace

// Days by the calendar: 2025-11-24 to 2026-02-24 are 92.
TEST_CASE("what was seen in the bottle is told by the age of the series, kind by kind") {
  Series series;
  series.begunOn = "2025-11-24";
  const std::vector<Note> notes{noted(NoteKind::sulphur, "2026-02-24", 1), noted(NoteKind::haze, "2026-02-24", 0), noted(NoteKind::haze, "2025-11-24", 3), noted(NoteKind::haze, "2025-10-01", 3),
                                noted(NoteKind::racked, "2026-01-01", std::nullopt)};
  const auto seen = seenInBottle(series, notes);
  REQUIRE(seen.size() == 2);
  CHECK(seen[0].kind == NoteKind::haze);
  REQUIRE(seen[0].looks.size() == 2);   // what was seen before the bottling is another matter
  CHECK(seen[0].looks[0].level == 3);
  CHECK_THAT(seen[0].looks[1].age, WithinRel(92 / (365.25 / 12), 1e-12));
  CHECK(seen[1].kind == NoteKind::sulphur);
  CHECK(seenInBottle(series, {}).empty());
  series.begunOn.clear();
  CHECK(seenInBottle(series, notes).empty());
}

TEST_CASE("deeds stand with the fault that they were done against, and faults that were not asked about by themselves") {
  const std::vector<Note> notes{noted(NoteKind::racked, "2026-03-01", std::nullopt, "Eggy"), noted(NoteKind::addition, "2026-02-01", std::nullopt, "eggy"), noted(NoteKind::addition, "2026-01-01", std::nullopt, "butter"),
                                noted(NoteKind::racked, "2026-04-01", std::nullopt)};
  const auto deeds = deedsAgainst("EGGY", notes);
  REQUIRE(deeds.size() == 2);
  CHECK(deeds[0].doneOn == "2026-02-01");
  CHECK(deedsAgainst("", notes).empty());
  CHECK(faultsNotAsked({"Butter"}, notes) == std::vector<std::string>{"eggy"});
  CHECK(faultsNotAsked({}, notes) == std::vector<std::string>{"butter", "eggy"});
}
