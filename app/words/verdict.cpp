#include "words/verdict.h"

#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::NoVerdict;
using insight::Verdict;

std::string limitOf(const Voice& voice, const Findings& findings) { return shareLimit(voice, findings.limitPm.value_or(0)); }

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
    case Claim::table: return say(voice, QT_TRANSLATE_NOOP("words", "Somebody here can tell. It does not say that everybody can, how big the difference is, or which is better."));
    case Claim::me: return say(voice, QT_TRANSLATE_NOOP("words", "You can tell. It does not say that other people can, how big the difference is, or which is better."));
  }
  return {};
}

void speakShown(const Voice& voice, const Findings& findings, Spoken& spoken) {
  spoken.shape = Shape::disc;
  spoken.word = say(voice, QT_TRANSLATE_NOOP("words", "shown"));
  spoken.headline = shownHeadline(voice, findings);
  spoken.notSaid = shownNotSaid(voice, findings.claim);
  spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: name one thing that differs and pour pairs."));
}

void speakBoth(const Voice& voice, const Findings& findings, Spoken& spoken) {
  spoken.shape = Shape::disc;
  spoken.word = say(voice, QT_TRANSLATE_NOOP("words", "shown, within the limit"));
  spoken.headline = findings.mostlyByLookOrFizz ? say(voice, QT_TRANSLATE_NOOP("words", "Told apart, but by fewer than your limit, and in good part by look or fizz."))
                                                : say(voice, QT_TRANSLATE_NOOP("words", "Told apart, but by fewer than your limit."));
  spoken.under = findings.claim == Claim::me
                     ? say(voice, QT_TRANSLATE_NOOP("words", "You can tell, but less often than {limit}."), {{"limit", timesLimit(voice, findings.limitPm.value_or(0))}})
                     : say(voice, QT_TRANSLATE_NOOP("words", "Some can tell, but fewer than {limit}."), {{"limit", limitOf(voice, findings)}});
  spoken.notSaid = shownNotSaid(voice, findings.claim);
  spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: whether so few matter is yours to decide."));
}

void speakNotShown(const Voice& voice, const Findings& findings, Spoken& spoken) {
  spoken.shape = Shape::ring;
  spoken.word = say(voice, QT_TRANSLATE_NOOP("words", "not shown"));
  if (pointsBothWays(findings)) {
    spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Nothing shown: the answers point two ways."));
    spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "Read with and without some of the answers, they contradict each other. That is neither “told apart” nor “alike”."));
    spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Do not say: nobody could tell."));
    spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: hide look and fizz with dark cups and lids, keep silent until everybody has locked, and ask again."));
    return;
  }
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
  const Values values{{"limit", limitOf(voice, findings)}};
  spoken.shape = Shape::bars;
  spoken.word = say(voice, QT_TRANSLATE_NOOP("words", "alike"));
  switch (findings.claim) {
    case Claim::people: spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Alike within your limit: fewer than {limit} of people like these can tell."), values); break;
    case Claim::table: spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Alike within your limit: at this table fewer than {limit} could tell."), values); break;
    case Claim::me: spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Alike within your limit: you could tell less often than {limit}."), {{"limit", timesLimit(voice, findings.limitPm.value_or(0))}}); break;
  }
  spoken.under = findings.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "Up to that often you may still taste it."))
                                             : say(voice, QT_TRANSLATE_NOOP("words", "Up to that many may still taste it."));
  spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Alike is not “as good as”: both may be good, both may be poor."));
  spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: a new batch is a new question. This one holds for these bottles."));
}

void speakNone(const Voice& voice, const Findings& findings, Spoken& spoken) {
  const NoVerdict why = findings.why.value_or(NoVerdict::nobodyAnswered);
  spoken.shape = Shape::dash;
  spoken.word = say(voice, QT_TRANSLATE_NOOP("words", "no verdict"));
  spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "No verdict: {reason}."), {{"reason", noVerdictReason(voice, why)}});
  spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "The answers are kept."));
  switch (why) {
    case NoVerdict::sealBroken: spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: seal a new plan, and let somebody else keep the pour sheet.")); break;
    case NoVerdict::noVotes:
    case NoVerdict::nobodyAnswered: spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: seal a new plan for another evening.")); break;
    case NoVerdict::tooFew: 
      spoken.next = say(voice, findings.claim == Claim::me ? QT_TRANSLATE_NOOP("words", "Next: the cheapest way is more rounds.")
                                                           : QT_TRANSLATE_NOOP("words", "Next: the cheapest way is more people, or more rounds."));
      break;
    case NoVerdict::tooFewWithout:
      spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: hide look and fizz with dark cups and lids, and keep silent until everybody has locked."));
      break;
  }
}

}  // namespace

std::string canTell(const Voice& voice, Claim claim, int sharePm) {
  if (claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "you can taste {often}"), {{"often", timesLimit(voice, sharePm)}});
  return say(voice, QT_TRANSLATE_NOOP("words", "{share} of such people can taste"), {{"share", shareLimit(voice, sharePm)}});
}

std::string noVerdictReason(const Voice& voice, NoVerdict why) {
  switch (why) {
    case NoVerdict::sealBroken: return say(voice, QT_TRANSLATE_NOOP("words", "the key was opened early"));
    case NoVerdict::nobodyAnswered: return say(voice, QT_TRANSLATE_NOOP("words", "there is no answer that counts"));
    case NoVerdict::tooFew: return say(voice, QT_TRANSLATE_NOOP("words", "too few answers to show anything, whatever they had been"));
    case NoVerdict::noVotes: return say(voice, QT_TRANSLATE_NOOP("words", "everybody had no preference"));
    case NoVerdict::tooFewWithout: return say(voice, QT_TRANSLATE_NOOP("words", "too few answers are left that owe nothing to look, fizz or what was said"));
  }
  return {};
}

bool pointsBothWays(const Findings& findings) {
  return findings.weakenedBy != insight::WeakenedBy::nothing && findings.printed().verdict != findings.verdict;
}

Spoken speak(const Voice& voice, const Findings& findings) {
  Spoken spoken;
  switch (findings.verdict) {
    case Verdict::shown: speakShown(voice, findings, spoken); break;
    case Verdict::notShown: speakNotShown(voice, findings, spoken); break;
    case Verdict::alike: speakAlike(voice, findings, spoken); break;
    case Verdict::both: speakBoth(voice, findings, spoken); break;
    case Verdict::none: speakNone(voice, findings, spoken); break;
  }
  return spoken;
}

}  // namespace oddglass::words
