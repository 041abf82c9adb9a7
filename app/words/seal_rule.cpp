#include "words/seal_rule.h"

#include "domain/flight_form.h"
#include "words/give_aways.h"
#include "words/lots.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/serving.h"
#include "words/recommend.h"

namespace oddglass::words {
namespace {

int trialsOf(const SealFacts& facts) { return facts.panel * facts.rounds; }

std::string whoLine(const Voice& voice, const SealFacts& facts) {
  const int trials = trialsOf(facts);
  const Values values{{"people", people(voice, facts.panel)}, {"rounds", rounds(voice, facts.rounds)}, {"trials", whole(voice, trials)}};
  if (facts.claim == Claim::me)
    return sayCount(voice, QT_TRANSLATE_NOOP("words", "You taste alone, once: one tasting."), QT_TRANSLATE_NOOP("words", "You taste alone, {n} times."), trials);
  if (facts.method == Method::preference) return say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it, {rounds} each and one vote a person."), values);
  if (facts.drinks.size() == 3) return say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it, {rounds} each: {trials} tastings count in each comparison."), values);
  if (facts.rounds == 1) return say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it, once each: {trials} tastings count."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it, {rounds} each: {trials} tastings count."), values);
}

const char* shownSource(const SealFacts& facts) {
  if (facts.method == Method::preference)
    return QT_TRANSLATE_NOOP("words", "A preference is shown from {needed} votes of {trials} for one of them on, whichever it is. With tastes evenly parted that comes up no more often than {chance}.");
  if (facts.question == Question::notice)
    return QT_TRANSLATE_NOOP("words", "It counts as noticed from {needed} right answers of {trials} on. Guessing alone reaches that no more often than {chance}.");
  if (namesAThing(facts.method))
    return QT_TRANSLATE_NOOP("words", "It is shown to be more {more} from {needed} of {trials} times on. Guessing alone reaches that no more often than {chance}. Only this direction is asked about.");
  return QT_TRANSLATE_NOOP("words", "A difference is shown from {needed} right answers of {trials} on. Guessing alone reaches that no more often than {chance}.");
}

std::vector<std::string> differenceLines(const Voice& voice, const SealFacts& facts) {
  const int trials = facts.method == Method::preference ? facts.panel : trialsOf(facts);
  Values values{{"trials", whole(voice, trials)}, {"needed", whole(voice, facts.needed.value_or(0))}, {"chance", risk(voice, facts.alphaPm)}, {"more", facts.attribute}};
  if (!facts.needed && !facts.canShow) {
    if (facts.method == Method::preference) return {say(voice, QT_TRANSLATE_NOOP("words", "So few votes can show nothing, whatever is answered. This is practice."))};
    return {say(voice, QT_TRANSLATE_NOOP("words", "So few tastings can show nothing, whatever is answered. This is practice."))};
  }
  if (facts.stopping) {
    values["every"] = whole(voice, facts.panel);
    values["what"] = facts.claim == Claim::me ? timesLimit(voice, facts.stopping->sharePm) : shareLimit(voice, facts.stopping->sharePm);
    values["missed"] = risk(voice, facts.stopping->betaPm);
    return {say(voice, QT_TRANSLATE_NOOP("words", "It is looked at after every round of {every} tastings, for go on or stop only, and ends after {trials} at the latest."), values),
            say(voice, facts.claim == Claim::me
                           ? QT_TRANSLATE_NOOP("words", "A difference is shown, or not, as soon as the answers speak clearly: a false alarm no more often than about {chance}, and what you can taste {what} missed about {missed}.")
                           : QT_TRANSLATE_NOOP("words", "A difference is shown, or not, as soon as the answers speak clearly: a false alarm no more often than about {chance}, and what {what} can taste missed about {missed}."),
                values)};
  }
  if (facts.neededInTurn.size() == 3)
    return {neededInTurnLine(voice, facts.neededInTurn, trials), say(voice, QT_TRANSLATE_NOOP("words", "Guessing alone shows any of the three no more often than {chance}."), values)};
  if (!facts.needed)
    return {facts.method == Method::aNotA
                ? say(voice, QT_TRANSLATE_NOOP("words", "A difference is shown when “another one” is said so much more often of the other drink than of the marked one that chance does it no more often than {chance}."), values)
                : say(voice, QT_TRANSLATE_NOOP("words", "A difference is shown when “different” is said so much more often of unlike cups than of like ones that chance does it no more often than {chance}."), values)};
  return {say(voice, shownSource(facts), values)};
}

