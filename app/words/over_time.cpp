#include "words/over_time.h"

#include "insight/points.h"
#include "words/bottle_watch.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {

using insight::ChangeVerdict;
using insight::MainChange;
using insight::OverTime;
using insight::TimeLine;
using insight::TimeVerdict;

namespace {

std::string mainName(const Voice& voice, const MainChange& main) { return main.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "liking")) : main.word; }

// Slopes are finer than points: one decimal more.
std::string perMonth(const Voice& voice, ItemKind kind, double value) { return decimal(voice, kind == ItemKind::magnitude ? value / 10.0 : value, kind == ItemKind::line || kind == ItemKind::magnitude ? 1 : 2); }

std::string turned(const Voice& voice, ItemKind kind, double low, double high, bool isDown, bool isSlope) {
  const auto text = [&](double value) { return isSlope ? perMonth(voice, kind, value) : points(voice, kind, value); };
  return say(voice, QT_TRANSLATE_NOOP("words", "{low} to {high}"), {{"low", text(isDown ? -high : low)}, {"high", text(isDown ? -low : high)}});
}

std::string besideWhat(const Voice& voice, ControlKind control) {
  switch (control) {
    case ControlKind::twin: return say(voice, QT_TRANSLATE_NOOP("words", ", beside the cold bottles"));
    case ControlKind::reference: return say(voice, QT_TRANSLATE_NOOP("words", ", beside the bought drink"));
    case ControlKind::none: break;
  }
  return {};
}

// Something came out, but without a control nobody can say of what.
bool isConfounded(const OverTime& over) {
  const ChangeVerdict verdict = over.main.verdict;
  return over.control == ControlKind::none && (verdict == ChangeVerdict::more || verdict == ChangeVerdict::less || verdict == ChangeVerdict::within);
}

std::string changeHeadline(const Voice& voice, const Series& series, const OverTime& over) {
  const MainChange& main = over.main;
  const ItemKind kind = main.kind;
  const bool isDown = main.verdict == ChangeVerdict::less;
  Values values{{"what", capitalised(mainName(voice, main))}, {"thing", mainName(voice, main)}, {"of", outOf(voice, kind)}, {"beside", besideWhat(voice, over.control)},
                {"number", whole(voice, main.sitting)}, {"people", people(voice, main.people)}};
  if (main.change.estimate) values["by"] = points(voice, kind, std::abs(*main.change.estimate));
  if (main.change.low && main.change.high) values["range"] = turned(voice, kind, *main.change.low, *main.change.high, isDown, false);
  if (series.main.limit) values["limit"] = points(voice, kind, *series.main.limit);
  if (main.alike && main.alike->low && main.alike->high) values["here"] = turned(voice, kind, *main.alike->low, *main.alike->high, false, false);
  if (isConfounded(over)) return main.verdict == ChangeVerdict::within ? say(voice, QT_TRANSLATE_NOOP("words", "These two sittings were alike within your limit in {thing} (here between {here}); whether the drink stayed as it was cannot be known."), values)
                               : isDown ? say(voice, QT_TRANSLATE_NOOP("words", "{what} was given {by} {of} less than at the first sitting ({range}); whether drink or day did it cannot be known."), values)
                                        : say(voice, QT_TRANSLATE_NOOP("words", "{what} was given {by} {of} more than at the first sitting ({range}); whether drink or day did it cannot be known."), values);
  switch (main.verdict) {
    case ChangeVerdict::more: return say(voice, QT_TRANSLATE_NOOP("words", "{what} rose from the first sitting to the one asked about: by {by} {of} ({range}){beside}."), values);
    case ChangeVerdict::less: return say(voice, QT_TRANSLATE_NOOP("words", "{what} fell from the first sitting to the one asked about: by {by} {of} ({range}){beside}."), values);
    case ChangeVerdict::within: return say(voice, QT_TRANSLATE_NOOP("words", "{what} is within your limit of where it began: no more than {limit} {of} (here between {here}){beside}."), values);
    case ChangeVerdict::notShown: return say(voice, QT_TRANSLATE_NOOP("words", "No change shown in {thing}{beside}. Anything from {range} {of} fits."), values);
    case ChangeVerdict::notHeld: return say(voice, QT_TRANSLATE_NOOP("words", "Sitting {number}, which this series was begun for, has not been held yet."), values);
    case ChangeVerdict::noFirst: return say(voice, QT_TRANSLATE_NOOP("words", "No verdict: the first sitting was not held, so there is nothing to set the later one beside."));
    case ChangeVerdict::notAsked: return say(voice, QT_TRANSLATE_NOOP("words", "No verdict: {thing} was not asked at both sittings."), values);
    case ChangeVerdict::cannotTell: break;
  }
  return main.people < insight::fewestForARange ? say(voice, QT_TRANSLATE_NOOP("words", "No verdict: fewer than three people sat at both sittings."), values)
                         : say(voice, QT_TRANSLATE_NOOP("words", "No verdict: everybody changed alike, so there is nothing to judge it by."), values);
}

