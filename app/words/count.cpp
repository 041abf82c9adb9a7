#include "domain/flight_form.h"
#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/reading.h"
#include "words/verdict.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Reading;
using insight::Verdict;
using insight::WeakenedBy;

std::string byGuessing(const Voice& voice, Method method, const Reading& reading) {
  if (reading.expected >= 2) return say(voice, QT_TRANSLATE_NOOP("words", "about {n}"), {{"n", whole(voice, std::llround(reading.expected))}});
  switch (method) {
    case Method::duoTrio:
    case Method::pair: return say(voice, QT_TRANSLATE_NOOP("words", "one in two"));
    case Method::twoOutOfFive: return say(voice, QT_TRANSLATE_NOOP("words", "one in ten"));
    default: return say(voice, QT_TRANSLATE_NOOP("words", "one in three"));
  }
}

std::string leftOut(const Voice& voice, WeakenedBy by, const std::string& sentence) {
  const Values values{{"sentence", sentence}};
  switch (by) {
    case WeakenedBy::nothing: return capitalised(sentence);
    case WeakenedBy::lookOrFizz: return say(voice, QT_TRANSLATE_NOOP("words", "Leaving out what was told by look or fizz, {sentence}"), values);
    case WeakenedBy::said: return say(voice, QT_TRANSLATE_NOOP("words", "Leaving out what was locked after something was said, {sentence}"), values);
    case WeakenedBy::either: return say(voice, QT_TRANSLATE_NOOP("words", "Leaving out what was told by look or fizz or locked after something was said, {sentence}"), values);
  }
  return sentence;
}

std::string signalCounted(const Voice& voice, Method method, const insight::Signal& signal) {
  const Values hits{{"k", whole(voice, signal.hits)}}, alarms{{"k", whole(voice, signal.falseAlarms)}};
  if (method == Method::aNotA)
    return say(voice, QT_TRANSLATE_NOOP("words", "{one}, and {other}"),
               {{"one", sayCount(voice, QT_TRANSLATE_NOOP("words", "of 1 cup of the marked drink {k} was taken for it"), QT_TRANSLATE_NOOP("words", "of {n} cups of the marked drink {k} were taken for it"), signal.signalsServed(), hits)},
                {"other", sayCount(voice, QT_TRANSLATE_NOOP("words", "of 1 cup of the other drink {k}"), QT_TRANSLATE_NOOP("words", "of {n} cups of the other drink {k}"), signal.noisesServed(), alarms)}});
  return say(voice, QT_TRANSLATE_NOOP("words", "{one}, and {other}"),
             {{"one", sayCount(voice, QT_TRANSLATE_NOOP("words", "of 1 flight with both drinks {k} was called different"), QT_TRANSLATE_NOOP("words", "of {n} flights with both drinks {k} were called different"), signal.signalsServed(), hits)},
              {"other", sayCount(voice, QT_TRANSLATE_NOOP("words", "of 1 flight with one drink twice {k}"), QT_TRANSLATE_NOOP("words", "of {n} flights with one drink twice {k}"), signal.noisesServed(), alarms)}});
}

std::string voteLine(const Voice& voice, const Findings& findings) {
  const Reading& reading = findings.printed();
  const bool alone = findings.claim == Claim::me;
  const int smaller = reading.trials - reading.right;
  const Values values{{"larger", whole(voice, reading.right)}, {"smaller", whole(voice, smaller)}, {"often", timesIn(voice, reading.pValue.value_or(1.0))},
                      {"n", spelled(voice, reading.trials)}, {"all", whole(voice, reading.trials)}, {"needed", whole(voice, reading.needed.value_or(0))},
                      {"rest", whole(voice, reading.trials - reading.needed.value_or(0))}};
  std::string sentence = say(voice, QT_TRANSLATE_NOOP("words", "the votes stand {larger} to {smaller}"), values);
  if (reading.verdict == Verdict::shown)
    sentence = say(voice, smaller == 0 ? QT_TRANSLATE_NOOP("words", "by chance alone, {larger} to {smaller} either way comes {often}") : QT_TRANSLATE_NOOP("words", "by chance alone, {larger} to {smaller} or clearer, either way, comes {often}"), values);
  else if (reading.needed && *reading.needed == reading.trials)
    sentence = say(voice, alone ? QT_TRANSLATE_NOOP("words", "with {n} rounds only {all} to 0 could have shown one") : QT_TRANSLATE_NOOP("words", "with {n} people only {all} to 0 could have shown one"), values);
  else if (reading.needed)
    sentence = say(voice, alone ? QT_TRANSLATE_NOOP("words", "with {n} rounds it takes {needed} to {rest}, or clearer, to show one") : QT_TRANSLATE_NOOP("words", "with {n} people it takes {needed} to {rest}, or clearer, to show one"), values);
  return leftOut(voice, findings.weakenedBy, sentence) + '.';
}

