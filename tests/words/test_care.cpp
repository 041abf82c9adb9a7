#include "words/care.h"

#include <catch2/catch.hpp>

#include "domain/names.h"

#include <algorithm>
#include <set>

using namespace oddglass;
using namespace oddglass::words;

namespace {

Ingredients known(std::set<Allergen> allergens) { return {IngredientsKnown::known, std::move(allergens)}; }
const Ingredients none{IngredientsKnown::none, {}};
const Ingredients notKnown{IngredientsKnown::notKnown, {}};

}  // namespace

TEST_CASE("allergens are one list over all cups, and no order of the drinks shows in it") {
  const Voice voice;
  CHECK(allergenList(voice, {known({Allergen::sulphites}), known({Allergen::gluten})}) == "In one cup or another: cereals with gluten and sulphites.");
  CHECK(allergenList(voice, {known({Allergen::gluten}), known({Allergen::sulphites})}) ==
        allergenList(voice, {known({Allergen::sulphites}), known({Allergen::gluten})}));
  CHECK(allergenList(voice, {known({Allergen::gluten}), none}) == allergenList(voice, {none, known({Allergen::gluten})}));
  CHECK(allergenList(voice, {none, none}) == "None of the fourteen listed allergens is named for these drinks. That is not “free of”: traces cannot be ruled out.");
}

TEST_CASE("not known is said aloud") {
  const Voice voice;
  CHECK_THAT(allergenList(voice, {known({Allergen::nuts}), notKnown}), Catch::Contains("nuts") && Catch::Contains("not known"));
  CHECK_THAT(allergenList(voice, {none, notKnown}), Catch::Contains("Say it aloud: not known."));
  CHECK_THAT(allergenList(voice, {}), Catch::Contains("not known"));
}

TEST_CASE("the care page holds the usual cautions") {
  const Voice voice;
  const CarePage page = care(voice, {{known({Allergen::gluten}), notKnown}, 7.1, 0.89, 8.0});
  std::string all;
  for (const std::string& line : page.all()) all += line + '\n';
  // What people who run tastings must be told (after ASTM E1879 and health bodies; EU list of allergens): common practice.
  for (const char* word : {"Adults", "pouring first", "Spit", "water", "way home", "pregnancy", "doctor or pharmacist", "local law", "stop at any time", "asthma", "7.1 g", "not known"}) {
    INFO(word);
    CHECK_THAT(all, Catch::Contains(word));
  }
  for (const char* word : {"safe", "blood"}) CHECK_THAT(all, !Catch::Contains(word));
  CHECK(care(voice, {{none}, 3.6, std::nullopt, std::nullopt}).sulphite.empty());
  CHECK_FALSE(care(voice, {{known({Allergen::sulphites})}, 3.6, std::nullopt, std::nullopt}).sulphite.empty());
}

TEST_CASE("the amount is the most, and rounding never makes it less") {
  const Voice voice;
  CHECK(amountLine(voice, 7.101, 0.8876, 8.0) == "Up to 7.2 g of alcohol a person if everything is swallowed: 0.9 standard drinks of 8 g.");
  CHECK(amountLine(voice, 7.1, std::nullopt, std::nullopt) == "Up to 7.1 g of alcohol a person if everything is swallowed.");
  CHECK_THAT(amountLine(voice, 13.45, 1.0, 13.45), Catch::Contains("1.0 standard drinks of 13.45 g"));
}

TEST_CASE("every allergen has a name") {
  const Voice voice;
  std::set<std::string> names;
  for (const Allergen each : allOf<Allergen>()) CHECK(names.insert(allergenName(voice, each)).second);
  CHECK(names.size() == 14);  // Regulation (EU) No 1169/2011, annex II
}

TEST_CASE("fewer than four friends are told that they will be guessed") {
  const Voice voice;
  CHECK_THAT(placeQuestions(voice, 3).fewFriends, Catch::Contains("With 3 people") && Catch::Contains("guessed"));
  CHECK_THAT(placeQuestions(voice, 1).fewFriends, Catch::Contains("one person"));
  CHECK(placeQuestions(voice, 4).fewFriends.empty());
}
