#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict_kinds.h"

#include <algorithm>

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Verdict;

const char* preferenceSource(Claim claim, bool all) {
  switch (claim) {
    case Claim::people: return all ? QT_TRANSLATE_NOOP("words", "All {n} preferred {lot}.") : QT_TRANSLATE_NOOP("words", "{larger} of {n} preferred {lot}.");
    case Claim::table: return all ? QT_TRANSLATE_NOOP("words", "At this table all {n} preferred {lot}.") : QT_TRANSLATE_NOOP("words", "At this table {larger} of {n} preferred {lot}.");
    case Claim::me: return all ? QT_TRANSLATE_NOOP("words", "You preferred {lot} in all {n} rounds.") : QT_TRANSLATE_NOOP("words", "You preferred {lot} in {larger} of {n} rounds.");
  }
  return "";
}

}  // namespace

void speakPreference(const Voice& voice, const Plan& plan, const Findings& findings, Spoken& spoken) {
  const insight::Votes votes = findings.printed().votes.value_or(insight::Votes{});
  const auto names = namesOf(voice, plan, findings.lots.value_or(std::pair{Slot{1}, Slot{2}}));
  const bool alone = findings.claim == Claim::me;
  const int larger = std::max(votes.first, votes.second), smaller = std::min(votes.first, votes.second), n = votes.cast() + votes.none + votes.even;
  const Values values{{"lot", votes.first > votes.second ? names.one : names.other}, {"larger", whole(voice, larger)}, {"smaller", whole(voice, smaller)}, {"n", whole(voice, n)},
                      {"people", spelled(voice, n)}};
  if (findings.verdict == Verdict::shown) {
    spoken.headline = say(voice, preferenceSource(findings.claim, larger == n), values);
    spoken.notSaid = alone ? say(voice, QT_TRANSLATE_NOOP("words", "It says what you liked today, not what is better made."))
                           : say(voice, QT_TRANSLATE_NOOP("words", "It says what these {people} liked today, not what is better made."), values);
    spoken.next = alone ? say(voice, QT_TRANSLATE_NOOP("words", "Next: what to keep or to change is yours to decide; other people may like another one."))
                        : say(voice, QT_TRANSLATE_NOOP("words", "Next: what to keep or to change is yours to decide; other people may like another one better."));
    return;
  }
  spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "{larger} to {smaller}: no preference shown."), values);
  spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "That does not say that they are liked as much."));
  spoken.next = alone ? say(voice, QT_TRANSLATE_NOOP("words", "Next: if it matters, plan more rounds."))
                      : say(voice, QT_TRANSLATE_NOOP("words", "Next: if it matters, ask more people. A person is one vote, so more rounds add none."));
}

}  // namespace oddglass::words
