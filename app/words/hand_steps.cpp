#include "words/routine.h"

#include "domain/flight_form.h"
#include "words/came_out.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/units.h"

namespace oddglass::words {
namespace {

using Steps = std::vector<HandStep>;

std::string drinkOf(const HandFacts& facts, int slot) {
  const auto at = static_cast<std::size_t>(slot) - 1;
  return at < facts.drinks.size() ? facts.drinks[at] : std::string();
}

// "two cups of this and two of that".
std::string whatIsPoured(const Voice& voice, const HandFacts& facts) {
  const HandPoured hands = pouredByHand(facts.routine, facts.method, facts.expected).value_or(HandPoured{{1, 1}, false});
  std::vector<std::string> parts;
  for (int slot = 1; slot <= 2; ++slot)
    parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{cups} of {drink}"), {{"cups", cups(voice, hands.cups[static_cast<std::size_t>(slot) - 1])}, {"drink", drinkOf(facts, slot)}}));
  return listed(voice, parts);
}

Values valuesOf(const Voice& voice, const HandFacts& facts) {
  const auto hands = pouredByHand(facts.routine, facts.method, facts.expected);
  return {{"cups", cups(voice, hands ? hands->total() : 2)}, {"poured", whatIsPoured(voice, facts)}, {"volume", volume(voice, facts.cupMl)}, {"one", drinkOf(facts, 1)}, {"other", drinkOf(facts, 2)},
          {"marked", facts.marked ? drinkOf(facts, facts.marked->value) : std::string()}, {"n", whole(voice, facts.bottles)}};
}

bool setsAside(const HandFacts& facts) {
  const auto hands = pouredByHand(facts.routine, facts.method, facts.expected);
  return hands && hands->setsOneAside;
}

Steps aloneSteps(const Voice& voice, const HandFacts& facts) {
  const Values values = valuesOf(voice, facts);
  Steps steps;
  const auto step = [&](const char* text, bool showsCodes = false) { steps.push_back({Hands::any, {}, say(voice, text, values), false, showsCodes}); };
  step(QT_TRANSLATE_NOOP("words", "Take {cups} that nobody can see into and nobody can tell apart, and one small slip of paper for each."));
  step(QT_TRANSLATE_NOOP("words", "Write on the slips what will be in the cups, {poured}, and stick one under each cup, writing inwards."));
  step(QT_TRANSLATE_NOOP("words", "Pour {volume} into each cup, the drink that its slip says, all to the same height."));
  if (facts.marked) step(QT_TRANSLATE_NOOP("words", "Pour one more cup of {marked}, mark it so that you see it, and stand it to the left: it is the open one."));
  step(QT_TRANSLATE_NOOP("words", "Close your eyes and move the cups about until you have lost them. Then once more."));
  if (setsAside(facts)) step(QT_TRANSLATE_NOOP("words", "With your eyes closed, take one of the cups and set it aside. It gets no code, is not tasted, and is turned over last."));
  step(QT_TRANSLATE_NOOP("words", "Put the codes of this round on the cups as they stand now, from left to right, on the outside."), true);
  return steps;
}

Steps coupleSteps(const Voice& voice, const HandFacts& facts) {
  const Values values = valuesOf(voice, facts);
  const std::string first = say(voice, QT_TRANSLATE_NOOP("words", "First person")), second = say(voice, QT_TRANSLATE_NOOP("words", "Second person"));
  Steps steps;
  const auto one = [&](const char* text, bool last = false) { steps.push_back({Hands::first, first, say(voice, text, values), last}); };
  const auto two = [&](const char* text, bool last, bool showsCodes) { steps.push_back({Hands::second, second, say(voice, text, values), last, showsCodes}); };
  one(QT_TRANSLATE_NOOP("words", "You are in the room by yourself. For each place take {cups} that look alike, and put a mark on each: A, B and so on, on a slip that comes off."));
  one(QT_TRANSLATE_NOOP("words", "Pour {poured} for each place, {volume} in each cup. You choose which mark gets which."));
  if (facts.marked) one(QT_TRANSLATE_NOOP("words", "Pour one more cup of {marked} for each place: it stays open and is called the marked one."));
  one(QT_TRANSLATE_NOOP("words", "Write on the first sheet which mark got which drink, place by place. Fold it and keep it on you."));
  one(QT_TRANSLATE_NOOP("words", "Mix up the cups of each place, leave the room, and send the other one in. Do not speak of the cups."), true);
  if (setsAside(facts)) two(QT_TRANSLATE_NOOP("words", "Take one cup of each place away, whichever you like, and set it aside. Write its mark on the second sheet, under “set aside”. It is not tasted."), false, false);
  two(QT_TRANSLATE_NOOP("words", "Put the codes of each place on its cups, whichever you like, and write on the second sheet which mark got which code. Then take the marks off."), false, true);
  two(QT_TRANSLATE_NOOP("words", "Fold the second sheet and keep it on you. Stand the cups in the order of their codes, as the screen shows them, and call the other one in."), true, true);
  return steps;
}

Steps dieSteps(const Voice& voice, const HandFacts& facts) {
  const Values values = valuesOf(voice, facts);
  const std::string who = say(voice, QT_TRANSLATE_NOOP("words", "Whoever pours"));
  Steps steps;
  const auto step = [&](const char* text, bool last = false) { steps.push_back({Hands::pourer, who, say(voice, text, values), last, !last}); };
  step(QT_TRANSLATE_NOOP("words", "You are in the room by yourself. Put the codes on the cups, two for each place, and take a die and the list."));
  step(QT_TRANSLATE_NOOP("words", "For each pair say “{one}” and throw the die. One, two or three: it goes into the cup with the code on the left; four, five or six: into the one on the right. {other} goes into the other cup."));
  step(QT_TRANSLATE_NOOP("words", "Pour {volume} into each, and write on the list which code got which before you throw again. Never throw twice for one pair."));
  step(QT_TRANSLATE_NOOP("words", "Fold the list, keep it on you, and leave before anybody tastes. You do not taste, and you speak to nobody about the cups."), true);
  return steps;
}

Steps bottleSteps(const Voice& voice, const HandFacts& facts) {
  const Values values = valuesOf(voice, facts);
  Steps steps;
  const auto step = [&](const char* text, bool showsCodes = false) { steps.push_back({Hands::any, {}, say(voice, text, values), false, showsCodes}); };
  step(QT_TRANSLATE_NOOP("words", "Cover everything that tells the bottles apart: foil or a sock from the neck down, caps off. Write on the label under the cover what it is, if it does not say so."));
  step(QT_TRANSLATE_NOOP("words", "Somebody mixes up the {n} bottles while nobody looks, then somebody else once more."));
  step(QT_TRANSLATE_NOOP("words", "Write a letter on each cover, from left to right: A, B and so on."));
  step(QT_TRANSLATE_NOOP("words", "Pour {volume} into each cup from the bottle whose letter stands beside its code. Everybody may see that list: nobody knows what a letter holds."), true);
  return steps;
}

}  // namespace

HandFacts handFacts(const Voice& voice, const Plan& plan) {
  HandFacts facts{plan.routine, plan.method, plan.expected, formOf(plan.method).hasMarked ? plan.marked : std::nullopt, {}, plan.cupMl, plan.places, plan.rounds, letteredBottles(plan)};
  for (const PlannedLot& lot : plan.lots) facts.drinks.push_back(lotTitle(voice, lot));
  return facts;
}

std::vector<HandStep> handSteps(const Voice& voice, const HandFacts& facts) {
  switch (facts.routine) {
    case Routine::pourer: return {};
    case Routine::alone: return aloneSteps(voice, facts);
    case Routine::couple: return coupleSteps(voice, facts);
    case Routine::die: return dieSteps(voice, facts);
    case Routine::bottles: return bottleSteps(voice, facts);
  }
  return {};
}

std::string numberedStep(const Voice& voice, int number, const std::string& text) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{n}. {text}"), {{"n", whole(voice, number)}, {"text", text}});
}

