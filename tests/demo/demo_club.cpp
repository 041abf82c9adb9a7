#include "demo/demo_club.h"

#include "demo/demo_table.h"
#include "session/erase.h"

using namespace oddglass;

namespace {

LotId copperAle(DemoShelf& demo) {
  Beverage ale;
  ale.name = "Copper ale";
  ale.kind = Kind::beer;
  ale.originalGravity = 10500;
  ale.finalGravity = 10120;
  ale.abvBp = 500;
  ale.abvFrom = AbvFrom::gravities;
  ale.ingredients = {IngredientsKnown::known, {Allergen::gluten}};
  ale.makers = {demo.people.at("Bram")};
  Lot lot;
  lot.beverage = shelf::save(*demo.store, demo.chance, ale);
  lot.name = "bottled 2 June";
  lot.packagedOn = "2026-06-02";
  lot.bottleMl = 500;
  lot.storage = "cellar, 12 degrees";
  const LotId id = shelf::save(*demo.store, demo.chance, lot);
  shelf::move(*demo.store, demo.clock, id, StockChange::added, 20);
  return id;
}

}  // namespace

PlayedEvening playClub(DemoShelf& demo) {
  demo.chance = testing::FixedChance(20260806);
  std::vector<const char*> names{"Wenna", "Bram", "Ilse", "Tove", "Nia", "Ruan", "Ebba", "Kit", "Sorrel", "Piet", "Maud"};
  for (const char* guest : {"Alder", "Birk", "Clova", "Dane", "Esker", "Fern", "Gale", "Hollis", "Idris", "Juno", "Lark", "Moss", "Quill"}) {
    demo.people[guest] = shelf::save(*demo.store, demo.chance, Taster{{}, guest, "", false, false});
    names.push_back(guest);
  }
  Draft draft;
  draft.title = "Two ambers at the club: can anyone tell them apart?";
  draft.guestTitle = "An evening with beer";
  draft.lots = {demo.amberShort, copperAle(demo)};
  draft.methodChosen = true;
  draft.pourer = demo.people.at("Odo");
  draft.cupMl = 20;
  draft.wave = 6;
  draft.giveAways = GiveAways{{GiveAway::foam, WayOut::mend}, {GiveAway::haze, WayOut::mend}, {GiveAway::hadBefore, WayOut::anyMeans}};
  draft.promises = {{Outcome::shown, "pour them as pairs and ask which is more bitter"}, {Outcome::notShown, "brew one of the two only"}};
  DemoTable table(demo, draft, names, 1786042800000);  // 6 August 2026, 19:00 UTC
  table.round("101101011010101011011001");
  return {table.end("pairs on bitterness, at the next meeting"), "A club of 24 in four waves of six: both makers stand beside the panel, of the other 22 thirteen are right, and twelve are needed."};
}

PlayedEvening playMishaps(DemoShelf& demo) {
  demo.chance = testing::FixedChance(20260813);
  Draft draft;
  draft.title = "Porter: did the warm pantry change it?";
  draft.guestTitle = "An evening with dark beer";
  draft.lots = {demo.porter, demo.porterWarm};
  draft.methodChosen = true;
  draft.pourer = demo.people.at("Odo");
  draft.cupMl = 15;
  draft.rounds = 2;
  draft.spares = 2;
  draft.giveAways = GiveAways{{GiveAway::sediment, WayOut::mend}};
  draft.promises = {{Outcome::shown, "keep the next one cool"}, {Outcome::notShown, "ask again, on a quieter evening"}};
  DemoTable table(demo, draft, eightAndWenna, 1786647600000);  // 13 August 2026, 19:00 UTC
  auto& store = *demo.store;
  const SessionId& id = table.session;
  const auto said = [&](const std::set<Place>& heardBy, const char* words) { tasting::said(store, demo.clock, demo.chance, id, heardBy, words); };
  const auto swapped = [&](int one, int other) { tasting::matsSwapped(store, demo.clock, demo.chance, id, {one}, {other}, table.next(other).round); };

  // The first round.
  table.begin(1);
  table.later(1);
  tasting::wrongPerson(store, demo.clock, demo.chance, id, {3});
  table.sit(3, "Piet", ShownAs::loose);
  table.sit(10, "Tove");
  swapped(1, 2);
  for (const int place : {1, 2, 3}) table.answer(place, place != 2);
  tasting::spilled(store, demo.clock, id, table.next(4).cups[1].code);
  table.answer(4, true);
  said({{5}, {6}}, "one of these is the sour one");
  table.answer(5, true);
  table.answer(6, false);
  table.sit(11, "Maud", ShownAs::nickname, true);
  table.answer(7, true);
  swapped(7, 8);
  table.answer(8, false);
  table.later(-30);  // somebody set the computer's clock
  table.answer(9, true);
  tasting::setAside(store, demo.clock, demo.chance, id, {10}, {1}, VoidReason::misread, "4?1, or 417");
  table.answer(11, false);

  // The second.
  session::openPourSheet(store, demo.clock, id);
  session::pouredReally(store, demo.clock, demo.chance, id, table.next(11).cups[0].code, std::nullopt);
  table.answer(1, true);
  table.answer(2, true);
  tasting::stopHere(store, demo.clock, id, {4});
  session::takeBack(store, demo.clock, id, {5}, true);
  table.answer(6, true);
  tasting::wrongPerson(store, demo.clock, demo.chance, id, {6});
  for (const int place : {7, 8, 9, 10}) table.answer(place, place != 8);
  return {table.end("nothing follows from an evening like that but a quieter one"),
          "Everything that can go wrong at a table, on one evening: what is left is counted, and the record says what happened."};
}
