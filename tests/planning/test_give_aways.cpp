#include "planning/give_aways.h"

#include "domain/give_aways.h"
#include "domain/names.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using planning::firstUnfit;
using planning::waysOf;

namespace {

bool hasWay(GiveAway check, WayOut way, Method method = Method::triangle, std::size_t lots = 2) {
  const auto ways = waysOf(check, method, lots);
  return std::find(ways.begin(), ways.end(), way) != ways.end();
}

Draft with(GiveAways found) {
  Draft draft;
  draft.lots = {{"a"}, {"b"}};
  draft.giveAways = std::move(found);
  return draft;
}

}  // namespace

// Common practice: look is hidden or asked apart; vessel, amount and temperature are alike for all (ISO 4120:2021); what was drunk before cannot be undone.
TEST_CASE("every give-away can be gone on with, and all but one can be mended") {
  for (const GiveAway check : allOf<GiveAway>()) {
    CHECK(hasWay(check, WayOut::anyMeans));
    CHECK(hasWay(check, WayOut::mend) == (check != GiveAway::hadBefore));
    const bool mayBeAsked = check == GiveAway::colour || check == GiveAway::haze || check == GiveAway::foam || check == GiveAway::fizz;
    CHECK(hasWay(check, WayOut::ask) == mayBeAsked);
    CHECK(hasWay(check, WayOut::ask, Method::sheet, 7) == mayBeAsked);
    CHECK_FALSE(hasWay(check, WayOut::ask, Method::tetrad, 3));  // three pairs ask one question
  }
}

TEST_CASE("what is to be asked instead has to be asked") {
  CHECK_FALSE(firstUnfit(Draft{}));
  CHECK_FALSE(firstUnfit(with({})));
  CHECK_FALSE(firstUnfit(with({{GiveAway::colour, WayOut::mend}, {GiveAway::fizz, WayOut::anyMeans}})));
  CHECK(firstUnfit(with({{GiveAway::hadBefore, WayOut::mend}})) == GiveAway::hadBefore);
  CHECK(firstUnfit(with({{GiveAway::level, WayOut::ask}})) == GiveAway::level);
  Draft haze = with({{GiveAway::haze, WayOut::ask}});
  CHECK(firstUnfit(haze) == GiveAway::haze);
  haze.question = Question::more;
  haze.method = Method::pair;
  haze.attribute = "hazy";
  CHECK_FALSE(firstUnfit(haze));
  haze.giveAways->emplace(GiveAway::fizz, WayOut::ask);  // one comparison asks about one thing
  CHECK(firstUnfit(haze) == GiveAway::fizz);

  Draft sheet = with({{GiveAway::haze, WayOut::ask}});
  sheet.method = Method::sheet;
  CHECK(firstUnfit(sheet) == GiveAway::haze);
  SheetItem item;
  item.kind = ItemKind::line;
  item.word = "hazy";
  sheet.sheet.items = {item};
  CHECK(firstUnfit(sheet) == GiveAway::haze);  // asked with the cup in the mouth
  sheet.sheet.items[0].part = Part::look;
  CHECK_FALSE(firstUnfit(sheet));
}

TEST_CASE("any means is about what is seen or felt, and asking about the look lets it tell") {
  Plan plan;
  CHECK_FALSE(lookMayTell(plan));
  plan.giveAways = GiveAways{{GiveAway::hadBefore, WayOut::anyMeans}, {GiveAway::colour, WayOut::mend}};
  CHECK_FALSE(byAnyMeans(plan));
  CHECK_FALSE(lookMayTell(plan));
  plan.giveAways->emplace(GiveAway::fizz, WayOut::anyMeans);
  CHECK(byAnyMeans(plan));
  CHECK(lookMayTell(plan));
  plan.giveAways = GiveAways{{GiveAway::colour, WayOut::ask}};
  CHECK_FALSE(byAnyMeans(plan));
  CHECK(lookMayTell(plan));
}
