#include "planning/gravity.h"

#include "domain/problem.h"
#include "planning/within.h"

#include <cmath>

namespace oddglass::planning {

namespace {

constexpr double lowest = 0.95, highest = 1.3;

double cubic(double sg) { return -616.868 + sg * (1111.14 + sg * (-630.272 + sg * 135.997)); }

}  // namespace

double platoOf(double sg) {
  requireWithin("gravity", sg, lowest, highest);
  return cubic(sg);
}

double gravityOf(double plato) {
  requireWithin("plato", plato, cubic(lowest), cubic(highest));
  double sg = 1.0 + plato / 250.0;
  for (int step = 0; step < 20; ++step) sg -= (cubic(sg) - plato) / (1111.14 + sg * (-2.0 * 630.272 + sg * 3.0 * 135.997));
  return sg;
}

Fermented fermented(double og, double fg) {
  requireWithin("og", og, lowest, highest);
  requireWithin("fg", fg, lowest, highest);
  if (fg > og) throw Problem(Trouble::finalAboveOriginal, "fg");
  Fermented result{};
  result.abw = 76.08 * (og - fg) / (1.775 - og);
  result.abv = result.abw * fg / 0.794;
  result.abvSimple = 131.25 * (og - fg);
  if (og > 1.0) result.apparentAttenuation = (og - fg) / (og - 1.0);
  result.platoOg = platoOf(og);
  result.platoFg = platoOf(fg);
  return result;
}

}  // namespace oddglass::planning
