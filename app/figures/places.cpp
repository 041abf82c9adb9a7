#include "figures/places.h"

#include <algorithm>
#include <array>

namespace oddglass::figures {

std::optional<Place> freePlace(double x, double y, double width, double height, double furthest, const Area& frame, const std::vector<Area>& taken) {
  struct Way {
    double dx, dy;
  };
  static constexpr std::array<Way, 8> ways{{{1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}}};
  constexpr double nearest = 10, step = 12;
  for (double distance = nearest; distance <= furthest; distance += step) {
    for (const Way& way : ways) {
      const double cx = x + way.dx * (distance + width / 2), cy = y + way.dy * (distance + height / 2);
      const Area area{cx - width / 2, cy - height / 2, cx + width / 2, cy + height / 2};
      if (!frame.holds(area) || std::any_of(taken.begin(), taken.end(), [&](const Area& each) { return each.touches(area); })) continue;
      return Place{area, way.dx > 0 ? Anchor::start : way.dx < 0 ? Anchor::end : Anchor::middle, distance == nearest};
    }
  }
  return std::nullopt;
}

}  // namespace oddglass::figures
