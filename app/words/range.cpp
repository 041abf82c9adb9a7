#include "domain/flight_form.h"
#include "words/lots.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/reading.h"
#include "words/verdict.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Verdict;

std::string distanceLine(const Voice& voice, const insight::Signal& signal) {
  Values values{{"d", signal.dPrime ? decimal(voice, *signal.dPrime, 1) : std::string()}};
  if (signal.dPrime && signal.low && signal.high) {
    values["low"] = decimal(voice, *signal.low, 1);
    values["high"] = decimal(voice, *signal.high, 1);
    return say(voice, QT_TRANSLATE_NOOP("words", "How far apart they are: d′ {d}, from {low} to {high}. At a d′ of 1 the right one of two cups is picked about 3 times in 4."), values);
  }
  if (signal.dPrime) return say(voice, QT_TRANSLATE_NOOP("words", "How far apart they are: d′ {d}. At a d′ of 1 the right one of two cups is picked about 3 times in 4."), values);
  if (!signal.corrected) return {};
  values["d"] = decimal(voice, *signal.corrected, 1);
  return say(voice, QT_TRANSLATE_NOOP("words", "How far apart they are has no number here: one kind of answer came every time, or not once. With half an answer added to each count it would be a d′ of about {d}."), values);
}

/// What the interval is of.
std::string rangeTitle(const Voice& voice, const Plan& plan, const Findings& findings) {
  const bool alone = findings.claim == Claim::me;
  if (findings.method == Method::preference) {
    const Values lot{{"lot", namesOf(voice, plan, findings.lots.value_or(std::pair{Slot{1}, Slot{2}})).one}};
    return say(voice, alone ? QT_TRANSLATE_NOOP("words", "In how many of your tastings you prefer {lot}") : QT_TRANSLATE_NOOP("words", "How many people like these prefer {lot}"), lot);
  }
  if (plan.question == Question::notice) {
    const Values word{{"more", plan.attribute}};
    return say(voice, alone ? QT_TRANSLATE_NOOP("words", "In how many of your tastings you notice “{more}”") : QT_TRANSLATE_NOOP("words", "How many people like these notice “{more}”"), word);
  }
  if (namesAThing(findings.method)) {
    const Values values{{"lot", lotNamed(voice, plan, findings.expected.value_or(Slot{1}))}, {"more", plan.attribute}};
    return say(voice, alone ? QT_TRANSLATE_NOOP("words", "In how many of your tastings you can tell that {lot} is more {more}") : QT_TRANSLATE_NOOP("words", "How many people like these can tell that {lot} is more {more}"), values);
  }
  return alone ? say(voice, QT_TRANSLATE_NOOP("words", "In how many of your tastings you can tell")) : say(voice, QT_TRANSLATE_NOOP("words", "How many people like these can tell"));
}

std::string testLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  Values values{{"method", capitalised(methodName(voice, findings.method))}, {"standard", listed(voice, standardsOf(plan))}, {"risk", risk(voice, findings.alphaPm)}};
  std::string line = say(voice, values["standard"].empty() ? QT_TRANSLATE_NOOP("words", "{method}, as is common practice.") : QT_TRANSLATE_NOOP("words", "{method} test, after {standard}, not certified."), values) + ' ';
  if (plan.stopping) {
    values["share"] = shareLimit(voice, plan.stopping->sharePm);
    values["beta"] = risk(voice, plan.stopping->betaPm);
    return line + say(voice, QT_TRANSLATE_NOOP("words", "Wald’s sequential test (1947), looked at after whole rounds: guessing against {share} who can tell, with a risk of a false alarm of {risk} and of a miss of {beta} set before. The decision is the result; there is no p."), values);
  }
  if (findings.method == Method::preference)
    return line + say(voice, findings.claim == Claim::me ? QT_TRANSLATE_NOOP("words", "Exact binomial, two-sided, one vote a round, with a risk of a false alarm of {risk} set before.") : QT_TRANSLATE_NOOP("words", "Exact binomial, two-sided, one vote a person, with a risk of a false alarm of {risk} set before."), values);
  if (formOf(findings.method).saysSame)
    return line + say(voice, QT_TRANSLATE_NOOP("words", "Fisher’s exact test, one-sided, with a risk of a false alarm of {risk} set before; the range of d′ takes tastings, not people, as the unit."), values);
  return line + say(voice, QT_TRANSLATE_NOOP("words", "Exact binomial, one-sided, with a risk of a false alarm of {risk} set before."), values);
}

}  // namespace

