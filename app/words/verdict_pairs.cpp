#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict_kinds.h"

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Verdict;

bool isApart(const Findings& pair) { return pair.verdict == Verdict::shown || pair.verdict == Verdict::both; }

std::string apartHeadline(const Voice& voice, const Plan& plan, const Findings& findings) {
  std::string list;
  for (const Findings& pair : findings.pairs) {
    if (!isApart(pair)) continue;
    const auto names = namesOf(voice, plan, *pair.lots);
    const std::string next = say(voice, QT_TRANSLATE_NOOP("words", "{one} from {other}"), {{"one", names.one}, {"other", names.other}});
    list = list.empty() ? next : say(voice, QT_TRANSLATE_NOOP("words", "{list}; {next}"), {{"list", list}, {"next", next}});
  }
  const Values values{{"list", list}};
  switch (findings.claim) {
    case Claim::people: return say(voice, QT_TRANSLATE_NOOP("words", "Told apart: {list}."), values);
    case Claim::table: return say(voice, QT_TRANSLATE_NOOP("words", "Told apart at this table: {list}."), values);
    case Claim::me: return say(voice, QT_TRANSLATE_NOOP("words", "You told apart: {list}."), values);
  }
  return {};
}

}  // namespace

std::string pairHeadline(const Voice& voice, const Plan& plan, const Findings& pair) {
  const auto names = namesOf(voice, plan, pair.lots.value_or(std::pair{Slot{1}, Slot{2}}));
  Values values{{"one", names.one}, {"other", names.other}, {"limit", shareLimit(voice, pair.limitPm.value_or(0))}};
  switch (pair.verdict) {
    case Verdict::shown:
      return capitalised(say(voice, pair.mostlyByLookOrFizz ? QT_TRANSLATE_NOOP("words", "{one} and {other}: told apart, in good part by look or fizz.") : QT_TRANSLATE_NOOP("words", "{one} and {other}: told apart."), values));
    case Verdict::both: return capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{one} and {other}: told apart, but by fewer than {limit}."), values));
    case Verdict::alike: return capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{one} and {other}: alike, but only within your limit of {limit}."), values));
    case Verdict::notShown:
      if (pointsBothWays(pair)) return capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{one} and {other}: nothing shown, the answers point two ways."), values));
      return capitalised(say(voice, pair.sought == Sought::alike ? QT_TRANSLATE_NOOP("words", "{one} and {other}: not shown to be alike.") : QT_TRANSLATE_NOOP("words", "{one} and {other}: no difference shown."), values));
    case Verdict::none:
      values["reason"] = noVerdictReason(voice, pair, pair.why.value_or(insight::NoVerdict::nobodyAnswered));
      return capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{one} and {other}: no verdict, {reason}."), values));
  }
  return {};
}

void speakPairs(const Voice& voice, const Plan& plan, const Findings& findings, Spoken& spoken) {
  spoken.under = say(voice, QT_TRANSLATE_NOOP("words", "Three pairs were compared, so each has to be clearer than one alone would: over all three together a false alarm comes no more than {risk}."),
                     {{"risk", risk(voice, findings.alphaPm)}});
  switch (findings.verdict) {
    case Verdict::shown:
    case Verdict::both:
      spoken.headline = apartHeadline(voice, plan, findings);
      spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "It does not say how big a difference is, or which is better. A pair that is not named may still differ."));
      spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: name one thing that differs and pour pairs."));
      break;
    case Verdict::alike:
      spoken.headline = say(voice, QT_TRANSLATE_NOOP("words", "All three pairs alike, but only within your limit."));
      spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Alike is not “as good as”: both may be good, both may be poor."));
      spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: a new batch is a new question. This one holds for these bottles."));
      break;
    case Verdict::notShown:
      spoken.headline = findings.sought == Sought::alike ? say(voice, QT_TRANSLATE_NOOP("words", "Not all three pairs are shown to be alike."))
                                                         : say(voice, QT_TRANSLATE_NOOP("words", "No difference shown in any of the three pairs."));
      spoken.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Do not say: nobody could tell."));
      spoken.next = say(voice, QT_TRANSLATE_NOOP("words", "Next: ask about the one pair that matters most; it then needs fewer right answers."));
      break;
    case Verdict::none: break;
  }
}

}  // namespace oddglass::words
