#include "ui/journey.h"

#include <catch2/catch.hpp>

namespace oddglass::test {

using Page = ui::Router::Page;

void addPerson(Window& at, const std::string& name, bool brewer) {
  at.click("primaryButton");
  at.type("personName", name);
  if (brewer) at.click("personBrewer");
  at.click("primaryButton");
}

void addDrink(Window& at, const std::string& name, bool batch, const std::string& lot) {
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

void chooseMethod(Window& at, const std::string& words) {
  if (at.item("moreWays")) at.click("moreWays");
  for (int row = 0; at.item("method" + std::to_string(row)); ++row)
    if (at.item("method" + std::to_string(row))->property("text").toString().contains(QString::fromStdString(words))) {
      at.click("method" + std::to_string(row));
      return;
    }
  FAIL("no way to ask is called " << words);
}

void sealAnEvening(Window& at, int rounds, int spares, const std::function<void()>& asking, const std::function<void()>& takes) {
  at.click("navPeople");
  addPerson(at, "Ada", true);
  for (const char* name : {"Bo", "Cy", "Di", "Eve", "Fay"}) addPerson(at, name);
  addDrink(at, "Heather mead", true, "bottled in March");
  addDrink(at, "Bought mead", false, "vintage 2024");
  at.click("navToday");
  at.click(at.item("todayStart") ? "todayStart" : "primaryButton");
  REQUIRE(at.app().router()->page() == Page::Question);
  at.click("lot0");
  at.click("lot1");
  for (int i = 0; i < 5; ++i) at.click("taster" + std::to_string(i));
  at.click("pourer1");
  if (asking) asking();
  at.type("ifShown", "Age it longer");
  at.type("title", "Mead evening");
  at.type("guestTitle", "Three cups");
  at.shoot("question");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Takes);
  for (int round = 1; round < rounds; ++round) at.click("roundsMore");
  for (int spare = 0; spare < spares; ++spare) at.click("sparesMore");
  if (takes) takes();
  else if (!asking) chooseMethod(at, "A triangle");
  at.type("cupMl", "15");
  at.shoot("takes");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::GiveAways);
  at.click("primaryButton");
  at.click("careSettled");
  at.shoot("care");
  at.click("primaryButton");
  at.shoot("seal");
  at.click("primaryButton");
  at.shoot("sealed");
  REQUIRE(at.app().property("current").value<QObject*>()->property("sealMark").toString().size() > 8);
}

void sitDown(Window& at, int place) {
  at.click("hand" + std::to_string(place));
  INFO("place " << place << ", banner: " << at.app().notice()->message().toStdString());
  REQUIRE(at.app().router()->page() == Page::HandOver);
  at.click("who0");
  at.click("ofAge");
  at.click("careHeard");
  at.click("consents");
  at.click("shownAs0");
  at.shoot("hand_over");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::MyCups);
}

void taste(Window& at, int cup) {
  at.shoot("cups_confirm");
  at.click("primaryButton");
  at.click("cup" + std::to_string(cup));
  at.click("sureness1");
  at.click("clue0");
  at.shoot("cups_chosen");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Locked);
  at.shoot("locked");
}

}  // namespace oddglass::test