std::vector<std::string> standardsOf(const Plan& plan) {
  std::vector<std::string> all;
  switch (plan.method) {
    case Method::triangle: all = {"ISO 4120:2021"}; break;
    case Method::duoTrio: all = {"ISO 10399:2017"}; break;
    case Method::pair:
    case Method::preference: all = {"ISO 5495:2005"}; break;
    case Method::sheet:
      if (std::ranges::any_of(plan.items, [](const SheetItem& item) { return !item.word.empty() && (item.kind == ItemKind::line || item.kind == ItemKind::magnitude); })) all.push_back("ISO 13299:2016");
      if (std::ranges::find(plan.items, ItemKind::rank, &SheetItem::kind) != plan.items.end()) all.push_back("ISO 8587:2006");
      break;
    case Method::tetrad:
    case Method::twoOutOfFive:
    case Method::threeAfc:
    case Method::sameDifferent:
    case Method::aNotA: break;
  }
  if (plan.stopping) all.push_back("ISO 16820:2019");
  return all;
}

std::string rangeLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  const insight::Reading& reading = findings.printed();
  if (findings.verdict == Verdict::none) return {};
  if (reading.signal) return distanceLine(voice, *reading.signal);
  const auto& range = reading.range;
  if (!range) return {};
  const Values values{{"title", rangeTitle(voice, plan, findings)}, {"range", shareRange(voice, range->low, range->high)}, {"often", howOften(voice, plan.roundsEach())}};
  if (range->by == insight::RangeBy::people && plan.roundsEach() > 1)
    return say(voice, QT_TRANSLATE_NOOP("words", "People tasted {often} each, so people are counted and not cups, and the range is wide. {title}: {range}."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "{title}: {range}."), values);
}

std::string methodLine(const Voice& voice, const Plan& plan, const Findings& findings) {
  std::string line = testLine(voice, plan, findings);
  if (!findings.pairs.empty()) return line + ' ' + say(voice, QT_TRANSLATE_NOOP("words", "Three pairs, each by itself, with the p values adjusted over the three by Holm (1979)."));
  const auto& range = findings.printed().range;
  if (findings.verdict == Verdict::none || !range) return line;
  const Values values{{"level", risk(voice, static_cast<int>(std::lround(range->level * 1000)))}};
  if (range->by == insight::RangeBy::people)
    return line + ' ' + say(voice, QT_TRANSLATE_NOOP("words", "The range takes the person as the unit (chance-corrected beta-binomial, no share and no spread favoured beforehand). Given these answers and that start, the truth lies in it {level}."), values);
  if (findings.method == Method::preference)
    return line + ' ' + say(voice, QT_TRANSLATE_NOOP("words", "The range is exact (Clopper and Pearson) and, over many such tastings, holds the truth at least {level}."), values);
  return line + ' ' + say(voice, QT_TRANSLATE_NOOP("words", "The range is exact (Clopper and Pearson, corrected for guessing) and, over many such tastings, holds the truth at least {level}."), values);
}

std::optional<IntervalWords> intervalWords(const Voice& voice, const Plan& plan, const Findings& findings) {
  const auto& range = findings.printed().range;
  if (findings.verdict == Verdict::none || !range) return std::nullopt;
  const bool alone = findings.claim == Claim::me;
  IntervalWords words;
  words.low = range->low;
  words.high = range->high;
  words.point = range->point;
  words.title = rangeTitle(voice, plan, findings);
  words.none = say(voice, QT_TRANSLATE_NOOP("words", "none"));
  words.half = say(voice, QT_TRANSLATE_NOOP("words", "half"));
  words.all = say(voice, QT_TRANSLATE_NOOP("words", "all"));
  words.range = shareRange(voice, range->low, range->high);
  words.sentence = say(voice, QT_TRANSLATE_NOOP("words", "{title}: {range}."), {{"title", words.title}, {"range", words.range}});
  words.headers = {say(voice, QT_TRANSLATE_NOOP("words", "mark")), alone ? say(voice, QT_TRANSLATE_NOOP("words", "share of tastings, 0 to 1")) : say(voice, QT_TRANSLATE_NOOP("words", "share of people, 0 to 1"))};
  words.rows = {{say(voice, QT_TRANSLATE_NOOP("words", "low end")), decimal(voice, range->low, 2)},
                {say(voice, QT_TRANSLATE_NOOP("words", "middle")), decimal(voice, range->point, 2)},
                {say(voice, QT_TRANSLATE_NOOP("words", "high end")), decimal(voice, range->high, 2)}};
  if (findings.limitPm && findings.sought != Sought::difference && !namesAThing(findings.method) && findings.method != Method::preference) {
    words.limit = *findings.limitPm / 1000.0;
    words.limitLabel = say(voice, QT_TRANSLATE_NOOP("words", "your limit"));
    words.rows.push_back({words.limitLabel, decimal(voice, *words.limit, 2)});
  }
  return words;
}

}  // namespace oddglass::words