std::string alikeRule(const Voice& voice, const SealFacts& facts) {
  const bool alone = facts.claim == Claim::me;
  Values values{{"trials", whole(voice, trialsOf(facts))}, {"limit", alone ? timesLimit(voice, *facts.limitPm) : shareLimit(voice, *facts.limitPm)}};
  if (facts.alikeInTurn.empty() || !facts.alikeInTurn.front()) return say(voice, QT_TRANSLATE_NOOP("words", "So few tastings cannot come out as alike within a limit of {limit}, whatever is answered."), values);
  if (facts.alikeInTurn.size() == 3)
    return alikeInTurnLine(voice, facts.alikeInTurn, trialsOf(facts)) + ' ' +
           say(voice, alone ? QT_TRANSLATE_NOOP("words", "You may still be able to tell, but less often than {limit}.") : QT_TRANSLATE_NOOP("words", "Fewer than {limit} of people may still be able to tell."), values);
  values["most"] = whole(voice, *facts.alikeInTurn.front());
  return say(voice, alone ? QT_TRANSLATE_NOOP("words", "They count as alike up to {most} right answers of {trials}: you may still be able to tell, but less often than {limit}.")
                          : QT_TRANSLATE_NOOP("words", "They count as alike up to {most} right answers of {trials}: fewer than {limit} of people may still be able to tell."), values);
}

std::string markedRule(const Voice& voice, const SealFacts& facts) {
  if (!facts.marked) return say(voice, QT_TRANSLATE_NOOP("words", "The marked cup holds either drink, drawn for each flight (balanced reference)."));
  const auto at = static_cast<std::size_t>(facts.marked->value - 1);
  return say(voice, QT_TRANSLATE_NOOP("words", "The marked cup always holds {lot} (constant reference)."), {{"lot", at < facts.drinks.size() ? facts.drinks[at] : std::string()}});
}

void addMakers(const Voice& voice, int makers, std::vector<std::string>& lines) {
  if (makers > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "1 maker tastes as well; that answer stands beside the others and is not counted with them."),
                             QT_TRANSLATE_NOOP("words", "{n} makers taste as well; their answers stand beside the others and are not counted with them."), makers));
}

void addPourer(const Voice& voice, const std::string& pourer, std::vector<std::string>& lines) {
  if (!pourer.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{name} pours, sees the sheet and does not taste."), {{"name", pourer}}));
}

}  // namespace

void addPeopleBeside(const Voice& voice, int makers, const std::string& pourer, std::vector<std::string>& lines) {
  addMakers(voice, makers, lines);
  addPourer(voice, pourer, lines);
}

std::vector<std::string> sealRule(const Voice& voice, const SealFacts& facts) {
  std::vector<std::string> lines{methodLine(voice, facts.method, facts.attribute), whoLine(voice, facts)};
  if (facts.question == Question::notice) {
    const auto at = static_cast<std::size_t>(facts.expected.value_or(Slot{1}).value - 1);
    lines.push_back(knownLine(voice, at < facts.drinks.size() ? facts.drinks[at] : std::string(), facts.attribute, facts.dose));
  }
  if (formOf(facts.method).hasMarked) lines.push_back(markedRule(voice, facts));
  if (facts.evenings > 1) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "The rounds are spread over {n} evenings."), {{"n", whole(voice, facts.evenings)}}));
  addMakers(voice, facts.makers, lines);
  if (facts.sought != Sought::alike)
    for (std::string& line : differenceLines(voice, facts)) lines.push_back(std::move(line));
  if (facts.sought != Sought::difference && facts.limitPm) lines.push_back(alikeRule(voice, facts));
  if (facts.mayHaveNone && facts.method == Method::preference) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "“No preference” may be answered. It is left out of the count, and it is shown what a split would change.")));
  if (facts.alsoPrefer) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "After the choice it is asked which was liked better. That counts of right choices only.")));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "If answers are missing at the end, these numbers follow from who has answered. That is worked out before anybody sees the key.")));
  for (std::string& line : giveAwayLines(voice, facts.giveAways)) lines.push_back(std::move(line));
  for (std::string& line : servedLines(voice, facts.serving)) lines.push_back(std::move(line));
  if (facts.routine == Routine::pourer) addPourer(voice, facts.pourer, lines);
  return lines;
}

}  // namespace oddglass::words
