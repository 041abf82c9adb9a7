#include "cellar.h"
#include "domain/names.h"
#include "raw_session.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/people.h"
#include "shelf/undo.h"
#include "shelf/vocabulary.h"

#include <functional>
#include <sstream>

using namespace oddglass;
using namespace oddglass::shelf;
using testing::Cellar;
using testing::problemOf;
using testing::troubleOf;

namespace {

struct KeptShelf : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;
  KeptShelf() { rememberChanges(store); }

  BeverageId drink(const std::string& name, std::set<Allergen> allergens = {}) {
    Beverage drink;
    drink.name = name;
    if (!allergens.empty()) drink.ingredients = {IngredientsKnown::known, std::move(allergens)};
    return save(store, chance, drink);
  }
  LotId lot(const BeverageId& drink, const std::string& name) {
    Lot lot;
    lot.beverage = drink;
    lot.name = name;
    lot.bottleMl = 500;
    return save(store, chance, lot);
  }
  TasterId person(const std::string& name) {
    Taster person;
    person.name = name;
    return save(store, chance, person);
  }
  NoteId note(const BeverageId& drink, const std::string& text, std::optional<NoteId> replaces = {}) {
    Note note;
    note.beverage = drink;
    note.doneOn = "2026-05-01";
    note.text = text;
    note.replaces = replaces;
    return add(store, chance, note);
  }
  void back() { takeBack(store, clock, lastChange(store)->number); }

  /// All that the shelf shows, as text; what was put away is not there.
  std::string shown() {
    std::ostringstream all;
    for (const OnShelf& on : find(store, "", false)) {
      const Beverage drink = beverage(store, on.beverage.id);
      all << drink.name << '|' << drink.abvBp.value_or(-1) << '|' << nameOf(drink.ingredients.how) << '|' << drink.makers.size();
      for (const Allergen allergen : drink.ingredients.allergens) all << ' ' << nameOf(allergen);
      for (const Lot& lot : lotsOf(store, drink.id, false)) all << "\n  " << lot.name << '|' << lot.bottleMl << '|' << lot.bottles << '|' << lot.storage;
      for (const Note& note : notesOf(store, drink.id)) all << "\n  " << note.doneOn << '|' << nameOf(note.kind) << '|' << note.text;
      all << '\n';
    }
    for (const Taster& person : people(store)) all << person.name << '|' << person.nickname << '|' << person.isBrewer << '\n';
    for (const TastingWord& word : vocabulary(store))
      if ((word.own && !word.retired) || word.sameAs || (!word.own && word.retired)) {
        all << word.text << '|' << word.meaning << '|' << word.retired << '|' << (word.sameAs ? word.sameAs->text : "-");
        for (const Kind kind : word.drinks) all << ' ' << nameOf(kind);
        all << '\n';
      }
    return all.str();
  }
};

}  // namespace

TEST_CASE("whatever was changed on the shelf, taking it back leads through the same states the other way") {
  KeptShelf shelf;
  store::Store& store = shelf.store;
  Clock& clock = shelf.clock;
  BeverageId mead;
  LotId lot;
  NoteId note;
  TasterId wren;
  WordId heather;
  const WordId other = vocabulary(store).front().id;
  const std::vector<std::function<void()>> deeds{
      [&] { mead = shelf.drink("Heather \"mead\", o'clock"); },
      [&] { lot = shelf.lot(mead, "bottled in May"); },
      [&] { shelf::move(store, clock, lot, StockChange::added, 12); },
      [&] { shelf::move(store, clock, lot, StockChange::given, 3); },
      [&] { count(store, clock, lot, 7); },
      [&] { note = shelf.note(mead, "smells of wax"); },
      [&] { note = shelf.note(mead, "smells of honey", note); },
      [&] { withdraw(store, shelf.chance, note); },
      [&] { wren = shelf.person("Wren"); },
      [&] {
        Taster person = taster(store, wren);
        person.nickname = "W.";
        save(store, shelf.chance, person);
      },
      [&] {
        Beverage drink = beverage(store, mead);
        drink.name = "Heath";
        drink.makers = {wren};
        drink.ingredients = {IngredientsKnown::known, {Allergen::nuts, Allergen::milk}};
        save(store, shelf.chance, drink);
      },
      [&] {
        Beverage drink = beverage(store, mead);
        drink.makers.clear();
        drink.ingredients = {IngredientsKnown::known, {Allergen::milk}};
        save(store, shelf.chance, drink);
      },
      [&] {
        Lot changed = shelf::lot(store, lot);
        changed.storage = "cellar";
        changed.bottleMl = 750;
        save(store, shelf.chance, changed);
      },
      [&] { archiveLot(store, clock, lot); },
      [&] { bringBackLot(store, lot); },
      [&] { archivePerson(store, clock, wren); },
      [&] { archive(store, clock, mead); },
      [&] { bringBack(store, mead); },
      [&] {
        TastingWord word;
        word.text = "moorland";
        word.drinks = {Kind::mead, Kind::beer};
        heather = addWord(store, clock, shelf.chance, word);
      },
      [&] {
        TastingWord word = *wordWith(vocabulary(store), heather);
        word.text = "heath in bloom";
        word.drinks = {Kind::wine};
        changeWord(store, clock, word);
      },
      [&] { mergeWord(store, clock, heather, other); },
      [&] { takeApart(store, clock, heather); },
      [&] { retireWord(store, clock, heather); },
      [&] { bringBackWord(store, clock, heather); },
      [&] { retireWord(store, clock, other); }};

  std::vector<std::string> states;
  for (const auto& deed : deeds) {
    states.push_back(shelf.shown());
    deed();
  }
  for (std::size_t at = states.size(); at-- > 0;) {
    INFO("deed " << at);
    REQUIRE(lastChange(store));
    shelf.back();
    CHECK(shelf.shown() == states[at]);
  }
  CHECK_FALSE(lastChange(store));
  // The record of notes, bottles and words was only added to.
  auto foreign = store::bound(store.db(), "SELECT count(*) FROM pragma_foreign_key_check");
  foreign.executeStep();
  CHECK(foreign.getColumn(0).getInt() == 0);
}

