#include "ui/window.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

void addPerson(test::Window& at, const std::string& name, bool brewer = false) {
  at.click("primaryButton");
  at.type("personName", name);
  if (brewer) at.click("personBrewer");
  at.click("primaryButton");
}

void addDrink(test::Window& at, const std::string& name, bool batch, const std::string& lot) {
  at.click("navShelf");
  at.click("primaryButton");
  at.type("name", name);
  at.click(batch ? "origin0" : "origin1");
  at.click("kind1");
  at.type("abv", "11,5");
  at.click("abvFrom2");
  at.click("ingredients2");
  at.click("primaryButton");
  at.type("lotName", lot);
  at.type("lotMl", "750");
  at.click("lotSave");
  at.type("moveBottles", "6");
  at.click("moveSave");
}

void sitDown(test::Window& at, int place, int who, bool shoot = false) {
  at.click("hand" + std::to_string(place));
  REQUIRE(at.app().router()->page() == Page::HandOver);
  at.click("who" + std::to_string(who));
  at.click("ofAge");
  at.click("careHeard");
  at.click("consents");
  at.click("shownAs0");
  if (shoot) at.shoot("hand_over");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::MyCups);
}

}  // namespace

TEST_CASE("a whole evening by mouse, from an empty store to a verdict") {
  test::Window at;
  at.shoot("today_empty");
  at.click("navPeople");
  addPerson(at, "Ada", true);
  for (const char* name : {"Bo", "Cy", "Di", "Eve", "Fay"}) addPerson(at, name);
  at.shoot("people");
  addDrink(at, "Heather mead", true, "bottled in March");
  at.shoot("beverage");
  addDrink(at, "Bought mead", false, "vintage 2024");
  at.click("navShelf");
  at.shoot("shelf");
  at.click("navToday");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Question);
  at.click("lot0");
  at.click("lot1");
  for (int i = 0; i < 5; ++i) at.click("taster" + std::to_string(i));
  at.click("pourer1");
  at.type("title", "Mead evening");
  at.type("guestTitle", "Three cups");
  at.shoot("question");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Takes);
  at.shoot("takes");
  at.click("roundsMore");
  at.type("cupMl", "15");
  at.shoot("takes_two_rounds");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Care);
  at.click("careSettled");
  at.shoot("care");
  at.click("primaryButton");
  at.shoot("seal");
  at.click("primaryButton");
  REQUIRE(at.text("headline").size() > 8);
  at.shoot("sealed");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::PourSheet);
  at.shoot("pour_door");
  at.click("primaryButton");
  at.shoot("pour_sheet");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Places);
  at.shoot("places_empty");
  for (int place = 1; place <= 5; ++place) {
    sitDown(at, place, 0, place == 1);
    for (int round = 1; round <= 2; ++round) {
      if (place == 1) at.shoot("cups_confirm");
      at.click("primaryButton");
      at.click("cup1");
      at.click("sureness1");
      at.click("clue0");
      if (place == 1) at.shoot("cups_chosen");
      at.click("primaryButton");
      REQUIRE(at.app().router()->page() == Page::Locked);
      if (place == 1 && round == 1) at.shoot("locked");
      at.click("primaryButton");
    }
    REQUIRE(at.app().router()->page() == Page::Places);
    if (place == 3) at.shoot("places");
  }
  at.shoot("places_locked");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::OpenKey);
  at.shoot("open_key");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::CameOut);
  at.shoot("came_out");
  CHECK_FALSE(at.text("headline").empty());
  at.click("primaryButton");
  at.type("decision", "Pour it again in June");
  at.click("primaryButton");
  at.click("cameOutView");
  at.shoot("came_out_maker");
  at.click("cameOutHistory");
  at.shoot("history");
  CHECK(at.text("headline") == "The record holds.");
  at.click("navKeeping");
  at.click("primaryButton");
  at.shoot("keeping");
  CHECK(at.complaints().empty());
  INFO(at.complaints());
}
