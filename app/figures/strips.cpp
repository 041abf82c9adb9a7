#include "figures/strips.h"

#include "figures/rows.h"
#include "figures/stack.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <iterator>
#include <map>
#include <stdexcept>

namespace oddglass::figures {
namespace {

constexpr double inset = 20, tallest = 64, least = 20;

void checkStrips(const StripPicture& picture) {
  requireScale(picture.scale);
  for (const StripRow& row : picture.rows) {
    requireWords("label", row.label);
    requireWords("count", row.count);
    for (const Heap& heap : row.heaps) {
      requireOn(picture.scale, "at", heap.at);
      if (heap.times < 0) throw std::invalid_argument("times: below 0");
    }
  }
}

using Heaps = std::map<double, Heap>;

Heaps joined(const StripRow& row) {
  Heaps heaps;
  for (const Heap& heap : row.heaps) {
    if (heap.times == 0) continue;
    Heap& kept = heaps.try_emplace(heap.at, Heap{heap.at, 0, heap.readOut}).first->second;
    kept.times += heap.times;
  }
  return heaps;
}

/// The dots of every row at one pitch.
struct Stacks {
  double pitch = 0;
  std::vector<std::vector<Stacked>> rows;
  int levels = 0;
};

/// The nearest two different values of any row, in points.
double nearest(const std::vector<Heaps>& rows, const Axis& axis) {
  double near = std::numeric_limits<double>::infinity();
  for (const Heaps& heaps : rows) {
    for (auto at = heaps.begin(); at != heaps.end() && std::next(at) != heaps.end(); ++at)
      near = std::min(near, axis.x(std::next(at)->first) - axis.x(at->first));
  }
  return near;
}

Stacks stacksOf(const std::vector<Heaps>& rows, const Axis& axis) {
  const double room = std::min(nearest(rows, axis), 2 * inset);
  int most = 1;
  for (const Heaps& heaps : rows)
    for (const auto& each : heaps) most = std::max(most, each.second.times);
  Stacks stacks;
  for (const double pitch : {10.0, 8.0, 6.0, 5.0}) {
    const int fitting = static_cast<int>(std::floor(room / pitch)), wanted = static_cast<int>(std::ceil(most * pitch / tallest));
    stacks = {pitch, {}, 0};
    for (const Heaps& heaps : rows) {
      std::vector<std::pair<double, int>> at;
      for (const auto& [value, heap] : heaps) at.push_back({axis.x(value), heap.times});
      stacks.rows.push_back(stacked(at, pitch, std::min(fitting, wanted)));
      stacks.levels = std::max(stacks.levels, levelsOf(stacks.rows.back()));
    }
    if (stacks.levels * pitch <= tallest) break;
  }
  return stacks;
}

void addDots(Figure& figure, const Heaps& heaps, const std::vector<Stacked>& dots, double pitch, double base) {
  auto dot = dots.begin();
  for (const auto& each : heaps)
    for (int i = 0; i < each.second.times; ++i, ++dot)
      figure.marks.push_back({Disc{dot->x, base - pitch / 2 - dot->level * pitch, pitch / 2 - 0.5}, Role::accent, each.second.readOut});
}

}  // namespace

Figure stripFigure(const StripPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  checkStrips(picture);
  std::vector<RowWords> words;
  std::vector<Heaps> heaps;
  for (const StripRow& row : picture.rows) {
    words.push_back({row.label, row.word, row.count});
    heaps.push_back(joined(row));
  }
  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  const RowPlan plan = planRows(words, width, inset, measure);
  const Axis axis{picture.scale.low, picture.scale.high, plan.left, plan.right};
  const Stacks stacks = stacksOf(heaps, axis);
  std::vector<double> heights;
  for (const auto& dots : stacks.rows) heights.push_back(std::max(least, levelsOf(dots) * stacks.pitch + 4));

  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight + 6;
  y = addScaleNames(figure, picture.scale, axis, y, width, measure) + 8;
  const Rows placed = addRows(figure, plan, words, heights, y, measure);
  for (std::size_t i = 0; i < picture.rows.size(); ++i) {
    const double base = placed.strips[i].bottom;
    figure.marks.push_back({Line{plan.left - inset, base, plan.right + inset, base, 1}, Role::hair, {}});
    for (const double end : {picture.scale.low, picture.scale.high}) figure.marks.push_back({Line{axis.x(end), base, axis.x(end), base + 4, 1}, Role::muted, {}});
    for (const Tick& tick : picture.scale.ticks) figure.marks.push_back({Line{axis.x(tick.at), base, axis.x(tick.at), base + 4, 1}, Role::muted, {}});
    addDots(figure, heaps[i], stacks.rows[i], stacks.pitch, base);
  }
  figure.height = placed.bottom + 6;
  return figure;
}

Figure rankFigure(const RankPicture& picture, double width, const Measure& measure) {
  const std::size_t ranks = picture.rows.empty() ? 2 : picture.rows.front().times.size();
  if (ranks < 2) throw std::invalid_argument("times: fewer than two ranks");
  StripPicture strips{picture.title, {1, static_cast<double>(ranks), picture.firstName, picture.lastName, {}}, {}, picture.sentence, picture.table};
  for (std::size_t rank = 2; rank < ranks; ++rank) strips.scale.ticks.push_back({static_cast<double>(rank), std::to_string(rank)});
  for (const RankRow& row : picture.rows) {
    requireWords("rankSum", row.rankSum);
    if (row.times.size() != ranks) throw std::invalid_argument("times: not as many ranks in every row");
    if (row.readOuts.size() != ranks) throw std::invalid_argument("readOuts: not one for each rank");
    StripRow strip{row.label, {}, row.rankSum, row.count};
    for (std::size_t rank = 0; rank < ranks; ++rank) strip.heaps.push_back({static_cast<double>(rank + 1), row.times[rank], row.readOuts[rank]});
    strips.rows.push_back(std::move(strip));
  }
  return stripFigure(strips, width, measure);
}

}  // namespace oddglass::figures
