#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

TEST_CASE("what was changed on the shelf is taken back at the foot of the page, one change after the other") {
  test::Window at;
  test::addDrink(at, "Heather mead", true, "bottled in March");
  auto* drink = at.app().findChild<ui::BeverageModel*>();
  CHECK(test::isShown(at, "Bottles of “bottled in March” were booked."));
  at.click("undoNo");
  CHECK_FALSE(at.item("undoYes"));
  at.click("lotArchive0");
  REQUIRE(test::isShown(at, "“bottled in March” was put away."));
  at.shoot("undo");
  at.click("undoYes");
  CHECK_FALSE(drink->lots()->at<ui::LotRow>(0).archived);
  CHECK(test::isShown(at, "Taken back. Before that: Bottles of “bottled in March” were booked."));
  at.click("undoYes");
  CHECK(drink->lots()->at<ui::LotRow>(0).stock == "0 bottles");
  // Elsewhere nothing is offered; what was done before can still be taken back after the next change.
  at.click("navToday");
  CHECK_FALSE(at.item("undoYes"));
  at.click("navPeople");
  test::addPerson(at, "Quill");
  REQUIRE(at.item("person0"));
  at.click("undoYes");
  CHECK_FALSE(at.item("person0"));
  // The lot has bottles in its record: it is put away. Then the drink, which still has that lot.
  at.click("undoYes");
  at.click("undoYes");
  CHECK(test::isShown(at, "Taken back."));
  CHECK_FALSE(at.item("undoYes"));
  at.click("navShelf");
  CHECK_FALSE(at.item("beverage0"));
  CHECK(at.complaints() == "");
}
