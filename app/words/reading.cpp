#include "words/reading.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/verdict.h"

#include <cmath>

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Reading;
using insight::Verdict;
using insight::WeakenedBy;

/// "12 of 18 tastings were right".
std::string rightOf(const Voice& voice, const Reading& reading) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "{right} of 1 tasting was right"), QT_TRANSLATE_NOOP("words", "{right} of {n} tastings were right"), reading.trials,
                  {{"right", whole(voice, reading.right)}});
}

std::string byGuessing(const Voice& voice, const Reading& reading) {
  if (reading.trials < 6) return say(voice, QT_TRANSLATE_NOOP("words", "one in three"));
  return say(voice, QT_TRANSLATE_NOOP("words", "about {n}"), {{"n", whole(voice, std::llround(reading.expected))}});
}

std::string leftOut(const Voice& voice, WeakenedBy by, const std::string& sentence) {
  const Values values{{"sentence", sentence}};
  switch (by) {
    case WeakenedBy::nothing: return sentence;
    case WeakenedBy::lookOrFizz: return say(voice, QT_TRANSLATE_NOOP("words", "Leaving out what was told by look or fizz, {sentence}"), values);
    case WeakenedBy::said: return say(voice, QT_TRANSLATE_NOOP("words", "Leaving out what was locked after something was said, {sentence}"), values);
    case WeakenedBy::either: return say(voice, QT_TRANSLATE_NOOP("words", "Leaving out what was told by look or fizz or locked after something was said, {sentence}"), values);
  }
  return sentence;
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

std::string unchangedBy(const Voice& voice, const std::optional<Reading>& rest, const char* source) {
  if (!rest) return {};
  return say(voice, source, {{"right", whole(voice, rest->right)}, {"trials", whole(voice, rest->trials)}});
}

}  // namespace

std::string countLine(const Voice& voice, const Findings& findings) {
  const Reading& reading = findings.printed();
  if (reading.trials == 0) return capitalised(leftOut(voice, findings.weakenedBy, say(voice, QT_TRANSLATE_NOOP("words", "no tasting counts."))));
  Values values{{"right", rightOf(voice, reading)}, {"guess", byGuessing(voice, reading)}, {"n", whole(voice, reading.right)},
                {"often", timesIn(voice, reading.pValue.value_or(1.0))}};
  const char* source = QT_TRANSLATE_NOOP("words", "{right}; guessing gives {guess}.");
  if (reading.verdict == findings.verdict) {
    switch (findings.verdict) {
      case Verdict::shown:
      case Verdict::both:
        source = reading.right == reading.trials ? QT_TRANSLATE_NOOP("words", "{right}; guessing gives {guess}, and all of them {often}.")
                                                 : QT_TRANSLATE_NOOP("words", "{right}; guessing gives {guess}, and {n} or more {often}.");
        break;
      case Verdict::notShown:
        if (findings.sought != Sought::alike && reading.needed) {
          values["needed"] = whole(voice, *reading.needed);
          source = *reading.needed == 1 ? QT_TRANSLATE_NOOP("words", "{right}; guessing gives {guess}, and 1 was needed.")
                                        : QT_TRANSLATE_NOOP("words", "{right}; guessing gives {guess}, and {needed} were needed.");
        } else if (reading.largest) {
          values["most"] = whole(voice, *reading.largest);
          source = QT_TRANSLATE_NOOP("words", "{right}; no more than {most} would have counted as alike within your limit.");
        }
        break;
      case Verdict::alike:
        if (reading.alikeP && findings.limitPm) {
          values["often"] = timesIn(voice, *reading.alikeP);
          values["limit"] = findings.claim == Claim::me ? timesLimit(voice, *findings.limitPm) : shareLimit(voice, *findings.limitPm);
          source = findings.claim == Claim::me ? QT_TRANSLATE_NOOP("words", "{right}. If you could tell {limit}, so few would come up {often}.")
                                               : QT_TRANSLATE_NOOP("words", "{right}. If {limit} could tell, so few would come up {often}.");
        }
        break;
      case Verdict::none: break;
    }
  }
  return leftOut(voice, findings.weakenedBy, say(voice, source, values));
}

std::string rangeLine(const Voice& voice, const Findings& findings, int rounds) {
  const auto& range = findings.printed().range;
  if (findings.verdict == Verdict::none || !range) return {};
  const Values values{{"range", shareRange(voice, range->low, range->high)}, {"often", howOften(voice, rounds)}};
  switch (range->by) {
    case insight::RangeBy::exact: return say(voice, QT_TRANSLATE_NOOP("words", "How many people like these can tell: {range}."), values);
    case insight::RangeBy::people:
      return say(voice, QT_TRANSLATE_NOOP("words", "People tasted {often} each, so people are counted and not cups, and the range is wide: {range} of such people can tell."), values);
    case insight::RangeBy::self: return say(voice, QT_TRANSLATE_NOOP("words", "In how many of your tastings you can tell: {range}."), values);
  }
  return {};
}

