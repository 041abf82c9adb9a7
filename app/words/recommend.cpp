#include "words/recommend.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/units.h"

#include <algorithm>

namespace oddglass::words {
namespace {

using planning::Because;

std::string needs(const Voice& voice, const std::optional<int>& needed, int trials) {
  if (!needed) return say(voice, QT_TRANSLATE_NOOP("words", "more right answers than there are tastings"));
  return say(voice, QT_TRANSLATE_NOOP("words", "{needed} of {trials} right answers"), {{"needed", whole(voice, *needed)}, {"trials", whole(voice, trials)}});
}

}  // namespace

std::string reasonLine(const Voice& voice, Because because) {
  switch (because) {
    case Because::natureUnknown: return say(voice, QT_TRANSLATE_NOOP("words", "Nobody has said yet what the difference would be, so nothing is named."));
    case Because::thingNamed: return say(voice, QT_TRANSLATE_NOOP("words", "You can name it: asking for one thing finds a difference in it most often."));
    case Because::findsMost: return say(voice, QT_TRANSLATE_NOOP("words", "Four cups find a difference more often than three, with as many people."));
    case Because::fewerCups: return say(voice, QT_TRANSLATE_NOOP("words", "Fewer cups: less to drink, and less that lingers from one cup to the next."));
    case Because::knownDrink: return say(voice, QT_TRANSLATE_NOOP("words", "A marked cup helps where people know one of the drinks well."));
    case Because::strong: return say(voice, QT_TRANSLATE_NOOP("words", "At this strength a fourth cup would tire more than it tells."));
    case Because::lingers: return say(voice, QT_TRANSLATE_NOOP("words", "A taste that lingers is carried on into every further cup."));
    case Because::littleLiquid: return say(voice, QT_TRANSLATE_NOOP("words", "There are not enough bottles for four cups."));
    case Because::ceiling: return say(voice, QT_TRANSLATE_NOOP("words", "Four cups would go beyond your ceiling of an evening."));
    case Because::oneVote: return say(voice, QT_TRANSLATE_NOOP("words", "Each person has one vote. More rounds show how steady it is; they are no more votes."));
    case Because::needsAName: return say(voice, QT_TRANSLATE_NOOP("words", "You would have to name the thing first, and which of the drinks has more of it."));
    case Because::moreCups: return say(voice, QT_TRANSLATE_NOOP("words", "More cups: more to drink, and more that lingers."));
    case Because::findsLess: return say(voice, QT_TRANSLATE_NOOP("words", "It finds the difference less often with as many people."));
    case Because::readiness: return say(voice, QT_TRANSLATE_NOOP("words", "It depends on how readily people call two cups different, and needs many answers."));
    case Because::tooFewVotes: return say(voice, QT_TRANSLATE_NOOP("words", "Fewer than six people cannot settle this, whatever they answer."));
  }
  return {};
}

std::vector<std::string> choiceLines(const Voice& voice, const planning::Choice& choice, const std::string& attribute) {
  std::vector<std::string> lines{methodLine(voice, choice.method, attribute.empty() ? std::string("…") : attribute)};
  for (const Because because : choice.because) lines.push_back(reasonLine(voice, because));
  return lines;
}

std::string choiceChance(const Voice& voice, const planning::Choice& choice, Claim claim) {
  const Values often{{"often", roughlyOften(voice, choice.chance)}};
  if (choice.method == Method::preference) {
    if (!choice.needed) return say(voice, QT_TRANSLATE_NOOP("words", "It cannot show a preference, whatever is answered."));
    return say(voice, QT_TRANSLATE_NOOP("words", "If 9 in 10 people prefer one of them, that would show {often}."), often);
  }
  if (claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "A difference that you can taste half the time, with three cups, would be found {often}."), often);
  return say(voice, QT_TRANSLATE_NOOP("words", "A difference that half of people can taste, with three cups, would be found {often}."), often);
}

std::string choicePrice(const Voice& voice, const planning::Choice& choice) {
  const planning::Amounts& amounts = choice.amounts;
  std::string price = say(voice, QT_TRANSLATE_NOOP("words", "{cups}, {volume} a person; {all} in all."),
                          {{"cups", cups(voice, amounts.cupsPerPerson)}, {"volume", volume(voice, amounts.mlPerPerson)}, {"all", cups(voice, amounts.cups)}});
  if (amounts.grams)
    price += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "Up to {grams} g of alcohol a person in an evening."), {{"grams", decimal(voice, *amounts.grams, 1)}});
  if (amounts.aboveCeiling) price += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "That is above your ceiling."));
  if (!choice.enoughBottles) price += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "That takes more bottles than are free."));
  return price;
}

