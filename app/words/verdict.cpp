#include "words/verdict.h"

#include "domain/flight_form.h"
#include "domain/give_aways.h"
#include "words/give_aways.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict_kinds.h"

#include <cmath>

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::NoVerdict;
using insight::Verdict;

Shape shapeOf(Verdict verdict) {
  switch (verdict) {
    case Verdict::shown:
    case Verdict::both: return Shape::disc;
    case Verdict::notShown: return Shape::ring;
    case Verdict::alike: return Shape::bars;
    case Verdict::none: return Shape::dash;
  }
  return Shape::dash;
}

/// The fewest votes that can show a preference at all: 2 (1/2)^n at most alpha.
int fewestVotes(int alphaPm) { return static_cast<int>(std::ceil(std::log2(2000.0 / alphaPm) - 1e-9)); }

std::string tooFewNext(const Voice& voice, const Findings& findings) {
  const bool alone = findings.claim == Claim::me;
  if (findings.method == Method::preference) {
    const Values values{{"n", spelled(voice, fewestVotes(findings.alphaPm))}};
    return say(voice, alone ? QT_TRANSLATE_NOOP("words", "Next: {n} rounds are the fewest that can show what you prefer.")
                            : QT_TRANSLATE_NOOP("words", "Next: {n} people are the fewest who can show a preference. A person is one vote, so more rounds add none."), values);
  }
  return say(voice, alone ? QT_TRANSLATE_NOOP("words", "Next: the cheapest way is more rounds.") : QT_TRANSLATE_NOOP("words", "Next: the cheapest way is more people, or more rounds."));
}

void speakNone(const Voice& voice, const Findings& findings, Spoken& spoken) {
  const NoVerdict why = findings.why.value_or(NoVerdict::nobodyAnswered);
  spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "No verdict: {reason}."), {{"reason", noVerdictReason(voice, findings, why)}});
  spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "The answers are kept."));
  switch (why) {
    case NoVerdict::sealBroken: spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: seal a new plan, and let somebody else keep the pour sheet.")); break;
    case NoVerdict::noVotes: spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: ask whether anyone can tell them apart.")); break;
    case NoVerdict::nobodyAnswered: spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: seal a new plan for another evening.")); break;
    case NoVerdict::tooFew: spoken.next = tooFewNext(voice, findings); break;
    case NoVerdict::tooFewWithout:
      spoken.next = findings.method == Method::preference ? say(voice, QT_TRANSLATE_NOOP("words", "Next: keep silent until everybody has locked."))
                                                          : say(voice, QT_TRANSLATE_NOOP("words", "Next: hide look and fizz with dark cups and lids, and keep silent until everybody has locked."));
      break;
  }
}

/// The answers contradict each other, read with and without some of them.
void speakTwoWays(const Voice& voice, const Findings& findings, Spoken& spoken) {
  spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "Nothing shown: the answers point two ways."));
  if (findings.method == Method::preference) {
    spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "Read with and without the answers after something was said, they favour different drinks."));
    spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: keep silent until everybody has locked, and ask again."));
    return;
  }
  spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "Read with and without some of the answers, they contradict each other. That is neither “told apart” nor “alike”."));
  spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Do not say: nobody could tell."));
  spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: hide look and fizz with dark cups and lids, keep silent until everybody has locked, and ask again."));
}

std::string tooFewVotes(const Voice& voice, const Findings& findings) {
  const insight::Reading& reading = findings.printed();
  const int cast = reading.trials;
  const Values values{{"n", spelled(voice, cast)}};
  if (findings.claim == Claim::me)
    return say(voice, cast == 1 ? QT_TRANSLATE_NOOP("words", "one round cannot settle this, whatever you answer") : QT_TRANSLATE_NOOP("words", "{n} rounds cannot settle this, whatever you answer"), values);
  if (reading.votes && reading.votes->none + reading.votes->even > 0)
    return say(voice, cast == 1 ? QT_TRANSLATE_NOOP("words", "one vote cannot settle this, whatever it is") : QT_TRANSLATE_NOOP("words", "{n} votes cannot settle this, whatever they are"), values);
  return say(voice, cast == 1 ? QT_TRANSLATE_NOOP("words", "one person cannot settle this, whatever they answer") : QT_TRANSLATE_NOOP("words", "{n} people cannot settle this, whatever they answer"), values);
}

}  // namespace