std::string signalLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  const Reading& reading = findings.printed();
  const std::string counted = countedAs(voice, plan, findings, reading);
  if (reading.verdict == Verdict::none) return leftOut(voice, findings.weakenedBy, counted) + '.';
  return leftOut(voice, findings.weakenedBy, say(voice, findings.claim == Claim::me ? QT_TRANSLATE_NOOP("words", "{counted}; if you could not tell, as much or more would come up {often}.") : QT_TRANSLATE_NOOP("words", "{counted}; if no one could tell, as much or more would come up {often}."),
                                                 {{"counted", counted}, {"often", timesIn(voice, reading.pValue.value_or(1.0))}}));
}

std::string stopLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  const Reading& reading = findings.printed();
  const insight::Sequential& sequential = *reading.sequential;
  const Values values{{"counted", countedAs(voice, plan, findings, reading)}, {"from", whole(voice, sequential.differenceFrom)}, {"to", whole(voice, sequential.noneTo)},
                      {"n", whole(voice, reading.trials)}};
  const char* source = QT_TRANSLATE_NOOP("words", "{counted}; the line drawn before asked for {from} of {n}.");
  if (sequential.decision == insight::Decision::none) source = QT_TRANSLATE_NOOP("words", "{counted}; by the line drawn before, {to} of {n} or fewer end the tasting.");
  if (sequential.decision == insight::Decision::undecided)
    source = sequential.differenceFrom > reading.trials ? QT_TRANSLATE_NOOP("words", "{counted}; after {n} no count could have shown a difference yet.")
             : sequential.noneTo < 0                    ? QT_TRANSLATE_NOOP("words", "{counted}; {from} of {n} would have shown a difference.")
                                                        : QT_TRANSLATE_NOOP("words", "{counted}; {from} of {n} would have shown a difference, {to} or fewer would have ended it without one.");
  return leftOut(voice, findings.weakenedBy, say(voice, source, values));
}

std::string alikeSource(const Voice& voice, const Findings& findings, Values values, double alikeP) {
  values["often"] = timesIn(voice, alikeP);
  values["limit"] = findings.claim == Claim::me ? timesLimit(voice, *findings.limitPm) : shareLimit(voice, *findings.limitPm);
  return say(voice, findings.claim == Claim::me ? QT_TRANSLATE_NOOP("words", "{counted}. If you could tell {limit}, so few would come up {often}.") : QT_TRANSLATE_NOOP("words", "{counted}. If {limit} could tell, so few would come up {often}."), values);
}

/// What a count is worth where three pairs are compared; empty where there is one.
std::string ofThree(const Voice& voice, const std::optional<double>& adjusted) {
  if (!adjusted) return {};
  return ' ' + say(voice, QT_TRANSLATE_NOOP("words", "With three pairs compared, that counts as {often}."), {{"often", timesIn(voice, *adjusted)}});
}

