#pragma once
#include "sheet_evening.h"
#include "ui/journey.h"

#include <QTimer>
#include <catch2/catch.hpp>

namespace oddglass::test {

/// An evening of score sheets with every kind of question, poured, everybody at their place; the last place has handed in. The store is closed.
struct AllKinds : testing::SheetEvening {
  /// With `word` for every tasting word, as one that is as long as may be.
  explicit AllKinds(const std::string& word = {}) : SheetEvening(1, 0, 2) {
    using testing::asked;
    const auto named = [&](const char* name) { return word.empty() ? std::string(name) : word + ' ' + name; };
    Draft draft = asSheet({asked(ItemKind::liking, named("colour"), Part::look, false), asked(ItemKind::line, named("honey"), Part::smell),
                           asked(ItemKind::check, named("oak")), asked(ItemKind::check, named("apple")), asked(ItemKind::line, named("sweet")),
                           asked(ItemKind::magnitude, named("burn")), asked(ItemKind::justRight, named("acid")), asked(ItemKind::worst),
                           asked(ItemKind::changeOne, "", Part::main, false), asked(ItemKind::behaviour), asked(ItemKind::liking),
                           asked(ItemKind::line, named("mousy"), Part::late), asked(ItemKind::rank, "", Part::last), asked(ItemKind::split, "", Part::last),
                           asked(ItemKind::sureness, "", Part::last), asked(ItemKind::words, "", Part::last, false)});
    draft.sheet.pauseSeconds = 20;
    draft.sheet.cleanser = "water and plain bread";
    session::saveDraft(*store, clock, draft);
    sealAndSit();
    const Place last{3};
    const auto flight = tasting::nextFlight(*store, session, last).value();
    tasting::begin(*store, clock, session, last, flight.round);
    tasting::handIn(*store, clock, chance, session, filledIn(flight, [](int, int, const SheetItem& item, Slot, int cup) {
                      if (item.kind == ItemKind::worst || item.kind == ItemKind::check) return testing::Said{0};
                      if (item.kind == ItemKind::split) return testing::Said{cup == 1 ? 3 : 2};
                      if (item.kind == ItemKind::rank) return testing::Said{cup};
                      return item.kind == ItemKind::words || item.kind == ItemKind::changeOne ? testing::Said{} : testing::Said{2};
                    }));
    store.reset();
  }
};

inline ui::SheetModel& sheetOf(Window& at) { return *at.app().findChild<ui::SheetModel*>(); }

/// From the places to the first step of a place's sheet.
inline void openSheet(Window& at, int place) {
  at.click("hand" + std::to_string(place));
  INFO(at.app().notice()->message().toStdString());
  REQUIRE(at.page() == "HandOver");
  at.click("primaryButton");
  REQUIRE(at.page() == "MyCups");
  at.click("primaryButton");
  REQUIRE(at.until([&] { return at.page() == "MySheet"; }));
}

/// A pause goes by, without waiting for it.
inline void letPauseGoBy(Window& at) {
  auto* wait = at.app().findChild<QTimer*>(QStringLiteral("wait"));
  REQUIRE(wait);
  REQUIRE(wait->isActive());
  const int usual = wait->interval();
  wait->setInterval(0);
  REQUIRE(at.until([&] { return sheetOf(at).property("goReason").toString().isEmpty(); }));
  wait->setInterval(usual);
}

/// Answers a question of the step that stands there, whatever its form.
void fillIn(Window& at, int row);
/// Answers whatever the step asks and goes on; a pause goes by.
void goOn(Window& at);

}  // namespace oddglass::test
