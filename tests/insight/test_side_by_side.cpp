#include "insight/batch_bench.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinRel;
using testing::BatchBench;
using testing::firstTen;
using testing::lineOf;
using testing::secondTen;

namespace {

// Ten small differences that hardly leave zero (invented).
const std::vector<int> flat(10, 50), nearFlat{51, 52, 49, 50, 53, 48, 51, 51, 50, 49};

}  // namespace

// R 4.2.2, t.test(b, a, paired = TRUE) on those twenty numbers: 15.8, 7.00114236723018 to 24.59885763276982, p 0.00283289019738427.
TEST_CASE("two batches that were poured together differ by Student's paired t over people") {
  BatchBench bench(2);
  const int session = bench.session("2025-02-01");
  bench.say(session, 0, firstTen);
  bench.say(session, 1, secondTen);
  const SideBySide found = bench.found();
  REQUIRE(found.steps.size() == 1);
  const BatchStep& step = found.steps[0];
  CHECK(step.link == BatchLink::together);
  CHECK(step.people == 10);
  REQUIRE(step.gaps.size() == 1);
  const BatchGap& gap = step.gaps[0];
  CHECK(gap.people == 10);
  CHECK_THAT(gap.difference.estimate.value(), WithinRel(15.8, 1e-12));
  CHECK_THAT(gap.difference.low.value(), WithinRel(7.00114236723018, 1e-10));
  CHECK_THAT(gap.difference.high.value(), WithinRel(24.59885763276982, 1e-10));
  CHECK_THAT(gap.pDifference.value(), WithinRel(0.00283289019738427, 1e-9));
  CHECK(gap.verdict == GapVerdict::more);
  CHECK_THAT(gap.base.value(), WithinRel(37.5, 1e-12));
  CHECK(found.comparisons == 1);
}

// R 4.2.2: p.adjust(c(0.00283289019738427, 0.422571628134196), "holm"); the limit of 4 by pt() both ways: the larger p 1.731314200349266e-05, and
// t.test(w, conf.level = 0.9)$conf.int -0.47273632066667 to 1.27273632066667.
TEST_CASE("several words are held together, and a limit that was set before is judged first") {
  BatchBench bench(2, {lineOf("honey"), lineOf("smoke")});
  const int session = bench.session("2025-02-01", 4);
  bench.say(session, 0, firstTen, 0);
  bench.say(session, 1, secondTen, 0);
  bench.say(session, 0, flat, 1);
  bench.say(session, 1, nearFlat, 1);
  SideBySide found = bench.found();
  REQUIRE(found.steps[0].gaps.size() == 2);
  const BatchGap& honey = found.steps[0].gaps[0];
  const BatchGap& smoke = found.steps[0].gaps[1];
  CHECK(found.comparisons == 2);
  CHECK_THAT(honey.pDifference.value(), WithinRel(0.00566578039476854, 1e-9));
  CHECK_THAT(smoke.pDifference.value(), WithinRel(0.42257162813419624, 1e-9));
  CHECK_THAT(smoke.limitLow.value(), WithinRel(-0.4727363206667201, 1e-9));
  CHECK_THAT(smoke.limitHigh.value(), WithinRel(1.2727363206667202, 1e-9));
  CHECK_THAT(smoke.pWithin.value(), WithinRel(2 * 1.731314200349266e-05, 1e-8));   // the smaller of two, by Holm
  CHECK(smoke.verdict == GapVerdict::within);
  CHECK(honey.verdict == GapVerdict::more);

  // Without a limit in the plan nobody may speak of one, however near the two lie.
  for (SheetItem& item : bench.tastings.about.sessions[0].plan.items) item.limit.reset();
  found = bench.found();
  CHECK(found.steps[0].gaps[1].verdict == GapVerdict::cannotTell);
  CHECK_FALSE(found.steps[0].gaps[1].limit);
}

TEST_CASE("batches with no cup in common are not compared, and keep their columns") {
  BatchBench bench(2);
  bench.say(bench.session("2025-02-01"), 0, firstTen);
  bench.say(bench.session("2025-03-01"), 1, secondTen);
  const SideBySide found = bench.found();
  REQUIRE(found.steps.size() == 1);
  CHECK(found.steps[0].link == BatchLink::none);
  CHECK(found.steps[0].gaps.empty());
  CHECK(found.comparisons == 0);
  REQUIRE(found.lines.size() == 1);
  CHECK_THAT(found.lines[0].means[0].mean.value(), WithinRel(37.5, 1e-12));
  CHECK(found.lines[0].means[1].people == 10);
  CHECK_THAT(found.columns[0].tasted[0].age.value(), WithinRel(397 / (365.25 / 12), 1e-12));   // 2024-01-01 to 2025-02-01
}

