#pragma once

#include "figures/figure.h"

namespace oddglass::figures {

/// One line of a key: a mark and what it stands for. The mark lies within 0..keyWidth and -6..6 around its own origin.
struct KeyEntry {
  std::vector<Mark> marks;
  std::string text;
};

inline constexpr double keyWidth = 20;

/// Adds the entries with a text side by side, as many in a line as fit, the first baseline at y; returns the lowest baseline (y minus a line when there are none).
double addKey(Figure& figure, const std::vector<KeyEntry>& entries, double y, double width, const Measure& measure);

/// The mark moved by dx, dy.
Mark moved(Mark mark, double dx, double dy);

}  // namespace oddglass::figures
