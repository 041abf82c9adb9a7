#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict_kinds.h"

namespace oddglass::words {

void speakStop(const Voice& voice, const insight::Findings& findings, Spoken& spoken) {
  const insight::Sequential& sequential = *findings.printed().sequential;
  const Values values{{"round", whole(voice, sequential.afterRound)}};
  std::string ended = sequential.stoppedEarly ? say(voice, QT_TRANSLATE_NOOP("words", "Stopped after round {round}."), values)
                                              : say(voice, QT_TRANSLATE_NOOP("words", "It went to the last round, round {round}."), values);
  if (sequential.decision == insight::Decision::undecided)
    ended += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "The answers stayed between the two lines that were drawn before: undecided."));
  spoken.under = spoken.under.empty() ? ended : ended + ' ' + spoken.under;
}

}  // namespace oddglass::words
