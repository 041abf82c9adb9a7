#include "words/sheet_picture.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

namespace oddglass::words {

GapPictureWords gapPictureWords(const Voice& voice, const Plan& plan, Slot target, Slot lot) { return gapWordsBetween(voice, lotNamed(voice, plan, lot), lotNamed(voice, plan, target)); }

GapPictureWords gapWordsBetween(const Voice& voice, const std::string& drink, const std::string& reference) {
  const Values values{{"drink", drink}, {"reference", reference}};
  return {say(voice, QT_TRANSLATE_NOOP("words", "{drink} beside {reference}"), values),
          values.at("reference"),
          say(voice, QT_TRANSLATE_NOOP("words", "the reference's own range")),
          say(voice, QT_TRANSLATE_NOOP("words", "your limit")),
          say(voice, QT_TRANSLATE_NOOP("words", "less")),
          say(voice, QT_TRANSLATE_NOOP("words", "more")),
          say(voice, QT_TRANSLATE_NOOP("words", "too few people, or all alike: no range")),
          {say(voice, QT_TRANSLATE_NOOP("words", "Word")), say(voice, QT_TRANSLATE_NOOP("words", "Verdict")), say(voice, QT_TRANSLATE_NOOP("words", "In a sentence"))}};
}

std::string gapWord(const Voice& voice, insight::GapVerdict verdict) {
  switch (verdict) {
    case insight::GapVerdict::less: return say(voice, QT_TRANSLATE_NOOP("words", "less"));
    case insight::GapVerdict::more: return say(voice, QT_TRANSLATE_NOOP("words", "more"));
    case insight::GapVerdict::within: return say(voice, QT_TRANSLATE_NOOP("words", "within the limit"));
    case insight::GapVerdict::cannotTell: break;
  }
  return say(voice, QT_TRANSLATE_NOOP("words", "cannot tell yet"));
}

std::string gapCount(const Voice& voice, int people) { return oddglass::words::people(voice, people); }

PointsPictureWords pointsPictureWords(const Voice& voice, const insight::PointsLine& line) {
  const Values values{{"what", capitalised(questionName(voice, line.kind, line.part, line.word))}, {"of", outOf(voice, line.kind)}};
  PointsPictureWords words;
  words.means = say(voice, QT_TRANSLATE_NOOP("words", "{what}, {of}: the average and its range"), values);
  words.answers = say(voice, QT_TRANSLATE_NOOP("words", "{what}, {of}: every person a dot"), values);
  const auto answers = answerWords(voice, line.kind);
  words.ends = answers.empty() ? scaleEnds(voice, line.kind) : Ends{answers.front(), answers.back()};
  if (line.kind == ItemKind::magnitude) words.marks = magnitudeMarks(voice);
  words.why = say(voice, QT_TRANSLATE_NOOP("words", "too few people, or all alike: no range"));
  words.meanHeaders = {say(voice, QT_TRANSLATE_NOOP("words", "Drink")), say(voice, QT_TRANSLATE_NOOP("words", "average")), say(voice, QT_TRANSLATE_NOOP("words", "from")),
                       say(voice, QT_TRANSLATE_NOOP("words", "to")), say(voice, QT_TRANSLATE_NOOP("words", "people"))};
  words.answerHeaders = {say(voice, QT_TRANSLATE_NOOP("words", "Drink")), say(voice, QT_TRANSLATE_NOOP("words", "points; in brackets, given by several")), say(voice, QT_TRANSLATE_NOOP("words", "people"))};
  return words;
}

std::string heapLine(const Voice& voice, const std::string& drink, ItemKind kind, double value, int count) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{drink}: {value} {of} by {people}"),
             {{"drink", drink}, {"value", points(voice, kind, value)}, {"of", outOf(voice, kind)}, {"people", people(voice, count)}});
}

}  // namespace oddglass::words
