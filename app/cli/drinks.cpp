#include "cli/families.h"
#include "domain/problem.h"
#include "planning/alcohol.h"
#include "planning/gravity.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

std::string countryOf(const Given& given) {
  std::string country = given.text();
  std::ranges::transform(country, country.begin(), [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  if (country.size() != 2 || !std::ranges::all_of(country, [](char c) { return c >= 'A' && c <= 'Z'; }))
    throw Problem(Trouble::notAChoice, given.name, {{"text", given.text()}, {"choices", "two letters such as GB, AU, NZ, CA, US, AT, FR, IE, JP"}});
  return country;
}

void describePour(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "pour", "Ethanol in some cups, in grams and in standard drinks");
  const auto volume = command.option("--volume", "ML", "Millilitres in one cup");
  const auto abv = command.option("--abv", "PCT", "Strength in per cent by volume");
  const auto cups = command.option("--cups", "N", "How many cups (1)");
  const auto country = command.option("--country", "CC", "Two letters (ISO 3166), for standard drinks");
  command.does([=](Desk&) -> Answer {
    const double ml = volume->number(0.0, 100'000.0);
    const double grams = planning::ethanolGrams(ml, abv->number(0.0, 96.0)) * cups->wholeOr(1, 0, 10'000);
    const auto standard = country->isGiven() ? planning::standardDrinkGrams(countryOf(*country)) : std::nullopt;
    Json json{{"grams", numberOrNull(grams)}, {"drinks", standard ? numberOrNull(grams / *standard) : Json()}, {"drink_grams", numberOrNull(standard)}};
    if (!standard) json["why"] = country->isGiven() ? "no standard drink is known for this country" : "no country was named";
    return {std::move(json), {}};
  });
}

/// A gravity in the unit chosen, as a specific gravity.
double gravityOf(const Given& given, bool isPlato) {
  if (!isPlato) return given.number(0.95, 1.3);
  return planning::gravityOf(given.number(planning::platoOf(0.95), planning::platoOf(1.3)));
}

void describeGravity(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "gravity", "Strength and attenuation from two gravities");
  const auto og = command.option("--og", "OG", "Original gravity");
  const auto fg = command.option("--fg", "FG", "Final gravity");
  const auto unit = command.option("--unit", "U", "sg or plato (sg)");
  command.does([=](Desk&) -> Answer {
    const bool isPlato = unit->isGiven() && unit->oneOf({"sg", "plato"}) == "plato";
    const double before = gravityOf(*og, isPlato), after = gravityOf(*fg, isPlato);
    if (after > before) throw Problem(Trouble::finalAboveOriginal, fg->name);
    const planning::Fermented found = planning::fermented(before, after);
    Json json{{"abv", numberOrNull(found.abv)}, {"formula", "Hall"}, {"abv_simple", numberOrNull(found.abvSimple)}, {"abw", numberOrNull(found.abw)},
              {"apparent_attenuation", numberOrNull(found.apparentAttenuation)}, {"plato_og", numberOrNull(found.platoOg)}, {"plato_fg", numberOrNull(found.platoFg)}};
    if (!found.apparentAttenuation) json["why"] = "plain water has no attenuation";
    return {std::move(json), {}};
  });
}

}  // namespace

void describeDrinks(CLI::App& app, Command::Work& chosen) {
  describePour(app, chosen);
  describeGravity(app, chosen);
}

}  // namespace oddglass::cli