/// A count of right answers beside what guessing gives.
std::string choiceLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  const Reading& reading = findings.printed();
  const auto written = [&](const std::string& sentence) { return leftOut(voice, findings.weakenedBy, sentence); };
  Values values{{"counted", countedAs(voice, plan, findings, reading)}, {"guess", byGuessing(voice, findings.method, reading)}, {"n", whole(voice, reading.right)},
                {"often", timesIn(voice, reading.pValue.value_or(1.0))}};
  const char* plain = QT_TRANSLATE_NOOP("words", "{counted}; guessing gives {guess}.");
  if (reading.verdict != findings.verdict) return written(say(voice, plain, values));
  switch (findings.verdict) {
    case Verdict::shown:
    case Verdict::both:
      return written(say(voice, reading.right == reading.trials ? QT_TRANSLATE_NOOP("words", "{counted}; guessing gives {guess}, and all of them {often}.") : QT_TRANSLATE_NOOP("words", "{counted}; guessing gives {guess}, and {n} or more {often}."), values)) +
             ofThree(voice, reading.adjustedP);
    case Verdict::notShown:
      if (findings.sought != Sought::alike && reading.needed) {
        values["needed"] = whole(voice, *reading.needed);
        return written(say(voice, *reading.needed == 1 ? QT_TRANSLATE_NOOP("words", "{counted}; guessing gives {guess}, and 1 was needed.") : QT_TRANSLATE_NOOP("words", "{counted}; guessing gives {guess}, and {needed} were needed."), values));
      }
      if (reading.largest) {
        values["most"] = whole(voice, *reading.largest);
        return written(say(voice, QT_TRANSLATE_NOOP("words", "{counted}; no more than {most} would have counted as alike within your limit."), values));
      }
      break;
    case Verdict::alike:
      if (!reading.alikeP || !findings.limitPm) break;
      return written(alikeSource(voice, findings, values, *reading.alikeP)) + ofThree(voice, reading.alikeAdjustedP);
    case Verdict::none: break;
  }
  return written(say(voice, plain, values));
}

std::string sumLine(const Voice& voice, const Findings& findings) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "Over all pairs {right} of 1 tasting was right."), QT_TRANSLATE_NOOP("words", "Over all pairs {right} of {n} tastings were right."),
                  findings.all.trials, {{"right", whole(voice, findings.all.right)}});
}

}  // namespace

std::string countedAs(const Voice& voice, const Plan& plan, const Findings& findings, const Reading& reading) {
  const int n = reading.trials;
  const Values values{{"right", whole(voice, reading.right)}, {"smaller", whole(voice, n - reading.right)}, {"lot", lotNamed(voice, plan, findings.expected.value_or(Slot{1}))}};
  switch (findings.method) {
    case Method::triangle: return sayCount(voice, QT_TRANSLATE_NOOP("words", "{right} of 1 tasting was right"), QT_TRANSLATE_NOOP("words", "{right} of {n} tastings were right"), n, values);
    case Method::duoTrio: return sayCount(voice, QT_TRANSLATE_NOOP("words", "in {right} of 1 tasting the cup like the marked one was found"), QT_TRANSLATE_NOOP("words", "in {right} of {n} tastings the cup like the marked one was found"), n, values);
    case Method::tetrad: return sayCount(voice, QT_TRANSLATE_NOOP("words", "in {right} of 1 tasting the two groups were found"), QT_TRANSLATE_NOOP("words", "in {right} of {n} tastings the two groups were found"), n, values);
    case Method::twoOutOfFive: return sayCount(voice, QT_TRANSLATE_NOOP("words", "in {right} of 1 tasting the two odd ones were found"), QT_TRANSLATE_NOOP("words", "in {right} of {n} tastings the two odd ones were found"), n, values);
    case Method::pair: return sayCount(voice, QT_TRANSLATE_NOOP("words", "{right} of 1 pair pointed to {lot}"), QT_TRANSLATE_NOOP("words", "{right} of {n} pairs pointed to {lot}"), n, values);
    case Method::threeAfc: return sayCount(voice, QT_TRANSLATE_NOOP("words", "in {right} of 1 tasting {lot} was picked"), QT_TRANSLATE_NOOP("words", "in {right} of {n} tastings {lot} was picked"), n, values);
    case Method::sameDifferent:
    case Method::aNotA: return signalCounted(voice, findings.method, reading.signal.value_or(insight::Signal{}));
    case Method::preference: return say(voice, QT_TRANSLATE_NOOP("words", "the votes stand {right} to {smaller}"), values);
    case Method::sheet: break;
  }
  return {};
}

std::string countLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  const Reading& reading = findings.printed();
  if (reading.trials == 0) {
    const bool votes = findings.method == Method::preference;
    return leftOut(voice, findings.weakenedBy, votes ? say(voice, QT_TRANSLATE_NOOP("words", "no vote counts.")) : say(voice, QT_TRANSLATE_NOOP("words", "no tasting counts.")));
  }
  if (!findings.pairs.empty()) return sumLine(voice, findings);
  if (findings.method == Method::preference) return voteLine(voice, findings);
  if (formOf(findings.method).saysSame) return signalLine(voice, plan, findings);
  if (reading.sequential) return stopLine(voice, plan, findings);
  return choiceLine(voice, plan, findings);
}

}  // namespace oddglass::words
