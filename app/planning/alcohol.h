#pragma once

#include <optional>
#include <string_view>

namespace oddglass::planning {

/// Density of ethanol at 20 C, g/mL. Source: the usual rounded value of 0.7893.
inline constexpr double ethanolDensity = 0.789;

/// Grams of ethanol in `ml` of a drink of `abvPercent` % by volume: mL x ABV / 100 x 0.789.
/// ml 0 to 1,000,000, abvPercent 0 to 96; Problem(outOfRange) names the argument otherwise.
double ethanolGrams(double ml, double abvPercent);

/// Grams of ethanol in one standard drink of a country (ISO 3166, two letters, capitals); nothing for a country that is not
/// listed. Sources: GB 8 (UK Chief Medical Officers, one unit), AU 10 (NHMRC), NZ 10 (Health NZ), CA 13.45 (Canadian Centre on
/// Substance Use), US 14 (NIAAA), AT 20 (Austrian health ministry), FR 10 (Sante publique France), IE 10 (HSE), JP 20 (health ministry).
std::optional<double> standardDrinkGrams(std::string_view country);

}  // namespace oddglass::planning
