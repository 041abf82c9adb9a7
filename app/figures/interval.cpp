#include "figures/interval.h"

#include "figures/layout.h"

#include <stdexcept>

namespace oddglass::figures {

Figure intervalFigure(const IntervalPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  requireShare("low", picture.low);
  requireShare("high", picture.high);
  if (picture.low > picture.high) throw std::invalid_argument("low: above high");
  if (picture.point) requireShare("point", *picture.point);
  if (picture.limit) requireShare("limit", *picture.limit);

  constexpr double inset = 8, band = 12, dot = 6;
  const auto at = [&](double share) { return inset + share * (width - 2 * inset); };

  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure);
  y = addLabels(figure, {{at((picture.low + picture.high) / 2), picture.range, Role::ink}}, y + lineHeight + 8, width, measure);

  const double axis = y + 8 + band / 2;
  figure.marks.push_back({Line{at(0), axis, at(1), axis, 1}, Role::hair, {}});
  for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0})
    figure.marks.push_back({Line{at(share), axis, at(share), axis + band / 2 + 3, 1}, Role::muted, {}});
  const double from = at(picture.low), to = at(picture.high);
  figure.marks.push_back({Rect{from, axis - band / 2, to - from, band, std::min(band, to - from) / 2, true, Role::accent}, Role::soft, picture.range});
  if (picture.limit)
    figure.marks.push_back({Line{at(*picture.limit), axis - band, at(*picture.limit), axis + band, 2}, Role::ink, picture.limitLabel});
  if (picture.point) figure.marks.push_back({Disc{at(*picture.point), axis, dot}, Role::accent, picture.sentence});

  std::vector<Label> labels{{at(0), picture.none, Role::muted}, {at(1), picture.all, Role::muted}, {at(0.5), picture.half, Role::muted}};
  if (picture.limit) labels.push_back({at(*picture.limit), picture.limitLabel, Role::ink});
  y = addLabels(figure, labels, axis + band + 16, width, measure);
  figure.height = y + 6;
  return figure;
}

}  // namespace oddglass::figures
