#include "words/sheet_picture.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {

GapPictureWords gapPictureWords(const Voice& voice, const Plan& plan, Slot target, Slot lot) {
  const Values values{{"drink", lotNamed(voice, plan, lot)}, {"reference", lotNamed(voice, plan, target)}};
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

}  // namespace oddglass::words