RoutinePaperText routinePaperText(const Voice& voice, Routine routine) {
  RoutinePaperText text;
  text.firstSheet = say(voice, QT_TRANSLATE_NOOP("words", "First sheet: for whoever pours"));
  text.secondSheet = say(voice, QT_TRANSLATE_NOOP("words", "Second sheet: for whoever puts the codes on"));
  text.list = routine == Routine::die ? say(voice, QT_TRANSLATE_NOOP("words", "The list: which cup got what"))
              : routine == Routine::bottles ? say(voice, QT_TRANSLATE_NOOP("words", "What was under the covers"))
                                            : say(voice, QT_TRANSLATE_NOOP("words", "What was under the cups"));
  text.pouring = say(voice, QT_TRANSLATE_NOOP("words", "From which bottle each cup is poured"));
  text.keep = routine == Routine::couple ? say(voice, QT_TRANSLATE_NOOP("words", "Fold it and keep it on you. This half tells nothing without the other one; they are laid side by side once the table is closed."))
              : routine == Routine::die ? say(voice, QT_TRANSLATE_NOOP("words", "Fold it and keep it on you: it is the key. It is typed in once the table is closed."))
              : routine == Routine::bottles ? say(voice, QT_TRANSLATE_NOOP("words", "Everybody may read this: nobody knows what a letter holds before the covers come off."))
                                            : say(voice, QT_TRANSLATE_NOOP("words", "Filled in once a round is locked, cup by cup. What cannot be read stays empty."));
  text.place = say(voice, QT_TRANSLATE_NOOP("words", "Place"));
  text.code = say(voice, QT_TRANSLATE_NOOP("words", "Code"));
  text.mark = say(voice, QT_TRANSLATE_NOOP("words", "Mark"));
  text.drink = say(voice, QT_TRANSLATE_NOOP("words", "Drink"));
  text.bottle = say(voice, QT_TRANSLATE_NOOP("words", "Bottle"));
  text.aside = say(voice, QT_TRANSLATE_NOOP("words", "set aside"));
  text.blank = "____________________";
  return text;
}

