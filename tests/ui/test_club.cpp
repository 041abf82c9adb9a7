// A club's table: sixty places in waves stay one tap from whatever happens.
#include "evening.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using test::Window;
using Page = ui::Router::Page;

TEST_CASE("sixty places in waves over two evenings: each wave by name, and what happens is one tap away") {
  testing::Evening evening(2, 0, 23);
  const SessionId session = evening.session;
  Draft draft = session::draft(*evening.store, session);
  draft.wave = 8;
  draft.evenings = 2;
  std::vector<TasterId> guests;
  for (int i = 1; i <= 36; ++i) guests.push_back(shelf::save(*evening.store, evening.chance, Taster{{}, "Guest " + std::to_string(i), "", false, false}));
  draft.tasters.insert(draft.tasters.end(), guests.begin(), guests.end());
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();
  session::sayPoured(*evening.store, evening.clock, session);
  evening.sitAll();
  for (int place = 25; place <= 60; ++place) evening.sit(place, guests[static_cast<std::size_t>(place - 25)]);
  for (int place = 1; place <= 60; ++place) evening.answer(place, 1);
  evening.store.reset();

  Window at(evening.folder.path().string(), evening.clock, evening.chance);
  REQUIRE(at.app().router()->page() == Page::Places);
  CHECK(at.text("headline").starts_with("Interrupted at "));
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::HandOver);
  at.app().router()->go(Page::Places);
  at.settle();
  CHECK(at.text("headline") == "Evening 1 of 2 is done.");
  CHECK(test::isShown(at, "Wave 8: places 57 to 60"));
  at.shoot("club_places");
  at.click("happenSpilled");
  at.click("happenedAt59");
  at.shoot("club_spilled");
  at.click("spilledCode0");
  CHECK_FALSE(at.app().notice()->message().isEmpty());
  at.click("bannerAway");
  at.click("happenSaid");
  at.click("heard59");
  at.click("saidKeep");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::HandOver);
  at.app().router()->go(Page::PourSheet);
  at.settle();
  at.click("primaryButton");
  at.settle();
  CHECK(test::isShown(at, "Evening 1, round 1, places 1 to 8: Heather mead"));
  at.shoot("club_pour");
  CHECK(test::cutOff(at) == "");
  CHECK(at.complaints() == "");
}
