#include "words/batch_steps.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/over_time.h"
#include "words/sheet_out.h"

#include <cmath>

namespace oddglass::words {

using insight::BatchGap;
using insight::BatchLink;
using insight::BatchStep;
using insight::GapVerdict;
using insight::SideBySide;

namespace {

std::string daysOf(const Voice& voice, const BatchTastings& tastings, const std::vector<int>& sessions) {
  std::vector<std::string> days;
  for (const int session : sessions) days.push_back(tastings.about.sessions[static_cast<std::size_t>(session)].heldOn);
  return listed(voice, days);
}

std::string linkLine(const Voice& voice, const Values& names, const BatchTastings& tastings, const BatchStep& step) {
  Values values = names;
  values["people"] = people(voice, step.people);
  switch (step.link) {
    case BatchLink::none: return say(voice, QT_TRANSLATE_NOOP("words", "Never poured together, nor beside a shared bottle: not comparable."), values);
    case BatchLink::together:
      values["days"] = daysOf(voice, tastings, step.baseSessions);
      return say(voice, QT_TRANSLATE_NOOP("words", "Poured together on {days}: {people} had both."), values);
    case BatchLink::reference: break;
  }
  values["bottle"] = tastings.names[static_cast<std::size_t>(*step.shared)];
  values["first"] = daysOf(voice, tastings, step.baseSessions);
  values["second"] = daysOf(voice, tastings, step.otherSessions);
  return say(voice, QT_TRANSLATE_NOOP("words", "Never poured together, but each beside {bottle} ({base} on {first}, {other} on {second}). What is compared is each batch minus that bottle, by the {people} who sat at both. That is the weaker way: two evenings and the bottle's own aging stand between them."), values);
}

// Under a week nobody would call it another age.
bool agesDiffer(const BatchStep& step) { return step.baseAge && step.otherAge && std::abs(*step.baseAge - *step.otherAge) * insight::daysOfAMonth > 7.0; }

std::string ageLine(const Voice& voice, Values values, const BatchStep& step) {
  if (step.link == BatchLink::none) return {};
  if (!step.baseAge || !step.otherAge) return say(voice, QT_TRANSLATE_NOOP("words", "The day of bottling of one of them is not known, so neither is its age at tasting."));
  values["baseAge"] = ageName(voice, *step.baseAge);
  values["otherAge"] = ageName(voice, *step.otherAge);
  if (step.baseSessions.size() > 1 || step.otherSessions.size() > 1)
    return agesDiffer(step) ? say(voice, QT_TRANSLATE_NOOP("words", "At these tastings {base} was {baseAge} old and {other} was {otherAge} old on average: what moved may be age."), values)
                            : say(voice, QT_TRANSLATE_NOOP("words", "At these tastings {base} was {baseAge} old and {other} was {otherAge} old on average."), values);
  return agesDiffer(step) ? say(voice, QT_TRANSLATE_NOOP("words", "At tasting {base} was {baseAge} old and {other} was {otherAge} old: what moved may be age."), values)
                          : say(voice, QT_TRANSLATE_NOOP("words", "At tasting {base} was {baseAge} old and {other} was {otherAge} old."), values);
}

std::string adviceLine(const Voice& voice, Values values, const BatchStep& step, const std::string& today) {
  if (step.link == BatchLink::none || !agesDiffer(step)) return {};
  if (step.sameAgeOn && *step.sameAgeOn > today) {
    values["day"] = *step.sameAgeOn;
    return say(voice, QT_TRANSLATE_NOOP("words", "To take age out, pour each at one age beside one bought lot. {other} is as old as {base} was on {day}."), values);
  }
  return say(voice, QT_TRANSLATE_NOOP("words", "To take age out, pour the next batches at one age, each beside one bought lot."));
}

std::string spanText(const Voice& voice, ItemKind kind, double low, double high) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{low} to {high}"), {{"low", points(voice, kind, low)}, {"high", points(voice, kind, high)}});
}

}  // namespace

std::string changedLine(const Voice& voice, const std::vector<Note>& changed) {
  if (changed.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "Nothing is written down as changed between them. Write it as a note of the batch."));
  std::vector<std::string> what;
  for (const Note& note : changed) what.push_back(note.text);
  const Values values{{"what", listed(voice, what)}, {"n", capitalised(spelled(voice, static_cast<int>(changed.size())))}};
  return changed.size() == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "One thing was changed: {what}. What moved may come of it, or of what nobody wrote down."), values)
                             : say(voice, QT_TRANSLATE_NOOP("words", "{n} things changed together. This cannot say which did it. They were: {what}."), values);
}

