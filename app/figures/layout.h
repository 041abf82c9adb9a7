#pragma once

#include "figures/figure.h"

namespace oddglass::figures {

inline constexpr double smallType = 14;
inline constexpr double lineHeight = 19;  ///< from baseline to baseline at smallType
inline constexpr double descent = smallType / 4;  ///< how far letters reach below their baseline
inline constexpr double middleToBaseline = (smallType - descent) / 2;  ///< from the middle of a line down to its baseline

/// How high a block of lines at smallType is, from its ascenders to its descenders; 0 for none.
double blockHeight(std::size_t lines);

/// The text in lines that are not wider than `width`: broken between words, inside a word only where one alone is too wide.
std::vector<std::string> wrapped(std::string_view text, double width, const Measure& measure);

/// Adds the lines of `text` from the left edge, the first baseline at `y`; returns the baseline of the last line (y when there is no text).
double addLines(Figure& figure, std::string_view text, double y, double width, Role role, const Measure& measure);

/// A short text wished for at x, on a scale.
struct Label {
  double x = 0;
  std::string text;
  Role role = Role::muted;
};

/// Adds labels centred on their x, pushed inside 0..width, in as many rows as keep them apart; too wide ones are broken into lines.
/// The first baseline is at `y`; returns the lowest baseline used (y when there are none).
double addLabels(Figure& figure, const std::vector<Label>& labels, double y, double width, const Measure& measure);

/// Throws std::invalid_argument "name: ..." unless 0 <= value <= 1.
void requireShare(const char* name, double value);
/// Throws std::invalid_argument unless width is a number from 120 up.
void requireWidth(double width);

}  // namespace oddglass::figures
