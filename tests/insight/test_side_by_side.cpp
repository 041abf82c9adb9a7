#include "insight/side_by_side.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinRel;

namespace {

LotQuestion lineOf(const std::string& word) { return {ItemKind::line, Part::main, word, 0, 100}; }

/// Batches of one recipe, a lot each and a bought lot at the end, and what people said of them, written by hand.
struct Bench {
  std::vector<Batch> batches;
  BatchTastings tastings;
  std::vector<WordNow> words;

  explicit Bench(int count, std::vector<LotQuestion> questions = {lineOf("honey")}) {
    for (int i = 0; i < count; ++i) {
      Batch batch;
      batch.beverage.name = "Hedge mead " + std::to_string(i + 1);
      Lot lot;
      lot.id.text = "lot " + std::to_string(i + 1);
      lot.packagedOn = "2024-0" + std::to_string(i + 1) + "-01";
      batch.lots = {lot};
      batches.push_back(batch);
      tastings.lots.push_back(lot.id);
      tastings.names.push_back(batch.beverage.name);
      tastings.batchOf.push_back(i);
    }
    tastings.lots.push_back({"bought"});
    tastings.names.push_back("Bought mead");
    tastings.batchOf.push_back(-1);
    tastings.about.questions = std::move(questions);
    for (const LotQuestion& each : tastings.about.questions) words.push_back({each.word, each.word, {}});
  }

  int bought() const { return static_cast<int>(batches.size()); }

  /// A session on a day that asked everything, with this limit.
  int session(const std::string& day, std::optional<int> limit = std::nullopt) {
    LotSession session{{"session " + day}, "t", day, {}, {}};
    for (const LotQuestion& each : tastings.about.questions) {
      SheetItem item;
      item.kind = each.kind;
      item.part = each.part;
      item.word = each.word;
      item.limit = limit;
      session.plan.items.push_back(item);
    }
    tastings.about.sessions.push_back(session);
    return static_cast<int>(tastings.about.sessions.size()) - 1;
  }

  void say(int session, int lot, const std::vector<int>& values, int question = 0) {
    for (std::size_t i = 0; i < values.size(); ++i) tastings.about.answers.push_back({session, static_cast<int>(i), lot, question, values[i]});
    tastings.about.people = std::max(tastings.about.people, static_cast<int>(values.size()));
  }

  SideBySide found(std::optional<int> good = std::nullopt) const { return sideBySideOf(batches, tastings, words, good); }
};

// Ten people under two conditions: Student 1908, Biometrika 6:1, as R carries it (data set "sleep"), ten times as large and moved up by 30 to stand on a line of 100.
const std::vector<int> one{37, 14, 28, 18, 29, 64, 67, 38, 30, 50}, two{49, 38, 41, 31, 29, 74, 85, 46, 76, 64};
// Ten small differences that hardly leave zero (invented).
const std::vector<int> flat(10, 50), nearFlat{51, 52, 49, 50, 53, 48, 51, 51, 50, 49};

}  // namespace

// R 4.2.2, t.test(b, a, paired = TRUE) on those twenty numbers: 15.8, 7.00114236723018 to 24.59885763276982, p 0.00283289019738427.
TEST_CASE("two batches that were poured together differ by Student's paired t over people") {
  Bench bench(2);
  const int session = bench.session("2025-02-01");
  bench.say(session, 0, one);
  bench.say(session, 1, two);
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
  Bench bench(2, {lineOf("honey"), lineOf("smoke")});
  const int session = bench.session("2025-02-01", 4);
  bench.say(session, 0, one, 0);
  bench.say(session, 1, two, 0);
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
  Bench bench(2);
  bench.say(bench.session("2025-02-01"), 0, one);
  bench.say(bench.session("2025-03-01"), 1, two);
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
  Bench bench(2);
  const int first = bench.session("2025-02-01"), second = bench.session("2025-03-01");
  const std::vector<int> base{20, 25, 30, 20, 25, 30, 20, 25, 30, 20};
  const auto plus = [&](std::vector<int> values, int by) {
    for (int& value : values) value += by;
    return values;
  };
  bench.say(first, 0, one);
  bench.say(first, bench.bought(), base);
  auto later = plus(two, 9), besideIt = plus(base, 9);
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
  Bench bench(3);
  const int session = bench.session("2025-02-01");
  bench.say(session, 0, one);
  bench.say(session, 2, two);
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
  Bench bench(2);
  const int session = bench.session("2025-02-01", 10);
  bench.say(session, 0, {40, 50});
  bench.say(session, 1, {60, 75});
  BatchGap gap = bench.found().steps[0].gaps[0];
  CHECK(gap.difference.why == stats::Reason::fewTasters);
  CHECK_THAT(gap.difference.estimate.value(), WithinRel(22.5, 1e-12));
  CHECK_FALSE(gap.difference.low);
  CHECK(gap.verdict == GapVerdict::cannotTell);

  Bench still(2);
  const int evening = still.session("2025-02-01", 10);
  still.say(evening, 0, {40, 50, 60});
  still.say(evening, 1, {45, 55, 65});
  gap = still.found().steps[0].gaps[0];
  CHECK(gap.difference.why == stats::Reason::noSpread);
  CHECK(gap.verdict == GapVerdict::cannotTell);
  CHECK(still.found().comparisons == 0);

  CHECK(sideBySideOf({}, {}, {}).steps.empty());
  CHECK(Bench(1).found().steps.empty());
  Batch bare;
  CHECK(sideBySideOf({bare, bare}, {}, {}).steps[0].link == BatchLink::none);
}

