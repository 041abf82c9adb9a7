// You and the room through the real window: from an empty page to three opened tastings, and the expectation on the seal.
#include "own_evenings.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

ui::RoomModel& roomOf(test::Window& at) { return *at.app().findChild<ui::RoomModel*>(); }

std::string roomSays(test::Window& at, const char* property) { return roomOf(at).property(property).toString().toStdString(); }

/// Evenings of the brewer's, told beforehand; the store is closed.
struct Told : testing::OwnEvenings {
  explicit Told(int evenings, int friendCount = 4) : OwnEvenings(friendCount) {
    for (int evening = 0; evening < evenings; ++evening) tell(proud(), 60 + 5 * (evening % 3));
    store.reset();
  }
  std::string where() const { return folder.path().string(); }
};

void nobodyYet(test::Window& at) {
  at.click("navRoom");
  REQUIRE(at.page() == "Room");
  CHECK(at.text("headline") == "You and the room");
  CHECK(roomSays(at, "nobody").find("brewer") != std::string::npos);
  at.shoot("room_nobody");
  at.click("primaryButton");
  REQUIRE(at.page() == "People");
  test::addPerson(at, "Wenna Tarn", true);
  at.click("navRoom");
  CHECK(at.text("headline") == "Too little known yet.");
  CHECK(roomSays(at, "lead") == "Needs three opened tastings of your own. So far 0.");
  at.shoot("room_empty");
  at.click("primaryButton");
  CHECK(at.page() == "Question");
}

void threeOpened(test::Window& at) {
  at.click("navRoom");
  REQUIRE(at.page() == "Room");
  CHECK(at.text("headline").starts_with("You were kinder to your own than the room was, by 3.5 points"));
  CHECK(roomOf(at).expected()->count() == 3);
  CHECK(roomOf(at).expected()->at<ui::ExpectedRow>(0).came == QStringLiteral("it came so"));
  at.click("leanNumbers");
  at.shoot("room_numbers");
  at.click("leanNumbers");
  at.click("primaryButton");
  CHECK(at.page() == "Question");
}

}  // namespace

TEST_CASE("nobody is the brewer yet, then three tastings are needed, by mouse") {
  test::Window at;
  nobodyYet(at);
  CHECK(at.complaints() == "");
}

TEST_CASE("the same page without a mouse") {
  test::Window at;
  at.useKeyboardAlone();
  nobodyYet(at);
  CHECK(at.complaints() == "");
}

TEST_CASE("three opened tastings of their own, by mouse and by keyboard alone") {
  const bool byKeyboard = GENERATE(false, true);
  const Told told(3);
  test::Window at(told.where());
  if (byKeyboard) at.useKeyboardAlone();
  threeOpened(at);
  CHECK(at.complaints() == "");
}

TEST_CASE("what is expected is written on the page of the seal, may be left empty, and is sealed") {
  const bool byKeyboard = GENERATE(false, true);
  testing::OwnEvenings evening;
  session::saveDraft(*evening.store, evening.clock, evening.pattern);
  const SessionId session = evening.session;
  evening.store.reset();
  {
    test::Window at(evening.folder.path().string(), evening.clock, evening.chance);
    if (byKeyboard) at.useKeyboardAlone();
    at.click("primaryButton");
    REQUIRE(at.page() == "Question");
    for (int step = 0; step < 4; ++step) at.click("primaryButton");
    REQUIRE(at.page() == "Seal");
    auto& draft = *at.app().findChild<ui::DraftModel*>();
    const auto says = [&](const char* property) { return draft.property(property).toString().toStdString(); };
    CHECK(says("expectationAsked") == "How likely is it, do you think, that the panel's mean puts Heather mead above Bought mead (liking)?");
    CHECK(says("expectationLine").empty());
    at.type("expectation", "120");
    CHECK(says("wrongField") == "expectation_pc");
    at.shoot("seal_expectation_wrong");
    at.type("expectation", "70");
    CHECK(says("wrongField").empty());
    CHECK(says("expectationLine") == "Written beforehand: 70 in 100 that the panel's mean puts Heather mead above Bought mead (liking).");
    at.click("expectationMore");
    CHECK(says("expectation") == "75");
    at.shoot("seal_expectation");
    at.click("primaryButton");
    REQUIRE(says("sealMark").size() > 8);
    CHECK_FALSE(at.item("expectationInput"));
    CHECK(at.complaints() == "");
  }
  const auto store = store::Store::open(evening.folder / "cellar.oddglass", store::Access::write, evening.clock, evening.chance);
  CHECK(session::record(*store, session).plan.expectationPc == 75);
}

TEST_CASE("you and the room fits in every look") {
  const auto look = GENERATE(from_range(test::looks()));
  const Told told(4);
  test::Window at(told.where());
  test::wear(at, look);
  at.click("navRoom");
  at.nextFrame();
  at.shoot("room_" + std::string(look.name));
  CHECK(test::silent(at.window().contentItem()) == "");
  CHECK(test::nameless(at.window().contentItem()) == "");
  CHECK(test::cutOff(at) == "");
  at.scrollTo(at.item("primaryButton"));
  at.nextFrame();
  at.shoot("room_" + std::string(look.name) + "_end");
  CHECK(at.complaints() == "");
}
