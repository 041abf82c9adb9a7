#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

TEST_CASE("a whole evening by mouse, from an empty store to a verdict") {
  test::Window at;
  at.shoot("today_empty");
  test::sealAnEvening(at, 2);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::PourSheet);
  at.shoot("pour_door");
  at.click("primaryButton");
  at.shoot("pour_sheet");
  // Cups first, bottle by bottle; the codes for spilled cups come after all of them, under a heading of their own.
  ui::Rows& cups = *at.app().property("pour").value<ui::PourModel*>()->cups();
  bool inSpares = false;
  for (int row = 0; row < cups.rowCount(); ++row) {
    const auto cup = cups.at<ui::PourRow>(row);
    if (cup.spare && !inSpares) CHECK(cup.section.contains(QStringLiteral("Spare codes")));
    inSpares = inSpares || cup.spare;
    CHECK(cup.spare == inSpares);
  }
  CHECK(inSpares);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Places);
  at.shoot("places_empty");
  for (int place = 1; place <= 5; ++place) {
    test::sitDown(at, place);
    for (int round = 1; round <= 2; ++round) {
      test::taste(at, 1);
      at.click("primaryButton");
    }
    REQUIRE(at.app().router()->page() == Page::Places);
    if (place == 3) at.shoot("places");
  }
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
  at.click("reportWrite");
  CHECK_FALSE(at.app().property("cameOut").value<QObject*>()->property("told").toString().isEmpty());
  at.click("cameOutHistory");
  at.shoot("history");
  CHECK(at.text("headline") == "The record holds.");
  at.click("navKeeping");
  at.click("primaryButton");
  at.shoot("keeping");
  INFO(at.complaints());
  CHECK(at.complaints().empty());
}

TEST_CASE("a whole evening by keyboard alone, from an empty store to a verdict") {
  test::Window at;
  at.useKeyboardAlone();
  test::sealAnEvening(at, 1);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::PourSheet);
  at.click("primaryButton");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Places);
  for (int place = 1; place <= 5; ++place) {
    test::sitDown(at, place);
    test::taste(at, 2);
    at.click("primaryButton");
    REQUIRE(at.app().router()->page() == Page::Places);
  }
  at.click("primaryButton");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::CameOut);
  REQUIRE(at.tabTo("intervalCanvas"));
  at.key(Qt::Key_Right);
  CHECK_FALSE(at.item("intervalCanvas")->property("readOut").toString().isEmpty());
  at.click("primaryButton");
  at.type("decision", "Pour it again in June");
  at.click("primaryButton");
  at.click("cameOutHistory");
  CHECK(at.text("headline") == "The record holds.");
  CHECK(at.complaints() == "");
}

TEST_CASE("a program that went away comes back at the places, never at a sheet or a cup") {
  QTemporaryDir folder;
  {
    test::Window at(folder.path().toStdString());
    test::sealAnEvening(at, 1);
    at.click("primaryButton");
    at.click("primaryButton");
    at.click("primaryButton");
    test::sitDown(at, 1);
    at.click("primaryButton");
    at.click("cup0");
    REQUIRE(at.app().router()->page() == Page::MyCups);
  }
  test::Window again(folder.path().toStdString());
  CHECK(again.app().router()->page() == Page::Places);
  CHECK(again.item("hand1"));
  again.click("hand1");
  again.click("primaryButton");
  CHECK(again.app().router()->page() == Page::MyCups);
  CHECK_FALSE(again.item("cup0")->property("chosen").toBool());
  CHECK(again.complaints().empty());
}

TEST_CASE("the pour sheet is forgotten as soon as it is left") {
  test::Window at;
  test::sealAnEvening(at, 1);
  at.click("primaryButton");
  at.click("primaryButton");
  auto* pour = at.app().property("pour").value<QObject*>();
  REQUIRE(pour->property("opened").toBool());
  REQUIRE(pour->property("cups").value<ui::Rows*>()->count() > 0);
  at.click("pourLeave");
  CHECK_FALSE(pour->property("opened").toBool());
  CHECK(pour->property("cups").value<ui::Rows*>()->count() == 0);
  CHECK(pour->property("lotNames").toStringList().isEmpty());
}

TEST_CASE("a cup is chosen, described and locked by keyboard alone") {
  test::Window at;
  test::sealAnEvening(at, 1);
  at.click("sealPlaces");
  test::sitDown(at, 1);
  REQUIRE(at.tabTo("primaryButton"));
  at.key(Qt::Key_Return);
  at.key(Qt::Key_2);
  CHECK(at.item("cup1")->property("chosen").toBool());
  REQUIRE(at.tabTo("sureness0"));
  at.key(Qt::Key_Right);
  at.key(Qt::Key_Space);
  REQUIRE(at.tabTo("clue0"));
  at.key(Qt::Key_Space);
  REQUIRE(at.tabTo("primaryButton"));
  at.key(Qt::Key_Space);
  CHECK(at.app().router()->page() == Page::Locked);
  CHECK(at.complaints().empty());
}

TEST_CASE("a wrong field is named beside it and nothing is lost") {
  test::Window at;
  at.click("navShelf");
  at.click("primaryButton");
  at.type("name", "Oat stout");
  at.type("og", "lots");
  at.click("primaryButton");
  auto* drink = at.app().property("beverage").value<QObject*>();
  CHECK(drink->property("wrongField").toString() == "og");
  CHECK(drink->property("wrong").toString().contains("lots"));
  CHECK(drink->property("name").toString() == "Oat stout");
  at.shoot("wrong_field");
  at.type("og", "1,055");
  at.click("primaryButton");
  CHECK(drink->property("wrongField").toString().isEmpty());
  CHECK(at.text("headline") == "Oat stout");
}

TEST_CASE("stabilising a second time is asked about") {
  test::Window at;
  test::addDrink(at, "Apple wine", true, "first");
  for (int time = 0; time < 2; ++time) {
    at.click("noteKind2");
    at.click("primaryButton");
  }
  auto* drink = at.app().property("beverage").value<QObject*>();
  CHECK_FALSE(drink->property("again").toString().isEmpty());
  CHECK(drink->property("notes").value<ui::Rows*>()->count() == 1);
  at.shoot("stabilised_again");
  at.click("againYes");
  CHECK(drink->property("notes").value<ui::Rows*>()->count() == 2);
}
