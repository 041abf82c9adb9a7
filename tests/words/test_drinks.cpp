#include "domain/names.h"
#include "words/drinks.h"

#include <catch2/catch.hpp>

#include <set>

using namespace oddglass;
using namespace oddglass::words;

namespace {

template <class E, class Name>
void allNamed(Name name) {
  std::set<std::string> seen;
  for (const E each : allOf<E>()) {
    const std::string text = name(Voice{}, each);
    INFO(text);
    CHECK_FALSE(text.empty());
    CHECK(seen.insert(text).second);
  }
}

}  // namespace

TEST_CASE("every kind of thing has a name of its own") {
  allNamed<Kind>(static_cast<std::string (*)(const Voice&, Kind)>(kindName));
  allNamed<Origin>(originName);
  allNamed<AbvFrom>(strengthFrom);
  allNamed<NoteKind>(noteKindName);
  allNamed<StockChange>(stockChangeName);
  allNamed<ShownAs>(shownAsName);
  allNamed<Sureness>(surenessName);
  allNamed<Clue>(clueName);
}

TEST_CASE("ingredients: known, none, not known") {
  CHECK(ingredientsName(Voice{}, {IngredientsKnown::known, {Allergen::egg, Allergen::sulphites}}) == "egg and sulphites");
  CHECK(ingredientsName(Voice{}, {IngredientsKnown::none, {}}) == "none of the fourteen");
  CHECK(ingredientsName(Voice{}, {IngredientsKnown::notKnown, {}}) == "not known");
}

TEST_CASE("age is counted in days, over a leap day too") {
  constexpr Millis firstOfMarch2024 = 1709251200000;  // 2024-03-01T00:00:00Z
  CHECK(age(Voice{}, "2024-02-28", firstOfMarch2024) == "2 days");
  CHECK(age(Voice{}, "2024-02-29", firstOfMarch2024 + 1) == "1 day");
  CHECK(age(Voice{}, "2024-03-01", firstOfMarch2024) == "0 days");
  CHECK(age(Voice{}, "2024-03-02", firstOfMarch2024) == "not known");
  CHECK(age(Voice{}, "", firstOfMarch2024) == "not known");
  CHECK(age(Voice{}, "2023-02-29", firstOfMarch2024) == "not known");
}
