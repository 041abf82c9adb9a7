#include "figures/shares.h"

#include "figures/layout.h"

#include <algorithm>

namespace oddglass::figures {

Figure sharesFigure(const SharesPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  constexpr double bar = 12, gap = 24;

  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight + 6;
  for (const ShareBar& each : picture.bars) {
    requireShare("share", each.share);
    const double valueWidth = measure(each.value, smallType);
    const bool beside = measure(each.label, smallType) + gap + valueWidth <= width;
    double baseline = addLines(figure, each.label, y, width, Role::ink, measure);
    if (beside)
      figure.marks.push_back({Text{width, baseline, smallType, Anchor::end, each.value}, Role::ink, {}});
    else
      baseline = addLines(figure, each.value, baseline + lineHeight, width, Role::ink, measure);
    const double top = baseline + 7, filled = each.share * width;
    figure.marks.push_back({Rect{0, top, width, bar, bar / 2, false, Role::hair}, Role::soft, {}});
    figure.marks.push_back({Rect{0, top, filled, bar, std::min(bar, filled) / 2, false, Role::accent}, Role::accent, each.readOut});
    y = top + bar + lineHeight + 4;
  }
  y = addLabels(figure, {{0, picture.nothing, Role::muted}, {width, picture.always, Role::muted}}, y - 4, width, measure);
  figure.height = y + 6;
  return figure;
}

}  // namespace oddglass::figures
