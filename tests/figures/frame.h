#pragma once

#include "figures/figure.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace oddglass::tests {

/// The box that a mark's ink may fill, and what to call it.
struct Box {
  double left, top, right, bottom;
  std::string text;
};

/// Where the ink of a text may lie: ascenders up to the size above its baseline, descenders a quarter below.
inline Box boxOf(const figures::Text& t) {
  const double wide = figures::roomFor(t.text, t.size);
  const double left = t.anchor == figures::Anchor::start ? t.x : t.anchor == figures::Anchor::middle ? t.x - wide / 2 : t.x - wide;
  return {left, t.y - t.size, left + wide, t.y + t.size / 4, t.text};
}

inline Box boxOf(const figures::Mark& mark) {
  struct Around {
    Box operator()(const figures::Text& t) const { return boxOf(t); }
    Box operator()(const figures::Rect& r) const { return {r.x, r.y, r.x + r.width, r.y + r.height, "bar"}; }
    Box operator()(const figures::Disc& d) const { return {d.x - d.radius, d.y - d.radius, d.x + d.radius, d.y + d.radius, "disc"}; }
    Box operator()(const figures::Ring& r) const {
      const double reach = r.radius + r.stroke / 2;
      return {r.x - reach, r.y - reach, r.x + reach, r.y + reach, "ring"};
    }
    Box operator()(const figures::Line& l) const { return {std::min(l.x1, l.x2), std::min(l.y1, l.y2), std::max(l.x1, l.x2), std::max(l.y1, l.y2), "line"}; }
    Box operator()(const figures::Ellipse& e) const {
      const double turn = e.turn * std::numbers::pi / 180;
      const double ex = std::hypot(e.rx * std::cos(turn), e.ry * std::sin(turn)), ey = std::hypot(e.rx * std::sin(turn), e.ry * std::cos(turn));
      return {e.x - ex, e.y - ey, e.x + ex, e.y + ey, "ellipse"};
    }
  };
  return std::visit(Around{}, mark.shape);
}

/// What may cross a text without harm.
enum class MayCross { lines, nothing };

/// Everything inside the box, no text over another text, a bar, a disc or a ring, nor over a line unless that is allowed. "" when all is well.
inline std::string fault(const figures::Figure& figure, MayCross mayCross = MayCross::lines) {
  constexpr double slack = 1e-9;
  std::vector<Box> texts, solids;
  for (const figures::Mark& mark : figure.marks) {
    const Box box = boxOf(mark);
    if (!std::isfinite(box.left + box.top + box.right + box.bottom)) return box.text + " is nowhere";
    if (box.left < -slack || box.top < -slack || box.right > figure.width + slack || box.bottom > figure.height + slack) return box.text + " is cut";
    const bool isLine = std::holds_alternative<figures::Line>(mark.shape);
    if (std::holds_alternative<figures::Text>(mark.shape)) texts.push_back(box);
    else if (!std::holds_alternative<figures::Ellipse>(mark.shape) && (!isLine || mayCross == MayCross::nothing)) solids.push_back(box);
  }
  const auto overlap = [](const Box& a, const Box& b) {
    return a.left < b.right - slack && b.left < a.right - slack && a.top < b.bottom - slack && b.top < a.bottom - slack;
  };
  for (std::size_t i = 0; i < texts.size(); ++i) {
    for (std::size_t j = i + 1; j < texts.size(); ++j)
      if (overlap(texts[i], texts[j])) return texts[i].text + " lies over " + texts[j].text;
    for (const Box& solid : solids)
      if (overlap(texts[i], solid)) return texts[i].text + " lies over a " + solid.text;
  }
  for (const auto& row : figure.table.rows)
    if (row.size() != figure.table.headers.size()) return "a row of the table is short";
  return "";
}

/// The marks of one kind, in their order.
template <typename Kind>
std::vector<Kind> all(const figures::Figure& figure) {
  std::vector<Kind> found;
  for (const figures::Mark& mark : figure.marks)
    if (const auto* kind = std::get_if<Kind>(&mark.shape)) found.push_back(*kind);
  return found;
}

/// The marks of one kind that say `readOut`, in their order.
template <typename Kind>
std::vector<Kind> saying(const figures::Figure& figure, const std::string& readOut) {
  std::vector<Kind> found;
  for (const figures::Mark& mark : figure.marks)
    if (const auto* kind = std::get_if<Kind>(&mark.shape); kind && mark.readOut == readOut) found.push_back(*kind);
  return found;
}

/// All texts one after another, for looking whether something stands there.
inline std::string written(const figures::Figure& figure) {
  std::string words;
  for (const figures::Text& text : all<figures::Text>(figure)) words += text.text + '\n';
  return words;
}

}  // namespace oddglass::tests
