// My sheet: every kind of question, by mouse and by keyboard alone, from the first cup to the opened key.
#include "ui/filled_sheet.h"
#include "ui/fits.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using test::AllKinds;
using test::Window;
using Page = ui::Router::Page;

TEST_CASE("a score sheet goes from its first cup to the opened key") {
  AllKinds evening;
  const std::string folder = evening.folder.path().string();
  const bool byKeyboard = GENERATE(false, true);
  const int lookCups = 2;
  {
    Window at(folder, evening.clock, evening.chance);
    if (byKeyboard) at.useKeyboardAlone();
    at.window().resize(900, 600);
    test::openSheet(at, 1);
    CHECK(at.text("headline") == "Look at this cup");
    // Whoever judges no colour says so, and may think again.
    at.click("pass0");
    CHECK(test::sheetOf(at).questions()->at<ui::QuestionRow>(0).passed);
    std::set<std::string> headlines;
    for (int step = 0; at.page() == "MySheet"; ++step) {
      REQUIRE(step < 20);
      headlines.insert(at.text("headline"));
      test::goOn(at);
    }
    CHECK(headlines == std::set<std::string>{"Look at this cup", "Smell this cup", "Taste this cup", "Wait for what comes late.", "The same cup, some time later",
                                             "A pause. A sip of water.", "All cups together"});
    REQUIRE(at.page() == "Locked");
    at.click("primaryButton");
    REQUIRE(at.page() == "Places");

    // A locked sheet is not opened again, by no way.
    CHECK_FALSE(at.item("hand1"));
    at.app().findChild<ui::CupsModel*>()->open(1);
    at.settle();
    CHECK(at.page() == "Places");
    at.app().router()->go(Page::MySheet);
    at.settle();
    CHECK(test::sheetOf(at).questions()->count() == 0);
    at.app().router()->go(Page::Places);
    at.settle();

    // The next place; the window is closed while the first cup is being smelled.
    test::openSheet(at, 2);
    for (int step = 0; step <= lookCups; ++step) test::goOn(at);
    CHECK(at.text("headline") == "Smell this cup");
    CHECK(at.complaints() == "");
  }
  Window at(folder, evening.clock, evening.chance);
  if (byKeyboard) at.useKeyboardAlone();
  CHECK(at.page() == "Places");
  test::openSheet(at, 2);
  CHECK(at.text("headline") == "Smell this cup");
  CHECK(at.text("placeLine") == "Place 2 · Cup 2 of 2");
  at.click("sheetBack");
  CHECK(test::sheetOf(at).questions()->at<ui::QuestionRow>(0).current == 49);
  at.click("primaryButton");
  for (int step = 0; at.page() == "MySheet"; ++step) {
    REQUIRE(step < 20);
    test::goOn(at);
  }
  REQUIRE(at.page() == "Locked");
  at.click("primaryButton");
  at.click("primaryButton");
  REQUIRE(at.page() == "OpenKey");
  at.click("primaryButton");
  REQUIRE(at.page() == "CameOut");
  CHECK_FALSE(at.text("headline").empty());
  CHECK(at.item("pair0Headline"));
  at.click("cameOutView");
  CHECK(test::silent(at.window().contentItem()) == "");
  CHECK(at.complaints() == "");
}

TEST_CASE("my sheet fits in every look, with words as long as may be") {
  const std::vector<test::Look> looks{{"light_1280", 1280, 800, 100, ui::Preferences::Light::Bright}, {"dark_900", 900, 600, 100, ui::Preferences::Light::Dark},
                                {"light_900_large", 900, 600, 200, ui::Preferences::Light::Bright}};
  const std::string word = GENERATE(std::string(), std::string("smoked heather blossoms from the far side of the hill"));
  AllKinds evening(word);
  Window at(evening.folder.path().string(), evening.clock, evening.chance);
  test::openSheet(at, 1);
  for (int step = 0; at.page() == "MySheet"; ++step) {
    REQUIRE(step < 20);
    for (const test::Look& look : looks) {
      INFO(look.name << ", step " << step);
      test::wear(at, look);
      const std::string name = "sheet_" + std::string(word.empty() ? "" : "long_") + look.name + "_" + std::to_string(step);
      at.shoot(name);
      CHECK(test::silent(at.window().contentItem()) == "");
      CHECK(test::nameless(at.window().contentItem()) == "");
      CHECK(test::cutOff(at) == "");
    }
    test::goOn(at);
  }
  CHECK(at.complaints() == "");
}

TEST_CASE("fewer than four friends are told at their place that they will be guessed; a maker hides nobody") {
  const int friends = GENERATE(3, 4);
  testing::SheetEvening evening(1, 0, friends);
  session::saveDraft(*evening.store, evening.clock, evening.asSheet({testing::asked(ItemKind::liking)}));
  evening.seal();
  session::openPourSheet(*evening.store, evening.clock, evening.session);
  session::sayPoured(*evening.store, evening.clock, evening.session);
  evening.store.reset();
  Window at(evening.folder.path().string(), evening.clock, evening.chance);
  at.click("primaryButton");
  REQUIRE(at.page() == "Places");
  at.click("hand1");
  REQUIRE(at.page() == "HandOver");
  CHECK(test::isShown(at, "With 3 people it will be guessed who answered what. Signed sheets are more honest.") == (friends == 3));
  CHECK(test::isShown(at, "Only in the sums, as a letter"));
  CHECK(at.complaints() == "");
}
