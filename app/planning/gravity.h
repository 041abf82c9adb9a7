#pragma once

#include <optional>

namespace oddglass::planning {

/// What two gravities say about a fermentation. Gravities are specific gravities at 20 C.
struct Fermented {
  double abv;        ///< % by volume, Hall's formula
  double abvSimple;  ///< % by volume, 131.25 times the fall
  double abw;        ///< % by weight, the weight part of Hall's formula
  std::optional<double> apparentAttenuation;  ///< share of the extract that went, as the hydrometer sees it; nothing from plain water
  double platoOg;    ///< degrees Plato
  double platoFg;
};

/// og 0.95 to 1.3, fg from 0.95 to og. Problem outOfRange (og, fg) or finalAboveOriginal (fg).
/// Sources: Hall 1995, Zymurgy (from memory): ABW = 76.08 (OG - FG) / (1.775 - OG), ABV = ABW FG / 0.794; the 131.25 rule is
/// *common practice*; attenuation (OG - FG) / (OG - 1).
Fermented fermented(double og, double fg);

/// Degrees Plato of a specific gravity 0.95 to 1.3. Source: ASBC cubic (from memory):
/// -616.868 + 1111.14 SG - 630.272 SG^2 + 135.997 SG^3.
double platoOf(double sg);

/// Specific gravity of degrees Plato, the way back by Newton's method. Range: platoOf(0.95) to platoOf(1.3), about -13 to 62.
double gravityOf(double plato);

}  // namespace oddglass::planning
