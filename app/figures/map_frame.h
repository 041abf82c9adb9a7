#pragma once

#include "figures/map.h"
#include "figures/places.h"
#include "figures/scale.h"

namespace oddglass::figures {

/// How far points and their ellipses reach, both ways, in the units of the map.
struct Reach {
  Span x, y;
};

/// The map's box, and how its units become points: as many for one component as for the other.
struct MapFrame {
  Area box;
  Reach reach;
  double unit = 1;
  double x(double value) const { return (box.left + box.right) / 2 + (value - (reach.x.low + reach.x.high) / 2) * unit; }
  double y(double value) const { return (box.top + box.bottom) / 2 - (value - (reach.y.low + reach.y.high) / 2) * unit; }
};

/// The smallest box of the full width from `top` down that holds all points and ellipses, not steeper than three quarters of its width.
MapFrame mapFrame(const std::vector<MapPoint>& points, double top, double width);

}  // namespace oddglass::figures
