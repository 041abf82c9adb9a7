#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

TEST_CASE("what may happen at a table is one tap away and goes on record") {
  test::Window at;
  test::sealAnEvening(at, 1, 1);
  at.click("sealPlaces");
  for (int place = 1; place <= 3; ++place) {
    test::sitDown(at, place);
    at.app().router()->go(Page::Places);
    at.settle();
  }
  at.click("happenSaid");
  at.click("heard0");
  at.type("saidWords", "the left one is sour");
  at.shoot("said");
  at.click("saidKeep");
  CHECK(at.app().property("board").value<QObject*>()->property("happening").toString().isEmpty());

  at.click("happenSpilled");
  at.click("happenedAt0");
  const QStringList before = at.app().property("board").value<QObject*>()->property("codesThere").toStringList();
  REQUIRE(before.size() == 3);
  at.shoot("spilled");
  at.click("spilledCode0");
  CHECK_FALSE(at.app().notice()->message().isEmpty());
  at.click("bannerAway");
  at.click("happenSpilled");
  at.click("happenedAt0");
  const QStringList after = at.app().property("board").value<QObject*>()->property("codesThere").toStringList();
  CHECK(after.value(0) != before.value(0));
  CHECK(after.value(1) == before.value(1));

  at.click("happenAside");
  at.click("happenedAt1");
  at.click("asideReason0");

  at.click("hand3");
  at.click("primaryButton");
  at.click("stopOpen");
  at.click("stopNext");
  at.shoot("stop_asked_twice");
  at.click("stopDeed");
  REQUIRE(at.app().router()->page() == Page::Places);

  at.click("happenLate");
  REQUIRE(at.app().router()->page() == Page::HandOver);
  at.click("who2");
  at.type("newName", "Gus");
  at.click("ofAge");
  at.click("careHeard");
  at.click("consents");
  at.click("shownAs2");
  at.click("primaryButton");
  CHECK(at.app().router()->page() == Page::HandOver);  // whether they heard anything is still open
  at.click("heardAbout1");
  at.shoot("late_guest");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::MyCups);
  test::taste(at, 2);
  at.click("primaryButton");

  at.click("placesClose");
  at.shoot("close_asked");
  CHECK(at.app().router()->page() == Page::Places);
  at.click("closeYes");
  REQUIRE(at.app().router()->page() == Page::OpenKey);
  at.shoot("open_key_after_mishaps");
  const QStringList told = at.app().property("key").value<QObject*>()->property("happened").toStringList();
  CHECK_FALSE(told.filter("said").isEmpty());
  CHECK(told.filter("everybody").isEmpty());  // one place heard it
  CHECK(told.filter("sour").isEmpty());       // what was said stays shut
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::CameOut);
  at.click("cameOutHistory");
  CHECK(at.text("headline") == "The record holds.");
  CHECK(at.complaints() == "");
}

TEST_CASE("mats swapped, the wrong person and answers taken back: one tap, one question, on record") {
  test::Window at;
  test::sealAnEvening(at, 1, 1);
  at.click("sealPlaces");
  const auto says = [&](const char* property) { return at.app().property("board").value<QObject*>()->property(property).toString().toStdString(); };
  const auto told = [&] {
    const std::string message = at.app().notice()->message().toStdString();
    if (!message.empty()) at.click("bannerAway");
    return message;
  };
  for (int place = 1; place <= 4; ++place) {
    test::sitDown(at, place);
    if (place == 1) test::taste(at, 0);
    at.app().router()->go(Page::Places);
    at.settle();
  }
  at.click("happenSwapped");
  at.click("happenedAt1");
  CHECK(says("comesOfIt").empty());
  at.click("otherAt2");
  CHECK_THAT(says("comesOfIt"), Catch::Contains("Neither has locked"));
  at.click("happenedConfirm");
  CHECK_THAT(told(), Catch::Contains("places 2 and 3 back"));
  at.click("happenSwapped");
  at.click("happenedAt0");
  at.click("otherAt1");
  CHECK_THAT(says("comesOfIt"), Catch::Contains("One of them has locked"));
  at.shoot("swapped");
  at.click("happenedConfirm");
  CHECK_THAT(told(), Catch::Contains("What place 1 had locked does not count."));

  at.click("happenWrong");
  at.click("happenedAt2");
  at.shoot("wrong_person");
  at.click("happenedConfirm");
  CHECK_THAT(told(), Catch::Contains("Place 3 is free again."));
  test::sitDown(at, 3);
  test::taste(at, 1);
  at.app().router()->go(Page::Places);
  at.settle();

  at.click("happenBack");
  at.click("happenedAt2");
  CHECK_THAT(says("comesOfIt"), Catch::Contains("cannot be undone"));
  at.shoot("taken_back");
  at.click("happenedConfirm");
  CHECK_THAT(told(), Catch::Contains("All answers of place 3 are gone"));

  at.click("placesClose");
  CHECK_THAT(says("closeQuestion"), Catch::Contains("Not everything is locked: "));
  at.click("closeYes");
  REQUIRE(at.app().router()->page() == Page::OpenKey);
  const QStringList happened = at.app().property("key").value<QObject*>()->property("happened").toStringList();
  CHECK_FALSE(happened.filter("Places 1 and 2 had each other's cups").isEmpty());
  CHECK_FALSE(happened.filter("The wrong person sat at place 3").isEmpty());
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::CameOut);
  CHECK(at.complaints() == "");
}

TEST_CASE("breaking the seal asks twice, wants a reason and leaves no verdict") {
  test::Window at;
  test::sealAnEvening(at, 1);
  at.click("sealPlaces");
  at.click("placesKey");
  at.click("breakSealOpen");
  at.click("breakSealNext");
  at.click("breakSealDeed");
  CHECK(at.app().router()->page() == Page::OpenKey);
  CHECK(at.app().property("key").value<QObject*>()->property("wrongField").toString() == "reason");
  at.type("endReason", "curiosity");
  at.click("breakSealOpen");
  at.click("breakSealNext");
  at.shoot("break_asked_twice");
  at.click("breakSealDeed");
  CHECK(at.app().router()->page() == Page::History);
  CHECK(at.complaints() == "");
}

TEST_CASE("a second window over the same store says so and can only leave") {
  QTemporaryDir folder;
  test::Window first(folder.path().toStdString());
  test::Window second(folder.path().toStdString());
  CHECK(second.text("headline") == "The store cannot be opened.");
  CHECK_FALSE(second.app().property("today").value<QObject*>()->property("refusal").toString().isEmpty());
  second.shoot("second_window");
}
