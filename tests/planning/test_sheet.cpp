#include "blinding/orders.h"
#include "planning/amounts.h"
#include "planning/gap.h"
#include "planning/sheet_cups.h"
#include "stats/design/balance.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// Seven people, a batch and a reference of 5 % and a stronger third lot, in bottles of 500 ml.
Setup sheetTable(int lots = 3, bool doubles = true) {
  Setup setup;
  setup.panel = 6;
  setup.makers = 1;
  setup.method = Method::sheet;
  setup.sheet = SheetSetup{doubles, 7, 6, 30};
  setup.cupMl = 20;
  setup.lots = {{500, 500, 12, LotRole::compared}, {500, 500, 12, LotRole::reference}, {900, 500, 12, LotRole::compared}};
  setup.lots.resize(static_cast<std::size_t>(lots), {500, 500, 12, LotRole::compared});
  return setup;
}

SheetItem asked(ItemKind kind, const std::string& word = {}, bool isMain = false) {
  SheetItem item;
  item.kind = kind;
  item.word = word;
  item.isMain = isMain;
  return item;
}

}  // namespace

TEST_CASE("what a score sheet takes is the worst case over whatever is drawn") {
  const Amounts amounts = amountsOf(sheetTable());
  CHECK(amounts.cupsPerPerson == 4);
  CHECK(amounts.cups == 28);
  REQUIRE(amounts.lots.size() == 3);
  // Any of the three may be the one that is poured twice.
  for (const LotAmount& lot : amounts.lots) CHECK(lot.cups == 14);
  CHECK(amounts.lots[0].ml == 280);
  CHECK(amounts.lots[0].bottles == 1);
  // 5 + 5 + 9 + 9 per cent of 20 ml, ethanol at 0.789 g/ml.
  REQUIRE(amounts.grams);
  CHECK_THAT(*amounts.grams, WithinRel(20 * 0.28 * 0.789, 1e-12));
}

TEST_CASE("a control is never doubled, a marked cup and a warm-up cup are counted") {
  Setup setup = sheetTable();
  setup.lots[2].role = LotRole::control;
  setup.lots.push_back({400, 330, 3, LotRole::warmUp});
  setup.marked = Slot{2};
  const Amounts amounts = amountsOf(setup);
  CHECK(amounts.cupsPerPerson == 6);        // marked, three coded and the doubled one, warm-up
  CHECK(amounts.lots[0].cups == 14);
  CHECK(amounts.lots[1].cups == 21);
  CHECK(amounts.lots[2].cups == 7);
  CHECK(amounts.lots[3].cups == 7);
  CHECK_THAT(amounts.grams.value(), WithinRel(20 * (0.05 + 0.05 + 0.05 + 0.09 + 0.05 + 0.04) * 0.789, 1e-12));
}

TEST_CASE("the worst case holds for every draw") {
  for (int lots : {3, 6, 8, 11})
    for (bool doubles : {false, true}) {
      Setup setup = sheetTable(lots, doubles);
      setup.rounds = 2;
      const Amounts amounts = amountsOf(setup);
      const int samples = samplesOf(setup), cups = codedCups(setup);
      CHECK(samples == lots + doubles);
      CHECK(cups == std::min(7, samples));
      blinding::Deal deal;
      deal.method = Method::sheet;
      deal.places = setup.places();
      deal.rounds = setup.rounds;
      deal.sheet.emplace();
      deal.sheet->orders = sheetOrders(samples, cups, deal.places);
      for (int lot = 1; lot <= lots; ++lot) deal.sheet->coded.push_back({lot});
      if (doubles) deal.sheet->mayDouble = deal.sheet->coded;
      for (std::uint8_t which = 0; which < 40; ++which) {
        blinding::Stream stream({which}, blinding::StreamName::orders);
        std::map<int, int> poured;
        for (const auto& flight : dealOrders(deal, stream))
          for (Slot lot : flight.lots) ++poured[lot.value];
        for (const auto& [lot, count] : poured) CHECK(count <= amounts.lots[static_cast<std::size_t>(lot - 1)].cups);
      }
    }
}

TEST_CASE("more samples than stand before one person are shared out evenly") {
  const auto orders = sheetOrders(9, 6, 12);
  REQUIRE(orders.size() == 12);
  stats::SampleOrders from0 = orders;
  for (auto& order : from0)
    for (int& sample : order) --sample;
  const auto balance = stats::balanceOf(from0, 9);
  for (int sample = 0; sample < 9; ++sample) CHECK(balance.pairs[sample][sample] == 8);  // 12 x 6 / 9
}

// Two-sided paired t, six people, alpha 0.05, sd of a difference sqrt(2 (1 + 1)) = 2, power 0.8: R 4.2,
// power.t.test(n = 6, sd = 2, power = 0.8, type = "paired", strict = TRUE) gives delta 2.869117.
TEST_CASE("the smallest gap that would show is said before anything is poured") {
  const Setup setup = sheetTable(2, false);
  const auto outlook = sheetOutlook(setup, {asked(ItemKind::liking, {}, true), asked(ItemKind::line, "sweet"), asked(ItemKind::worst)});
  CHECK(outlook.people == 6);
  CHECK(outlook.isComplete);
  REQUIRE(outlook.gaps.size() == 2);
  REQUIRE(outlook.gaps[0].smallest);
  CHECK_THAT(*outlook.gaps[0].smallest, WithinAbs(2.869117, 1e-4));
  CHECK_THAT(*outlook.gaps[1].smallest, WithinRel(*outlook.gaps[0].smallest / 8 * 100, 1e-9));
  CHECK_FALSE(outlook.noReference);
  CHECK_FALSE(outlook.willBeGuessed);
  // More main questions, each held to a stricter risk: a wider gap.
  const auto two = sheetOutlook(setup, {asked(ItemKind::liking, {}, true), asked(ItemKind::line, "sweet", true)});
  CHECK(*two.gaps[0].smallest > *outlook.gaps[0].smallest);
}

TEST_CASE("few people are told what their scores cannot say") {
  Setup setup = sheetTable(2, false);
  setup.panel = 2;
  SheetItem limited = asked(ItemKind::liking, {}, true);
  limited.limit = 1;
  const auto two = sheetOutlook(setup, {limited});
  CHECK(two.noIntervals);
  CHECK_FALSE(two.dotsOnly);
  CHECK(two.willBeGuessed);
  CHECK(two.withinUnlikely);
  CHECK_FALSE(two.gaps.at(0).smallest);
  setup.panel = 1;
  CHECK(sheetOutlook(setup, {limited}).dotsOnly);
  setup.lots[1].role = LotRole::compared;
  CHECK(sheetOutlook(setup, {limited}).noReference);
}
