#include "words/sheet_drivers.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {
namespace {

using insight::DriverLine;

bool stands(const DriverLine& line, int alphaPm) { return line.pAdjusted && *line.pAdjusted <= alphaPm / 1000.0 && line.shrunk && *line.shrunk != 0.0; }

std::string driverLine(const Voice& voice, const DriverLine& line) {
  const bool isMore = *line.shrunk > 0.0;
  const double sign = isMore ? 1.0 : -1.0;
  const double low = isMore ? *line.low : -*line.high, high = isMore ? *line.high : -*line.low;
  const Values values{{"word", quoted(voice, questionName(voice, line.kind, line.part, line.word))}, {"by", decimal(voice, sign * *line.shrunk, 1)},
                      {"low", decimal(voice, low, 1)}, {"high", decimal(voice, high, 1)}, {"people", people(voice, line.people)}};
  if (line.kind == ItemKind::check)
    return isMore ? say(voice, QT_TRANSLATE_NOOP("words", "Where {word} was ticked, liking was about {by} points higher ({low} to {high} before it was drawn in; {people})."), values)
                  : say(voice, QT_TRANSLATE_NOOP("words", "Where {word} was ticked, liking was about {by} points lower ({low} to {high} before it was drawn in; {people})."), values);
  return isMore ? say(voice, QT_TRANSLATE_NOOP("words", "With 10 of 100 more {word} liking was about {by} points higher ({low} to {high} before it was drawn in; {people})."), values)
                : say(voice, QT_TRANSLATE_NOOP("words", "With 10 of 100 more {word} liking was about {by} points lower ({low} to {high} before it was drawn in; {people})."), values);
}

std::string numberOrDash(const Voice& voice, const std::optional<double>& value) { return value ? decimal(voice, *value, 2) : std::string("–"); }

}  // namespace

OutSection driversSection(const Voice& voice, const insight::Drivers& drivers, int alphaPm) {
  if (drivers.why == stats::Reason::notGiven) return {};
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "Which words went with liking: a hint")), {}, {}, {}};
  if (drivers.why == stats::Reason::fewSamples) {
    section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Under four drinks any two things that differ go together, so no hint is given.")));
    return section;
  }
  if (drivers.why) {
    section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "From fewer than five people no hint is given.")));
    return section;
  }
  std::vector<DriverLine> told;
  std::ranges::copy_if(drivers.lines, std::back_inserter(told), [&](const DriverLine& line) { return stands(line, alphaPm); });
  const auto shown = [](const DriverLine& line) { return std::abs(*line.shrunk) * (line.kind == ItemKind::check ? 0.1 : 1.0); };
  std::ranges::stable_sort(told, std::greater<>(), shown);
  for (const DriverLine& line : told) section.lines.push_back(driverLine(voice, line));
  if (told.empty()) section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "No word went with liking more clearly than chance does.")));
  else section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "It holds for these {lots} drinks only, and going together is no cause: try it before you change a recipe. Each number is drawn in towards nothing, for many words were looked at."),
                                   {{"lots", whole(voice, drivers.lots)}}));
  section.headers = {say(voice, QT_TRANSLATE_NOOP("words", "Word")), say(voice, QT_TRANSLATE_NOOP("words", "liking, drawn in")), say(voice, QT_TRANSLATE_NOOP("words", "as found")),
                     say(voice, QT_TRANSLATE_NOOP("words", "from")), say(voice, QT_TRANSLATE_NOOP("words", "to")), say(voice, QT_TRANSLATE_NOOP("words", "people"))};
  for (const DriverLine& line : drivers.lines)
    section.rows.push_back({questionName(voice, line.kind, line.part, line.word), numberOrDash(voice, line.shrunk), numberOrDash(voice, line.more), numberOrDash(voice, line.low),
                            numberOrDash(voice, line.high), whole(voice, line.people)});
  return section;
}

}  // namespace oddglass::words
