#include "shelf/rules.h"

#include "domain/problem.h"
#include "domain/text.h"
#include "shelf/fields.h"

#include <algorithm>

namespace oddglass::shelf {

HouseRules rules(store::Store& store) {
  return store::read(store, [](SQLite::Database& db) {
    SQLite::Statement row(db, "SELECT ceiling_g, country FROM house_rules");
    HouseRules rules;
    if (row.executeStep()) rules = {row.getColumn(0).getInt(), row.getColumn(1).getString()};
    return rules;
  });
}

void settle(store::Store& store, HouseRules rules) {
  checkWhole(rules.ceilingGrams, 1, 100, "ceiling_grams");
  if (rules.country.size() != 2 || !std::ranges::all_of(rules.country, [](char c) { return c >= 'A' && c <= 'Z'; }))
    throw Problem(Trouble::notAChoice, "country", {{"text", cleaned(rules.country)}, {"choices", "GB, DE, US ..."}});
  store::write(store, [&](SQLite::Database& db) {
    store::run(db, "UPDATE house_rules SET ceiling_g = ?, country = ?", rules.ceilingGrams, rules.country);
  });
}

}  // namespace oddglass::shelf
