#include "words/recommend.h"

#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"

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
  std::string price = say(voice, QT_TRANSLATE_NOOP("words", "{cups}, {ml} mL a person; {all} in all."),
                          {{"cups", cups(voice, amounts.cupsPerPerson)}, {"ml", whole(voice, amounts.mlPerPerson)}, {"all", cups(voice, amounts.cups)}});
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

ReferencesWords referencesWords(const Voice& voice, const planning::TwoReferences& references, Claim claim) {
  ReferencesWords words;
  words.headline = say(voice, QT_TRANSLATE_NOOP("words", "Three drinks. What is the third for?"));
  WayToCompare one{say(voice, QT_TRANSLATE_NOOP("words", "One of them is my target; the other another day")), {}, references.oneIsBetter};
  one.lines = {choicePrice(voice, references.oneTarget), choiceChance(voice, references.oneTarget, claim)};
  WayToCompare three{say(voice, QT_TRANSLATE_NOOP("words", "Three short comparisons, each pair by itself")), {}, !references.oneIsBetter};
  three.lines = {choicePrice(voice, references.three), choiceChance(voice, references.three, claim), neededInTurnLine(voice, references.neededInTurn, references.trials)};
  words.ways = {one, three};
  return words;
}

}  // namespace oddglass::words
