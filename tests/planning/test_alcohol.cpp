#include "planning/alcohol.h"
#include "planning/gravity.h"

#include "domain/problem.h"
#include "stats/cases.h"

#include <cmath>
#include <map>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

namespace {

constexpr double fluidOunceMl = 29.5735295625;  // US fluid ounce by definition (231 cubic inches a gallon)

void checkGravity(const checks::Json& c) {
  const auto& out = c["expected"];
  const double tolerance = c["tolerance"]["abs"];
  const Fermented found = fermented(c["inputs"]["OG"], c["inputs"]["FG"]);
  CHECK_THAT(found.abv, WithinAbs(out["abv_hall"].get<double>(), tolerance));
  CHECK_THAT(found.abvSimple, WithinAbs(out["abv_simple_131.25"].get<double>(), tolerance));
  CHECK_THAT(found.apparentAttenuation.value(), WithinAbs(out["apparent_attenuation"].get<double>(), tolerance));
  CHECK_THAT(found.platoOg, WithinAbs(out["plato_OG"].get<double>(), tolerance));
  CHECK_THAT(found.platoFg, WithinAbs(out["plato_FG"].get<double>(), tolerance));
  // Balling's real extract and its two strengths are another model and not offered; ours must lie within one part in twenty of it.
  CHECK_THAT(found.abv, WithinAbs(out["abv_balling"].get<double>(), 0.05 * out["abv_balling"].get<double>() + 1e-9));
  CHECK_THAT(found.abw, WithinAbs(out["abw_balling"].get<double>(), 0.05 * out["abw_balling"].get<double>() + 1e-9));
  checks::requireAllSeen(out, {"abv_hall", "abv_simple_131.25", "apparent_attenuation", "plato_OG", "plato_FG", "abv_balling", "abw_balling", "real_extract"});
}

void checkEthanol(const checks::Json& c) {
  const auto& in = c["inputs"];
  const auto& out = c["expected"];
  const double tolerance = c["tolerance"]["abs"];
  const double ml = in.contains("us_fl_oz") ? in["us_fl_oz"].get<double>() * fluidOunceMl : in["volume_ml"].get<double>();
  const double grams = ethanolGrams(ml, in["abv_percent"]);
  static const std::map<std::string, std::string> drinks{
      {"au_drinks_10g", "AU"}, {"us_drinks_14g", "US"}, {"ca_drinks_13.45g", "CA"}, {"jp_drinks_20g", "JP"}};
  for (const auto& [key, value] : out.items()) {
    INFO(key);
    if (key == "grams" || key == "grams_0.789")
      CHECK_THAT(grams, WithinAbs(value.get<double>(), tolerance));
    else if (key == "ml_ethanol")
      CHECK_THAT(grams / ethanolDensity, WithinAbs(value.get<double>(), tolerance));
    else if (key == "uk_units_10ml" || key == "uk_units")
      // A British unit is 10 mL; the program counts it as its rounded 8 g, which is 1.4 % more drinks.
      CHECK_THAT(grams / *standardDrinkGrams("GB"), WithinAbs(value.get<double>(), value.get<double>() * 0.015));
    else if (drinks.contains(key))
      CHECK_THAT(grams / *standardDrinkGrams(drinks.at(key)), WithinAbs(value.get<double>(), tolerance));
    else
      FAIL("no check looks at this figure");
  }
}

void checkStandardDrink(const checks::Json& c) {
  static const std::map<std::string, std::string> codes{{"Australia", "AU"}, {"New Zealand", "NZ"}, {"United States", "US"}, {"Canada", "CA"},
                                                        {"Japan", "JP"},     {"France", "FR"},      {"Ireland", "IE"}};
  const auto country = c["inputs"]["country"].get<std::string>();
  if (country == "WHO AUDIT") return;  // the example of a questionnaire, no country
  REQUIRE(codes.contains(country));
  const double grams = standardDrinkGrams(codes.at(country)).value();
  CHECK_THAT(grams, WithinAbs(c["expected"]["grams"].get<double>(), 1e-12));
  CHECK_THAT(grams / ethanolDensity, WithinAbs(c["expected"]["ml_ethanol_approx"].get<double>(), c["tolerance"]["abs"].get<double>()));
  checks::requireAllSeen(c["expected"], {"grams", "ml_ethanol_approx"});
}

}  // namespace

// Sources beside each case in alcohol.json.
TEST_CASE("strength, grams and standard drinks") {
  for (const auto& c : checks::family("alcohol")) {
    INFO(c["id"]);
    if (c["inputs"].contains("OG"))
      checkGravity(c);
    else if (c["inputs"].contains("country"))
      checkStandardDrink(c);
    else
      checkEthanol(c);
  }
}

TEST_CASE("three 30 mL cups hold 3.6 g at 5 % and 8.5 g at 12 %") {
  CHECK_THAT(ethanolGrams(90, 5), WithinAbs(3.6, 0.05));
  CHECK_THAT(ethanolGrams(90, 12), WithinAbs(8.5, 0.05));
  CHECK(standardDrinkGrams("GB") == 8.0);
  CHECK(standardDrinkGrams("AT") == 20.0);
  CHECK_FALSE(standardDrinkGrams("DE").has_value());
  CHECK_FALSE(standardDrinkGrams("gb").has_value());
}

TEST_CASE("Plato is the way back from gravity") {
  // 12 degrees Plato is 1.0484 in any brewer's table (ASBC tables: 1.04838).
  CHECK_THAT(gravityOf(12.0), WithinAbs(1.0484, 1e-4));
  for (double sg = 0.95; sg <= 1.3; sg += 0.01) CHECK_THAT(gravityOf(platoOf(sg)), WithinAbs(sg, 1e-10));
}

TEST_CASE("gravities that cannot be are refused by name") {
  const auto troubleOf = [](double og, double fg) -> std::pair<Trouble, std::string> {
    try {
      fermented(og, fg);
    } catch (const Problem& problem) {
      return {problem.trouble(), problem.argument()};
    }
    return {Trouble::empty, "nothing was refused"};
  };
  CHECK(troubleOf(1.010, 1.050) == std::pair{Trouble::finalAboveOriginal, std::string("fg")});
  CHECK(troubleOf(1.5, 1.0) == std::pair{Trouble::outOfRange, std::string("og")});
  CHECK(troubleOf(12.0, 3.0) == std::pair{Trouble::outOfRange, std::string("og")});
  CHECK(troubleOf(1.05, 0.5) == std::pair{Trouble::outOfRange, std::string("fg")});
  CHECK(troubleOf(std::nan(""), 1.0) == std::pair{Trouble::outOfRange, std::string("og")});
  CHECK_FALSE(fermented(1.0, 1.0).apparentAttenuation.has_value());
  CHECK(fermented(1.05, 1.05).abv == 0.0);
  CHECK_THROWS_AS(ethanolGrams(-1, 5), Problem);
  CHECK_THROWS_AS(ethanolGrams(10, 97), Problem);
  CHECK_THROWS_AS(gravityOf(80.0), Problem);
}
