#include "figures/key.h"

#include "figures/layout.h"

#include <algorithm>

namespace oddglass::figures {

Mark moved(Mark mark, double dx, double dy) {
  struct Move {
    double dx, dy;
    void operator()(Line& l) const { l.x1 += dx, l.x2 += dx, l.y1 += dy, l.y2 += dy; }
    void operator()(Rect& r) const { r.x += dx, r.y += dy; }
    void operator()(Disc& d) const { d.x += dx, d.y += dy; }
    void operator()(Ring& r) const { r.x += dx, r.y += dy; }
    void operator()(Ellipse& e) const { e.x += dx, e.y += dy; }
    void operator()(Text& t) const { t.x += dx, t.y += dy; }
  };
  std::visit(Move{dx, dy}, mark.shape);
  return mark;
}

double addKey(Figure& figure, const std::vector<KeyEntry>& entries, double y, double width, const Measure& measure) {
  constexpr double near = 8, apart = 24, middle = 5;
  double x = 0, baseline = y, lowest = y - lineHeight;
  for (const KeyEntry& entry : entries) {
    const std::vector<std::string> lines = wrapped(entry.text, width - keyWidth - near, measure);
    if (lines.empty()) continue;
    double widest = 0;
    for (const std::string& line : lines) widest = std::max(widest, measure(line, smallType));
    if (x > 0 && x + keyWidth + near + widest > width) {
      x = 0;
      baseline = lowest + lineHeight;
    }
    for (const Mark& mark : entry.marks) figure.marks.push_back(moved(mark, x, baseline - middle));
    double at = baseline;
    for (const std::string& line : lines) {
      figure.marks.push_back({Text{x + keyWidth + near, at, smallType, Anchor::start, line}, Role::muted, {}});
      lowest = std::max(lowest, at);
      at += lineHeight;
    }
    x += keyWidth + near + widest + apart;
  }
  return lowest;
}

}  // namespace oddglass::figures
