#include "words/reading.h"

#include "domain/flight_form.h"
#include "domain/give_aways.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict.h"

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Reading;
using insight::Verdict;
using insight::WeakenedBy;

std::string shareOrTimes(const Voice& voice, Claim claim, int perMille) { return claim == Claim::me ? timesLimit(voice, perMille) : shareLimit(voice, perMille); }

std::string unchangedBy(const Voice& voice, const Plan& plan, const Findings& findings, const std::optional<Reading>& rest, const char* source) {
  if (!rest) return {};
  return say(voice, source, {{"counted", countedAs(voice, plan, findings, *rest)}});
}

// Where look and fizz may tell, the reading without them is told all the same.
std::string withoutLook(const Voice& voice, const Plan& plan, const Findings& findings) {
  if (!lookMayTell(plan) || !findings.withoutLookOrFizz)
    return unchangedBy(voice, plan, findings, findings.withoutLookOrFizz, QT_TRANSLATE_NOOP("words", "Without what was told by look or fizz: {counted}. The verdict stays."));
  return say(voice, QT_TRANSLATE_NOOP("words", "Without what was told by look or fizz: {counted}. That alone would read “{verdict}”; it was settled before that look and fizz may tell."),
             {{"counted", countedAs(voice, plan, findings, *findings.withoutLookOrFizz)}, {"verdict", verdictWord(voice, findings.withoutLookOrFizz->verdict)}});
}

std::string missedVotes(const Voice& voice, const Findings& findings) {
  const auto& missed = findings.printed().missed;
  if (missed.size() != 2) return {};
  const Values values{{"most", shareOrTimes(voice, findings.claim, missed[0].sharePm)}, {"mostOften", roughlyOften(voice, missed[0].chance)},
                      {"nearly", shareOrTimes(voice, findings.claim, missed[1].sharePm)}, {"nearlyOften", roughlyOften(voice, missed[1].chance)}};
  return findings.claim == Claim::me
             ? say(voice, QT_TRANSLATE_NOOP("words", "If you preferred one of them {most}, it would have come out {mostOften}; if {nearly}, {nearlyOften}."), values)
             : say(voice, QT_TRANSLATE_NOOP("words", "If {most} of such people preferred one of them, it would have come out {mostOften}; if {nearly} did, {nearlyOften}."), values);
}

std::string missedDistance(const Voice& voice, const Findings& findings) {
  const auto& missed = findings.printed().missed;
  if (missed.size() != 2) return {};
  return say(voice, QT_TRANSLATE_NOOP("words", "A large difference (d′ 2: of two cups the right one is picked about 9 times in 10) would have come out {large}; a smaller one (d′ 1: about 3 times in 4), {small}."),
             {{"large", roughlyOften(voice, missed[1].chance)}, {"small", roughlyOften(voice, missed[0].chance)}});
}

std::string missedStop(const Voice& voice, const Plan& plan, const Findings& findings) {
  if (findings.printed().sequential->decision != insight::Decision::none || !plan.stopping) return {};
  return say(voice, QT_TRANSLATE_NOOP("words", "The plan stops like this by mistake about {risk} where there is a difference that {what}. A smaller one may well be there."),
             {{"risk", risk(voice, plan.stopping->betaPm)}, {"what", canTell(voice, findings.claim, plan.stopping->sharePm)}});
}

}  // namespace

std::string missedLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  if (findings.verdict != Verdict::notShown || findings.sought == Sought::alike || pointsBothWays(findings)) return {};
  if (findings.printed().sequential) return missedStop(voice, plan, findings);
  if (findings.method == Method::preference) return missedVotes(voice, findings);
  if (formOf(findings.method).saysSame) return missedDistance(voice, findings);
  const insight::Missed* small = nullptr;
  const insight::Missed* half = nullptr;
  for (const insight::Missed& each : findings.printed().missed) {
    if (each.sharePm == 300) small = &each;
    if (each.sharePm == 500) half = &each;
  }
  if (!small || !half) return {};
  const Values values{{"half", canTell(voice, findings.claim, 500)}, {"halfOften", roughlyOften(voice, half->chance)},
                      {"small", canTell(voice, findings.claim, 300)}, {"smallOften", roughlyOften(voice, small->chance)}};
  return say(voice, half->chance < 0.5
                        ? QT_TRANSLATE_NOOP("words", "A difference that {half} would have come out {halfOften}; one that {small}, {smallOften}. So even a large one may be there.")
                        : QT_TRANSLATE_NOOP("words", "A difference that {half} would have come out {halfOften}; one that {small}, {smallOften}. So a small one may be there."),
             values);
}

