#include "words/age_picture.h"

#include "words/drinks.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/over_time.h"
#include "words/sheet_asked.h"
#include "words/sheet_out.h"

namespace oddglass::words {

AgePictureWords agePictureWords(const Voice& voice, ControlKind control, const insight::TimeLine& line) {
  const Values what{{"what", capitalised(questionName(voice, line.question.kind, line.question.part, line.question.word))}};
  AgePictureWords words;
  switch (control) {
    case ControlKind::twin:
      words = {say(voice, QT_TRANSLATE_NOOP("words", "{what}: the batch minus its cold twin, by age; in brackets how many people"), what),
               say(voice, QT_TRANSLATE_NOOP("words", "less than the twin")), say(voice, QT_TRANSLATE_NOOP("words", "more than the twin")), {}};
      break;
    case ControlKind::reference:
      words = {say(voice, QT_TRANSLATE_NOOP("words", "{what}: the batch minus the bought drink, by age; in brackets how many people"), what),
               say(voice, QT_TRANSLATE_NOOP("words", "less than the bought one")), say(voice, QT_TRANSLATE_NOOP("words", "more than the bought one")), {}};
      break;
    case ControlKind::none: {
      const Ends ends = scaleEnds(voice, line.question.kind);
      const auto answers = answerWords(voice, line.question.kind);
      const bool hasAnswers = ends.low.empty() && !answers.empty();
      words = {say(voice, QT_TRANSLATE_NOOP("words", "{what}: the batch, by age; in brackets how many people"), what), hasAnswers ? answers.front() : ends.low, hasAnswers ? answers.back() : ends.high, {}};
      break;
    }
  }
  words.sentence = words.title;
  return words;
}

std::string ageDotLabel(const Voice& voice, double age, int people) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{age} ({people})"), {{"age", ageName(voice, age)}, {"people", whole(voice, people)}});
}

std::string ageDotSentence(const Voice& voice, const insight::TimeLine& line, const insight::TimeDot& dot, double age) {
  Values values{{"age", ageName(voice, age)}, {"value", points(voice, line.question.kind, dot.value.value_or(0.0))}, {"of", outOf(voice, line.question.kind)}, {"people", people(voice, dot.people)}};
  if (!dot.low || !dot.high) return say(voice, QT_TRANSLATE_NOOP("words", "At {age}: {value} {of}, {people}."), values);
  values["low"] = points(voice, line.question.kind, *dot.low);
  values["high"] = points(voice, line.question.kind, *dot.high);
  return say(voice, QT_TRANSLATE_NOOP("words", "At {age}: {value} {of} ({low} to {high}), {people}."), values);
}

AgePictureWords mentionPictureWords(const Voice& voice, const insight::TimeMentions& mentions) {
  AgePictureWords words{say(voice, QT_TRANSLATE_NOOP("words", "{what}: who ticked it of the batch, of those who were asked, by age"), {{"what", capitalised(mentions.question.word)}}),
                        say(voice, QT_TRANSLATE_NOOP("words", "nobody")), say(voice, QT_TRANSLATE_NOOP("words", "everybody")), {}};
  words.sentence = words.title;
  return words;
}

std::string mentionDotLabel(const Voice& voice, double age, int ticked, int asked) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{age}, {count}"), {{"age", ageName(voice, age)}, {"count", countOf(voice, ticked, asked)}});
}

AgePictureWords seenPictureWords(const Voice& voice, NoteKind kind) {
  AgePictureWords words{say(voice, QT_TRANSLATE_NOOP("words", "{what} by age, as it was noted"), {{"what", capitalised(noteKindName(voice, kind))}}), noteLevelName(voice, kind, 0), noteLevelName(voice, kind, 3), {}};
  words.sentence = words.title;
  return words;
}

std::string seenDotSentence(const Voice& voice, const std::string& age, const std::string& level) {
  return say(voice, QT_TRANSLATE_NOOP("words", "At {age}: {level}"), {{"age", age}, {"level", level}});
}

}  // namespace oddglass::words
