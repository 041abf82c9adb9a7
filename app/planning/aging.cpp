#include "planning/aging.h"

#include "domain/problem.h"
#include "stats/scores/power.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace oddglass::planning {
namespace {

void requireIn(const char* argument, int value, int low, int high) {
  if (value < low || value > high)
    throw Problem(Trouble::outOfRange, argument, {{"text", std::to_string(value)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
}

void requireAging(const AgingSetup& setup) {
  requireIn("ages", static_cast<int>(setup.ages.size()), 1, 24);
  int before = -1;
  for (const int age : setup.ages) {
    requireIn("ages", age, before + 1, 36500);
    before = age;
  }
  requireIn("bottles_each", setup.bottlesEach, 1, 24);
  requireIn("reserve", setup.reserve, 0, 48);
  requireIn("people", setup.people, 0, 1000);
}

int neededFor(const AgingSetup& setup) {
  const int sittings = static_cast<int>(setup.ages.size());
  return sittings * setup.bottlesEach * (setup.control == ControlKind::twin ? 2 : 1) + setup.reserve;
}

// Fewer ages first, down to four; then a smaller reserve, down to one bottle; then three ages, the least that can hold a line.
std::optional<AgingSetup> cheaperThan(const AgingSetup& setup) {
  for (const auto& [fewest, reserve] : {std::pair(4, setup.reserve), std::pair(4, std::min(1, setup.reserve)), std::pair(3, std::min(1, setup.reserve))})
    for (int count = static_cast<int>(setup.ages.size()); count >= fewest; --count) {
      AgingSetup fewer = setup;
      fewer.ages = fewerAges(setup.ages, count);
      fewer.reserve = reserve;
      if (neededFor(fewer) <= setup.bottles) return fewer;
    }
  return std::nullopt;
}

std::optional<double> changeThatShows(const AgingSetup& setup, const Spread& spread) {
  constexpr double points = 8.0;
  if (setup.people < 3) return std::nullopt;
  const double both = std::sqrt(2.0);
  const stats::ScorePlan plan{setup.people, 2, 1, both * spread.interaction * points, both * spread.repeat * points};
  const auto smallest = stats::scorePower(plan, 0.0, 0.05).smallestDifference;
  return smallest && *smallest <= points ? smallest : std::nullopt;
}

}  // namespace

const std::vector<int>& usualAges() {
  static const std::vector<int> ages{14, 30, 61, 91, 183, 365};
  return ages;
}

std::vector<int> fewerAges(const std::vector<int>& ages, int count) {
  const int all = static_cast<int>(ages.size());
  if (count >= all || count < 2) return ages;
  std::vector<int> kept;
  for (int i = 0; i < count; ++i) kept.push_back(ages[static_cast<std::size_t>((i * (all - 1) + (count - 1) / 2) / (count - 1))]);
  return kept;
}

AgingOutlook agingOutlook(const AgingSetup& setup, const Spread& spread) {
  requireAging(setup);
  const int sittings = static_cast<int>(setup.ages.size());
  AgingOutlook outlook;
  outlook.batchBottles = sittings * setup.bottlesEach + setup.reserve;
  outlook.controlBottles = setup.control == ControlKind::none ? 0 : sittings * setup.bottlesEach;
  outlook.needed = neededFor(setup);
  const auto warn = [&](bool holds, AgingWarning warning) {
    if (holds) outlook.warnings.push_back(warning);
  };
  warn(outlook.needed > setup.bottles, AgingWarning::tooFewBottles);
  warn(setup.control == ControlKind::none, AgingWarning::noControl);
  warn(setup.control == ControlKind::reference, AgingWarning::referenceAges);
  warn(sittings < 3, AgingWarning::dotsOnly);
  warn(sittings >= 3 && sittings < 6, AgingWarning::noPeak);
  warn(setup.people < 3, AgingWarning::fewPeople);
  if (outlook.needed > setup.bottles) outlook.cheaper = cheaperThan(setup);
  outlook.smallestChange = changeThatShows(setup, spread);
  return outlook;
}

}  // namespace oddglass::planning
