#include "report/age_picture.h"

#include "domain/day.h"
#include "words/age_picture.h"
#include "words/bottle_watch.h"
#include "words/drinks.h"
#include "words/numbers.h"
#include "words/over_time.h"
#include "words/sheet_out.h"

#include <algorithm>
#include <cmath>

namespace oddglass::report {
namespace {

struct MarkedNote {
  double age = 0;
  std::string letter;
  const Note* note = nullptr;
};

double lastAgeOf(const insight::OverTime& over) { return std::max(1.0, over.sittings.empty() ? 0.0 : over.sittings.back().age); }

// Those of the series' own time, the oldest first, a to z and on.
std::vector<MarkedNote> markedNotes(const Series& series, const insight::OverTime& over, const std::vector<Note>& notes) {
  std::vector<MarkedNote> marked;
  for (const Note& note : notes) {
    const auto days = daysBetween(series.begunOn, note.doneOn);
    if (days && *days >= 0 && *days / insight::daysOfAMonth <= lastAgeOf(over)) marked.push_back({*days / insight::daysOfAMonth, {}, &note});
  }
  std::ranges::stable_sort(marked, {}, &MarkedNote::age);
  int number = 0;
  for (MarkedNote& each : marked) {
    each.letter = std::string(1, static_cast<char>('a' + number % 26));
    if (number >= 26) each.letter += std::to_string(number / 26 + 1);
    ++number;
  }
  return marked;
}

std::string markLine(const words::Voice& voice, const MarkedNote& marked) { return marked.letter + "  " + words::noteLine(voice, *marked.note); }

void addFittedLine(figures::AgePicture& picture, const insight::TimeLine& line) {
  if (picture.dots.size() < 3 || !line.trend.slope.estimate) return;
  double age = 0, value = 0;
  for (const figures::AgeDot& dot : picture.dots) {
    age += dot.age;
    value += dot.value;
  }
  const double count = static_cast<double>(picture.dots.size());
  const auto at = [&](double where) { return value / count + *line.trend.slope.estimate * (where - age / count); };
  picture.line = std::pair(at(picture.dots.front().age), at(picture.dots.back().age));
}

}  // namespace

std::optional<figures::AgePicture> agePicture(const words::Voice& voice, const Series& series, const insight::OverTime& over, const insight::TimeLine& line, const std::vector<Note>& notes) {
  if (line.dots.empty()) return std::nullopt;
  const words::AgePictureWords said = words::agePictureWords(voice, over.control, line);
  figures::AgePicture picture;
  picture.title = said.title;
  picture.sentence = said.sentence;
  picture.lastAge = lastAgeOf(over);
  picture.scale = {static_cast<double>(line.question.low), static_cast<double>(line.question.high), said.low, said.high, {}};
  if (over.control != ControlKind::none) {
    double furthest = 0;
    for (const insight::TimeDot& dot : line.dots)
      for (const auto& value : {dot.value, dot.low, dot.high}) furthest = std::max(furthest, std::abs(value.value_or(0.0)));
    const double reach = std::min(figures::evenReach(furthest), picture.scale.high - picture.scale.low);
    picture.scale.low = -reach;
    picture.scale.high = reach;
    picture.scale.ticks = {{-reach, words::points(voice, line.question.kind, -reach)}, {0, words::points(voice, line.question.kind, 0)}, {reach, words::points(voice, line.question.kind, reach)}};
  } else {
    for (const double end : {picture.scale.low, picture.scale.high}) picture.scale.ticks.push_back({end, words::points(voice, line.question.kind, end)});
  }
  for (const insight::TimeDot& dot : line.dots) {
    const double age = over.sittings[static_cast<std::size_t>(dot.sitting)].age;
    figures::AgeDot drawn{age, words::ageDotLabel(voice, age, dot.people), *dot.value, std::nullopt, words::ageDotSentence(voice, line, dot, age)};
    if (dot.low && dot.high) drawn.interval = figures::Span{*dot.low, *dot.high};
    picture.dots.push_back(std::move(drawn));
  }
  addFittedLine(picture, line);
  for (const MarkedNote& each : markedNotes(series, over, notes)) picture.notes.push_back({each.age, each.letter, markLine(voice, each)});
  const words::OutSection table = words::timeTable(voice, over, line);
  picture.table = {table.headers, table.rows};
  return picture;
}

std::optional<figures::AgePicture> mentionPicture(const words::Voice& voice, const Series& series, const insight::OverTime& over, const insight::TimeMentions& mentions, const std::vector<Note>& notes) {
  const words::AgePictureWords said = words::mentionPictureWords(voice, mentions);
  figures::AgePicture picture;
  picture.title = said.title;
  picture.sentence = said.sentence;
  picture.lastAge = lastAgeOf(over);
  picture.scale = {0.0, 1.0, said.low, said.high, {}};
  for (const auto& count : mentions.counts) {
    if (count.batchOf == 0) continue;
    const double age = over.sittings[static_cast<std::size_t>(count.sitting)].age;
    const std::string label = words::mentionDotLabel(voice, age, count.batch, count.batchOf);
    picture.dots.push_back({age, label, static_cast<double>(count.batch) / count.batchOf, std::nullopt, label});
  }
  if (picture.dots.empty()) return std::nullopt;
  for (const MarkedNote& each : markedNotes(series, over, notes)) picture.notes.push_back({each.age, each.letter, markLine(voice, each)});
  const words::OutSection table = words::mentionsSection(voice, over, mentions, notes);
  picture.table = {table.headers, table.rows};
  return picture;
}

figures::AgePicture seenPicture(const words::Voice& voice, const insight::SeenInBottle& seen) {
  const words::AgePictureWords said = words::seenPictureWords(voice, seen.kind);
  figures::AgePicture picture;
  picture.title = said.title;
  picture.sentence = said.sentence;
  picture.scale = {0.0, 3.0, said.low, said.high, {}};
  for (const auto& look : seen.looks) {
    const std::string age = words::ageName(voice, look.age), level = words::noteLevelName(voice, seen.kind, look.level);
    picture.lastAge = std::max(picture.lastAge, look.age);
    picture.dots.push_back({look.age, age, static_cast<double>(look.level), std::nullopt, words::seenDotSentence(voice, age, level)});
    picture.table.rows.push_back({age, level});
  }
  picture.table.headers = words::seenHeaders(voice);
  return picture;
}

std::vector<std::string> noteLines(const words::Voice& voice, const Series& series, const insight::OverTime& over, const std::vector<Note>& notes) {
  std::vector<std::string> lines;
  for (const MarkedNote& each : markedNotes(series, over, notes)) lines.push_back(markLine(voice, each));
  return lines;
}

}  // namespace oddglass::report
