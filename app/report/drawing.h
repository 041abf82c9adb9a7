#pragma once

#include "figures/figure.h"

#include <functional>

namespace oddglass::report {

/// A figure that is laid out anew for whatever width there is.
using Drawing = std::function<figures::Figure(double width, const figures::Measure& measure)>;

/// The drawing of a picture: `layOut` is its function of app/figures.
template <class Picture>
Drawing drawingOf(Picture picture, figures::Figure (*layOut)(const Picture&, double, const figures::Measure&)) {
  return [picture = std::move(picture), layOut](double width, const figures::Measure& measure) { return layOut(picture, width, measure); };
}

}  // namespace oddglass::report
