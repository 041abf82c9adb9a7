// What is chosen for this machine: units and language.
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

std::string lotLine(test::Window& at) { return at.app().findChild<ui::BeverageModel*>()->lots()->at<ui::LotRow>(0).line.toStdString(); }

}  // namespace

TEST_CASE("amounts and gravities are told and typed in the units that were chosen, on pages that were open before and after the next start") {
  QTemporaryDir folder;
  {
    test::Window at(folder.path().toStdString());
    test::addDrink(at, "Heather mead", true, "bottled in March");
    CHECK(lotLine(at).find("750 mL") != std::string::npos);
    at.click("navKeeping");
    at.click("volumeUnit1");
    at.click("gravityUnit1");
    at.click("navShelf");
    at.click("beverage0");
    // 750 mL are 25.4 fl oz on bottles sold in the United States (27 CFR 4.72, from memory).
    CHECK(lotLine(at).find("25.4 US fl oz") != std::string::npos);
    at.click("lotEdit0");
    CHECK(at.text("lotMlInput") == "25.36");
    CHECK(test::isShown(at, "Bottle, US fl oz"));
    at.click("lotSave");
    CHECK(lotLine(at).find("25.4 US fl oz") != std::string::npos);
    at.click("noteKind0");
    at.type("noteGravity", "12");
    at.click("primaryButton");
    CHECK(at.app().findChild<ui::BeverageModel*>()->notes()->at<ui::NoteRow>(0).says.contains(QStringLiteral("12.0 °P")));
    at.click("noteKind0");
    at.type("noteGravity", "95");
    at.click("primaryButton");
    CHECK(at.app().findChild<ui::BeverageModel*>()->wrong().contains(QStringLiteral("°P")));
    CHECK(at.complaints() == "");
  }
  test::Window again(folder.path().toStdString());
  again.click("navShelf");
  again.click("beverage0");
  CHECK(lotLine(again).find("25.4 US fl oz") != std::string::npos);
  again.click("navKeeping");
  again.click("volumeUnit0");
  again.click("gravityUnit0");
  again.click("navShelf");
  again.click("beverage0");
  CHECK(lotLine(again).find("750 mL") != std::string::npos);
}

TEST_CASE("the window speaks German from the moment it is chosen, with a decimal comma, and English again") {
  test::Window at;
  test::addDrink(at, "Heather mead", true, "bottled in March");
  at.click("navKeeping");
  at.click("language2");
  CHECK(test::isShown(at, "Regal"));
  CHECK(test::isShown(at, "Sprache und Einheiten"));
  at.shoot("german_keeping");
  at.click("navShelf");
  CHECK(test::isShown(at, "Met, 11,5 %, hier gemacht. 6 Flaschen im Regal."));
  at.shoot("german_shelf");
  at.click("beverage0");
  at.click("noteKind0");
  at.type("noteGravity", "zwei");
  at.click("primaryButton");
  CHECK(at.app().findChild<ui::BeverageModel*>()->wrong().startsWith(QStringLiteral("Die Dichte: „zwei“ ist keine Zahl.")));
  // A word is found by its German name.
  at.click("navWords");
  at.type("wordsFind", "Pappe");
  CHECK(test::isShown(at, "nasse Pappe"));
  at.click("navKeeping");
  at.click("language1");
  CHECK(test::isShown(at, "Language and units"));
  CHECK_FALSE(test::isShown(at, "Regal"));
  CHECK(at.complaints() == "");
}
