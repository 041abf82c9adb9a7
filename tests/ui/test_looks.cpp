#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

TEST_CASE("every page speaks, and fits, in every look") {
  const auto look = GENERATE(from_range(test::looks()));
  // German words are longer: the narrow window holds them too.
  const bool isGerman = look.width < 1000;
  QTemporaryDir folder;
  if (isGerman) ui::Preferences(folder.filePath(QStringLiteral("window.ini"))).setLanguage(ui::Preferences::Language::Deutsch);
  test::Window at(folder.path().toStdString());
  at.app().preferences()->setLight(look.light);
  test::sealAnEvening(at, 1, 0, {}, [&] { test::chooseMethod(at, isGerman ? "Ein Dreieckstest" : "A triangle"); });
  at.click("sealPlaces");
  test::sitDown(at, 1);
  at.app().preferences()->setTextPercent(look.textPercent);
  at.window().resize(look.width, look.height);
  at.nextFrame();
  const auto walkThrough = [&](const std::string& name) {
    for (int page = 0; page <= static_cast<int>(Page::References); ++page) {
      const auto shown = static_cast<Page>(page);
      if (shown == Page::CameOut) continue;  // shown by the journey that opens the key
      at.app().router()->go(shown);
      at.settle();
      at.nextFrame();
      at.shoot(name + "_" + std::to_string(page));
      INFO("page " << page << " in " << name);
      CHECK(test::silent(at.window().contentItem()) == "");
      CHECK(test::unclear(at.window().contentItem()) == "");
      CHECK(test::nameless(at.window().contentItem()) == "");
      CHECK(test::cutOff(at) == "");
      if (at.app().preferences()->language() == ui::Preferences::Language::Deutsch) CHECK(test::notGerman(at) == "");
    }
  };
  if (isGerman) {
    walkThrough(std::string(look.name) + "_german");
    at.app().preferences()->setLanguage(ui::Preferences::Language::English);
    at.settle();
  }
  if (look.width >= 1000 || look.textPercent > 100) walkThrough(look.name);
  CHECK(at.complaints() == "");
}

TEST_CASE("what came out fits in every look") {
  const auto look = GENERATE(test::Look{"light_900", 900, 600, 100, ui::Preferences::Light::Bright}, test::Look{"dark_1280", 1280, 800, 100, ui::Preferences::Light::Dark},
                             test::Look{"dark_900_large", 900, 600, 200, ui::Preferences::Light::Dark});
  test::Window at;
  at.app().preferences()->setLight(look.light);
  at.click("primaryButton");
  REQUIRE(at.item("session0"));
  at.shoot(std::string(look.name) + "_today_demo");
  at.app().preferences()->setTextPercent(look.textPercent);
  at.window().resize(look.width, look.height);
  at.nextFrame();
  int threes = 0;
  for (int row = 0; at.item("session" + std::to_string(row)); ++row) {
    at.click("session" + std::to_string(row));
    if (at.app().router()->page() == Page::CameOut) {
      at.shoot(std::string(look.name) + "_came_out_" + std::to_string(row));
      CHECK(test::silent(at.window().contentItem()) == "");
      CHECK(test::cutOff(at) == "");
      CHECK_FALSE(at.text("headline").empty());
      // Three comparisons: each pair has its mark, its verdict and its figure.
      if (at.item("pair0Interval")) {
        ++threes;
        for (const std::string pair : {"pair0", "pair1", "pair2"}) {
          CHECK_FALSE(at.text(pair + "Headline").empty());
          CHECK(at.item(pair + "Interval"));
        }
        at.scrollTo(at.item("pair1Headline"));
        at.shoot(std::string(look.name) + "_came_out_pairs");
      }
    }
    at.app().router()->go(Page::Today);
    at.settle();
  }
  CHECK(threes == 1);
  CHECK(at.complaints() == "");
}