Shape changeShape(ChangeVerdict verdict) {
  switch (verdict) {
    case ChangeVerdict::more:
    case ChangeVerdict::less: return Shape::disc;
    case ChangeVerdict::within: return Shape::bars;
    case ChangeVerdict::notShown: return Shape::ring;
    default: return Shape::dash;
  }
}

std::string wordOf(const Voice& voice, Shape shape) {
  switch (shape) {
    case Shape::disc: return say(voice, QT_TRANSLATE_NOOP("words", "changed"));
    case Shape::ring: return say(voice, QT_TRANSLATE_NOOP("words", "not shown"));
    case Shape::bars: return say(voice, QT_TRANSLATE_NOOP("words", "within your limit"));
    case Shape::dash: break;
  }
  return say(voice, QT_TRANSLATE_NOOP("words", "no verdict"));
}

std::vector<std::string> mainLines(const Voice& voice, const OverTime& over) {
  std::vector<std::string> lines;
  const MainChange& main = over.main;
  if (main.people > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "Worked out from the one person who sat at both."), QT_TRANSLATE_NOOP("words", "Worked out from the {n} people who sat at both."), main.people));
  if (main.verdict == ChangeVerdict::more || main.verdict == ChangeVerdict::less)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "More or less of a thing is not better or worse: whether to drink it is yours.")));
  if (main.verdict == ChangeVerdict::notShown) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "That is not “no change”: a small one may be there.")));
  return lines;
}

std::string slopeLine(const Voice& voice, const OverTime& over, const TimeLine& line) {
  const ItemKind kind = line.question.kind;
  const stats::Estimated& slope = line.trend.slope;
  const bool isDown = line.verdict == TimeVerdict::fell;
  Values values{{"what", capitalised(questionName(voice, kind, line.question.part, line.question.word))}, {"of", outOf(voice, kind)}, {"beside", besideWhat(voice, over.control)},
                {"date", over.sittings[static_cast<std::size_t>(line.dots.front().sitting)].heldOn}, {"people", people(voice, line.trend.tasters)}};
  if (slope.estimate) values["by"] = perMonth(voice, kind, std::abs(*slope.estimate));
  if (slope.low && slope.high) {
    values["range"] = turned(voice, kind, *slope.low, *slope.high, isDown, true);
    values["most"] = perMonth(voice, kind, std::max(std::abs(*slope.low), std::abs(*slope.high)));
  }
  switch (line.verdict) {
    case TimeVerdict::rose: return say(voice, QT_TRANSLATE_NOOP("words", "{what} rose since {date}: about {by} {of} a month ({range}){beside}."), values);
    case TimeVerdict::fell: return say(voice, QT_TRANSLATE_NOOP("words", "{what} fell since {date}: about {by} {of} a month ({range}){beside}."), values);
    case TimeVerdict::notShown: return say(voice, QT_TRANSLATE_NOOP("words", "{what}: no change shown; up to {most} {of} a month could have been missed."), values);
    case TimeVerdict::dotsOnly: return say(voice, QT_TRANSLATE_NOOP("words", "{what}: dots without a line, for there are fewer than three sittings."), values);
    case TimeVerdict::cannotTell: break;
  }
  return say(voice, QT_TRANSLATE_NOOP("words", "{what}: these answers do not allow a judgement."), values);
}

