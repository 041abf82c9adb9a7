#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict_kinds.h"

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Verdict;

std::string shownHeadline(const Voice& voice, const Findings& findings) {
  const bool mostly = findings.mostlyByLookOrFizz;
  switch (findings.claim) {
    case Claim::people:
      return say(voice, mostly ? QT_TRANSLATE_NOOP("words", "They were told apart, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "They were told apart."));
    case Claim::table:
      return say(voice, mostly ? QT_TRANSLATE_NOOP("words", "At this table they were told apart, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "At this table they were told apart."));
    case Claim::me:
      return say(voice, mostly ? QT_TRANSLATE_NOOP("words", "You told them apart, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "You told them apart."));
  }
  return {};
}

std::string shownNotSaid(const Voice& voice, Claim claim) {
  switch (claim) {
    case Claim::people: return say(voice, QT_TRANSLATE_NOOP("words", "Some people like these can tell. It does not say that everybody can, how big the difference is, or which is better."));
    case Claim::table: return say(voice, QT_TRANSLATE_NOOP("words", "Somebody at this table could tell. It does not say that everybody could, how big the difference is, or which is better."));
    case Claim::me: return say(voice, QT_TRANSLATE_NOOP("words", "You can tell. It does not say that other people can, how big the difference is, or which is better."));
  }
  return {};
}

void speakShown(const Voice& voice, const Findings& findings, Spoken& spoken) {
  spoken.headline = shownHeadline(voice, findings);
  spoken.notSaid = shownNotSaid(voice, findings.claim);
  spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: name one thing that differs and pour pairs."));
}

void speakBoth(const Voice& voice, const Findings& findings, Spoken& spoken) {
  spoken.headline = findings.mostlyByLookOrFizz ? say(voice, QT_TRANSLATE_NOOP("words", "Told apart, but by fewer than your limit, and in good part by look or fizz."))
                                                : say(voice, QT_TRANSLATE_NOOP("words", "Told apart, but by fewer than your limit."));
  spoken.under = findings.claim == Claim::me
                     ? say(voice, QT_TRANSLATE_NOOP("words", "You can tell, but less often than {limit}."), {{"limit", timesLimit(voice, findings.limitPm.value_or(0))}})
                     : say(voice, QT_TRANSLATE_NOOP("words", "Some can tell, but fewer than {limit}."), {{"limit", shareLimit(voice, findings.limitPm.value_or(0))}});
  spoken.notSaid = shownNotSaid(voice, findings.claim);
  spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: whether so few matter is yours to decide."));
}

void speakNotShown(const Voice& voice, const Findings& findings, Spoken& spoken) {
  const bool alone = findings.claim == Claim::me;
  if (findings.sought == Sought::alike) {
    spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Not shown to be alike."));
    spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "That is not a difference shown: you asked whether they are alike, and this tasting could not say so."));
    spoken.next = say(voice, alone ? QT_TRANSLATE_NOOP("words", "Next: more rounds, or a wider limit set before; or ask whether you can tell.")
                                   : QT_TRANSLATE_NOOP("words", "Next: more people, or a wider limit set before; or ask whether anyone can tell."));
    return;
  }
  spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "No difference shown."));
  spoken.under = findings.sought == Sought::both ? say(voice, QT_TRANSLATE_NOOP("words", "That is not “no difference”, and alike within your limit was not shown either."))
                                                 : say(voice, QT_TRANSLATE_NOOP("words", "That is not “no difference”."));
  spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Do not say: nobody could tell."));
  spoken.next = say(voice, alone ? QT_TRANSLATE_NOOP("words", "Next: if a small difference matters, name one thing and pour pairs; or plan more rounds.")
                                 : QT_TRANSLATE_NOOP("words", "Next: if a small difference matters, name one thing and pour pairs; or ask more people."));
}

void speakAlike(const Voice& voice, const Findings& findings, Spoken& spoken) {
  const Values values{{"limit", shareLimit(voice, findings.limitPm.value_or(0))}};
  switch (findings.claim) {
    case Claim::people: spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Alike, but only within your limit: fewer than {limit} of people like these can tell."), values); break;
    case Claim::table: spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Alike, but only within your limit: at this table fewer than {limit} could tell."), values); break;
    case Claim::me:
      spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Alike, but only within your limit: you could tell less often than {limit}."), {{"limit", timesLimit(voice, findings.limitPm.value_or(0))}});
      break;
  }
  spoken.under = findings.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "Up to that often you may still taste it."))
                                             : say(voice, QT_TRANSLATE_NOOP("words", "Up to that many may still taste it."));
  spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Alike is not “as good as”: both may be good, both may be poor."));
  spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: a new batch is a new question. This one holds for these bottles."));
}

}  // namespace

void speakApart(const Voice& voice, const Findings& findings, Spoken& spoken) {
  switch (findings.verdict) {
    case Verdict::shown: return speakShown(voice, findings, spoken);
    case Verdict::notShown: return speakNotShown(voice, findings, spoken);
    case Verdict::alike: return speakAlike(voice, findings, spoken);
    case Verdict::both: return speakBoth(voice, findings, spoken);
    case Verdict::none: return;
  }
}

}  // namespace oddglass::words
