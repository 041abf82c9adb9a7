#include "figures/map_frame.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace oddglass::figures {
namespace {

Reach reachOf(const std::vector<MapPoint>& points) {
  if (points.empty()) return {{0, 0}, {0, 0}};
  Reach reach{{points[0].x, points[0].x}, {points[0].y, points[0].y}};
  for (const MapPoint& point : points) {
    double ex = 0, ey = 0;
    if (point.ellipse) {
      const double turn = point.ellipse->turn * std::numbers::pi / 180;
      ex = std::hypot(point.ellipse->rx * std::cos(turn), point.ellipse->ry * std::sin(turn));
      ey = std::hypot(point.ellipse->rx * std::sin(turn), point.ellipse->ry * std::cos(turn));
    }
    reach.x = {std::min(reach.x.low, point.x - ex), std::max(reach.x.high, point.x + ex)};
    reach.y = {std::min(reach.y.low, point.y - ey), std::max(reach.y.high, point.y + ey)};
  }
  return reach;
}

}  // namespace

MapFrame mapFrame(const std::vector<MapPoint>& points, double top, double width) {
  constexpr double pad = 28, lowest = 160, steepest = 0.75;
  const Reach reach = reachOf(points);
  const double wide = reach.x.high - reach.x.low, high = reach.y.high - reach.y.low;
  constexpr double none = 1e-12;  // nearer than this is the same place
  double unit = wide > none ? (width - 2 * pad) / wide : 0;
  const double tallest = std::max(lowest, steepest * width) - 2 * pad;
  if (high > none) unit = unit > 0 ? std::min(unit, tallest / high) : tallest / high;
  return {{0, top, width, top + std::max(lowest, std::ceil(high * unit + 2 * pad))}, reach, unit > 0 ? unit : 1};
}

}  // namespace oddglass::figures