std::string canTell(const Voice& voice, Claim claim, int sharePm) {
  if (claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "you can taste {often}"), {{"often", timesLimit(voice, sharePm)}});
  return say(voice, QT_TRANSLATE_NOOP("words", "{share} of such people can taste"), {{"share", shareLimit(voice, sharePm)}});
}

std::string noVerdictReason(const Voice& voice, const Findings& findings, NoVerdict why) {
  switch (why) {
    case NoVerdict::sealBroken: return say(voice, QT_TRANSLATE_NOOP("words", "the key was opened early"));
    case NoVerdict::nobodyAnswered: return say(voice, QT_TRANSLATE_NOOP("words", "there is no answer that counts"));
    case NoVerdict::noVotes: return say(voice, QT_TRANSLATE_NOOP("words", "there is no preference to count"));
    case NoVerdict::tooFew:
      return findings.method == Method::preference ? tooFewVotes(voice, findings) : say(voice, QT_TRANSLATE_NOOP("words", "too few answers to show anything, whatever they had been"));
    case NoVerdict::tooFewWithout:
      return findings.method == Method::preference ? say(voice, QT_TRANSLATE_NOOP("words", "too few votes are left that owe nothing to what was said"))
                                                   : say(voice, QT_TRANSLATE_NOOP("words", "too few answers are left that owe nothing to look, fizz or what was said"));
  }
  return {};
}

std::string verdictWord(const Voice& voice, Verdict verdict) {
  switch (verdict) {
    case Verdict::shown: return say(voice, QT_TRANSLATE_NOOP("words", "shown"));
    case Verdict::notShown: return say(voice, QT_TRANSLATE_NOOP("words", "not shown"));
    case Verdict::alike: return say(voice, QT_TRANSLATE_NOOP("words", "alike"));
    case Verdict::both: return say(voice, QT_TRANSLATE_NOOP("words", "shown, within the limit"));
    case Verdict::none: return say(voice, QT_TRANSLATE_NOOP("words", "no verdict"));
  }
  return {};
}

bool pointsBothWays(const Findings& findings) {
  return findings.weakenedBy != insight::WeakenedBy::nothing && findings.printed().verdict != findings.verdict;
}

Spoken speak(const Voice& voice, const Plan& plan, const Findings& findings) {
  Spoken spoken;
  spoken.shape = shapeOf(findings.verdict);
  spoken.word = verdictWord(voice, findings.verdict);
  if (findings.verdict == Verdict::none)
    speakNone(voice, findings, spoken);
  else if (pointsBothWays(findings))
    speakTwoWays(voice, findings, spoken);
  else if (!findings.pairs.empty())
    speakPairs(voice, plan, findings, spoken);
  else if (findings.method == Method::preference)
    speakPreference(voice, plan, findings, spoken);
  else if (plan.question == Question::notice && (findings.verdict == Verdict::shown || (findings.verdict == Verdict::notShown && findings.sought == Sought::difference)))
    speakNoticed(voice, plan, findings, spoken);
  else if (namesAThing(findings.method))
    speakMore(voice, plan, findings, spoken);
  else
    speakApart(voice, findings, spoken);
  if (byAnyMeans(plan) && findings.verdict != Verdict::none && !pointsBothWays(findings)) spoken.headline = byAnyMeansHeadline(voice, spoken.headline, findings.method);
  if (findings.printed().sequential && findings.verdict != Verdict::none && !pointsBothWays(findings)) speakStop(voice, findings, spoken);
  return spoken;
}

}  // namespace oddglass::words
