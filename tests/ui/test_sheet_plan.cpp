// Score sheets, from an empty draft to the verdict.
#include "ui/filled_sheet.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using test::Window;
using Page = ui::Router::Page;

namespace {

/// On the page of the question: what it lacks next to the bought one, on the short sheet, without pauses.
void planLacks(Window& at) {
  at.click("question4");
  REQUIRE(at.item("sheetPart"));
  at.click("ready0");
  at.type("pause", "0");
  at.type("cleanser", "water");
}

void toThePlaces(Window& at) {
  for (int step = 0; step < 3; ++step) at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Places);
}

/// A place sits down, says that these are their cups, and fills in the sheet.
void sitAndFill(Window& at, int place) {
  test::sitDown(at, place);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::MySheet);
  for (int step = 0; at.app().router()->page() == Page::MySheet; ++step) {
    REQUIRE(step < 20);
    test::goOn(at);
  }
  REQUIRE(at.app().router()->page() == Page::Locked);
}

std::string said(Window& at, const char* property) { return at.app().findChild<ui::DraftModel*>()->property(property).toString().toStdString(); }

}  // namespace

TEST_CASE("what a drink lacks next to the bought one, from an empty store to what came out") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] { planLacks(at); }, [&] {
    CHECK_THAT(said(at, "takesHeadline"), Catch::StartsWith("With this panel almost nothing would show: "));
    CHECK_FALSE(at.item("lingers"));
    CHECK_FALSE(at.item("method0"));
  });
  toThePlaces(at);
  for (int place = 1; place <= 5; ++place) {
    sitAndFill(at, place);
    at.click("primaryButton");
  }
  at.click("primaryButton");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::CameOut);
  CHECK_FALSE(at.text("headline").empty());
  at.shoot("came_out_lacks");
  CHECK(at.complaints() == "");
}

TEST_CASE("with three friends the plan of a sheet says that they will be guessed, and how little it would show") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] {
    planLacks(at);
    at.click("taster4");
  }, [&] {
    CHECK_THAT(said(at, "takesHeadline"), Catch::StartsWith("With this panel no gap would show"));
    CHECK(test::isShown(at, "With three people you will guess who wrote what. Signed sheets are more honest."));
  });
  CHECK(at.complaints() == "");
}

TEST_CASE("a sheet is planned and sealed and filled in by keyboard alone") {
  Window at;
  at.useKeyboardAlone();
  test::sealAnEvening(at, 1, 0, [&] { planLacks(at); }, [] {});
  toThePlaces(at);
  sitAndFill(at, 1);
  CHECK(at.complaints() == "");
}

TEST_CASE("a sheet about what a drink lacks asks for what it is held against, by name") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] {
    planLacks(at);
    CHECK(at.text("lacksReference").empty());
    at.click("role1_0");
    CHECK_THAT(at.text("lacksReference"), Catch::Contains("Heather mead, bottled in March") && Catch::StartsWith("Nothing is there to hold "));
    CHECK_FALSE(said(at, "notYet").empty());
    at.click("role1_1");
    CHECK(at.text("lacksReference").empty());
    CHECK(said(at, "notYet").empty());
    at.click("sheetMarked1");
    at.click("duplicate");
  }, [] {});
  CHECK(at.complaints() == "");
}

TEST_CASE("another sheet is recommended for another drink, and one's own is kept") {
  Window at;
  test::sealAnEvening(at, 1, 0, [&] {
    at.click("question3");
    const auto* sheet = at.app().findChild<ui::SheetPlanModel*>();
    CHECK(sheet->property("taken").toInt() == 2);  // mead, as both drinks are
    at.click("question0");
    CHECK_FALSE(at.item("sheetPart"));
    at.click("question4");
    CHECK(sheet->property("taken").toInt() == 2);
    at.click("ready0");
    at.click("question3");
    CHECK(sheet->property("taken").toInt() == 0);
  }, [] {});
  CHECK(at.complaints() == "");
}

TEST_CASE("a sheet of one's own is put together by keyboard alone") {
  Window at;
  at.useKeyboardAlone();
  test::sealAnEvening(at, 1, 0, [&] {
    planLacks(at);
    auto* sheet = at.app().findChild<ui::SheetPlanModel*>();
    auto* asked = sheet->asked();
    const auto says = [&](int row) { return asked->at<ui::AskedRow>(row).says.toStdString(); };
    at.click("sheetList");
    const int before = asked->count();
    const std::string first = says(0).substr(3), second = says(1).substr(3);
    at.click("asked0Down");
    CHECK(says(0) == "1. " + second);
    CHECK(says(1) == "2. " + first);
    // The keyboard went along with the question.
    CHECK(at.window().activeFocusItem()->objectName() == "asked1Down");
    at.click("askedAdd");
    CHECK_FALSE(at.item("itemPut")->isEnabled());
    at.type("itemWord", "sweet");
    CHECK(at.text("itemNotYet") == "The sheet asks that already.");
    at.type("itemWord", "smoke");
    at.type("itemLimit", "15");
    at.click("itemMain");
    at.click("itemPut");
    REQUIRE(asked->count() == before + 1);
    CHECK_THAT(says(before), Catch::Contains("A line: smoke") && Catch::Contains("one of those the plan is about") && Catch::Contains("15"));
    at.click("asked" + std::to_string(before) + "Change");
    at.click("itemKind2");
    at.click("itemPut");
    CHECK_THAT(says(before), Catch::Contains("A word to tick: smoke"));
    at.click("asked0Remove");
    CHECK(asked->count() == before);
    CHECK(sheet->property("taken").toInt() == -1);
  }, [] {});
  CHECK(at.complaints() == "");
}

TEST_CASE("the plan of a sheet speaks, and fits, in every look") {
  const auto look = GENERATE(test::Look{"light_1280", 1280, 800, 100, ui::Preferences::Light::Bright}, test::Look{"dark_900", 900, 600, 100, ui::Preferences::Light::Dark},
                             test::Look{"light_900_large", 900, 600, 200, ui::Preferences::Light::Bright});
  Window at;
  at.app().preferences()->setLight(look.light);
  const auto fits = [&](const std::string& page) {
    at.app().preferences()->setTextPercent(look.textPercent);
    at.window().resize(look.width, look.height);
    at.nextFrame();
    INFO(page << " in " << look.name);
    CHECK(test::silent(at.window().contentItem()) == "");
    CHECK(test::nameless(at.window().contentItem()) == "");
    CHECK(test::cutOff(at) == "");
    at.shoot("sheet_" + page + "_" + look.name);
  };
  test::sealAnEvening(at, 1, 0, [&] {
    at.click("question4");
    at.click("role1_0");
    at.scrollTo(at.item("role0_0"));
    fits("roles");
    at.click("role1_1");
    at.click("duplicate");
    at.scrollTo(at.item("ready0"));
    fits("ready");
    at.click("sheetList");
    at.scrollTo(at.item("asked1Down"));
    fits("list");
    at.click("askedAdd");
    at.type("itemWord", "warming Kirschwasserbuttercremetortenfuellung");
    at.scrollTo(at.item("itemKind0"));
    fits("form");
    at.click("itemPut");
    at.scrollTo(at.item("cupsAtOnceInput"));
    fits("serving");
  }, [&] { fits("takes"); });
  at.app().preferences()->setTextPercent(100);
  CHECK(at.complaints() == "");
}
