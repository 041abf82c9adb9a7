#include "figures/read_outs.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <unordered_map>
#include <utility>

namespace oddglass::figures {
namespace {

Area around(double x, double y, double halfWidth, double halfHeight) { return {x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight}; }

Area areaOf(const Mark& mark) {
  struct Reach {
    Area operator()(const Line& l) const { return {std::min(l.x1, l.x2), std::min(l.y1, l.y2), std::max(l.x1, l.x2), std::max(l.y1, l.y2)}; }
    Area operator()(const Rect& r) const { return {r.x, r.y, r.x + r.width, r.y + r.height}; }
    Area operator()(const Disc& d) const { return around(d.x, d.y, d.radius, d.radius); }
    Area operator()(const Ring& r) const { return around(r.x, r.y, r.radius, r.radius); }
    Area operator()(const Ellipse& e) const { return around(e.x, e.y, std::max(e.rx, e.ry), std::max(e.rx, e.ry)); }
    Area operator()(const Text& t) const {
      const double width = roomFor(t.text, t.size);
      const double left = t.anchor == Anchor::start ? t.x : t.anchor == Anchor::middle ? t.x - width / 2 : t.x - width;
      return {left, t.y - t.size, left + width, t.y + t.size / 4};
    }
  };
  return std::visit(Reach{}, mark.shape);
}

bool holds(const Mark& mark, double x, double y, double reach) {
  if (const auto* e = std::get_if<Ellipse>(&mark.shape)) {
    const double turn = e->turn * std::numbers::pi / 180, dx = x - e->x, dy = y - e->y;
    const double along = dx * std::cos(turn) + dy * std::sin(turn), over = dy * std::cos(turn) - dx * std::sin(turn);
    return std::hypot(along / (e->rx + reach), over / (e->ry + reach)) <= 1;
  }
  const Area area = areaOf(mark);
  return x >= area.left - reach && x <= area.right + reach && y >= area.top - reach && y <= area.bottom + reach;
}

}  // namespace

std::vector<ReadOut> readOuts(const Figure& figure) {
  std::vector<ReadOut> found;
  std::unordered_map<std::string_view, std::size_t> known;
  for (const Mark& mark : figure.marks) {
    if (mark.readOut.empty()) continue;
    const Area area = areaOf(mark);
    const auto [at, isNew] = known.try_emplace(mark.readOut, found.size());
    if (isNew) found.push_back({mark.readOut, area});
    Area& all = found[at->second].area;
    all = {std::min(all.left, area.left), std::min(all.top, area.top), std::max(all.right, area.right), std::max(all.bottom, area.bottom)};
  }
  std::stable_sort(found.begin(), found.end(), [](const ReadOut& a, const ReadOut& b) { return std::pair(a.area.top, a.area.left) < std::pair(b.area.top, b.area.left); });
  return found;
}

std::string readOutAt(const Figure& figure, double x, double y, double reach) {
  const auto hit = std::find_if(figure.marks.rbegin(), figure.marks.rend(), [&](const Mark& mark) { return !mark.readOut.empty() && holds(mark, x, y, reach); });
  return hit == figure.marks.rend() ? std::string() : hit->readOut;
}

}  // namespace oddglass::figures
