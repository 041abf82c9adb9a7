#include "cellar.h"
#include "raw_session.h"
#include "shelf/beverages.h"
#include "shelf/bring.h"
#include "shelf/lots.h"
#include "shelf/people.h"
#include "shelf/rules.h"

using namespace oddglass;
using namespace oddglass::shelf;
using testing::Cellar;
using testing::problemOf;
using testing::troubleOf;

namespace {

Beverage mead() {
  Beverage drink;
  drink.origin = Origin::batch;
  drink.kind = Kind::mead;
  drink.name = "Hedge Mead";
  drink.originalGravity = 11000;
  drink.finalGravity = 10100;
  drink.abvBp = 1200;
  drink.abvFrom = AbvFrom::gravities;
  drink.ingredients = {IngredientsKnown::known, {Allergen::sulphites, Allergen::nuts}};
  return drink;
}

struct Shelf : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;

  // The field that a drink is refused for.
  std::pair<Trouble, std::string> refused(const Beverage& drink) {
    const Problem problem = problemOf([&] { save(store, chance, drink); });
    CHECK(find(store, "").empty());
    return {problem.trouble(), problem.argument()};
  }
};

using Refusal = std::pair<Trouble, std::string>;

}  // namespace

TEST_CASE("a drink comes back as it was saved") {
  Shelf shelf;
  Beverage drink = mead();
  const TasterId maker = save(shelf.store, shelf.chance, Taster{{}, "Wren", "", true, false});
  drink.makers = {maker};
  drink.id = save(shelf.store, shelf.chance, drink);
  CHECK(looksLikeUid(drink.id.text));
  CHECK(beverage(shelf.store, drink.id) == drink);
  drink.name = "Hedge Mead, dry";
  drink.finalGravity.reset();
  drink.abvBp.reset();
  drink.abvFrom.reset();
  drink.ingredients = {IngredientsKnown::none, {}};
  drink.makers.clear();
  CHECK(save(shelf.store, shelf.chance, drink) == drink.id);
  CHECK(beverage(shelf.store, drink.id) == drink);
  CHECK(find(shelf.store, "").size() == 1);
}

TEST_CASE("every wrong field of a drink is named, and nothing is saved") {
  Shelf shelf;
  const auto with = [](auto change) {
    Beverage drink = mead();
    change(drink);
    return drink;
  };
  CHECK(shelf.refused(with([](Beverage& b) { b.name = " \t "; })) == Refusal{Trouble::empty, "name"});
  CHECK(shelf.refused(with([](Beverage& b) { b.name = std::string(201, 'x'); })) == Refusal{Trouble::tooLong, "name"});
  CHECK(shelf.refused(with([](Beverage& b) { b.originalGravity = 13001; })) == Refusal{Trouble::outOfRange, "og"});
  CHECK(shelf.refused(with([](Beverage& b) { b.finalGravity = 9499; })) == Refusal{Trouble::outOfRange, "fg"});
  CHECK(shelf.refused(with([](Beverage& b) { b.finalGravity = 11001; })) == Refusal{Trouble::finalAboveOriginal, "fg"});
  CHECK(shelf.refused(with([](Beverage& b) { b.abvBp = 9601; })) == Refusal{Trouble::outOfRange, "abv"});
  CHECK(shelf.refused(with([](Beverage& b) { b.abvBp = -1; })) == Refusal{Trouble::outOfRange, "abv"});
  CHECK(shelf.refused(with([](Beverage& b) { b.abvFrom.reset(); })) == Refusal{Trouble::empty, "abv_from"});
  CHECK(shelf.refused(with([](Beverage& b) { b.abvBp.reset(); })) == Refusal{Trouble::empty, "abv"});
  CHECK(shelf.refused(with([](Beverage& b) { b.ingredients.allergens.clear(); })) == Refusal{Trouble::empty, "allergens"});
  CHECK(shelf.refused(with([](Beverage& b) { b.ingredients.how = IngredientsKnown::none; })) == Refusal{Trouble::notAChoice, "ingredients"});
  CHECK(shelf.refused(with([](Beverage& b) { b.makers = {{std::string(32, 'a')}}; })) == Refusal{Trouble::unknown, "makers"});
  CHECK(shelf.refused(with([](Beverage& b) { b.id.text = std::string(32, 'a'); })) == Refusal{Trouble::unknown, "beverage"});
  const TasterId somebody = save(shelf.store, shelf.chance, Taster{{}, "Wren", "", false, false});
  CHECK(shelf.refused(with([&](Beverage& b) {
          b.origin = Origin::reference;
          b.makers = {somebody};
        })) == Refusal{Trouble::notAChoice, "makers"});
  const Problem problem = problemOf([&] { save(shelf.store, shelf.chance, with([](Beverage& b) { b.originalGravity = 14000; })); });
  CHECK(problem.values() == Problem::Values{{"text", "1.4"}, {"low", "0.95"}, {"high", "1.3"}});
}

