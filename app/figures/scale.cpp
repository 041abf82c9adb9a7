#include "figures/scale.h"

#include <cmath>
#include <stdexcept>

namespace oddglass::figures {

void requireWords(const char* name, const std::string& text) {
  if (text.empty()) throw std::invalid_argument(std::string(name) + ": empty");
}

void requireSpan(const char* name, const Span& span) {
  if (!std::isfinite(span.low) || !std::isfinite(span.high)) throw std::invalid_argument(std::string(name) + ": not a number");
  if (span.low > span.high) throw std::invalid_argument(std::string(name) + ": low above high");
}

void requireOn(const Scale& scale, const char* name, double value) {
  if (!(value >= scale.low && value <= scale.high)) throw std::invalid_argument(std::string(name) + ": not on the scale");
}

void requireScale(const Scale& scale) {
  requireSpan("scale", {scale.low, scale.high});
  if (!(scale.low < scale.high)) throw std::invalid_argument("scale: no length");
  requireWords("lowName", scale.lowName);
  requireWords("highName", scale.highName);
  for (const Tick& tick : scale.ticks) requireOn(scale, "tick", tick.at);
}

double addScaleNames(Figure& figure, const Scale& scale, const Axis& axis, double y, double width, const Measure& measure) {
  std::vector<Label> labels{{axis.left, scale.lowName, Role::muted}, {axis.right, scale.highName, Role::muted}};
  for (const Tick& tick : scale.ticks) labels.push_back({axis.x(tick.at), tick.label, Role::muted});
  return addLabels(figure, labels, y, width, measure);
}

double evenReach(double furthest) {
  if (!(furthest >= 0) || !std::isfinite(furthest)) throw std::invalid_argument("furthest: not a number from 0 up");
  if (furthest == 0) return 1;
  const double power = std::pow(10, std::floor(std::log10(furthest)));
  for (const double step : {1.0, 2.0, 3.0, 5.0})
    if (step * power >= furthest) return step * power;
  return 10 * power;
}

}  // namespace oddglass::figures
