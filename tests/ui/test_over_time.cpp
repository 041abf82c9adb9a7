// A batch over time through the real window: a series begun, its next look planned, what its looks have shown, and its pages closed while one is sealed.
#include "aging_evenings.h"
#include "shelf/notes.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

ui::OverTimeModel& agedPage(test::Window& at) { return *at.app().findChild<ui::OverTimeModel*>(); }

/// A store with three looks held of four.
std::string heldThree(testing::AgingEvenings& evening) {
  evening.holdThree();
  evening.store.reset();
  return evening.folder.path().string();
}

void beginOne(test::Window& at) {
  at.click("navOverTime");
  CHECK(at.text("headline") == "Over time");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::BeginSeries);
  CHECK(at.text("headline") == "A series needs a batch of your own.");
  at.click("navPeople");
  test::addPerson(at, "Wenna", true);
  test::addDrink(at, "Heather mead", true, "bottled in May");
  at.click("navOverTime");
  at.click("primaryButton");
  CHECK(at.text("headline").find("6 sittings") != std::string::npos);
  at.type("begunOn", "2026-05-02");
  at.shoot("series_begin");
  at.click("control2");
  CHECK(at.text("headline").find("you have 6 bottles") != std::string::npos);
  at.type("reserve", "two");
  CHECK(at.text("headline").find("“two” is not a number") != std::string::npos);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::BeginSeries);   // what was typed wrongly begins nothing
  at.type("reserve", "2");
  at.click("takeCheaper");
  CHECK(at.text("headline").find("you have") == std::string::npos);
  at.type("mainWord", "honey");
  at.type("mainLimit", "10");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::OverTime);
  CHECK(at.text("headline") == "Nothing has been tasted in this series yet.");
  CHECK(agedPage(at).sittings()->count() >= 3);
  at.shoot("series_begun");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Question);
}

}  // namespace

TEST_CASE("a series is begun and its first look planned, by mouse") {
  test::Window at;
  beginOne(at);
  at.click("navOverTime");
  at.click("tagsPrint");
  CHECK(at.text("lookTold").find("bottle-tags-") != std::string::npos);
  at.click("seriesAway");
  CHECK(at.text("headline") == "Over time");
  at.click("seriesAwayShown");
  CHECK(at.text("headline") == "Nothing has been tasted in this series yet.");
  at.click("seriesAway");   // back into the list
  at.click("seriesThrowOpen");
  at.click("seriesThrowNext");
  at.click("seriesThrowDeed");
  CHECK(at.text("headline") == "Over time");
  CHECK(agedPage(at).series()->count() == 0);
  CHECK(at.complaints() == "");
}

TEST_CASE("a series is begun and its first look planned without a mouse") {
  test::Window at;
  at.useKeyboardAlone();
  beginOne(at);
  CHECK(at.complaints() == "");
}

TEST_CASE("what the looks have shown, in every look of the window") {
  testing::AgingEvenings evening;
  const BeverageId drink = shelf::lot(*evening.store, evening.mine).beverage;
  for (const auto& [day, kind, level, word] : {std::tuple("2025-12-08", NoteKind::haze, std::optional(2), ""), std::tuple("2026-02-24", NoteKind::haze, std::optional(0), ""),
                                               std::tuple("2026-03-01", NoteKind::racked, std::optional<int>(), "vinegar")}) {
    Note note;
    note.beverage = drink;
    note.doneOn = day;
    note.kind = kind;
    note.level = level;
    note.word = word;
    shelf::add(*evening.store, evening.chance, note);
  }
  test::Window at(heldThree(evening));
  at.click("navOverTime");
  CHECK(at.text("headline") == "Sitting 4, which this series was begun for, has not been held yet.");
  REQUIRE(agedPage(at).asked()->count() == 3);
  CHECK(agedPage(at).asked()->at<ui::FigureRow>(1).says.contains(QStringLiteral("rose since 2025-12-08")));
  CHECK(agedPage(at).sittings()->count() == 4);
  REQUIRE(agedPage(at).seen()->count() == 1);
  CHECK(agedPage(at).seen()->at<ui::FigureRow>(0).figure.isDrawn());
  CHECK(agedPage(at).asked()->at<ui::FigureRow>(2).says.contains(QStringLiteral("Done against it: racked (2026-03-01)")));
  for (const bool dark : {false, true}) {
    at.app().preferences()->setLight(dark ? ui::Preferences::Light::Dark : ui::Preferences::Light::Bright);
    for (const QSize size : {QSize(1280, 800), QSize(900, 600)}) {
      at.window().resize(size);
      at.nextFrame();
      CHECK(test::cutOff(at) == "");
      CHECK(test::silent(at.window().contentItem()) == "");
      CHECK(test::nameless(at.window().contentItem()) == "");
      at.shoot("over_time_" + std::to_string(size.width()) + (dark ? "_dark" : "_light"));
    }
  }
  at.app().preferences()->setTextPercent(200);
  at.nextFrame();
  CHECK(test::cutOff(at) == "");
  at.shoot("over_time_900_large");
  at.app().preferences()->setTextPercent(100);
  at.click("aged1FigureNumbers");
  at.shoot("over_time_numbers");
  at.scrollTo(at.item("seen0FigureNumbers"));
  at.nextFrame();
  at.shoot("over_time_seen");
  at.type("calendarFile", evening.folder.path().string() + "/looks.ics");
  at.click("calendarWrite");
  CHECK(std::filesystem::exists(evening.folder / "looks.ics"));
  for (const char* name : {"series.pdf", "series.html", "series.json"}) {
    at.type("seriesFile", (evening.folder / name).string());
    at.click("seriesWrite");
    CHECK(std::filesystem::file_size(evening.folder / name) > 1000);
  }
  CHECK_THAT(at.text("seriesTold"), Catch::Contains("series.json"));
  CHECK(at.complaints() == "");
}

TEST_CASE("old pages are closed while a look is sealed, and opening them is written beside it") {
  testing::AgingEvenings evening;
  const std::string folder = heldThree(evening);
  evening.store = store::Store::open(evening.folder / "cellar.oddglass", store::Access::write, evening.clock, evening.chance);
  evening.clock.set(1765200000000 + 340 * testing::dayLong);
  evening.planned(4);
  evening.seal();
  evening.store.reset();
  test::Window at(folder);
  at.click("navOverTime");
  CHECK(at.text("headline") == "These pages are closed while a look is sealed.");
  CHECK(agedPage(at).asked()->count() == 0);
  CHECK(agedPage(at).property("lines").toStringList().isEmpty());
  CHECK(at.item("seriesFile") == nullptr);
  at.shoot("over_time_closed");
  at.click("overTimeAnyway");
  CHECK(agedPage(at).asked()->count() == 3);
  CHECK(agedPage(at).sittings()->at<ui::SittingRow>(3).more.contains(QStringLiteral("The old pages were opened")));
  at.click("navToday");
  at.click("navOverTime");
  CHECK(at.text("headline") == "These pages are closed while a look is sealed.");   // once opened is not open for good

  // What came out of an earlier look is one of them.
  at.click("navToday");
  at.click("session1");
  CHECK(at.text("headline") == "This page is closed while a look of its series is sealed.");
  CHECK(at.item("reportFile") == nullptr);
  CHECK(at.text("count").empty());
  at.shoot("came_out_closed");
  at.click("cameOutAnyway");
  CHECK(at.text("headline") != "This page is closed while a look of its series is sealed.");
  CHECK(at.item("reportFile") != nullptr);
  CHECK(at.complaints() == "");
}
