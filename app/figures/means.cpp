#include "figures/means.h"

#include "figures/rows.h"
#include "figures/whisker.h"

#include <algorithm>

namespace oddglass::figures {
namespace {

constexpr double meanInset = 8, rowHeight = 20;

void checkMeans(const MeanPicture& picture) {
  requireScale(picture.scale);
  for (const MeanRow& row : picture.rows) {
    requireWords("label", row.label);
    requireWords("count", row.count);
    if (row.mean) requireOn(picture.scale, "mean", *row.mean);
    if (row.interval) requireSpan("interval", *row.interval);
    if (!row.twice) continue;
    requireWords("twice.label", row.twice->label);
    requireWords("twice.count", row.twice->count);
    requireOn(picture.scale, "twice.first", row.twice->first);
    requireOn(picture.scale, "twice.second", row.twice->second);
  }
}

/// Two rings and a dashed line between them; none where the rings meet.
void addTwice(Figure& figure, const Axis& axis, const Twice& twice, double y) {
  const double from = axis.x(std::min(twice.first, twice.second)), to = axis.x(std::max(twice.first, twice.second));
  constexpr double radius = 5;
  if (to - from > 2 * radius) figure.marks.push_back({Line{from + radius, y, to - radius, y, 2, true}, Role::accent, twice.readOut});
  for (const double x : {from, to}) figure.marks.push_back({Ring{x, y, radius, 2}, Role::accent, twice.readOut});
}

}  // namespace

Figure meanFigure(const MeanPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  checkMeans(picture);
  std::vector<RowWords> words;
  for (const MeanRow& row : picture.rows) {
    words.push_back({row.label, row.word, row.count, withReason(row.readOut, row.mean && row.interval, row.why)});
    if (row.twice) words.push_back({row.twice->label, row.twice->word, row.twice->count, row.twice->readOut});
  }
  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  const RowPlan plan = planRows(words, width, meanInset, measure);
  const Axis axis{picture.scale.low, picture.scale.high, plan.left, plan.right};
  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight + 6;
  y = addScaleNames(figure, picture.scale, axis, y, width, measure) + 8;
  const Rows placed = addRows(figure, plan, words, std::vector<double>(words.size(), rowHeight), y, measure);

  addGuides(figure, placed, plan);
  for (const double end : {picture.scale.low, picture.scale.high}) addUpright(figure, placed, axis.x(end), 1, Role::hair);
  for (const Tick& tick : picture.scale.ticks) addUpright(figure, placed, axis.x(tick.at), 1, Role::hair);
  std::size_t at = 0;
  for (const MeanRow& row : picture.rows) {
    const double middle = placed.strips[at].axis;
    const std::string& readOut = words[at++].readOut;
    if (row.mean && row.interval) addWhisker(figure, axis, *row.interval, *row.mean, middle, readOut);
    if (row.mean) addShape(figure, Shape::disc, axis.x(*row.mean), middle, readOut);
    if (row.twice) addTwice(figure, axis, *row.twice, placed.strips[at++].axis);
  }
  figure.height = placed.bottom + 6;
  return figure;
}

}  // namespace oddglass::figures