TEST_CASE("a cup that was flawed on purpose says nothing of its batch") {
  Bench bench(2);
  const int session = bench.session("2025-02-01");
  bench.say(session, 0, one);
  bench.say(session, 1, two);
  PlannedLot flawed;
  flawed.lot = bench.tastings.lots[1];
  flawed.role = LotRole::control;
  bench.tastings.about.sessions[0].plan.lots = {flawed};
  const SideBySide found = bench.found();
  CHECK(found.steps[0].link == BatchLink::none);
  CHECK(found.lines[0].means[1].people == 0);
  CHECK(found.columns[1].tasted.empty());
}

TEST_CASE("a word that was renamed between two tastings is one question, and marked") {
  Bench bench(2, {lineOf("honey"), lineOf("honeyed")});
  const int first = bench.session("2025-02-01"), second = bench.session("2025-04-01");
  for (const int lot : {0, bench.bought()}) bench.say(first, lot, one, 1);
  for (const int lot : {1, bench.bought()}) bench.say(second, lot, two, 0);
  const WordChange renamed{1740787200000, WordChangeKind::renamed, {"w"}, "honeyed", std::nullopt};   // 2025-03-01
  bench.words = {{"honey", "honey", {renamed}}, {"honeyed", "honey", {renamed}}};
  const SideBySide found = bench.found();
  REQUIRE(found.lines.size() == 1);
  CHECK(found.lines[0].question.word == "honey");
  CHECK(found.lines[0].formerly == std::vector<std::string>{"honeyed"});
  CHECK(found.lines[0].changedOn == std::vector<std::string>{"2025-03-01"});
  CHECK(found.steps[0].link == BatchLink::reference);
  CHECK(found.steps[0].gaps[0].people == 10);

  // Another name of a word that was asked by no other is left as it stands, and nothing is marked.
  Bench once(2, {lineOf("honeyed")});
  once.words = {{"honeyed", "honey", {}}};
  const int session = once.session("2025-02-01");
  once.say(session, 0, one);
  once.say(session, 1, two);
  CHECK(once.found().lines[0].question.word == "honeyed");
  CHECK(once.found().lines[0].formerly.empty());
  CHECK(once.found().steps[0].gaps.size() == 1);
}

TEST_CASE("ticked words are counted by people over those who were asked") {
  Bench bench(2, {{ItemKind::check, Part::main, "butter", 0, 1}});
  bench.say(bench.session("2025-02-01"), 0, {0, 0, 0, 0, 0});
  const int again = bench.session("2025-03-01");
  bench.say(again, 1, {0, 1, 0, 0, 0, 1});
  bench.say(again, 1, {0, 1});   // the doubled cup of two people: they are still two
  const SideBySide found = bench.found();
  REQUIRE(found.mentions.size() == 1);
  CHECK(found.mentions[0].counts[0].ticked == 0);
  CHECK(found.mentions[0].counts[0].asked == 5);
  CHECK(found.mentions[0].counts[1].ticked == 2);
  CHECK(found.mentions[0].counts[1].asked == 6);
  CHECK(found.mentions[0].counts[1].noticers == 0);

  // Two of them are known to notice butter, one of those who ticked it.
  bench.tastings.about.who = {{"a"}, {"b"}, {"c"}, {""}, {"e"}, {"f"}};
  const SideBySide known = sideBySideOf(bench.batches, bench.tastings, bench.words, std::nullopt, {{"butter", {{"b"}, {"c"}, {""}}}});
  CHECK(known.mentions[0].counts[1].noticers == 2);
  CHECK(known.mentions[0].counts[1].noticersTicked == 1);
}

TEST_CASE("of several bottlings the one with most links counts, and what would link the batches is what is left of them") {
  Bench bench(2);
  Lot cold;
  cold.id.text = "cold";
  cold.packagedOn = "2024-01-01";
  bench.batches[0].lots.push_back(cold);
  bench.tastings.lots.push_back(cold.id);
  bench.tastings.names.push_back("Hedge mead 1, cold");
  bench.tastings.batchOf.push_back(0);
  const int alone = bench.session("2025-01-01"), again = bench.session("2025-01-05"), together = bench.session("2025-02-01");
  for (const int session : {alone, again}) bench.say(session, 0, one);
  bench.say(again, bench.bought(), two);
  bench.say(together, 3, one);
  bench.say(together, 1, two);
  const SideBySide found = bench.found();
  CHECK(found.columns[0].lot == 3);
  CHECK(found.columns[0].lotsLeftOut == 1);
  CHECK(found.steps[0].link == BatchLink::together);

  CHECK(lotsToLink(found, bench.tastings, {2, 2, 0, 1}) == std::vector<LotId>{{"cold"}, {"lot 2"}});
  CHECK(lotsToLink(found, bench.tastings, {0, 0, 9, 0}).empty());
  // The first batch is drunk; nothing that stood beside its cold bottles has any left.
  CHECK(lotsToLink(found, bench.tastings, {0, 2, 9, 0}).empty());
  bench.say(together, bench.bought(), one);
  CHECK(lotsToLink(bench.found(), bench.tastings, {0, 2, 9, 0}) == std::vector<LotId>{{"lot 2"}, {"bought"}});
}
