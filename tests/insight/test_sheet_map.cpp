#include "insight/sheet_map.h"
#include "sheet_table.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace oddglass;
using namespace oddglass::insight;
using oddglass::testing::SheetTable;
using Catch::Matchers::WithinAbs;

namespace {

// Three drinks whose means lie on a triangle in two words: (20, 50), (80, 50), (50, 70); everybody is off by the same few points everywhere.
SheetTable triangleOf(int people, int scatter = 0) {
  SheetTable table(3, {LotRole::compared, LotRole::compared, LotRole::reference});
  const Item sweet = table.ask(ItemKind::line, "sweet"), sour = table.ask(ItemKind::line, "sour");
  constexpr int at[3][2] = {{20, 50}, {80, 50}, {50, 70}};
  for (int place = 1; place <= people; ++place)
    for (int lot = 1; lot <= 3; ++lot) {
      const int off = scatter * ((place * (lot + 1)) % 3 - 1);
      table.say(place, sweet, lot, at[lot - 1][0] + place % 5 + off);
      table.say(place, sour, lot, at[lot - 1][1] - place % 3 + (place % 2 == 0 ? off : -off));
    }
  return table;
}

}  // namespace

// Worked by hand: centred means (-30, -20/3), (30, -20/3), (0, 40/3); the words do not go together, so the axes are the words, with variances 900 and
// 400/3.
TEST_CASE("components of a triangle are its two words, whatever level each taster has") {
  const SheetMap map = sheetMapOf(triangleOf(6).session);
  REQUIRE(map.isPlane());
  CHECK_THAT(map.shares[0], WithinAbs(900.0 / (900.0 + 400.0 / 3.0), 1e-12));
  REQUIRE(map.words.size() == 2);
  CHECK_THAT(map.words[0].loadings[0], WithinAbs(1.0, 1e-12));
  CHECK_THAT(map.words[1].loadings[1], WithinAbs(1.0, 1e-12));
  REQUIRE(map.lots.size() == 3);
  constexpr double x[] = {-30.0, 30.0, 0.0}, y[] = {-20.0 / 3.0, -20.0 / 3.0, 40.0 / 3.0};
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK_THAT(map.lots[i].at[0], WithinAbs(x[i], 1e-9));
    CHECK_THAT(map.lots[i].at[1], WithinAbs(y[i], 1e-9));
    CHECK(map.lots[i].why == stats::Reason::noSpread);  // without their levels all tasters say the same
    CHECK(map.lots[i].points.empty());
  }
}

// Hotelling 1931: (x - m)' S^-1 (x - m) <= 2 (n - 1) / (n (n - 2)) F(2, n - 2); 5.786135 is F(2, 5) at 0.95, printed as 5.79 in F tables.
TEST_CASE("from five people there are ellipses, below the people themselves") {
  const SheetMap seven = sheetMapOf(triangleOf(7, 4).session);
  for (const MapLot& lot : seven.lots) {
    CHECK(lot.people == 7);
    REQUIRE(lot.sure);
    CHECK(lot.sure->longer >= lot.sure->shorter);
    CHECK(lot.points.empty());
  }
  const SheetMap four = sheetMapOf(triangleOf(4, 4).session);
  for (const MapLot& lot : four.lots) {
    CHECK_FALSE(lot.sure);
    CHECK(lot.why == stats::Reason::fewTasters);
    REQUIRE(lot.points.size() == 4);
    double x = 0, y = 0;
    for (const auto& point : lot.points) x += point[0] / 4, y += point[1] / 4;
    CHECK_THAT(x, WithinAbs(lot.at[0], 1e-9));  // their mean is the lot's place
    CHECK_THAT(y, WithinAbs(lot.at[1], 1e-9));
  }
}

TEST_CASE("the area of an ellipse is that of Hotelling's bound") {
  const SheetTable table = triangleOf(7, 4);
  const SheetMap map = sheetMapOf(table.session);
  REQUIRE(map.lots[0].sure);
  // The tasters' points of the first drink by hand: what each said, less that taster's mean over the drinks, plus nothing else; the axes are turned, which
  // leaves the determinant as it is.
  double sum[2] = {0, 0}, cross[3] = {0, 0, 0}, at[7][2];
  for (int person = 0; person < 7; ++person)
    for (int word = 0; word < 2; ++word) {
      double own = 0, all = 0;
      for (const SheetReply& reply : table.session.panel[static_cast<std::size_t>(person)].replies)
        if (reply.item.value == word + 1) all += *reply.value / 3.0, own += reply.cup->value == 1 ? *reply.value : 0;
      at[person][word] = own - all;
      sum[word] += at[person][word] / 7;
    }
  for (const auto& each : at) {
    cross[0] += (each[0] - sum[0]) * (each[0] - sum[0]) / 6;
    cross[1] += (each[0] - sum[0]) * (each[1] - sum[1]) / 6;
    cross[2] += (each[1] - sum[1]) * (each[1] - sum[1]) / 6;
  }
  const double bound = 2.0 * 6.0 / (7.0 * 5.0) * 5.786135;
  const double area = bound * std::sqrt(cross[0] * cross[2] - cross[1] * cross[1]);
  CHECK_THAT(map.lots[0].sure->longer * map.lots[0].sure->shorter, WithinAbs(area, 1e-4 * area));
}

TEST_CASE("two drinks, one word, and drinks all alike give a reason and no axes") {
  SheetTable two(2);
  for (const char* word : {"sweet", "sour"}) two.say(1, two.ask(ItemKind::line, word), 1, 5);
  CHECK(sheetMapOf(two.session).why == stats::Reason::fewSamples);
  SheetTable one(3);
  one.say(1, one.ask(ItemKind::line, "sweet"), 1, 5);
  one.ask(ItemKind::liking);
  CHECK(sheetMapOf(one.session).why == stats::Reason::notGiven);
  SheetTable alike(3);
  for (const char* word : {"sweet", "sour"}) {
    const Item item = alike.ask(ItemKind::line, word);
    for (int place = 1; place <= 5; ++place)
      for (int lot = 1; lot <= 3; ++lot) alike.say(place, item, lot, 40 + place);
  }
  CHECK(sheetMapOf(alike.session).why == stats::Reason::noSpread);
  SheetTable nobody(3);
  for (const char* word : {"sweet", "sour"}) nobody.ask(ItemKind::line, word);
  nobody.flight(1);
  CHECK(sheetMapOf(nobody.session).why == stats::Reason::emptyCell);
}
