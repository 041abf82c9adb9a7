// Batches side by side through the real window: nothing there, what moved, a word that was never poured together, and the tasting that would link them.
#include "recipe_evenings.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::RecipeEvenings;
using testing::asked;
using Page = ui::Router::Page;

namespace {

constexpr Millis december = 1765200000000, dayOfMillis = 86'400'000;

ui::SideBySideModel& besidePage(test::Window& at) { return *at.app().findChild<ui::SideBySideModel*>(); }

std::vector<SheetItem> fullSheet() {
  std::vector<SheetItem> sheet;
  for (const char* word : {"honey", "smoke", "sour", "warming"}) {
    sheet.push_back(asked(ItemKind::line, word));
    sheet.back().limit = 10;
  }
  sheet.push_back(asked(ItemKind::check, "butter"));
  sheet.push_back(asked(ItemKind::liking));
  return sheet;
}

testing::Said drifted(int place, const SheetItem& item, Slot slot) {
  const int second = slot == Slot{2} ? 1 : 0;
  if (item.kind == ItemKind::check) return {second == 1 && place < 3 ? 1 : 0};
  if (item.kind == ItemKind::liking) return {5 + (place + second) % 3};
  if (item.word == "honey") return {40 + place + second * (22 + place % 3)};
  if (item.word == "smoke") return {20 + place + second * (place % 2)};
  return {30 + (place * 7 + second * 11) % 23};
}

void holdTogether(RecipeEvenings& evening, Millis at, const std::vector<LotId>& lots) {
  evening.hold(at, lots, fullSheet(), [](int place, int, const SheetItem& item, Slot slot, int) { return drifted(place, item, slot); });
}

void lookAll(test::Window& at, const std::string& name) {
  for (const test::Look& look : test::looks()) {
    wear(at, look);
    CHECK(test::cutOff(at) == "");
    CHECK(test::silent(at.window().contentItem()) == "");
    CHECK(test::nameless(at.window().contentItem()) == "");
    at.shoot(name + '_' + look.name);
  }
  wear(at, test::looks().front());
}

}  // namespace

TEST_CASE("side by side begins with a batch, and one batch has nothing beside it") {
  test::Window at;
  at.click("navSideBySide");
  CHECK(at.text("headline") == "Side by side");
  lookAll(at, "side_empty");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Shelf);
  at.click("navPeople");
  test::addPerson(at, "Wenna", true);
  test::addDrink(at, "Heather mead", true, "bottled in May");
  at.click("beverageBeside");
  REQUIRE(at.app().router()->page() == Page::SideBySide);
  CHECK(at.text("headline") == "One batch has nothing to stand beside yet.");
  at.click("primaryButton");
  CHECK(besidePage(at).batches()->count() == 1);
  at.shoot("side_one");
  CHECK(at.complaints() == "");
}

TEST_CASE("what moved between batches, in every look of the window, and a tasting that links them") {
  RecipeEvenings evening;
  evening.changed(1, "2025-05-01", "another yeast");
  evening.changed(1, "2025-05-02", "less honey in the must");
  evening.changed(2, "2025-09-01", "fermented two degrees cooler, in the cellar under the stairs");
  holdTogether(evening, december, {evening.lots[0], evening.lots[1]});
  holdTogether(evening, december + 30 * dayOfMillis, {evening.lots[2], evening.bought});
  evening.store.reset();
  test::Window at(evening.folder.path().string());
  at.click("navSideBySide");
  CHECK(at.text("headline") == "Honey moved between batches.");
  CHECK(besidePage(at).table()->count() == 9);
  CHECK(besidePage(at).steps()->at<ui::FigureRow>(0).says.contains(QStringLiteral("Two things changed together.")));
  CHECK(besidePage(at).steps()->at<ui::FigureRow>(2).says.contains(QStringLiteral("not comparable")));
  lookAll(at, "side_three");
  at.scrollTo(at.item("sideBase0"));
  at.nextFrame();
  at.shoot("side_three_table");
  at.click("sideBase2");
  CHECK(besidePage(at).steps()->at<ui::FigureRow>(0).heading.contains(QStringLiteral("the good one")));
  at.click("sidePick");
  CHECK(besidePage(at).batches()->count() == 4);
  at.click("sideBatch1");   // ticked off: the second of the recipe is no longer shown
  CHECK(at.text("headline") == "These batches were never poured together, nor beside a shared bottle: not comparable.");
  lookAll(at, "side_apart");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Question);
  CHECK(at.complaints() == "");
}

TEST_CASE("batches with long names stand beside each other without being cut") {
  RecipeEvenings evening(3, "The hedge mead that was begun with the honey of the third summer under the old apple tree");
  holdTogether(evening, december, evening.lots);
  evening.store.reset();
  test::Window at(evening.folder.path().string());
  at.click("navSideBySide");
  lookAll(at, "side_long");
  CHECK(at.complaints() == "");
}

TEST_CASE("the reference book tells what is left of the bought drinks, and a tasting is planned beside one") {
  RecipeEvenings evening;
  Lot old = shelf::lot(*evening.store, evening.bought);
  old.packagedOn = "2023-05-01";
  old.bestBefore = "2025-05-01";
  old.storage = "cellar, 12 degrees";
  old.source = "the shop by the bridge";
  shelf::save(*evening.store, evening.chance, old);
  const LotId newer = evening.addLot(old.beverage, "vintage 3, from the second case that was bought for the winter");
  holdTogether(evening, december, {evening.bought, newer});
  shelf::count(*evening.store, evening.clock, evening.bought, 1);
  evening.store.reset();
  test::Window at(evening.folder.path().string());
  at.click("navReferences");
  CHECK(at.text("headline").find("One lot is down to its last bottle.") != std::string::npos);
  CHECK(test::isShown(at, "Past its best-before (2025-05-01)"));
  CHECK(test::isShown(at, "Honey: from "));
  lookAll(at, "references");
  at.click("referencePlan1");
  REQUIRE(at.app().router()->page() == Page::Question);
  at.click("navReferences");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Beverage);
  CHECK(at.app().findChild<ui::BeverageModel*>()->property("origin").toInt() == 1);
  CHECK(at.complaints() == "");
}