TEST_CASE("a failed change leaves the drink as it was") {
  Shelf shelf;
  Beverage drink = mead();
  drink.id = save(shelf.store, shelf.chance, drink);
  Beverage changed = drink;
  changed.name = "Other";
  changed.makers = {{std::string(32, 'f')}};
  CHECK(troubleOf([&] { save(shelf.store, shelf.chance, changed); }) == Trouble::unknown);
  CHECK(beverage(shelf.store, drink.id) == drink);
}

TEST_CASE("the edges of what a drink may be are taken") {
  Shelf shelf;
  Beverage drink = mead();
  drink.name = std::string(200, 'x');
  drink.originalGravity = 13000;
  drink.finalGravity = 9500;
  drink.abvBp = 9600;
  drink.id = save(shelf.store, shelf.chance, drink);
  CHECK(beverage(shelf.store, drink.id) == drink);
  Beverage equal = mead();
  equal.finalGravity = equal.originalGravity;
  equal.abvBp = 0;
  equal.id = save(shelf.store, shelf.chance, equal);
  CHECK(beverage(shelf.store, equal.id) == equal);
}

TEST_CASE("hostile names are only names") {
  Shelf shelf;
  const std::vector<std::string> names{
      "'; DROP TABLE beverage; --", "\" OR 1=1", "%_%", "<script>alert(1)</script>", "=cmd|' /C calc'!A0", "{lot} %1 %s",
      "\xF0\x9F\x8D\xAF\xF0\x9F\x90\x9D", "\xD7\x97\xD7\x93", "a\\b/c\"d", std::string(200, '\'')};
  for (const std::string& name : names) {
    Beverage drink = mead();
    drink.name = name;
    drink.id = save(shelf.store, shelf.chance, drink);
    CHECK(beverage(shelf.store, drink.id).name == name);
    CHECK(find(shelf.store, name).size() >= 1);
  }
  CHECK(find(shelf.store, "").size() == names.size());
  CHECK(find(shelf.store, "%").size() == 2);
}

TEST_CASE("control and direction characters are dropped where they enter; length counts letters") {
  Shelf shelf;
  Beverage drink = mead();
  drink.name = std::string("a\0b\nc\xE2\x80\xAE" "d", 9);
  CHECK(beverage(shelf.store, save(shelf.store, shelf.chance, drink)).name == "ab cd");
  std::string longest;
  for (int i = 0; i < 200; ++i) longest += "\xC3\xA9";
  drink.name = longest;
  CHECK(beverage(shelf.store, save(shelf.store, shelf.chance, drink)).name == longest);
  drink.name = longest + "e";
  CHECK(troubleOf([&] { save(shelf.store, shelf.chance, drink); }) == Trouble::tooLong);
}

TEST_CASE("drinks are found by a part of the name, batches first, archived ones when asked for") {
  Shelf shelf;
  Beverage own = mead(), bought = mead(), old = mead();
  own.name = "Zeal";
  bought.name = "Caf\xC3\xA9 Stout";
  bought.origin = Origin::reference;
  old.name = "Old Stout";
  own.id = save(shelf.store, shelf.chance, own);
  bought.id = save(shelf.store, shelf.chance, bought);
  old.id = save(shelf.store, shelf.chance, old);
  archive(shelf.store, shelf.clock, old.id);
  const auto names = [&](std::string_view text, bool all) {
    std::vector<std::string> result;
    for (const OnShelf& line : find(shelf.store, text, all)) result.push_back(line.beverage.name);
    return result;
  };
  CHECK(names("", false) == std::vector<std::string>{"Zeal", "Caf\xC3\xA9 Stout"});
  CHECK(names("STOUT", false) == std::vector<std::string>{"Caf\xC3\xA9 Stout"});
  CHECK(names(" stout ", true) == std::vector<std::string>{"Old Stout", "Caf\xC3\xA9 Stout"});
  CHECK(names("CAFE\xCC\x81", false).size() == 1);
  CHECK(names("nothing", true).empty());
  CHECK(beverage(shelf.store, old.id).archived);
  bringBack(shelf.store, old.id);
  CHECK(names("old", false).size() == 1);
  CHECK(troubleOf([&] { archive(shelf.store, shelf.clock, {"x"}); }) == Trouble::unknown);
  CHECK(troubleOf([&] { beverage(shelf.store, {"x"}); }) == Trouble::unknown);
}

