#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict_kinds.h"

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Verdict;

const char* moreSource(Claim claim, bool isPair, bool mostly) {
  switch (claim) {
    case Claim::people:
      if (isPair) return mostly ? QT_TRANSLATE_NOOP("words", "{lot} was called the more {more} one, in {right} of {n} pairs, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "{lot} was called the more {more} one, in {right} of {n} pairs.");
      return mostly ? QT_TRANSLATE_NOOP("words", "{lot} was picked as the most {more} one, in {right} of {n} tastings, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "{lot} was picked as the most {more} one, in {right} of {n} tastings.");
    case Claim::table:
      if (isPair) return mostly ? QT_TRANSLATE_NOOP("words", "At this table {lot} was called the more {more} one, in {right} of {n} pairs, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "At this table {lot} was called the more {more} one, in {right} of {n} pairs.");
      return mostly ? QT_TRANSLATE_NOOP("words", "At this table {lot} was picked as the most {more} one, in {right} of {n} tastings, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "At this table {lot} was picked as the most {more} one, in {right} of {n} tastings.");
    case Claim::me:
      if (isPair) return mostly ? QT_TRANSLATE_NOOP("words", "You called {lot} the more {more} one, in {right} of {n} pairs, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "You called {lot} the more {more} one, in {right} of {n} pairs.");
      return mostly ? QT_TRANSLATE_NOOP("words", "You picked {lot} as the most {more} one, in {right} of {n} tastings, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "You picked {lot} as the most {more} one, in {right} of {n} tastings.");
  }
  return "";
}

}  // namespace

void speakMore(const Voice& voice, const Plan& plan, const Findings& findings, Spoken& spoken) {
  const insight::Reading& reading = findings.printed();
  const bool alone = findings.claim == Claim::me, isPair = findings.method == Method::pair;
  const Values values{{"lot", lotNamed(voice, plan, findings.expected.value_or(Slot{1}))}, {"more", plan.attribute}, {"right", whole(voice, reading.right)},
                      {"n", whole(voice, reading.trials)}, {"other", whole(voice, reading.trials - reading.right)}};
  if (findings.verdict == Verdict::shown) {
    spoken.headline = capitalised(say(voice, moreSource(findings.claim, isPair, findings.mostlyByLookOrFizz), values));
    spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "More is not better or worse."));
    spoken.notSaid = alone ? say(voice, QT_TRANSLATE_NOOP("words", "It does not say how much more it is, or that other people notice."))
                           : say(voice, QT_TRANSLATE_NOOP("words", "It does not say how much more it is, that everybody notices, or which people like better."));
    spoken.next = alone ? say(voice, QT_TRANSLATE_NOOP("words", "Next: whether you want more of it is yours to decide."))
                        : say(voice, QT_TRANSLATE_NOOP("words", "Next: whether you want more of it is yours to decide; which one people prefer is a question of its own."));
    return;
  }
  spoken.headline = capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{lot}: not shown to be more {more}."), values));
  if (reading.otherWayP && *reading.otherWayP <= findings.alphaPm / 1000.0) {
    spoken.under = say(voice, isPair ? QT_TRANSLATE_NOOP("words", "{other} of {n} pointed the other way. You asked about one direction only, so this is a hint: make it the next question.")
                                     : QT_TRANSLATE_NOOP("words", "Only {right} of {n} picked it, fewer than guessing gives. You asked about one direction only, so this is a hint: make it the next question."), values);
    spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: seal a plan that asks about the other direction."));
    return;
  }
  spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "It may be equal, slightly more, or less."));
  spoken.next = alone ? say(voice, QT_TRANSLATE_NOOP("words", "Next: if a small step matters, plan more rounds."))
                      : say(voice, QT_TRANSLATE_NOOP("words", "Next: if a small step matters, ask more people, or plan more rounds."));
}

}  // namespace oddglass::words
