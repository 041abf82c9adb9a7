#pragma once

#include "figures/figure.h"

#include <string>

namespace oddglass::figures {

/// Colours by role, as "#rrggbb", and the family of the type.
struct Inks {
  std::string ink = "#1d2127", muted = "#59616b", hair = "#ddd8cd", accent = "#2e4a62", soft = "#e7edf2";
  std::string family = "Inter, sans-serif";
};

/// The figure as one <svg> element (SVG 1.1, valid XML, UTF-8): text escaped, title and description inside, no time stamp,
/// so that a figure always gives the bytes it gave before. Numbers have a point and at most two decimals.
std::string svg(const Figure& figure, const Inks& inks = {});

/// Text made safe inside XML or HTML, between tags or in a quoted attribute. Characters that XML 1.0 forbids are left out.
std::string escaped(std::string_view text);

}  // namespace oddglass::figures
