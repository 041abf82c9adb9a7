#include "figures/ages.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace oddglass::figures {
namespace {

constexpr double plotHeight = 190, ageInset = 16, dotRadius = 5, capHalf = 4;

void requireAge(const char* name, double age, double last) {
  if (!std::isfinite(age) || age < 0 || age > last) throw std::invalid_argument(std::string(name) + ": from 0 to the last age");
}

void checkAges(const AgePicture& picture) {
  requireScale(picture.scale);
  if (!std::isfinite(picture.lastAge) || picture.lastAge <= 0) throw std::invalid_argument("lastAge: above 0");
  for (const AgeDot& dot : picture.dots) {
    requireAge("age", dot.age, picture.lastAge);
    requireWords("label", dot.label);
    requireOn(picture.scale, "value", dot.value);
    if (dot.interval) requireSpan("interval", *dot.interval);
  }
  for (const AgeNote& note : picture.notes) {
    requireAge("note", note.age, picture.lastAge);
    requireWords("letter", note.letter);
  }
  if (!picture.line) return;
  if (picture.dots.size() < 3) throw std::invalid_argument("line: from three dots on");
  if (!std::isfinite(picture.line->first) || !std::isfinite(picture.line->second)) throw std::invalid_argument("line: a number");
}

/// Where values and ages lie.
struct AgePlot {
  double left = 0, right = 0, top = 0, bottom = 0;
  double low = 0, high = 1, last = 1;
  double x(double age) const { return left + ageInset + age / last * (right - left - 2 * ageInset); }
  double y(double value) const { return bottom - (std::clamp(value, low, high) - low) / (high - low) * (bottom - top); }
};

bool fitsBeside(const std::string& label, double width, const Measure& measure) { return !label.empty() && measure(label, smallType) + 8 <= width / 3; }

double gutterOf(const Scale& scale, double width, const Measure& measure) {
  double widest = 0;
  for (const Tick& tick : scale.ticks)
    if (fitsBeside(tick.label, width, measure)) widest = std::max(widest, std::ceil(measure(tick.label, smallType)) + 8);
  return widest;
}

void addFrame(Figure& figure, const AgePicture& picture, const AgePlot& plot, const Measure& measure) {
  for (const double end : {plot.top, plot.bottom}) figure.marks.push_back({Line{plot.left, end, plot.right, end, 1}, Role::hair, {}});
  double above = plot.bottom + lineHeight;
  for (const Tick& tick : picture.scale.ticks) {
    const double y = plot.y(tick.at);
    figure.marks.push_back({Line{plot.left, y, plot.right, y, 1, true}, Role::hair, {}});
    // Names of ticks that lie too close would cover each other: the lower one keeps its place.
    if (!fitsBeside(tick.label, figure.width, measure) || above - y < lineHeight) continue;
    figure.marks.push_back({Text{plot.left - 8, y + middleToBaseline, smallType, Anchor::end, tick.label}, Role::muted, {}});
    above = y;
  }
}

void addDot(Figure& figure, const AgePlot& plot, const AgeDot& dot) {
  const double x = plot.x(dot.age), y = plot.y(dot.value);
  if (dot.interval) {
    const double from = plot.y(dot.interval->high), to = plot.y(dot.interval->low);
    figure.marks.push_back({Line{x, from, x, to, 2}, Role::accent, dot.readOut});
    if (dot.interval->high <= plot.high) figure.marks.push_back({Line{x - capHalf, from, x + capHalf, from, 2}, Role::accent, dot.readOut});
    if (dot.interval->low >= plot.low) figure.marks.push_back({Line{x - capHalf, to, x + capHalf, to, 2}, Role::accent, dot.readOut});
  }
  figure.marks.push_back({Disc{x, y, dotRadius}, Role::accent, dot.readOut});
}

}  // namespace

Figure ageFigure(const AgePicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  checkAges(picture);
  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight + 4;
  y = addLines(figure, picture.scale.highName, y, width, Role::muted, measure) + 6;
  AgePlot plot{gutterOf(picture.scale, width, measure), width, 0, 0, picture.scale.low, picture.scale.high, picture.lastAge};
  std::vector<Label> letters;
  for (const AgeNote& note : picture.notes) letters.push_back({plot.x(note.age), note.letter, Role::muted});
  if (!letters.empty()) y = addLabels(figure, letters, y + lineHeight - 4, width, measure) + 6;
  plot.top = y + dotRadius;
  plot.bottom = plot.top + plotHeight;
  addFrame(figure, picture, plot, measure);
  for (const AgeNote& note : picture.notes) figure.marks.push_back({Line{plot.x(note.age), plot.top, plot.x(note.age), plot.bottom, 1, true}, Role::muted, note.readOut});
  if (picture.line) {
    const auto [first, last] = std::ranges::minmax(picture.dots, {}, &AgeDot::age);
    figure.marks.push_back({Line{plot.x(first.age), plot.y(picture.line->first), plot.x(last.age), plot.y(picture.line->second), 1.5}, Role::ink, picture.sentence});
  }
  for (const AgeDot& dot : picture.dots) addDot(figure, plot, dot);
  std::vector<Label> ages;
  for (const AgeDot& dot : picture.dots) ages.push_back({plot.x(dot.age), dot.label, Role::ink});
  y = addLabels(figure, ages, plot.bottom + dotRadius + lineHeight, width, measure);
  figure.height = addLines(figure, picture.scale.lowName, y + lineHeight + 2, width, Role::muted, measure) + descent + 4;
  return figure;
}

}  // namespace oddglass::figures
