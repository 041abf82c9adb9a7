#include "words/open_round.h"

#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {

OpenWords openWords(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "Once more, with the labels known")),
          say(voice, QT_TRANSLATE_NOOP("words", "The same people score the same drinks again, knowing now what they are. It shows what a label does, beside what the blind round said.")),
          say(voice, QT_TRANSLATE_NOOP("words", "Nobody has to. The blind answers stay as they are and no verdict changes. A sip to remember by is enough, and it counts towards the evening’s alcohol like any other."))};
}

std::string openFor(const Voice& voice, const std::string& who, bool isLetter, int place) {
  const Values values{{"who", who}, {"place", whole(voice, place)}};
  return isLetter ? say(voice, QT_TRANSLATE_NOOP("words", "This is for whoever sat at place {place}. Others look away."), values)
                  : say(voice, QT_TRANSLATE_NOOP("words", "This is for {who}, at place {place}. Others look away."), values);
}

std::string openAsked(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "How do you like each of them now that you know what it is? Another answer than before is as good as the same one."));
}

std::string openThanks(const Voice& voice, int people) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "Kept beside the blind answers: 1 person scored with the labels known."), QT_TRANSLATE_NOOP("words", "Kept beside the blind answers: {n} people scored with the labels known."), people);
}

}  // namespace oddglass::words