std::string batchGapLine(const Voice& voice, const std::vector<std::string>& names, const SideBySide& found, const BatchStep& step, const BatchGap& gap) {
  const LotQuestion& question = found.lines[static_cast<std::size_t>(gap.line)].question;
  const ItemKind kind = question.kind;
  const bool isGood = found.good == step.base;
  Values values{{"what", capitalised(questionName(voice, kind, question.part, question.word))}, {"of", outOf(voice, kind)}, {"people", people(voice, gap.people)},
                {"other", names[static_cast<std::size_t>(step.other)]}, {"base", isGood ? say(voice, QT_TRANSLATE_NOOP("words", "the good one")) : names[static_cast<std::size_t>(step.base)]}};
  if (gap.difference.estimate) values["by"] = points(voice, kind, std::abs(*gap.difference.estimate));
  if (gap.difference.low && gap.difference.high) {
    const bool isDown = gap.verdict == GapVerdict::less;
    values["range"] = spanText(voice, kind, isDown ? -*gap.difference.high : *gap.difference.low, isDown ? -*gap.difference.low : *gap.difference.high);
  }
  if (gap.limit) values["limit"] = limitPoints(voice, kind, *gap.limit);
  if (gap.limitLow && gap.limitHigh) values["here"] = spanText(voice, kind, *gap.limitLow, *gap.limitHigh);
  switch (gap.verdict) {
    case GapVerdict::less: return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {other} less than {base}, by {by} {of} ({range}), {people}."), values);
    case GapVerdict::more: return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {other} more than {base}, by {by} {of} ({range}), {people}."), values);
    case GapVerdict::within: return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {other} within your limit of {base} (no more than {limit}; here {here}), {people}."), values);
    case GapVerdict::cannotTell: break;
  }
  if (gap.difference.low && gap.difference.high) return say(voice, QT_TRANSLATE_NOOP("words", "{what}: cannot tell yet; anything from {range} {of} fits, {people}."), values);
  return gap.people < insight::fewestForARange ? say(voice, QT_TRANSLATE_NOOP("words", "{what}: cannot tell yet; fewer than three people had both."), values)
                        : say(voice, QT_TRANSLATE_NOOP("words", "{what}: cannot tell yet; everybody gave one gap, so there is nothing to judge it by."), values);
}

GapPictureWords batchPictureWords(const Voice& voice, const std::vector<std::string>& names, const BatchStep& step, ItemKind kind) {
  const std::string& base = names[static_cast<std::size_t>(step.base)];
  GapPictureWords text = gapWordsBetween(voice, names[static_cast<std::size_t>(step.other)], base);
  const Values values{{"title", text.title}, {"of", outOf(voice, kind)}};
  text.title = step.link == insight::BatchLink::reference ? say(voice, QT_TRANSLATE_NOOP("words", "{title}, points {of}, each minus the shared bottle"), values)
                                                          : say(voice, QT_TRANSLATE_NOOP("words", "{title}, points {of}"), values);
  return text;
}

BatchStepWords batchStepWords(const Voice& voice, const std::vector<std::string>& names, const BatchTastings& tastings, const SideBySide& found, const BatchStep& step, const std::string& today) {
  const Values values{{"base", names[static_cast<std::size_t>(step.base)]}, {"other", names[static_cast<std::size_t>(step.other)]}};
  BatchStepWords words;
  words.heading = found.good == step.base ? say(voice, QT_TRANSLATE_NOOP("words", "{other} beside the good one, {base}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "{other} beside {base}"), values);
  words.lines = {linkLine(voice, values, tastings, step)};
  if (const std::string age = ageLine(voice, values, step); !age.empty()) words.lines.push_back(age);
  words.lines.push_back(changedLine(voice, step.changed));
  std::vector<std::string> untold;
  for (const BatchGap& gap : step.gaps) {
    words.gaps.push_back(batchGapLine(voice, names, found, step, gap));
    const LotQuestion& question = found.lines[static_cast<std::size_t>(gap.line)].question;
    if (gap.verdict == GapVerdict::cannotTell) untold.push_back(questionName(voice, question.kind, question.part, question.word));
    else words.told.push_back(words.gaps.back());
  }
  if (!untold.empty()) words.told.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Cannot tell yet in {what}."), {{"what", listed(voice, untold)}}));
  words.advice = adviceLine(voice, values, step, today);
  return words;
}

}  // namespace oddglass::words
