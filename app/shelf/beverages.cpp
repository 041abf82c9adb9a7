#include "shelf/beverages.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "shelf/fields.h"
#include "shelf/folded.h"
#include "shelf/rows.h"

#include <algorithm>
#include <tuple>

namespace oddglass::shelf {
namespace {

void checkStrength(const Beverage& drink) {
  checkGravity(drink.originalGravity, "og");
  checkGravity(drink.finalGravity, "fg");
  if (drink.originalGravity && drink.finalGravity && *drink.finalGravity > *drink.originalGravity)
    throw Problem(Trouble::finalAboveOriginal, "fg", {{"og", decimal(*drink.originalGravity, 4)}, {"fg", decimal(*drink.finalGravity, 4)}});
  if (drink.abvBp && (*drink.abvBp < 0 || *drink.abvBp > 9600))
    throw Problem(Trouble::outOfRange, "abv", {{"text", decimal(*drink.abvBp, 2)}, {"low", "0"}, {"high", "96"}});
  if (drink.abvBp && !drink.abvFrom) throw Problem(Trouble::empty, "abv_from");
  if (drink.abvFrom && !drink.abvBp) throw Problem(Trouble::empty, "abv");
}

void checkIngredients(const Ingredients& ingredients) {
  if (ingredients.how == IngredientsKnown::known && ingredients.allergens.empty()) throw Problem(Trouble::empty, "allergens");
  if (ingredients.how != IngredientsKnown::known && !ingredients.allergens.empty())
    throw Problem(Trouble::notAChoice, "ingredients", {{"text", std::string(nameOf(ingredients.how))}, {"choices", "known"}});
}

std::vector<std::int64_t> makerRows(SQLite::Database& db, const Beverage& drink) {
  if (drink.origin == Origin::reference && !drink.makers.empty())
    throw Problem(Trouble::notAChoice, "makers", {{"text", "reference"}, {"choices", "batch"}});
  std::vector<std::int64_t> rows;
  for (const TasterId& maker : drink.makers) rows.push_back(rowOf(db, Family::taster, maker.text, "makers"));
  return rows;
}

void fillLists(SQLite::Database& db, std::int64_t row, Beverage& drink) {
  auto allergens = store::bound(db, "SELECT allergen FROM beverage_allergen WHERE beverage_id = ?", row);
  while (allergens.executeStep())
    if (const auto allergen = named<Allergen>(allergens.getColumn(0).getString())) drink.ingredients.allergens.insert(*allergen);
  auto makers = store::bound(db, "SELECT t.uid FROM beverage_maker m JOIN taster t ON t.id = m.taster_id WHERE m.beverage_id = ? ORDER BY t.id", row);
  while (makers.executeStep()) drink.makers.push_back({makers.getColumn(0).getString()});
}

Beverage beverageOf(SQLite::Database& db, SQLite::Statement& row) {
  Beverage drink;
  drink.id.text = row.getColumn(1).getString();
  drink.origin = known<Origin>(row.getColumn(2));
  drink.kind = known<Kind>(row.getColumn(3));
  drink.name = row.getColumn(4).getString();
  drink.originalGravity = maybeInt(row.getColumn(5));
  drink.finalGravity = maybeInt(row.getColumn(6));
  drink.abvBp = maybeInt(row.getColumn(7));
  if (!row.getColumn(8).isNull()) drink.abvFrom = known<AbvFrom>(row.getColumn(8));
  drink.ingredients.how = known<IngredientsKnown>(row.getColumn(9));
  drink.archived = !row.getColumn(10).isNull();
  drink.recipe = row.getColumn(11).getString();
  fillLists(db, row.getColumn(0).getInt64(), drink);
  return drink;
}

constexpr const char* oneBeverage = R"(SELECT id, uid, origin, kind, name, og, fg, abv_bp, abv_from, ingredients, archived_at, recipe
  FROM beverage WHERE uid = ?)";

constexpr const char* allBeverages = R"(SELECT b.id, b.uid, b.origin, b.kind, b.name, b.og, b.fg, b.abv_bp, b.abv_from, b.ingredients, b.archived_at, b.recipe,
       (SELECT count(*) FROM lot l WHERE l.beverage_id = b.id AND l.archived_at IS NULL),
       (SELECT coalesce(sum(m.bottles), 0) FROM stock_move m JOIN lot l ON l.id = m.lot_id
         WHERE l.beverage_id = b.id AND l.archived_at IS NULL AND m.kind NOT IN ('held', 'freed')),
       (SELECT coalesce(-sum(m.bottles), 0) FROM stock_move m JOIN lot l ON l.id = m.lot_id
         WHERE l.beverage_id = b.id AND l.archived_at IS NULL AND m.kind IN ('held', 'freed'))
  FROM beverage b WHERE b.archived_at IS NULL OR ?)";

}  // namespace

