#include "planning/alcohol.h"

#include "planning/within.h"

#include <array>
#include <utility>

namespace oddglass::planning {

double ethanolGrams(double ml, double abvPercent) {
  requireWithin("volume", ml, 0.0, 1e6);
  requireWithin("abv", abvPercent, 0.0, 96.0);
  return ml * abvPercent / 100.0 * ethanolDensity;
}

std::optional<double> standardDrinkGrams(std::string_view country) {
  static constexpr std::array<std::pair<std::string_view, double>, 9> drinks{
      {{"GB", 8}, {"AU", 10}, {"NZ", 10}, {"CA", 13.45}, {"US", 14}, {"AT", 20}, {"FR", 10}, {"IE", 10}, {"JP", 20}}};
  for (const auto& [name, grams] : drinks)
    if (name == country) return grams;
  return std::nullopt;
}

}  // namespace oddglass::planning