std::string thenTaste(const Voice& voice, const HandFacts& facts) {
  if (facts.routine == Routine::alone)
    return facts.rounds > 1 ? say(voice, QT_TRANSLATE_NOOP("words", "Then taste and lock. Do this anew for each round; a cup that is spilled sets its round aside."))
                            : say(voice, QT_TRANSLATE_NOOP("words", "Then taste and lock. A cup that is spilled sets the round aside: it cannot be poured again unseen."));
  if (facts.routine == Routine::bottles) return say(voice, QT_TRANSLATE_NOOP("words", "Then everybody tastes. Nobody lifts a cover before the table is closed."));
  return say(voice, QT_TRANSLATE_NOOP("words", "Then everybody tastes. A cup that is spilled sets its round aside at that place: it cannot be poured again unseen."));
}

std::string thenRead(const Voice& voice, const HandFacts& facts) {
  switch (facts.routine) {
    case Routine::pourer: return {};
    case Routine::alone: return say(voice, QT_TRANSLATE_NOOP("words", "Once the round is locked, come back here: the cups are turned over one by one, the one set aside last."));
    case Routine::couple: return say(voice, QT_TRANSLATE_NOOP("words", "Once the table is closed, both sheets are laid side by side and typed in here."));
    case Routine::die: return say(voice, QT_TRANSLATE_NOOP("words", "Once the table is closed, the list is typed in here."));
    case Routine::bottles: return say(voice, QT_TRANSLATE_NOOP("words", "Once the table is closed, the covers come off and each letter is typed in here."));
  }
  return {};
}

}  // namespace oddglass::words