std::string neededInTurnLine(const Voice& voice, const std::vector<std::optional<int>>& needed, int trials) {
  if (needed.size() != 3) return {};
  if (!needed[0]) return say(voice, QT_TRANSLATE_NOOP("words", "So few tastings cannot show any of the three, whatever is answered."));
  const Values values{{"first", needs(voice, needed[0], trials)}, {"second", needs(voice, needed[1], trials)}, {"third", needs(voice, needed[2], trials)}};
  if (needed[0] == needed[1] && needed[1] == needed[2]) return say(voice, QT_TRANSLATE_NOOP("words", "Each of the three needs {first}."), values);
  if (needed[1] == needed[2]) return say(voice, QT_TRANSLATE_NOOP("words", "The clearest of the three needs {first}, then each of the others {second}."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "The clearest of the three needs {first}, then the second {second}, then the third {third}."), values);
}

std::string alikeInTurnLine(const Voice& voice, const std::vector<std::optional<int>>& largest, int trials) {
  if (largest.size() != 3 || !largest[0]) return {};
  const Values values{{"first", whole(voice, *largest[0])}, {"second", whole(voice, largest[1].value_or(*largest[0]))}, {"third", whole(voice, largest[2].value_or(*largest[0]))}, {"trials", whole(voice, trials)}};
  if (largest[0] == largest[2]) return say(voice, QT_TRANSLATE_NOOP("words", "Each of the three pairs counts as alike up to {first} right answers of {trials}."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "The pair with the fewest right answers counts as alike up to {first} of {trials}, then the next up to {second}, then the last up to {third}."), values);
}

std::string pickedLine(const Voice& voice, const planning::Recommendation& recommendation, Method taken, bool isChosen) {
  if (!isChosen) return say(voice, QT_TRANSLATE_NOOP("words", "The program picked this way, and picks again when drinks, people or amounts change."));
  const planning::Choice& best = recommendation.best();
  if (best.method == taken) return say(voice, QT_TRANSLATE_NOOP("words", "You chose this way. It is the one that is recommended."));
  std::string line = say(voice, QT_TRANSLATE_NOOP("words", "You chose this way: {mine}. Better here: {best}."), {{"mine", methodName(voice, taken)}, {"best", methodName(voice, best.method)}});
  for (const Because because : best.because) line += ' ' + reasonLine(voice, because);
  return line;
}

ReferencesWords referencesWords(const Voice& voice, const planning::TwoReferences& references, Claim claim, const std::vector<PlannedLot>& lots) {
  ReferencesWords words;
  words.headline = say(voice, QT_TRANSLATE_NOOP("words", "Three drinks. What is the third for?"));
  words.advice = references.oneIsBetter
                     ? say(voice, QT_TRANSLATE_NOOP("words", "One target is recommended: with fewer than ten people three comparisons can hardly show anything. (The ten is our own figure.)"))
                     : say(voice, QT_TRANSLATE_NOOP("words", "With ten people or more three comparisons can show something; one target still needs fewer right answers and fewer cups."));
  // Beside a batch of one's own, how far two references lie apart is no target.
  const bool oneIsOwn = std::ranges::count(lots, Origin::batch, &PlannedLot::origin) == 1;
  Plan plan;
  plan.lots = lots;
  for (const planning::PairChoice& pair : references.pairs) {
    const auto isBatch = [&](int lot) { return lots.at(static_cast<std::size_t>(lot)).origin == Origin::batch; };
    const auto& [one, other] = pair.lots;
    if (oneIsOwn && !isBatch(one) && !isBatch(other)) continue;
    const auto named = [&](int lot) { return lotNamed(voice, plan, Slot{lot + 1}); };
    words.ways.push_back({{one, other},
                          capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{one} beside {other}; {third} another day"), {{"one", named(one)}, {"other", named(other)}, {"third", named(3 - one - other)}})),
                          {choicePrice(voice, pair.choice), choiceChance(voice, pair.choice, claim)}});
  }
  words.ways.push_back({{0, 1, 2},
                        say(voice, QT_TRANSLATE_NOOP("words", "Three short comparisons, each pair by itself")),
                        {choicePrice(voice, references.three), choiceChance(voice, references.three, claim), neededInTurnLine(voice, references.neededInTurn, references.trials)}});
  return words;
}

}  // namespace oddglass::words
