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
  CHECK(at.text("headline") == "Which one is more sweet?");
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
  CHECK(at.text("headline") == "Which one is more dry?");
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
