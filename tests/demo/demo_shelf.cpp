#include "demo/demo_shelf.h"

#include "shelf/notes.h"

using namespace oddglass;

namespace {

Beverage batch(const char* name, Kind kind, int og, int fg, int abvBp, std::set<Allergen> allergens, std::vector<TasterId> makers) {
  Beverage drink;
  drink.name = name;
  drink.kind = kind;
  drink.originalGravity = og;
  drink.finalGravity = fg;
  drink.abvBp = abvBp;
  drink.abvFrom = AbvFrom::gravities;
  drink.ingredients = {allergens.empty() ? IngredientsKnown::none : IngredientsKnown::known, std::move(allergens)};
  drink.makers = std::move(makers);
  return drink;
}

Beverage reference(const char* name, Kind kind, int abvBp, Ingredients ingredients) {
  Beverage drink;
  drink.origin = Origin::reference;
  drink.name = name;
  drink.kind = kind;
  drink.abvBp = abvBp;
  drink.abvFrom = AbvFrom::label;
  drink.ingredients = std::move(ingredients);
  return drink;
}

}  // namespace

DemoShelf::DemoShelf() {
  const std::vector<std::pair<const char*, const char*>> names{{"Wenna", ""},    {"Odo", ""},   {"Ilse", ""},   {"Bram", "Badger"}, {"Tove", "Heron"}, {"Nia", ""},
                                                               {"Ruan", "Otter"}, {"Ebba", ""}, {"Kit", "Wren"}, {"Sorrel", ""},     {"Piet", ""},      {"Maud", ""}};
  for (const auto& [name, nickname] : names) people[name] = shelf::save(*store, chance, Taster{{}, name, nickname, std::string(name) == "Wenna", false});

  const auto lot = [this](const BeverageId& beverage, const char* name, const char* packaged, const char* before, int bottleMl, int bottles, const char* storage,
                          const char* source) {
    Lot one;
    one.beverage = beverage;
    one.name = name;
    one.packagedOn = packaged;
    one.bestBefore = before;
    one.bottleMl = bottleMl;
    one.storage = storage;
    one.source = source;
    const LotId id = shelf::save(*store, chance, one);
    shelf::move(*store, clock, id, StockChange::added, bottles);
    return id;
  };
  const auto note = [this](const BeverageId& beverage, const char* day, NoteKind kind, std::optional<int> gravity, const char* text) {
    Note one;
    one.beverage = beverage;
    one.doneOn = day;
    one.kind = kind;
    one.gravity = gravity;
    one.text = text;
    shelf::add(*store, chance, one);
  };
  const TasterId wenna = people["Wenna"], odo = people["Odo"];

  const BeverageId dark = shelf::save(*store, chance, batch("Porter no. 4", Kind::beer, 10560, 10140, 560, {Allergen::gluten}, {wenna}));
  note(dark, "2026-01-17", NoteKind::reading, 10560, "brewed, pitched at 18 degrees");
  note(dark, "2026-02-01", NoteKind::reading, 10140, "steady for three days");
  note(dark, "2026-02-04", NoteKind::bottled, std::nullopt, "6 g sugar a litre");
  porter = lot(dark, "bottled 4 February", "2026-02-04", "", 500, 30, "cellar, 12 degrees", "");
  porterWarm = lot(dark, "bottled 4 February, kept warm", "2026-02-04", "", 500, 10, "pantry, 22 degrees", "");
  boughtPorter = lot(shelf::save(*store, chance, reference("Bought porter", Kind::beer, 540, {IngredientsKnown::known, {Allergen::gluten}})), "bought in March", "",
                     "2026-11-30", 500, 16, "cellar, 12 degrees", "a shop in town");

  const BeverageId windfall = shelf::save(*store, chance, batch("Windfall cider", Kind::cider, 10520, 10010, 660, {Allergen::sulphites}, {wenna, odo}));
  note(windfall, "2026-01-20", NoteKind::stabilised, std::nullopt, "half of it");
  note(windfall, "2026-01-21", NoteKind::addition, std::nullopt, "oak chips in the second half, two weeks");
  ciderMarch = lot(windfall, "plain, bottled 1 March", "2026-03-01", "", 750, 24, "cellar, 12 degrees", "");
  ciderOak = lot(windfall, "with oak, bottled 1 March", "2026-03-01", "", 750, 18, "cellar, 12 degrees", "");

  const BeverageId heather = shelf::save(*store, chance, batch("Heather mead", Kind::mead, 10950, 10080, 1190, {Allergen::sulphites}, {wenna}));
  note(heather, "2026-01-12", NoteKind::racked, std::nullopt, "clear after ten weeks");
  mead = lot(heather, "bottled 12 April", "2026-04-12", "", 750, 14, "pantry, dark", "");
  const BeverageId stall = shelf::save(*store, chance, reference("Bought mead", Kind::mead, 1150, {IngredientsKnown::notKnown, {}}));
  boughtMead = lot(stall, "younger vintage", "", "", 700, 8, "pantry, dark", "a market stall");
  boughtMeadOlder = lot(stall, "older vintage", "", "", 700, 4, "pantry, dark", "a market stall");

  const BeverageId amber = shelf::save(*store, chance, batch("Amber ale no. 7", Kind::beer, 10480, 10110, 490, {Allergen::gluten}, {wenna}));
  note(amber, "2026-05-02", NoteKind::reading, 10480, "brewed");
  note(amber, "2026-05-14", NoteKind::addition, std::nullopt, "dry hops, half for two days and half for five");
  amberShort = lot(amber, "hopped two days", "2026-05-20", "", 500, 16, "cellar, 12 degrees", "");
  amberLong = lot(amber, "hopped five days", "2026-05-20", "", 500, 16, "cellar, 12 degrees", "");
}