std::string lastTwoLine(const Voice& voice, const OverTime& over, const TimeLine& line) {
  if (!line.lastTwo || !line.limit || !line.lastTwo->low || !line.lastTwo->high) return {};
  const Values values{{"limit", limitPoints(voice, line.question.kind, *line.limit)}, {"range", turned(voice, line.question.kind, *line.lastTwo->low, *line.lastTwo->high, false, false)}};
  if (!line.lastTwo->isAlike) return say(voice, QT_TRANSLATE_NOOP("words", "Whether the last two looks lie within your limit ({limit}) cannot be told yet: anything from {range} fits."), values);
  return over.control == ControlKind::none ? say(voice, QT_TRANSLATE_NOOP("words", "The last two sittings were alike within your limit ({limit}); without a control that is of drink and day together."), values)
                                           : say(voice, QT_TRANSLATE_NOOP("words", "The last two looks were alike within your limit ({limit})."), values);
}

std::string peakLine(const Voice& voice, const TimeLine& line) {
  const stats::Peak& peak = line.trend.peak;
  if (line.question.kind != ItemKind::liking || line.trend.shape.chosen != stats::Shape::quadratic || !peak.age) return {};
  const Values values{{"age", ageName(voice, *peak.age)}, {"low", peak.low ? ageName(voice, *peak.low) : say(voice, QT_TRANSLATE_NOOP("words", "before the first look"))},
                      {"high", peak.high ? ageName(voice, *peak.high) : say(voice, QT_TRANSLATE_NOOP("words", "past the last bottle"))}};
  return say(voice, QT_TRANSLATE_NOOP("words", "Liking was highest at {age}; anything from {low} to {high} fits these answers."), values);
}

}  // namespace

OutSection timeTable(const Voice& voice, const OverTime& over, const TimeLine& line) {
  OutSection section;
  section.heading = capitalised(questionName(voice, line.question.kind, line.question.part, line.question.word));
  for (const std::string& text : {slopeLine(voice, over, line), peakLine(voice, line), lastTwoLine(voice, over, line)})
    if (!text.empty()) section.lines.push_back(text);
  const bool hasControl = over.control != ControlKind::none;
  section.headers = {say(voice, QT_TRANSLATE_NOOP("words", "age")), say(voice, QT_TRANSLATE_NOOP("words", "batch"))};
  if (hasControl) section.headers.insert(section.headers.end(), {say(voice, QT_TRANSLATE_NOOP("words", "control")), say(voice, QT_TRANSLATE_NOOP("words", "difference"))});
  section.headers.push_back(say(voice, QT_TRANSLATE_NOOP("words", "people")));
  for (const insight::TimeDot& dot : line.dots) {
    const auto cell = [&](const std::optional<double>& value) { return value ? points(voice, line.question.kind, *value) : std::string("-"); };
    std::vector<std::string> row{ageName(voice, over.sittings[static_cast<std::size_t>(dot.sitting)].age), cell(dot.batch)};
    if (hasControl) row.insert(row.end(), {cell(dot.control), cell(dot.value)});
    row.push_back(whole(voice, dot.people));
    section.rows.push_back(std::move(row));
  }
  return section;
}

std::string ageName(const Voice& voice, double months) {
  if (months < 1.5) return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 week"), QT_TRANSLATE_NOOP("words", "{n} weeks"), std::lround(months * insight::daysOfAMonth / 7.0));
  const double rounded = std::round(months);
  if (std::abs(months - rounded) < 0.15) return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 month"), QT_TRANSLATE_NOOP("words", "{n} months"), std::lround(rounded));
  return say(voice, QT_TRANSLATE_NOOP("words", "{n} months"), {{"n", decimal(voice, months, 1)}});
}

std::string sittingLine(const Voice& voice, const insight::TimeSitting& sitting, bool isFirst) {
  const Values values{{"date", sitting.heldOn}, {"age", ageName(voice, sitting.age)}, {"people", people(voice, sitting.people)}, {"both", whole(voice, sitting.alsoAtFirst)}};
  return isFirst || sitting.alsoAtFirst == sitting.people
             ? say(voice, QT_TRANSLATE_NOOP("words", "{date}, at {age}: {people}"), values)
             : say(voice, QT_TRANSLATE_NOOP("words", "{date}, at {age}: {people}, {both} of them at the first sitting too"), values);
}

