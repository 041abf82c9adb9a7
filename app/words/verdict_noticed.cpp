#include "words/lots.h"
#include "words/mark.h"
#include "words/verdict_kinds.h"

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Verdict;

const char* noticedSource(Claim claim, bool mostly) {
  switch (claim) {
    case Claim::people: return mostly ? QT_TRANSLATE_NOOP("words", "“{more}” was noticed, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "“{more}” was noticed.");
    case Claim::table: return mostly ? QT_TRANSLATE_NOOP("words", "At this table “{more}” was noticed, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "At this table “{more}” was noticed.");
    case Claim::me: return mostly ? QT_TRANSLATE_NOOP("words", "You noticed “{more}”, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "You noticed “{more}”.");
  }
  return "";
}

}  // namespace

void speakNoticed(const Voice& voice, const Plan& plan, const Findings& findings, Spoken& spoken) {
  const bool alone = findings.claim == Claim::me;
  const Values values{{"more", plan.attribute}};
  if (findings.verdict == Verdict::shown) {
    spoken.headline = say(voice, noticedSource(findings.claim, findings.mostlyByLookOrFizz), values);
    spoken.under = knownLine(voice, plan);
    spoken.notSaid = alone ? say(voice, QT_TRANSLATE_NOOP("words", "It does not say that you would notice less of it, or name it unasked."))
                           : say(voice, QT_TRANSLATE_NOOP("words", "It does not say that everybody notices it, that less of it would be noticed, or that anybody would name it unasked."));
    spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: try less of it, or the same again on another day."));
    return;
  }
  spoken.headline = say(voice, alone ? QT_TRANSLATE_NOOP("words", "Not shown that you notice “{more}”.") : QT_TRANSLATE_NOOP("words", "Not shown that “{more}” was noticed."), values);
  spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "That is not “it cannot be noticed”. {known}"), {{"known", knownLine(voice, plan)}});
  spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Do not say: nobody could tell."));
  spoken.next = alone ? say(voice, QT_TRANSLATE_NOOP("words", "Next: more rounds, or a clearer difference, and only with what is sold for food."))
                      : say(voice, QT_TRANSLATE_NOOP("words", "Next: more rounds, more people, or a clearer difference, and only with what is sold for food."));
}

}  // namespace oddglass::words
