#pragma once

#include "figures/figure.h"
#include "figures/layout.h"

namespace oddglass::figures {

/// A value on a scale with its name there.
struct Tick {
  double at = 0;
  std::string label;
};

/// A straight scale with named ends, in the units of the values on it.
struct Scale {
  double low = 0, high = 1;        ///< finite, low < high
  std::string lowName, highName;   ///< what an answer at either end says; needed
  std::vector<Tick> ticks;         ///< between the ends or on them
};

/// From one value to another, low <= high, in the units of the scale.
struct Span {
  double low = 0, high = 0;
};

/// A scale laid from `left` to `right` points.
struct Axis {
  double low = 0, high = 1, left = 0, right = 1;
  double x(double value) const { return left + (value - low) / (high - low) * (right - left); }
};

/// Throws std::invalid_argument "name: ..." unless the scale is as its comment says.
void requireScale(const Scale& scale);
/// Throws std::invalid_argument "name: ..." unless the value is a number on the scale.
void requireOn(const Scale& scale, const char* name, double value);
/// Throws std::invalid_argument "name: ..." unless the span is two numbers in order.
void requireSpan(const char* name, const Span& span);
/// Throws std::invalid_argument "name: ..." on an empty text.
void requireWords(const char* name, const std::string& text);

/// The names of ends and ticks where they stand, the first baseline at y; returns the lowest baseline.
double addScaleNames(Figure& figure, const Scale& scale, const Axis& axis, double y, double width, const Measure& measure);

/// An end for a scale from zero that reaches `furthest` (0 or more): the smallest of 1, 2, 3, 5 times a power of ten that does; 1 for 0.
double evenReach(double furthest);

}  // namespace oddglass::figures
