#pragma once

#include "planning/difference.h"
#include "planning/setup.h"

#include <optional>
#include <vector>

namespace oddglass::planning {

/// A plan's size: the people who count, and the rounds of each comparison.
struct Size {
  int people = 0;
  int rounds = 1;
  int trials() const { return people * rounds; }
};
Size sizeOf(const Setup& setup);

/// Right answers that show a difference, for a preference the votes of the larger side: one number, or for three comparisons three, for the
/// strongest, the second and the third (Holm 1979: risk alpha / 3, alpha / 2, alpha). Empty where no count reaches it, and always for same-different and
/// A-not-A, where it depends on both kinds of answers, and for plans with looks.
std::vector<std::optional<int>> neededInTurn(const Setup& setup, const Size& size);

/// Chance that anything is shown although there is nothing: exact, at most alpha (a plan with looks may pass it by a hair, as Wald's lines do).
/// Three comparisons: that any of them is, taken as independent by guessing.
double alphaActual(const Setup& setup, const Size& size);

/// Chance to show a difference, the person as the unit, spread gamma between people; `independent` as if every trial were a new person. Three
/// comparisons: for one of them by itself, held against the risk of the strongest. A preference: that the side truly preferred is shown. Plans
/// with looks: both are the independent one, since the recursion knows no persons.
struct Chance {
  double chance = 0.0;
  double independent = 0.0;
};
Chance chanceOf(const Setup& setup, const Size& size, const Difference& difference);

/// True where some answers could show a difference.
bool canShow(const Setup& setup, const Size& size);

/// How a verdict of alike stands within a limit in 1/1000: the most right answers, for three comparisons of the one with fewest, the second and the
/// third (Holm, as above), and the chance when nobody can tell: for three, of one by itself, held against the risk of the one with fewest.
struct AlikeChance {
  std::vector<std::optional<int>> largestInTurn;  ///< empty where no verdict of alike can be sought
  double chance = 0.0;
};
AlikeChance alikeChanceOf(const Setup& setup, const Size& size, int limitPm);

}  // namespace oddglass::planning
