#pragma once

#include "figures/scale.h"

namespace oddglass::figures {

/// How an estimate is marked: filled where a difference is shown, open where it is not, two bars where it is within a limit.
enum class Shape { disc, ring, bars };

inline constexpr double shapeReach = 7;  ///< no shape reaches further from its middle

/// The shape at x, y; every part of it carries the read-out.
void addShape(Figure& figure, Shape shape, double x, double y, const std::string& readOut);

/// An interval along y with an upright at each end, left open around `point`. An end off the scale runs out at the scale's end and has no upright.
void addWhisker(Figure& figure, const Axis& axis, const Span& span, double point, double y, const std::string& readOut);

/// What a mark without an interval says: its sentence and why there is none. Throws std::invalid_argument "why: ..." when neither is there.
std::string withReason(const std::string& readOut, bool hasInterval, const std::string& why);

}  // namespace oddglass::figures