TEST_CASE("what a sealed session pours cannot be archived until it is over") {
  Shelf shelf;
  testing::RawSession session(shelf.store, std::string(32, '1'), State::sealed);
  const BeverageId drink{std::string(32, 'b')};
  const LotId bottles{std::string(32, 'c')};
  CHECK(troubleOf([&] { archive(shelf.store, shelf.clock, drink); }) == Trouble::stillInUse);
  CHECK(troubleOf([&] { archiveLot(shelf.store, shelf.clock, bottles); }) == Trouble::stillInUse);
  session.append(Event::abandoned);
  archiveLot(shelf.store, shelf.clock, bottles);
  archive(shelf.store, shelf.clock, drink);
  CHECK(lot(shelf.store, bottles).archived);
  CHECK(beverage(shelf.store, drink).archived);
  bringBackLot(shelf.store, bottles);
  CHECK_FALSE(lot(shelf.store, bottles).archived);
}

TEST_CASE("a record from elsewhere keeps its id and never overwrites one that is here") {
  Shelf shelf;
  Beverage drink = mead();
  drink.id.text = std::string(32, 'd');
  drink.archived = true;
  CHECK(bring(shelf.store, shelf.clock, drink));
  CHECK(beverage(shelf.store, drink.id) == drink);
  Beverage other = drink;
  other.name = "Impostor";
  CHECK_FALSE(bring(shelf.store, shelf.clock, other));
  CHECK(beverage(shelf.store, drink.id) == drink);
  other.id.text = "../../etc";
  CHECK(troubleOf([&] { bring(shelf.store, shelf.clock, other); }) == Trouble::notAChoice);
}

TEST_CASE("use cases inside one step stand or fall together") {
  Shelf shelf;
  CHECK(troubleOf([&] {
    store::write(shelf.store, [&](SQLite::Database&) {
      save(shelf.store, shelf.chance, mead());
      CHECK(find(shelf.store, "").size() == 1);
      throw Problem(Trouble::brokenReference, "lot");
    });
  }) == Trouble::brokenReference);
  CHECK(find(shelf.store, "").empty());
  store::write(shelf.store, [&](SQLite::Database&) {
    save(shelf.store, shelf.chance, mead());
    Beverage wrong = mead();
    wrong.makers = {{"nobody"}};
    CHECK(troubleOf([&] { save(shelf.store, shelf.chance, wrong); }) == Trouble::unknown);
  });
  CHECK(find(shelf.store, "").size() == 1);
}

TEST_CASE("house rules") {
  Shelf shelf;
  CHECK(rules(shelf.store) == HouseRules{20, "GB"});
  settle(shelf.store, {35, "DE"});
  CHECK(rules(shelf.store) == HouseRules{35, "DE"});
  CHECK(problemOf([&] { settle(shelf.store, {0, "DE"}); }).argument() == "ceiling_grams");
  CHECK(problemOf([&] { settle(shelf.store, {101, "DE"}); }).argument() == "ceiling_grams");
  CHECK(problemOf([&] { settle(shelf.store, {20, "de"}); }).argument() == "country");
  CHECK(rules(shelf.store) == HouseRules{35, "DE"});
}

TEST_CASE("a store opened to read shows the shelf and changes nothing") {
  Shelf shelf;
  save(shelf.store, shelf.chance, mead());
  auto reader = shelf.open(store::Access::read);
  CHECK(find(*reader, "").size() == 1);
  CHECK(troubleOf([&] { save(*reader, shelf.chance, mead()); }) == Trouble::storeReadOnly);
}
