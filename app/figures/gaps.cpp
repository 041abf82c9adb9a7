#include "figures/gaps.h"

#include "figures/key.h"
#include "figures/rows.h"
#include "figures/whisker.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace oddglass::figures {
namespace {

constexpr double inset = 8, height = 20, band = 16;

void checkLimit(const GapPicture& picture, const std::optional<double>& limit) {
  if (!limit) return;
  requireWords("limitName", picture.limitName);
  if (!(*limit > 0)) throw std::invalid_argument("limit: not above 0");
  requireOn(picture.scale, "limit", *limit);
  requireOn(picture.scale, "limit", -*limit);
}

void checkGaps(const GapPicture& picture) {
  requireScale(picture.scale);
  requireOn(picture.scale, "zero", 0);
  requireWords("zeroName", picture.zeroName);
  checkLimit(picture, picture.limit);
  for (const GapRow& row : picture.rows) {
    requireWords("label", row.label);
    requireWords("word", row.word);
    requireWords("count", row.count);
    if (row.gap) requireOn(picture.scale, "gap", *row.gap);
    if (row.interval) requireSpan("interval", *row.interval);
    checkLimit(picture, row.limit);
    if (row.range) {
      requireWords("rangeName", picture.rangeName);
      requireSpan("range", *row.range);
      requireOn(picture.scale, "range", row.range->low);
      requireOn(picture.scale, "range", row.range->high);
    }
    const bool isBelow = row.verdict == GapVerdict::less, isAbove = row.verdict == GapVerdict::more;
    if ((isBelow && !(row.gap && *row.gap < 0)) || (isAbove && !(row.gap && *row.gap > 0))) throw std::invalid_argument("verdict: not the side of the gap");
    if (row.verdict == GapVerdict::within && !picture.limit && !row.limit) throw std::invalid_argument("verdict: no limit to be within");
  }
}

std::vector<GapRow> sorted(const GapPicture& picture) {
  std::vector<GapRow> rows = picture.rows;
  if (picture.inOrder) return rows;
  std::stable_sort(rows.begin(), rows.end(), [](const GapRow& a, const GapRow& b) { return a.gap && (!b.gap || *a.gap < *b.gap); });
  return rows;
}

Shape shapeOf(GapVerdict verdict) {
  switch (verdict) {
    case GapVerdict::less:
    case GapVerdict::more: return Shape::disc;
    case GapVerdict::within: return Shape::bars;
    case GapVerdict::unclear: return Shape::ring;
  }
  return Shape::ring;
}

std::vector<KeyEntry> keyOf(const GapPicture& picture) {
  std::vector<KeyEntry> entries;
  if (std::any_of(picture.rows.begin(), picture.rows.end(), [](const GapRow& row) { return row.range.has_value(); }))
    entries.push_back({{{Rect{0, -6, keyWidth, 12, 0, true, Role::hair}, Role::soft, {}}}, picture.rangeName});
  const bool hasOwn = std::any_of(picture.rows.begin(), picture.rows.end(), [](const GapRow& row) { return row.limit.has_value(); });
  if (picture.limit || hasOwn) entries.push_back({{{Line{keyWidth / 2, -6, keyWidth / 2, 6, 1, true}, Role::ink, {}}}, picture.limitName});
  return entries;
}

}  // namespace

double gapReach(const GapPicture& picture) {
  double furthest = picture.limit.value_or(0);
  for (const GapRow& row : picture.rows) {
    if (row.gap) furthest = std::max(furthest, std::abs(*row.gap));
    furthest = std::max(furthest, row.limit.value_or(0));
    if (row.range) furthest = std::max({furthest, std::abs(row.range->low), std::abs(row.range->high)});
  }
  return evenReach(furthest);
}

Figure gapFigure(const GapPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  checkGaps(picture);
  const std::vector<GapRow> rows = sorted(picture);
  std::vector<RowWords> words;
  for (const GapRow& row : rows) words.push_back({row.label, row.word, row.count, withReason(row.readOut, row.gap && row.interval, row.why)});

  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  const RowPlan plan = planRows(words, width, inset, measure);
  const Axis axis{picture.scale.low, picture.scale.high, plan.left, plan.right};
  Scale named = picture.scale;
  named.ticks.insert(named.ticks.begin(), {0, picture.zeroName});
  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight + 6;
  y = addScaleNames(figure, named, axis, y, width, measure) + 8;
  const Rows placed = addRows(figure, plan, words, std::vector<double>(rows.size(), height), y, measure);

  for (std::size_t i = 0; i < rows.size(); ++i)
    if (const auto& range = rows[i].range)
      figure.marks.push_back({Rect{axis.x(range->low), placed.strips[i].axis - band / 2, axis.x(range->high) - axis.x(range->low), band, 0, true, Role::hair}, Role::soft, rows[i].rangeReadOut});
  addGuides(figure, placed, plan);
  for (const Tick& tick : picture.scale.ticks) addUpright(figure, placed, axis.x(tick.at), 1, Role::hair);
  addUpright(figure, placed, axis.x(0), 1, Role::ink, false, picture.zeroName);
  if (picture.limit)
    for (const double at : {-*picture.limit, *picture.limit}) addUpright(figure, placed, axis.x(at), 1, Role::ink, true, picture.limitName);
  for (std::size_t i = 0; i < rows.size(); ++i)
    if (const auto& limit = rows[i].limit)
      for (const double at : {-*limit, *limit})
        figure.marks.push_back({Line{axis.x(at), placed.strips[i].top, axis.x(at), placed.strips[i].bottom, 1, true}, Role::ink, picture.limitName});
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!rows[i].gap) continue;
    const std::string& readOut = words[i].readOut;
    if (rows[i].interval) addWhisker(figure, axis, *rows[i].interval, *rows[i].gap, placed.strips[i].axis, readOut);
    addShape(figure, shapeOf(rows[i].verdict), axis.x(*rows[i].gap), placed.strips[i].axis, readOut);
  }
  figure.height = addKey(figure, keyOf(picture), placed.bottom + smallType + 6, width, measure) + 6;
  return figure;
}

}  // namespace oddglass::figures
