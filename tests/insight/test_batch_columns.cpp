// What stands in the columns of batches: words that were renamed, ticked words, several bottlings, and what would link them.
#include "insight/batch_bench.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::insight;
using testing::BatchBench;
using testing::firstTen;
using testing::lineOf;
using testing::secondTen;

TEST_CASE("a cup that was flawed on purpose says nothing of its batch") {
  BatchBench bench(2);
  const int session = bench.session("2025-02-01");
  bench.say(session, 0, firstTen);
  bench.say(session, 1, secondTen);
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
  BatchBench bench(2, {lineOf("honey"), lineOf("honeyed")});
  const int first = bench.session("2025-02-01"), second = bench.session("2025-04-01");
  for (const int lot : {0, bench.bought()}) bench.say(first, lot, firstTen, 1);
  for (const int lot : {1, bench.bought()}) bench.say(second, lot, secondTen, 0);
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
  BatchBench once(2, {lineOf("honeyed")});
  once.words = {{"honeyed", "honey", {}}};
  const int session = once.session("2025-02-01");
  once.say(session, 0, firstTen);
  once.say(session, 1, secondTen);
  CHECK(once.found().lines[0].question.word == "honeyed");
  CHECK(once.found().lines[0].formerly.empty());
  CHECK(once.found().steps[0].gaps.size() == 1);
}

TEST_CASE("ticked words are counted by people over those who were asked") {
  BatchBench bench(2, {{ItemKind::check, Part::main, "butter", 0, 1}});
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
  BatchBench bench(2);
  Lot cold;
  cold.id.text = "cold";
  cold.packagedOn = "2024-01-01";
  bench.batches[0].lots.push_back(cold);
  bench.tastings.lots.push_back(cold.id);
  bench.tastings.names.push_back("Hedge mead 1, cold");
  bench.tastings.batchOf.push_back(0);
  const int alone = bench.session("2025-01-01"), again = bench.session("2025-01-05"), together = bench.session("2025-02-01");
  for (const int session : {alone, again}) bench.say(session, 0, firstTen);
  bench.say(again, bench.bought(), secondTen);
  bench.say(together, 3, firstTen);
  bench.say(together, 1, secondTen);
  const SideBySide found = bench.found();
  CHECK(found.columns[0].lot == 3);
  CHECK(found.columns[0].lotsLeftOut == 1);
  CHECK(found.steps[0].link == BatchLink::together);

  CHECK(lotsToLink(found, bench.tastings, {2, 2, 0, 1}) == std::vector<LotId>{{"cold"}, {"lot 2"}});
  CHECK(lotsToLink(found, bench.tastings, {0, 0, 9, 0}).empty());
  // The first batch is drunk; nothing that stood beside its cold bottles has any left.
  CHECK(lotsToLink(found, bench.tastings, {0, 2, 9, 0}).empty());
  bench.say(together, bench.bought(), firstTen);
  CHECK(lotsToLink(bench.found(), bench.tastings, {0, 2, 9, 0}) == std::vector<LotId>{{"lot 2"}, {"bought"}});
}