// The day lifts both cups of an evening by the same points, so it must drop out: the differences are those of the case above. Whoever sat at one evening alone is left out.
TEST_CASE("beside a shared lot each batch counts minus that lot, by those who sat at both") {
  BatchBench bench(2);
  const int first = bench.session("2025-02-01"), second = bench.session("2025-03-01");
  const std::vector<int> base{20, 25, 30, 20, 25, 30, 20, 25, 30, 20};
  const auto plus = [&](std::vector<int> values, int by) {
    for (int& value : values) value += by;
    return values;
  };
  bench.say(first, 0, firstTen);
  bench.say(first, bench.bought(), base);
  auto later = plus(secondTen, 9), besideIt = plus(base, 9);
  later.push_back(99);
  besideIt.push_back(1);
  bench.say(second, 1, later);
  bench.say(second, bench.bought(), besideIt);
  const SideBySide found = bench.found();
  const BatchStep& step = found.steps[0];
  CHECK(step.link == BatchLink::reference);
  CHECK(step.shared == bench.bought());
  CHECK(step.people == 10);
  CHECK(step.baseSessions == std::vector{first});
  CHECK(step.otherSessions == std::vector{second});
  REQUIRE(step.gaps.size() == 1);
  CHECK(step.gaps[0].people == 10);
  CHECK_THAT(step.gaps[0].difference.estimate.value(), WithinRel(15.8, 1e-12));
  CHECK_THAT(step.gaps[0].difference.low.value(), WithinRel(7.00114236723018, 1e-10));
  CHECK_THAT(step.gaps[0].base.value(), WithinRel(37.5 - 24.5, 1e-12));
  // The second was a month younger at its tasting: 2025-03-01 is 394 days after its bottling, the first had 397.
  CHECK_THAT(step.baseAge.value(), WithinRel(397 / (365.25 / 12), 1e-12));
  CHECK(step.sameAgeOn == "2025-03-04");
}

TEST_CASE("each batch is held against the latest earlier one that it has a link with, or all against the good one") {
  BatchBench bench(3);
  const int session = bench.session("2025-02-01");
  bench.say(session, 0, firstTen);
  bench.say(session, 2, secondTen);
  Note note;
  note.kind = NoteKind::changed;
  note.text = "another yeast";
  bench.batches[1].changed = {note};
  note.text = "less honey";
  bench.batches[2].changed = {note};
  const SideBySide found = bench.found();
  REQUIRE(found.steps.size() == 2);
  CHECK(found.steps[0].base == 0);
  CHECK(found.steps[0].other == 1);
  CHECK(found.steps[0].link == BatchLink::none);
  CHECK(found.steps[0].changed.size() == 1);
  CHECK(found.steps[1].base == 0);
  CHECK(found.steps[1].other == 2);
  CHECK(found.steps[1].changed.size() == 2);   // what was changed on the way counts too

  const SideBySide against = bench.found(2);
  REQUIRE(against.steps.size() == 2);
  CHECK(against.steps[0].base == 2);
  CHECK(against.steps[0].other == 0);
  CHECK_THAT(against.steps[0].gaps[0].difference.estimate.value(), WithinRel(-15.8, 1e-12));
  CHECK(against.steps[0].gaps[0].verdict == GapVerdict::less);
}

TEST_CASE("too few people or no spread give a reason and no verdict") {
  BatchBench bench(2);
  const int session = bench.session("2025-02-01", 10);
  bench.say(session, 0, {40, 50});
  bench.say(session, 1, {60, 75});
  BatchGap gap = bench.found().steps[0].gaps[0];
  CHECK(gap.difference.why == stats::Reason::fewTasters);
  CHECK_THAT(gap.difference.estimate.value(), WithinRel(22.5, 1e-12));
  CHECK_FALSE(gap.difference.low);
  CHECK(gap.verdict == GapVerdict::cannotTell);

  BatchBench still(2);
  const int evening = still.session("2025-02-01", 10);
  still.say(evening, 0, {40, 50, 60});
  still.say(evening, 1, {45, 55, 65});
  gap = still.found().steps[0].gaps[0];
  CHECK(gap.difference.why == stats::Reason::noSpread);
  CHECK(gap.verdict == GapVerdict::cannotTell);
  CHECK(still.found().comparisons == 0);

  CHECK(sideBySideOf({}, {}, {}).steps.empty());
  CHECK(BatchBench(1).found().steps.empty());
  Batch bare;
  CHECK(sideBySideOf({bare, bare}, {}, {}).steps[0].link == BatchLink::none);
}