std::string sittingTitle(const Voice& voice, const std::string& series, int number) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{series}: look {number}"), {{"series", series}, {"number", whole(voice, number)}});
}

std::string setupLine(const Voice& voice, const std::vector<SetupPart>& parts) {
  if (parts.empty()) return {};
  const auto name = [&](SetupPart part) -> std::string {
    switch (part) {
      case SetupPart::method: return say(voice, QT_TRANSLATE_NOOP("words", "another way of asking"));
      case SetupPart::sheet: return say(voice, QT_TRANSLATE_NOOP("words", "other questions"));
      case SetupPart::cupMl: return say(voice, QT_TRANSLATE_NOOP("words", "more or less in a cup"));
      case SetupPart::rounds: return say(voice, QT_TRANSLATE_NOOP("words", "more or fewer rounds"));
      case SetupPart::cupsAtOnce: return say(voice, QT_TRANSLATE_NOOP("words", "more or fewer cups at once"));
      case SetupPart::pause: return say(voice, QT_TRANSLATE_NOOP("words", "another pause"));
      case SetupPart::cleanser: return say(voice, QT_TRANSLATE_NOOP("words", "another cleanser"));
      case SetupPart::ceiling: return say(voice, QT_TRANSLATE_NOOP("words", "another ceiling"));
      case SetupPart::markedCup: return say(voice, QT_TRANSLATE_NOOP("words", "another marked cup"));
      case SetupPart::vessel: return say(voice, QT_TRANSLATE_NOOP("words", "other vessels"));
      case SetupPart::temperature: return say(voice, QT_TRANSLATE_NOOP("words", "another temperature"));
      case SetupPart::mouthful: return say(voice, QT_TRANSLATE_NOOP("words", "swallowed or spat out otherwise"));
      case SetupPart::duplicate: return say(voice, QT_TRANSLATE_NOOP("words", "a drink poured twice, or none"));
    }
    return {};
  };
  std::vector<std::string> names;
  for (const SetupPart part : parts) names.push_back(name(part));
  return say(voice, QT_TRANSLATE_NOOP("words", "Set otherwise than at the first sitting: {parts}."), {{"parts", listed(voice, names)}});
}

OverTimeWords overTimeWords(const Voice& voice, const Series& series, const OverTime& over, const std::string& nextOn, const std::vector<Note>& notes) {
  OverTimeWords out;
  out.shape = isConfounded(over) ? Shape::dash : changeShape(over.main.verdict);
  out.word = isConfounded(over) ? say(voice, QT_TRANSLATE_NOOP("words", "cannot be known")) : wordOf(voice, out.shape);
  if (over.sittings.empty()) {
    out.headline = say(voice, QT_TRANSLATE_NOOP("words", "Nothing has been tasted in this series yet."));
  } else {
    out.headline = changeHeadline(voice, series, over);
    out.lines = mainLines(voice, over);
  }
  if (over.sittings.size() == 1) out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "One sitting is a point, not a line.")));
  if (over.control == ControlKind::none) out.cautions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Cannot be known here: without a kept-back bottle, a changed drink and a changed day cannot be told apart.")));
  if (over.control == ControlKind::reference) out.cautions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "The bought drink has an age of its own: if it changes, the difference changes too.")));
  out.cautions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Tasters knew neither which cup was the batch nor how it was kept. That it was this age they could guess.")));
  for (const TimeLine& line : over.lines) {
    out.round.push_back(timeTable(voice, over, line));
    if (const std::string deeds = deedsLine(voice, line.question.word, notes); !deeds.empty()) out.round.back().lines.push_back(deeds);
  }
  for (const auto& mentions : over.mentions) out.round.push_back(mentionsSection(voice, over, mentions, notes));
  out.seen = seenSections(voice, series, over, notes);
  if (!nextOn.empty()) out.next = say(voice, QT_TRANSLATE_NOOP("words", "Next look: {date}."), {{"date", nextOn}});
  return out;
}

}  // namespace oddglass::words
