// What came out of a score sheet in the window: a figure with its numbers for every question, and how the cups lie to each other for those who ask.
#include "sheet_evening.h"
#include "ui/fits.h"
#include "ui/window.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using test::Window;
using testing::asked;
using testing::Said;

namespace {

/// Three drinks that lie apart in two words, by seven friends, opened.
struct ThreeDrinks : testing::SheetEvening {
  ThreeDrinks() : SheetEvening(1, 0, 7) {
    Draft draft = asSheet({asked(ItemKind::line, "honey"), asked(ItemKind::line, "acid"), asked(ItemKind::justRight, "honey"), asked(ItemKind::check, "oak"), asked(ItemKind::behaviour), asked(ItemKind::worst),
                           asked(ItemKind::liking), asked(ItemKind::rank, "", Part::last), asked(ItemKind::split, "", Part::last), asked(ItemKind::sureness, "", Part::last)});
    draft.sheet.items[0].isMain = true;
    draft.lots = {mine, another(), bought};
    draft.sheet.roles = {LotRole::compared, LotRole::compared, LotRole::reference};
    session::saveDraft(*store, clock, draft);
    sealAndSit();
    answerAll([](int place, int, const SheetItem& item, Slot slot, int cup) {
      const int mixed = (place * 5 + slot.value * 3) % 7;
      switch (item.kind) {
        case ItemKind::line: return Said{item.word == "honey" ? 20 * slot.value + mixed : 80 - 30 * (slot.value % 2) + place};
        case ItemKind::justRight: return Said{1 + mixed % 5};
        case ItemKind::check: return Said{mixed % 2};
        case ItemKind::behaviour: return Said{1 + mixed % 3};
        case ItemKind::worst: return mixed == 0 ? Said{0} : Said{{}, mixed % 2 == 0 ? "thin" : "sharp"};
        case ItemKind::liking: return Said{3 + mixed};
        case ItemKind::rank: return Said{cup};
        case ItemKind::split: return Said{cup == 1 ? 3 : 1};
        case ItemKind::sureness: return Said{1 + place % 3};
        default: return Said{};
      }
    });
    end();
    store.reset();
  }

 private:
  LotId another() {
    Beverage second;
    second.name = "Clover mead";
    second.kind = Kind::mead;
    second.abvBp = 1180;
    second.abvFrom = AbvFrom::gravities;
    second.ingredients = {IngredientsKnown::none, {}};
    second.makers = {maker};
    return addLot(shelf::save(*store, chance, second), "bottled in May");
  }
};

}  // namespace

TEST_CASE("what came out of a sheet shows a figure for every question, and on request how the cups lie to each other") {
  ThreeDrinks evening;
  Window at(evening.folder.path().string(), evening.clock, evening.chance);
  const auto look = GENERATE(test::Look{"light_1280", 1280, 800, 100, ui::Preferences::Light::Bright}, test::Look{"dark_900_large", 900, 600, 200, ui::Preferences::Light::Dark});
  test::wear(at, look);
  if (look.textPercent > 100) at.useKeyboardAlone();
  at.click("session0");
  REQUIRE(at.page() == "CameOut");
  CHECK(at.item("intervalCanvas"));  // the first drink beside the bought one
  CHECK(at.item("pair0Figure"));     // the second
  int sections = 0, figures = 0;
  for (int row = 1; at.item("pair" + std::to_string(row) + "Headline"); ++row) {
    ++sections;
    figures += at.item("pair" + std::to_string(row) + "FigureCanvas") != nullptr;
    at.scrollTo(at.item("pair" + std::to_string(row) + "Headline"));
    at.shoot("sheet_out_" + std::string(look.name) + "_" + std::to_string(row));
  }
  CHECK(sections == 10);
  CHECK(figures == 10);
  at.click("pair1FigureNumbers");
  CHECK_FALSE(at.item("map"));
  at.click("cameOutMap");
  REQUIRE(at.until([&] { return at.item("mapCanvas") != nullptr; }));
  CHECK_THAT(at.item("mapCanvas")->property("sentence").toString().toStdString(), Catch::Contains("Heather mead: "));
  at.nextFrame();
  at.scrollTo(at.item("mapCanvas"));
  at.shoot("sheet_out_" + std::string(look.name) + "_map");
  CHECK(test::silent(at.window().contentItem()) == "");
  CHECK(test::nameless(at.window().contentItem()) == "");
  CHECK(test::cutOff(at) == "");
  at.click("cameOutMap");
  CHECK_FALSE(at.item("map"));
  CHECK(at.complaints() == "");
}
