#pragma once

#include "figures/figure.h"

#include <optional>

namespace oddglass::figures {

/// A box in points.
struct Area {
  double left = 0, top = 0, right = 0, bottom = 0;
  bool touches(const Area& other) const { return left < other.right && other.left < right && top < other.bottom && other.top < bottom; }
  bool holds(const Area& other) const { return other.left >= left && other.right <= right && other.top >= top && other.bottom <= bottom; }
};

/// Where the words of a point stand.
struct Place {
  Area area;
  Anchor anchor = Anchor::start;
  bool isNear = true;  ///< right beside its point
};

/// The place nearest to x, y for a block of `width` by `height` that lies in `frame` and touches nothing of `taken`; none within `furthest` points.
std::optional<Place> freePlace(double x, double y, double width, double height, double furthest, const Area& frame, const std::vector<Area>& taken);

}  // namespace oddglass::figures
