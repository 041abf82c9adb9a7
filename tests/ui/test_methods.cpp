#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using test::Window;
using Page = ui::Router::Page;

// The other ways of asking, from the question to a locked answer, by mouse.
namespace {

/// Place 1 sits down, the cups are confirmed; from here the answer is the test's own.
void beforeTheCups(Window& at) {
  for (int step = 0; step < 3; ++step) at.click("primaryButton");
  test::sitDown(at, 1);
  at.click("primaryButton");
}

void lock(Window& at, bool askedHow) {
  at.click("sureness2");
  if (askedHow) at.click("clue0");
  at.click("primaryButton");
  CHECK(at.app().router()->page() == Page::Locked);
  CHECK(at.complaints() == "");
}

}  // namespace

TEST_CASE("a tetrad: four cups, and two that go together") {
  Window at;
  test::sealAnEvening(at, 1, 0, {}, [&] { test::chooseMethod(at, "tetrad"); });
  beforeTheCups(at);
  CHECK(at.item("cup3"));
  CHECK_FALSE(at.item("cup4"));
  CHECK(at.text("headline") == "Which two go together?");
  at.click("cup0");
  at.click("cup1");
  // A third tap takes the place of the first one, and a tap on a chosen cup takes it back.
  at.click("cup3");
  CHECK_FALSE(at.item("cup0")->property("chosen").toBool());
  CHECK(at.item("cup1")->property("chosen").toBool());
  at.click("cup1");
  at.click("cup2");
  CHECK(at.item("cup2")->property("chosen").toBool());
  CHECK(at.item("cup3")->property("chosen").toBool());
  at.shoot("tetrad_chosen");
  lock(at, true);
}

TEST_CASE("a directional pair: one thing is named, and one direction is asked about") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] {
    at.click("question1");
    at.type("attribute", "sweet");
    at.click("expected0");
    at.shoot("question_more");
  });
  beforeTheCups(at);
  CHECK(at.text("headline") == "“sweet”: which one has more of it?");
  CHECK_FALSE(at.item("cup2"));
  at.click("cup1");
  at.shoot("pair_chosen");
  lock(at, true);
}

TEST_CASE("a named thing is asked for as soon as a method needs it") {
  Window at;
  test::sealAnEvening(at, 1, 0, {}, [&] {
    CHECK_FALSE(at.item("attribute"));
    test::chooseMethod(at, "directional pair");
    at.app().router()->go(Page::Question);
    at.settle();
    at.type("attribute", "dry");
    at.click("primaryButton");
  });
  beforeTheCups(at);
  CHECK(at.text("headline") == "“dry”: which one has more of it?");
}

TEST_CASE("a preference may be none") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] { at.click("question2"); });
  beforeTheCups(at);
  at.click("cup0");
  CHECK(at.item("cup0")->property("chosen").toBool());
  at.click("liking0");
  CHECK_FALSE(at.item("cup0")->property("chosen").toBool());
  at.shoot("preference_none");
  lock(at, false);
}

TEST_CASE("a marked cup is compared with, never chosen") {
  Window at;
  SECTION("duo-trio") {
    test::sealAnEvening(at, 1, 0, {}, [&] { test::chooseMethod(at, "duo-trio"); });
    beforeTheCups(at);
    at.click("cup0");
    CHECK_FALSE(at.item("cup0")->property("chosen").toBool());
    at.click("cup2");
    CHECK(at.item("cup2")->property("chosen").toBool());
    at.shoot("duo_trio_chosen");
    lock(at, true);
  }
  SECTION("A-not-A") {
    test::sealAnEvening(at, 1, 0, {}, [&] { test::chooseMethod(at, "A-not-A"); });
    beforeTheCups(at);
    at.click("same1");
    at.shoot("a_not_a_chosen");
    lock(at, true);
  }
}

TEST_CASE("what does not go together leaves the plan by itself") {
  Window at;
  test::sealAnEvening(at, 2, 0, {}, [&] {
    at.click("stopsEarly");
    at.click("eveningsMore");
    at.shoot("takes_sequential");
    at.click("roundsLess");
    CHECK_FALSE(at.item("stopsEarly"));
  });
  CHECK(at.complaints() == "");
}

TEST_CASE("the program picks the way and follows what changes, until the brewer chooses") {
  Window at;
  test::sealAnEvening(at, 1, 0, {}, [&] {
    const auto row = [&] { return at.text("method0"); };
    const auto taken = [&](const std::string& name) { return at.item(name)->property("ticked").toBool(); };
    CHECK(row() == "Recommended. A tetrad: four cups, two of each drink. Which two go together?");
    CHECK(taken("method0"));
    CHECK(at.item("method0")->property("more").toString().contains("Four cups find a difference more often than three"));
    CHECK_THAT(at.text("methodNote"), Catch::StartsWith("The program picked this way"));
    CHECK_FALSE(at.item("letProgramPick"));
    at.shoot("takes_picked");
    at.click("lingers");
    CHECK_THAT(row(), Catch::StartsWith("Recommended. A triangle"));
    CHECK(taken("method0"));
    CHECK(at.item("method0")->property("more").toString().contains("A taste that lingers is carried on"));
    at.click("lingers");
    test::chooseMethod(at, "duo-trio");
    CHECK_THAT(at.text("methodNote"), Catch::StartsWith("You chose this way: duo-trio. Better here: tetrad."));
    at.shoot("takes_chosen");
    at.click("lingers");
    CHECK_FALSE(taken("method0"));
    CHECK_THAT(at.text("methodNote"), Catch::StartsWith("You chose this way: duo-trio. Better here: triangle."));
    at.click("letProgramPick");
    CHECK(taken("method0"));
    CHECK_THAT(row(), Catch::StartsWith("Recommended. A triangle"));
  });
  CHECK(at.complaints() == "");
}