TEST_CASE("a change says what it was about, and only the last one is taken back") {
  KeptShelf shelf;
  CHECK_FALSE(lastChange(shelf.store));
  const BeverageId mead = shelf.drink("Heather mead", {Allergen::nuts});
  const ShelfChange added = *lastChange(shelf.store);
  CHECK((added.thing == ChangedThing::drink && added.deed == ChangeDeed::added && added.name == "Heather mead"));
  archive(shelf.store, shelf.clock, mead);
  CHECK(lastChange(shelf.store)->deed == ChangeDeed::putAway);
  CHECK(troubleOf([&] { takeBack(shelf.store, shelf.clock, added.number); }) == Trouble::undoneAlready);
  CHECK(beverage(shelf.store, mead).archived);
  // What was tried and refused is no change.
  const std::int64_t before = lastChange(shelf.store)->number;
  CHECK(troubleOf([&] { shelf.drink(""); }) == Trouble::empty);
  CHECK(troubleOf([&] { archiveLot(shelf.store, shelf.clock, LotId{std::string(32, '0')}); }) == Trouble::unknown);
  CHECK(lastChange(shelf.store)->number == before);
}

TEST_CASE("what a session came to need is not taken back, and nothing of it changes") {
  KeptShelf shelf;
  const BeverageId mead = shelf.drink("Heather mead");
  const LotId lot = shelf.lot(mead, "first");
  const testing::RawSession session(shelf.store, std::string(32, 'a'));
  store::run(shelf.store.db(), "INSERT INTO session_lot SELECT ?, 2, id FROM lot WHERE uid = ?", session.row, lot.text);
  // Neither the session nor what was written with it is a change of the shelf.
  REQUIRE(lastChange(shelf.store)->name == "first");
  const Problem refused = problemOf([&] { shelf.back(); });
  CHECK(refused.trouble() == Trouble::undoDoesNotFit);
  CHECK(refused.values().at("name") == "first");
  CHECK(shelf::lot(shelf.store, lot).name == "first");
  REQUIRE(lastChange(shelf.store));

  // Bottles that the session holds cannot be taken out again.
  KeptShelf stocked;
  const LotId bottles = stocked.lot(stocked.drink("Hedge cider"), "second");
  shelf::move(stocked.store, stocked.clock, bottles, StockChange::added, 4);
  const testing::RawSession pouring(stocked.store, std::string(32, 'a'));
  store::run(stocked.store.db(), "INSERT INTO stock_move (lot_id, session_id, at, kind, bottles) SELECT id, ?, 0, 'held', -3 FROM lot WHERE uid = ?", pouring.row, bottles.text);
  CHECK(troubleOf([&] { stocked.back(); }) == Trouble::undoDoesNotFit);
  CHECK(shelf::lot(stocked.store, bottles).bottles == 4);
}

TEST_CASE("a person who sits at a table stays") {
  KeptShelf shelf;
  const TasterId wren = shelf.person("Wren");
  const testing::RawSession session(shelf.store, std::string(32, 'a'), State::tasting);
  store::run(shelf.store.db(), "INSERT INTO place_person (session_id, place, taster_id) SELECT ?, 1, id FROM taster WHERE uid = ?", session.row, wren.text);
  CHECK(troubleOf([&] { shelf.back(); }) == Trouble::undoDoesNotFit);
  CHECK(taster(shelf.store, wren).name == "Wren");
}

TEST_CASE("an erased person is in no change any more") {
  KeptShelf shelf;
  const BeverageId mead = shelf.drink("Heather mead");
  const TasterId wren = shelf.person("Wren");
  Taster renamed = taster(shelf.store, wren);
  renamed.name = "Wrenna";
  save(shelf.store, shelf.chance, renamed);
  Beverage made = beverage(shelf.store, mead);
  made.makers = {wren};
  save(shelf.store, shelf.chance, made);
  // As an erasure does it: the row goes, and what hangs on it.
  store::write(shelf.store, [&](SQLite::Database& db) { store::run(db, "DELETE FROM taster WHERE uid = ?", wren.text); });
  auto left = store::bound(shelf.store.db(), "SELECT count(*) FROM temp.undo_row WHERE coalesce(inverse, '') || coalesce(name, '') LIKE '%Wren%'");
  left.executeStep();
  CHECK(left.getColumn(0).getInt() == 0);
  REQUIRE(lastChange(shelf.store));
  CHECK(lastChange(shelf.store)->name == "Heather mead");
  shelf.back();
  CHECK(people(shelf.store, true).empty());
  CHECK_FALSE(lastChange(shelf.store));
}

TEST_CASE("a store that does not remember has nothing to take back, and a file that is opened again begins anew") {
  Cellar cellar;
  {
    const auto store = cellar.open();
    rememberChanges(*store);
    rememberChanges(*store);
    Taster person;
    person.name = "Wren";
    save(*store, cellar.chance, person);
    CHECK(lastChange(*store));
  }
  const auto store = cellar.open();
  CHECK_FALSE(lastChange(*store));
  CHECK(troubleOf([&] { takeBack(*store, cellar.clock, 1); }) == Trouble::undoneAlready);
  auto names = store::bound(store->db(), "SELECT count(*) FROM main.sqlite_schema WHERE name LIKE '%undo%'");
  names.executeStep();
  CHECK(names.getColumn(0).getInt() == 0);
}
