#include "figures/sides.h"

#include "figures/layout.h"
#include "figures/rows.h"
#include "figures/scale.h"

#include <algorithm>
#include <stdexcept>

namespace oddglass::figures {
namespace {

constexpr double bar = 14, barGap = 6;

void checkSides(const SidesPicture& picture) {
  requireWords("little", picture.little);
  requireWords("right", picture.right);
  requireWords("much", picture.much);
  for (const SidesRow& row : picture.rows) {
    requireWords("label", row.label);
    requireWords("count", row.count);
    for (const Side* side : {&row.little, &row.right, &row.much})
      if (side->times < 0) throw std::invalid_argument("times: below 0");
  }
}

/// Where the bars begin, how far they may reach, and how wide a number is.
struct Middle {
  double x, half, reach, number;
};

Middle middleOf(const SidesPicture& picture, const RowPlan& plan, const Measure& measure) {
  double right = 0, side = 0;
  for (const SidesRow& row : picture.rows) {
    right = std::max(right, measure(std::to_string(row.right.times), smallType));
    for (const int times : {row.little.times, row.much.times}) side = std::max(side, measure(std::to_string(times), smallType));
  }
  const double half = right / 2 + 2 * barGap;
  return {(plan.left + plan.right) / 2, half, (plan.right - plan.left) / 2 - half - side - barGap, side};
}

void addSide(Figure& figure, const Side& side, double from, double length, double direction, const Strip& strip) {
  const double to = from + direction * length;
  figure.marks.push_back({Rect{std::min(from, to), strip.axis - bar / 2, length, bar}, Role::accent, side.readOut});
  figure.marks.push_back({Text{to + direction * barGap, strip.axis + middleToBaseline, smallType, direction < 0 ? Anchor::end : Anchor::start, std::to_string(side.times)}, Role::ink, side.readOut});
}

}  // namespace

Figure sidesFigure(const SidesPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  checkSides(picture);
  std::vector<RowWords> words;
  int most = 1;
  for (const SidesRow& row : picture.rows) {
    words.push_back({row.label, {}, row.count});
    most = std::max({most, row.little.times + row.right.times + row.much.times});
  }
  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  const RowPlan plan = planRows(words, width, 0, measure);
  const Middle middle = middleOf(picture, plan, measure);
  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight + 6;
  const double reach = middle.half + middle.reach / 2;
  y = addLabels(figure, {{middle.x - reach, picture.little, Role::muted}, {middle.x, picture.right, Role::muted}, {middle.x + reach, picture.much, Role::muted}}, y, width, measure) + 8;
  const Rows placed = addRows(figure, plan, words, std::vector<double>(words.size(), 20), y, measure);

  for (const double x : {middle.x - middle.half, middle.x + middle.half}) addUpright(figure, placed, x, 1, Role::hair);
  for (std::size_t i = 0; i < picture.rows.size(); ++i) {
    const SidesRow& row = picture.rows[i];
    const Strip& strip = placed.strips[i];
    const auto length = [&](const Side& side) { return middle.reach * side.times / most; };
    addSide(figure, row.little, middle.x - middle.half, length(row.little), -1, strip);
    addSide(figure, row.much, middle.x + middle.half, length(row.much), 1, strip);
    figure.marks.push_back({Text{middle.x, strip.axis + middleToBaseline, smallType, Anchor::middle, std::to_string(row.right.times)}, Role::ink, row.right.readOut});
  }
  figure.height = placed.bottom + 6;
  return figure;
}

}  // namespace oddglass::figures
