#include "cellar.h"
#include "shelf/batches.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/people.h"
#include "shelf/vocabulary.h"

#include <algorithm>

using namespace oddglass;
using testing::problemOf;

namespace {

struct Recipes : testing::Cellar {
  std::unique_ptr<store::Store> store = open();

  BeverageId batch(const std::string& name, const std::string& recipe, const std::string& bottled = {}) {
    Beverage beverage;
    beverage.name = name;
    beverage.recipe = recipe;
    const BeverageId id = shelf::save(*store, chance, beverage);
    if (!bottled.empty()) lot(id, "bottles", bottled);
    return id;
  }

  LotId lot(const BeverageId& beverage, const std::string& name, const std::string& bottled) {
    Lot lot;
    lot.beverage = beverage;
    lot.name = name;
    lot.packagedOn = bottled;
    lot.bottleMl = 500;
    return shelf::save(*store, chance, lot);
  }

  WordId word(const std::string& name) {
    TastingWord word;
    word.text = name;
    word.drinks = {Kind::mead};
    return shelf::addWord(*store, clock, chance, word);
  }
};

}  // namespace

TEST_CASE("batches of a recipe are found by its name whatever its case, the oldest first") {
  Recipes at;
  const BeverageId second = at.batch("Hedge 2", "hedge MEAD", "2025-05-01"), first = at.batch("Hedge 1", "Hedge mead", "2025-01-01"), other = at.batch("Stout", "Winter stout");
  at.batch("Lonely", "");
  Beverage bought;
  bought.name = "Bought";
  bought.origin = Origin::reference;
  const BeverageId reference = shelf::save(*at.store, at.chance, bought);
  const auto recipes = shelf::recipes(*at.store);
  REQUIRE(recipes.size() == 2);
  CHECK(recipes[0].batches == 2);
  CHECK(recipes[1].name == "Winter stout");
  const auto found = shelf::batchesOf(*at.store, "hedge mead");
  REQUIRE(found.size() == 2);
  CHECK(found[0].beverage.id == first);
  CHECK(found[0].madeOn == "2025-01-01");
  CHECK(shelf::batchesOf(*at.store, "").empty());
  CHECK(shelf::batches(*at.store, {second, other, second}).size() == 2);
  CHECK(shelf::batchesMeant(*at.store, {"Hedge mead"}, "RECIPE").size() == 2);
  CHECK(shelf::batchesMeant(*at.store, {"hedge 1"}, "RECIPE").size() == 2);
  CHECK(shelf::batchesMeant(*at.store, {"Lonely"}, "RECIPE").size() == 1);
  CHECK(shelf::batchesMeant(*at.store, {"Hedge 2", "Stout"}, "RECIPE").size() == 2);
  CHECK(problemOf([&] { shelf::batchesMeant(*at.store, {"Nothing"}, "RECIPE"); }).argument() == "RECIPE");
  CHECK(problemOf([&] { shelf::batchesMeant(*at.store, {}, "RECIPE"); }).trouble() == Trouble::empty);
  CHECK(problemOf([&] { shelf::batches(*at.store, {reference}); }).argument() == "beverage");
}

TEST_CASE("a batch comes with its lots in order and with what was changed in it") {
  Recipes at;
  const BeverageId batch = at.batch("Hedge 1", "Hedge", "2025-03-01");
  at.lot(batch, "late", "2025-04-01");
  for (const char* day : {"2025-02-01", "2025-01-15"}) {
    Note note;
    note.beverage = batch;
    note.doneOn = day;
    note.kind = NoteKind::changed;
    note.text = std::string("yeast of ") + day;
    shelf::add(*at.store, at.chance, note);
  }
  Note racked;
  racked.beverage = batch;
  racked.doneOn = "2025-02-10";
  racked.kind = NoteKind::racked;
  shelf::add(*at.store, at.chance, racked);
  const Batch found = shelf::batchesOf(*at.store, "Hedge").at(0);
  CHECK(found.madeOn == "2025-01-15");
  REQUIRE(found.changed.size() == 2);
  CHECK(found.changed[0].text == "yeast of 2025-01-15");
  REQUIRE(found.lots.size() == 2);
  CHECK(found.lots[0].packagedOn == "2025-03-01");
  shelf::move(*at.store, at.clock, found.lots[0].id, StockChange::added, 4);
  CHECK(shelf::freeToPour(*at.store, {found.lots[0].id, found.lots[1].id}) == std::vector<int>{4, 0});
  shelf::archiveLot(*at.store, at.clock, found.lots[0].id);
  CHECK(shelf::freeToPour(*at.store, {found.lots[0].id}) == std::vector<int>{0});
}

TEST_CASE("a word that was asked once is told with what it counts as today") {
  Recipes at;
  const WordId hedge = at.word("hedgy"), briar = at.word("briary");
  TastingWord renamed = *shelf::wordWith(shelf::vocabulary(*at.store), hedge);
  renamed.text = "hedge-like";
  shelf::changeWord(*at.store, at.clock, renamed);
  auto now = shelf::wordsNow(*at.store, {"hedgy", "hedge-like", "briary", "nobody's word", ""});
  REQUIRE(now.size() == 5);
  CHECK(now[0].now == "hedge-like");
  CHECK(now[0].changes.size() == 1);
  CHECK(now[1].now == "hedge-like");
  CHECK(now[2].now == "briary");
  CHECK(now[2].changes.empty());
  CHECK(now[3].now == "nobody's word");
  CHECK(now[4].now.empty());
  shelf::mergeWord(*at.store, at.clock, briar, hedge);
  now = shelf::wordsNow(*at.store, {"briary", "hedge-like"});
  CHECK(now[0].now == "hedge-like");
  CHECK(now[0].changes.size() == 2);
  CHECK(now[0].changes.back().kind == WordChangeKind::merged);
}