void checkBeverage(Beverage& drink) {
  drink.name = text(drink.name, "name", 200, true);
  drink.recipe = text(drink.recipe, "recipe", 200, false);
  checkStrength(drink);
  checkIngredients(drink.ingredients);
}

void writeBeverage(SQLite::Database& db, const Beverage& drink) {
  const auto makers = makerRows(db, drink);
  auto put = store::bound(db, R"(INSERT INTO beverage (uid, origin, kind, name, og, fg, abv_bp, abv_from, ingredients, recipe) VALUES (?, ?, ?, ?, ?5, ?6, ?7, ?8, ?9, ?10)
      ON CONFLICT (uid) DO UPDATE SET origin = ?2, kind = ?3, name = ?4, og = ?5, fg = ?6, abv_bp = ?7, abv_from = ?8, ingredients = ?9, recipe = ?10)",
                          drink.id.text, std::string(nameOf(drink.origin)), std::string(nameOf(drink.kind)), drink.name);
  bindMaybe(put, 5, drink.originalGravity);
  bindMaybe(put, 6, drink.finalGravity);
  bindMaybe(put, 7, drink.abvBp);
  bindMaybe(put, 8, drink.abvFrom ? std::string(nameOf(*drink.abvFrom)) : std::string());
  put.bind(9, std::string(nameOf(drink.ingredients.how)));
  put.bind(10, drink.recipe);
  put.exec();
  const auto row = rowOf(db, Family::beverage, drink.id.text, "beverage");
  store::run(db, "DELETE FROM beverage_allergen WHERE beverage_id = ?", row);
  store::run(db, "DELETE FROM beverage_maker WHERE beverage_id = ?", row);
  for (Allergen allergen : drink.ingredients.allergens)
    store::run(db, "INSERT INTO beverage_allergen VALUES (?, ?)", row, std::string(nameOf(allergen)));
  for (std::int64_t maker : makers) store::run(db, "INSERT OR IGNORE INTO beverage_maker VALUES (?, ?)", row, maker);
}

BeverageId save(store::Store& store, Chance& chance, Beverage drink) {
  checkBeverage(drink);
  return store::write(store, [&](SQLite::Database& db) {
    if (drink.id.empty()) drink.id.text = newUid(chance);
    else rowOf(db, Family::beverage, drink.id.text, "beverage");
    writeBeverage(db, drink);
    return drink.id;
  });
}

std::vector<OnShelf> find(store::Store& store, std::string_view wanted, bool includeArchived) {
  const std::string part = folded(cleaned(wanted));
  std::vector<OnShelf> found = store::read(store, [&](SQLite::Database& db) {
    std::vector<OnShelf> lines;
    auto rows = store::bound(db, allBeverages, includeArchived ? 1 : 0);
    while (rows.executeStep()) {
      if (folded(rows.getColumn(4).getString()).find(part) == std::string::npos) continue;
      lines.push_back({beverageOf(db, rows), rows.getColumn(12).getInt(), rows.getColumn(13).getInt(), rows.getColumn(14).getInt()});
    }
    return lines;
  });
  std::ranges::sort(found, {}, [](const OnShelf& line) { return std::tuple(line.beverage.origin, folded(line.beverage.name), line.beverage.id); });
  return found;
}

Beverage beverage(store::Store& store, const BeverageId& id) {
  return store::read(store, [&](SQLite::Database& db) {
    auto row = store::bound(db, oneBeverage, id.text);
    if (!row.executeStep()) throw Problem(Trouble::unknown, "beverage", {{"what", "beverage"}, {"text", id.text}});
    return beverageOf(db, row);
  });
}

void archive(store::Store& store, Clock& clock, const BeverageId& id) {
  store::write(store, [&](SQLite::Database& db) {
    const auto row = rowOf(db, Family::beverage, id.text, "beverage");
    auto used = store::bound(db, R"(SELECT 1 FROM session_lot p JOIN lot l ON l.id = p.lot_id JOIN session_state s ON s.session_id = p.session_id
      WHERE l.beverage_id = ? AND s.state IN ('sealed', 'tasting', 'closed'))", row);
    if (used.executeStep()) throw Problem(Trouble::stillInUse, "beverage");
    store::run(db, "UPDATE beverage SET archived_at = ? WHERE id = ? AND archived_at IS NULL", clock.now(), row);
  });
}

void bringBack(store::Store& store, const BeverageId& id) {
  store::write(store, [&](SQLite::Database& db) {
    store::run(db, "UPDATE beverage SET archived_at = NULL WHERE id = ?", rowOf(db, Family::beverage, id.text, "beverage"));
  });
}

}  // namespace oddglass::shelf