TEST_CASE("no page leads to a question that its method does not answer") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] {
    auto* draft = at.app().findChild<ui::DraftModel*>();
    for (const char* question : {"question1", "question2", "question0", "question2", "question1", "question0"}) {
      at.click(question);
      CHECK(at.app().notice()->message().isEmpty());
      for (int row = 0; row < draft->methods()->count(); ++row) {
        draft->chooseMethod(row);
        at.settle();
        CHECK(at.app().notice()->message().isEmpty());
        CHECK(draft->methods()->at<ui::MethodRow>(row).taken);
      }
    }
    at.click("question2");
  });
  CHECK(at.complaints() == "");
}

TEST_CASE("a third drink: each way with its price before anything is poured") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] {
    CHECK_FALSE(at.item("threeHeadline"));
    test::addDrink(at, "Linden mead", false, "vintage 2023");
    at.app().router()->go(Page::Question);
    at.settle();
    const auto ticked = [&](const std::string& name) { return at.item(name)->property("ticked").toBool(); };
    std::string third = "lot0";
    for (const char* lot : {"lot1", "lot2"})
      if (!ticked(lot)) third = lot;
    at.click(third);
    CHECK(at.text("threeHeadline") == "Three drinks. What is the third for?");
    CHECK(ticked("threeWay2"));
    CHECK_FALSE(at.item("threeWay3"));
    CHECK(at.item("threeWay2")->property("more").toString().contains("Each of the three needs 4 of 4 right answers"));  // 1/81, held against .05/3; 3 of 4 is 1/9
    for (const char* way : {"threeWay0", "threeWay1", "threeWay2"}) {
      const QString price = at.item(way)->property("more").toString();
      CHECK((price.contains("cups") && price.contains("g of alcohol")));
    }
    at.scrollTo(at.item("threeWay2"));
    at.shoot("question_three");
    at.click("threeWay0");
    CHECK_FALSE(at.item("threeHeadline"));
    CHECK(ticked("lot0") + ticked("lot1") + ticked("lot2") == 2);
    for (const char* lot : {"lot0", "lot1", "lot2"})
      if (!ticked(lot)) {
        at.click(lot);
        break;
      }
    at.click("threeWay2");
    CHECK(ticked("threeWay2"));
  });
  CHECK(at.complaints() == "");
}

TEST_CASE("a whole evening of directional pairs by keyboard alone, from an empty store to a verdict") {
  Window at;
  at.useKeyboardAlone();
  test::sealAnEvening(at, 1, 0, [&] {
    at.click("question1");
    at.type("attribute", "sweet");
    at.click("expected0");
  });
  for (int step = 0; step < 3; ++step) at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Places);
  for (int place = 1; place <= 5; ++place) {
    test::sitDown(at, place);
    test::taste(at, place % 2);
    at.click("primaryButton");
  }
  at.click("primaryButton");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::CameOut);
  CHECK_THAT(at.text("count"), Catch::Contains("pairs pointed to"));
  at.shoot("came_out_pair");
  CHECK(at.complaints() == "");
}

TEST_CASE("a sequential plan is asked after a round, also when somebody does not come") {
  Window at;
  const int come = GENERATE(4, 5);
  test::sealAnEvening(at, 3, 0, {}, [&] {
    test::chooseMethod(at, "A triangle");
    at.click("stopsEarly");
  });
  for (int step = 0; step < 3; ++step) at.click("primaryButton");
  CHECK_FALSE(at.item("placesLook"));
  for (int place = 1; place <= come; ++place) {
    test::sitDown(at, place);
    test::taste(at, 1);
    at.click("primaryButton");
  }
  REQUIRE(at.app().router()->page() == Page::Places);
  if (come == 4) {
    CHECK(at.text("headline") == "4 of 4 answers are locked.");
    at.shoot("places_look_without_one");
    at.click("placesLook");
  } else {
    CHECK_FALSE(at.item("placesLook"));
    at.click("primaryButton");
  }
  CHECK_THAT(at.app().notice()->message().toStdString(), Catch::StartsWith("After round 1 it says: "));
  CHECK(at.app().findChild<ui::BoardModel*>()->property("canLook").toBool() == false);
  CHECK(at.complaints() == "");
}
