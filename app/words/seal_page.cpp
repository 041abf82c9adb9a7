#include "domain/flight_form.h"
#include "words/mark.h"
#include "words/routine.h"
#include "words/seal_rule.h"

namespace oddglass::words {
namespace {

std::string drink(const SealFacts& facts, std::size_t index) { return index < facts.drinks.size() ? facts.drinks[index] : std::string(); }

std::string question(const Voice& voice, const SealFacts& facts) {
  const bool alone = facts.claim == Claim::me;
  const std::size_t more = facts.expected == Slot{2} ? 1 : 0;
  const Values drinks{{"one", drink(facts, 0)}, {"other", drink(facts, 1)}, {"all", listed(voice, facts.drinks)}, {"more", facts.attribute},
                      {"asked", drink(facts, more)}, {"beside", drink(facts, 1 - more)}};
  if (facts.drinks.size() == 3)
    return say(voice, alone ? QT_TRANSLATE_NOOP("words", "Can you tell {all} apart, pair by pair?") : QT_TRANSLATE_NOOP("words", "Can anyone tell {all} apart, pair by pair?"), drinks);
  if (facts.question == Question::notice)
    return say(voice, alone ? QT_TRANSLATE_NOOP("words", "Can you notice “{more}” in {asked}, beside {beside}?") : QT_TRANSLATE_NOOP("words", "Can anyone notice “{more}” in {asked}, beside {beside}?"), drinks);
  if (namesAThing(facts.method)) return say(voice, QT_TRANSLATE_NOOP("words", "Is {asked} more {more} than {beside}?"), drinks);
  if (facts.method == Method::preference)
    return say(voice, alone ? QT_TRANSLATE_NOOP("words", "Which do you prefer, {one} or {other}?") : QT_TRANSLATE_NOOP("words", "Which do people prefer, {one} or {other}?"), drinks);
  return say(voice, alone ? QT_TRANSLATE_NOOP("words", "Can you tell {one} from {other}?") : QT_TRANSLATE_NOOP("words", "Can anyone tell {one} from {other}?"), drinks);
}

}  // namespace

SealFacts sealFacts(const Draft& draft, const planning::Setup& setup, const planning::Outlook& outlook, std::vector<std::string> drinks, std::string pourer) {
  SealFacts facts;
  facts.drinks = std::move(drinks);
  facts.method = draft.method;
  facts.question = draft.question;
  facts.attribute = draft.attribute;
  facts.dose = draft.dose;
  facts.expected = draft.expected;
  facts.marked = draft.marked;
  facts.mayHaveNone = draft.mayHaveNone;
  facts.alsoPrefer = draft.alsoPrefer;
  facts.evenings = draft.evenings;
  facts.claim = outlook.claim;
  facts.sought = draft.sought;
  facts.limitPm = draft.limitPm;
  facts.alphaPm = draft.alphaPm;
  facts.panel = outlook.people;
  facts.makers = setup.panel > 0 ? setup.makers : 0;
  facts.rounds = draft.rounds;
  facts.needed = outlook.needed;
  if (outlook.comparisons > 1) facts.neededInTurn = outlook.neededInTurn;
  facts.canShow = outlook.canShow;
  facts.stopping = draft.stopping;
  if (outlook.alike) facts.alikeInTurn = outlook.alike->largestInTurn;
  facts.routine = draft.routine;
  facts.pourer = std::move(pourer);
  facts.promises = draft.promises;
  facts.giveAways = draft.giveAways;
  facts.serving = draft.serving;
  return facts;
}

namespace {

// A sheet about how good a drink is gives no verdict: which of the two holds is the brewer's to say.
std::string sheetOutcomeIf(const Voice& voice, bool isShown, Question question) {
  if (question == Question::good) return isShown ? say(voice, QT_TRANSLATE_NOOP("words", "If people like it")) : say(voice, QT_TRANSLATE_NOOP("words", "If they do not"));
  return isShown ? say(voice, QT_TRANSLATE_NOOP("words", "If a gap is shown")) : say(voice, QT_TRANSLATE_NOOP("words", "If no gap is shown"));
}

}  // namespace

std::string outcomeIf(const Voice& voice, Outcome outcome, Method method, Question question) {
  if (method == Method::sheet && outcome != Outcome::alike) return sheetOutcomeIf(voice, outcome == Outcome::shown, question);
  const bool prefers = method == Method::preference, notices = question == Question::notice, more = namesAThing(method);
  switch (outcome) {
    case Outcome::shown:
      return prefers ? say(voice, QT_TRANSLATE_NOOP("words", "If a preference is shown"))
             : notices ? say(voice, QT_TRANSLATE_NOOP("words", "If it is noticed"))
             : more  ? say(voice, QT_TRANSLATE_NOOP("words", "If it is shown to be more so"))
                     : say(voice, QT_TRANSLATE_NOOP("words", "If they are told apart"));
    case Outcome::notShown:
      return prefers ? say(voice, QT_TRANSLATE_NOOP("words", "If no preference is shown"))
             : notices ? say(voice, QT_TRANSLATE_NOOP("words", "If that is not shown"))
             : more  ? say(voice, QT_TRANSLATE_NOOP("words", "If that is not shown"))
                     : say(voice, QT_TRANSLATE_NOOP("words", "If no difference is shown"));
    case Outcome::alike: return say(voice, QT_TRANSLATE_NOOP("words", "If they come out as alike within the limit"));
  }
  return {};
}

std::string promisedLine(const Voice& voice, const std::string& condition, const Promises& promises, Outcome outcome) {
  const auto words = promises.find(outcome);
  const bool written = words != promises.end() && !words->second.empty();
  return say(voice, written ? QT_TRANSLATE_NOOP("words", "{if}: {promise}") : QT_TRANSLATE_NOOP("words", "{if}: nothing is promised yet."),
             {{"if", condition}, {"promise", written ? words->second : std::string()}});
}

std::string bindingLine(const Voice& voice, Routine routine) {
  if (!isDrawn(routine))
    return say(voice, QT_TRANSLATE_NOOP("words", "After the seal none of this can be changed. The seal covers plan, places and codes; which cup holds what is in your hands, and every finding says who read it off."));
  return say(voice, QT_TRANSLATE_NOOP("words", "After the seal none of this can be changed, and nobody knows which cup holds what but the pour sheet."));
}

SealPage sealPage(const Voice& voice, const SealFacts& facts) {
  SealPage page;
  page.question = question(voice, facts);
  page.rule = sealRule(voice, facts);
  if (!isDrawn(facts.routine)) page.rule.push_back(routineLine(voice, facts.routine));
  for (const Outcome outcome : {Outcome::shown, Outcome::notShown, Outcome::alike}) {
    if (outcome == Outcome::alike && facts.sought == Sought::difference) continue;
    page.promises.push_back(promisedLine(voice, outcomeIf(voice, outcome, facts.method, facts.question), facts.promises, outcome));
  }
  page.binding = bindingLine(voice, facts.routine);
  return page;
}

}  // namespace oddglass::words
