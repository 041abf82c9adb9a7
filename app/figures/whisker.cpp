#include "figures/whisker.h"

#include <algorithm>

namespace oddglass::figures {

void addShape(Figure& figure, Shape shape, double x, double y, const std::string& readOut) {
  switch (shape) {
    case Shape::disc: figure.marks.push_back({Disc{x, y, 6}, Role::accent, readOut}); break;
    case Shape::ring: figure.marks.push_back({Ring{x, y, 5, 2}, Role::accent, readOut}); break;
    case Shape::bars:
      for (const double top : {y - 5, y + 1}) figure.marks.push_back({Rect{x - 6, top, 12, 4, 0, false, Role::accent}, Role::accent, readOut});
      break;
  }
}

void addWhisker(Figure& figure, const Axis& axis, const Span& span, double point, double y, const std::string& readOut) {
  constexpr double cap = 5, stroke = 2;
  const double middle = axis.x(point);
  const double from = axis.x(std::clamp(span.low, axis.low, axis.high)), to = axis.x(std::clamp(span.high, axis.low, axis.high));
  const auto add = [&](double x1, double y1, double x2, double y2) { figure.marks.push_back({Line{x1, y1, x2, y2, stroke}, Role::accent, readOut}); };
  const auto addPart = [&](double x1, double x2) {
    if (x1 < x2) add(x1, y, x2, y);
  };
  const auto addEnd = [&](double value, double x) {
    if (value >= axis.low && value <= axis.high && (x < middle - shapeReach || x > middle + shapeReach)) add(x, y - cap, x, y + cap);
  };
  addPart(from, std::min(to, middle - shapeReach));
  addPart(std::max(from, middle + shapeReach), to);
  addEnd(span.low, from);
  addEnd(span.high, to);
}

std::string withReason(const std::string& readOut, bool hasInterval, const std::string& why) {
  if (hasInterval) return readOut;
  requireWords("why", why);
  return readOut.empty() ? why : readOut + ' ' + why;
}

}  // namespace oddglass::figures
