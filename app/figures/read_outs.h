#pragma once

#include "figures/figure.h"
#include "figures/places.h"

namespace oddglass::figures {

/// One sentence of a figure and the box around all marks that say it.
struct ReadOut {
  std::string sentence;
  Area area;
};

/// Everything a figure tells mark by mark, each sentence once: from top to bottom, then from left to right. For stepping through it by keys.
std::vector<ReadOut> readOuts(const Figure& figure);

/// What the uppermost mark at x, y says, marks reaching `reach` points further than their ink; "" where nothing does. For pointer and finger.
std::string readOutAt(const Figure& figure, double x, double y, double reach);

}  // namespace oddglass::figures