std::string weakerLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  if (findings.why == insight::NoVerdict::sealBroken) return {};
  if (findings.weakenedBy != WeakenedBy::nothing) {
    const Values values{{"counted", countedAs(voice, plan, findings, findings.all)}, {"verdict", verdictWord(voice, findings.all.verdict)}};
    return findings.printed().verdict == findings.verdict
               ? say(voice, QT_TRANSLATE_NOOP("words", "With every answer: {counted}. That alone would have read “{verdict}”; the weaker verdict is the one that stands."), values)
               : say(voice, QT_TRANSLATE_NOOP("words", "With every answer: {counted}. That alone would have read “{verdict}”; the two point different ways, so neither stands."), values);
  }
  std::string all;
  for (const std::string& each : {withoutLook(voice, plan, findings),
                                  unchangedBy(voice, plan, findings, findings.withoutSaid, QT_TRANSLATE_NOOP("words", "Without what was locked after something was said: {counted}. The verdict stays."))})
    if (!each.empty()) all += (all.empty() ? "" : " ") + each;
  return all;
}

std::string howKnewLine(const Voice& voice, const Findings& findings) {
  int mouth = 0, seen = 0, guessed = 0;
  for (const insight::ClueLine& each : findings.clues) {
    switch (each.clue) {
      case Clue::taste:
      case Clue::smell:
      case Clue::mouthfeel: mouth += each.right; break;
      case Clue::look:
      case Clue::fizz: seen += each.right; break;
      case Clue::guess: guessed += each.right; break;
    }
  }
  std::vector<std::string> parts;
  if (mouth > 0) parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{n} by taste, smell or feel in the mouth"), {{"n", whole(voice, mouth)}}));
  if (seen > 0) parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{n} by look or fizz"), {{"n", whole(voice, seen)}}));
  if (guessed > 0) parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{n} by a guess"), {{"n", whole(voice, guessed)}}));
  if (parts.empty()) return {};
  if (findings.claim == Claim::me)
    return sayCount(voice, QT_TRANSLATE_NOOP("words", "How you knew, for the 1 right answer: {parts}."), QT_TRANSLATE_NOOP("words", "How you knew, for the {n} right answers: {parts}."),
                    findings.all.right, {{"parts", listed(voice, parts)}});
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "How they knew, for the 1 right answer: {parts}."), QT_TRANSLATE_NOOP("words", "How they knew, for the {n} right answers: {parts}."),
                  findings.all.right, {{"parts", listed(voice, parts)}});
}

std::string surenessLine(const Voice& voice, const Findings& findings) {
  std::vector<std::string> parts;
  for (auto each = findings.sureness.rbegin(); each != findings.sureness.rend(); ++each) {
    if (each->trials == 0) continue;
    const Values values{{"right", whole(voice, each->right)}, {"trials", whole(voice, each->trials)}};
    switch (each->sureness) {
      case Sureness::sure: parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{right} of {trials} when sure"), values)); break;
      case Sureness::fairly: parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{right} of {trials} when fairly sure"), values)); break;
      case Sureness::guess: parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{right} of {trials} when guessing"), values)); break;
    }
  }
  return parts.empty() ? std::string() : say(voice, QT_TRANSLATE_NOOP("words", "Right by sureness: {parts}."), {{"parts", listed(voice, parts)}});
}

}  // namespace oddglass::words