std::string missedLine(const Voice& voice, const Findings& findings) {
  if (findings.verdict != Verdict::notShown || findings.sought == Sought::alike || pointsBothWays(findings)) return {};
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

std::string weakerLine(const Voice& voice, const Findings& findings) {
  if (findings.why == insight::NoVerdict::sealBroken) return {};
  if (findings.weakenedBy != WeakenedBy::nothing) {
    const Values values{{"right", rightOf(voice, findings.all)}, {"verdict", verdictWord(voice, findings.all.verdict)}};
    return findings.printed().verdict == findings.verdict
               ? say(voice, QT_TRANSLATE_NOOP("words", "With every answer {right}, which alone would have read “{verdict}”. The weaker verdict is the one that stands."), values)
               : say(voice, QT_TRANSLATE_NOOP("words", "With every answer {right}, which alone would have read “{verdict}”. The two point different ways, so neither stands."), values);
  }
  std::vector<std::string> parts;
  for (const std::string& each : {unchangedBy(voice, findings.withoutLookOrFizz, QT_TRANSLATE_NOOP("words", "Without what was told by look or fizz it is {right} of {trials}, and the verdict stays.")),
                                  unchangedBy(voice, findings.withoutSaid, QT_TRANSLATE_NOOP("words", "Without what was locked after something was said it is {right} of {trials}, and the verdict stays."))})
    if (!each.empty()) parts.push_back(each);
  std::string all;
  for (const std::string& each : parts) all += (all.empty() ? "" : " ") + each;
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

std::string methodLine(const Voice& voice, const Findings& findings) {
  std::string line = say(voice, QT_TRANSLATE_NOOP("words", "Triangle test, after ISO 4120:2021, not certified. Exact binomial, one-sided, with a risk of a false alarm of {risk} set before."),
                         {{"risk", risk(voice, findings.alphaPm)}});
  const auto& range = findings.printed().range;
  if (findings.verdict == Verdict::none || !range) return line;
  const Values values{{"level", risk(voice, static_cast<int>(std::lround(range->level * 1000)))}};
  switch (range->by) {
    case insight::RangeBy::exact:
    case insight::RangeBy::self:
      line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "The range is exact (Clopper and Pearson, corrected for guessing) and, over many such tastings, holds the truth at least {level}."), values);
      break;
    case insight::RangeBy::people:
      line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "The range takes the person as the unit (chance-corrected beta-binomial, no share and no spread favoured beforehand). Given these answers and that start, the truth lies in it {level}."), values);
      break;
  }
  return line;
}

std::optional<IntervalWords> intervalWords(const Voice& voice, const Findings& findings) {
  const auto& range = findings.printed().range;
  if (findings.verdict == Verdict::none || !range) return std::nullopt;
  const bool alone = findings.claim == Claim::me;
  IntervalWords words;
  words.low = range->low;
  words.high = range->high;
  words.point = range->point;
  words.title = alone ? say(voice, QT_TRANSLATE_NOOP("words", "In how many of your tastings you can tell")) : say(voice, QT_TRANSLATE_NOOP("words", "How many people like these can tell"));
  words.none = say(voice, QT_TRANSLATE_NOOP("words", "none"));
  words.half = say(voice, QT_TRANSLATE_NOOP("words", "half"));
  words.all = say(voice, QT_TRANSLATE_NOOP("words", "all"));
  words.range = shareRange(voice, range->low, range->high);
  words.sentence = say(voice, QT_TRANSLATE_NOOP("words", "{title}: {range}."), {{"title", words.title}, {"range", words.range}});
  words.headers = {say(voice, QT_TRANSLATE_NOOP("words", "mark")), alone ? say(voice, QT_TRANSLATE_NOOP("words", "share of tastings, 0 to 1")) : say(voice, QT_TRANSLATE_NOOP("words", "share of people, 0 to 1"))};
  words.rows = {{say(voice, QT_TRANSLATE_NOOP("words", "low end")), decimal(voice, range->low, 2)},
                {say(voice, QT_TRANSLATE_NOOP("words", "middle")), decimal(voice, range->point, 2)},
                {say(voice, QT_TRANSLATE_NOOP("words", "high end")), decimal(voice, range->high, 2)}};
  if (findings.limitPm && findings.sought != Sought::difference) {
    words.limit = *findings.limitPm / 1000.0;
    words.limitLabel = say(voice, QT_TRANSLATE_NOOP("words", "your limit"));
    words.rows.push_back({words.limitLabel, decimal(voice, *words.limit, 2)});
  }
  return words;
}

}  // namespace oddglass::words
