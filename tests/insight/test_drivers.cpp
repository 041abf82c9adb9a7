#include "insight/sheet_findings.h"
#include "sheet_table.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::insight;
using oddglass::testing::SheetTable;
using Catch::Matchers::WithinAbs;

namespace {

// A word on a line and liking, five drinks. Rows are tasters.
constexpr int word[6][5] = {{30, 45, 50, 62, 70}, {20, 40, 44, 50, 71}, {35, 30, 52, 66, 60}, {10, 25, 41, 39, 55}, {42, 40, 55, 58, 77}, {28, 33, 49, 61, 64}};
constexpr int liked[6][5] = {{4, 5, 5, 7, 6}, {5, 6, 5, 7, 8}, {3, 4, 6, 6, 5}, {6, 6, 7, 8, 7}, {5, 4, 6, 6, 8}, {4, 6, 5, 7, 7}};

SheetTable drivenTable(int people = 6, int lots = 5, LotRole last = LotRole::compared) {
  std::vector<LotRole> roles(static_cast<std::size_t>(lots), LotRole::compared);
  roles.back() = last;
  SheetTable table(lots, roles);
  const Item line = table.ask(ItemKind::line, "honey"), liking = table.ask(ItemKind::liking);
  for (int place = 1; place <= people; ++place)
    for (int lot = 1; lot <= lots; ++lot) {
      table.say(place, line, lot, word[place - 1][lot - 1]);
      table.say(place, liking, lot, liked[place - 1][lot - 1]);
    }
  return table;
}

}  // namespace

// R 4.2.2: ten times the slope of lm(liking ~ factor(taster) + word) and its jackknife over tasters, t with 5 df.
TEST_CASE("what goes with liking is told for ten hundredths of a line") {
  const Drivers found = sheetFindingsOf(drivenTable().session).drivers;
  CHECK_FALSE(found.why);
  CHECK(found.lots == 5);
  REQUIRE(found.lines.size() == 1);
  CHECK(found.lines[0].word == "honey");
  CHECK(found.lines[0].people == 6);
  CHECK_THAT(found.lines[0].more.value(), WithinAbs(0.6294603731062982, 1e-9));
  CHECK_THAT(found.lines[0].low.value(), WithinAbs(0.4205948946076292, 1e-9));
  CHECK_THAT(found.lines[0].high.value(), WithinAbs(0.8383258516049673, 1e-9));
  CHECK(found.lines[0].shrunk.value() < *found.lines[0].more);
}

TEST_CASE("no hint from under four drinks, under five people, or where nothing was asked") {
  CHECK(sheetFindingsOf(drivenTable(6, 3).session).drivers.why == stats::Reason::fewSamples);
  CHECK(sheetFindingsOf(drivenTable(4, 5).session).drivers.why == stats::Reason::fewTasters);
  CHECK(sheetFindingsOf(drivenTable(6, 4, LotRole::control).session).drivers.why == stats::Reason::fewSamples);  // a cup flawed on purpose is no sample of the drinks
  SheetTable silent(5);
  silent.say(1, silent.ask(ItemKind::liking), 1, 5);
  CHECK(sheetFindingsOf(silent.session).drivers.why == stats::Reason::notGiven);
}
