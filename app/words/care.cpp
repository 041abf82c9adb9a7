#include "words/care.h"

#include "words/mark.h"
#include "words/numbers.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {
namespace {

/// To one decimal, never downwards: what is offered at most is not made smaller by rounding.
double upward(double value) { return std::ceil(value * 10 - 1e-9) / 10; }

}  // namespace

std::string allergenName(const Voice& voice, Allergen allergen) {
  switch (allergen) {
    case Allergen::gluten: return say(voice, QT_TRANSLATE_NOOP("words", "cereals with gluten"));
    case Allergen::egg: return say(voice, QT_TRANSLATE_NOOP("words", "egg"));
    case Allergen::fish: return say(voice, QT_TRANSLATE_NOOP("words", "fish"));
    case Allergen::milk: return say(voice, QT_TRANSLATE_NOOP("words", "milk"));
    case Allergen::nuts: return say(voice, QT_TRANSLATE_NOOP("words", "nuts"));
    case Allergen::peanuts: return say(voice, QT_TRANSLATE_NOOP("words", "peanuts"));
    case Allergen::soy: return say(voice, QT_TRANSLATE_NOOP("words", "soy"));
    case Allergen::sesame: return say(voice, QT_TRANSLATE_NOOP("words", "sesame"));
    case Allergen::mustard: return say(voice, QT_TRANSLATE_NOOP("words", "mustard"));
    case Allergen::celery: return say(voice, QT_TRANSLATE_NOOP("words", "celery"));
    case Allergen::lupin: return say(voice, QT_TRANSLATE_NOOP("words", "lupin"));
    case Allergen::molluscs: return say(voice, QT_TRANSLATE_NOOP("words", "molluscs"));
    case Allergen::crustaceans: return say(voice, QT_TRANSLATE_NOOP("words", "crustaceans"));
    case Allergen::sulphites: return say(voice, QT_TRANSLATE_NOOP("words", "sulphites"));
  }
  return {};
}

std::string allergenList(const Voice& voice, const std::vector<Ingredients>& drinks) {
  std::set<Allergen> all;
  bool notKnown = drinks.empty();
  for (const Ingredients& each : drinks) {
    if (each.how == IngredientsKnown::known) all.insert(each.allergens.begin(), each.allergens.end());
    notKnown = notKnown || each.how == IngredientsKnown::notKnown;
  }
  std::vector<std::string> names;
  for (const Allergen each : all) names.push_back(allergenName(voice, each));
  const Values values{{"list", listed(voice, names)}};
  if (notKnown)
    return names.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "What is in the drinks is not fully known. Say it aloud: not known."))
                         : say(voice, QT_TRANSLATE_NOOP("words", "In one cup or another: {list}. For some of what is poured it is not known. Say it aloud: not known."), values);
  return names.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "None of the fourteen listed allergens is named for these drinks. That is not “free of”: traces cannot be ruled out."))
                       : say(voice, QT_TRANSLATE_NOOP("words", "In one cup or another: {list}."), values);
}

std::string amountLine(const Voice& voice, double grams, std::optional<double> drinks, std::optional<double> drinkGrams) {
  Values values{{"grams", decimal(voice, upward(grams), 1)}};
  if (!drinks || !drinkGrams)
    return say(voice, QT_TRANSLATE_NOOP("words", "Up to {grams} g of alcohol a person if everything is swallowed."), values);
  values["drinks"] = decimal(voice, upward(*drinks), 1);
  values["size"] = decimal(voice, *drinkGrams, *drinkGrams == std::floor(*drinkGrams) ? 0 : 2);
  return say(voice, QT_TRANSLATE_NOOP("words", "Up to {grams} g of alcohol a person if everything is swallowed: {drinks} standard drinks of {size} g."), values);
}

std::string dosedLine(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Something was added to one of the drinks, or it was blended or thinned, on purpose. What was added is an ingredient: its allergens belong in the list, only what is sold for food goes in, and no more of it than its label allows."));
}

CarePage care(const Voice& voice, const CareFacts& facts) {
  const bool sulphite = std::any_of(facts.drinks.begin(), facts.drinks.end(), [](const Ingredients& each) {
    return each.how == IngredientsKnown::notKnown || each.allergens.contains(Allergen::sulphites);
  });
  CarePage page;
  page.headline = say(voice, QT_TRANSLATE_NOOP("words", "Before anything is poured, read this aloud."));
  page.allergens = allergenList(voice, facts.drinks);
  if (facts.isDosed) page.dosed = dosedLine(voice);
  if (sulphite)
    page.sulphite = say(voice, QT_TRANSLATE_NOOP("words", "Some people with asthma react to sulphites. If you are one of them, sit out: no reason is asked."));
  page.amount = amountLine(voice, facts.gramsAtMost, facts.drinksAtMost, facts.drinkGrams);
  page.spitting = say(voice, QT_TRANSLATE_NOOP("words", "Spit cups and water stand ready. Spitting takes in less; it does not take in nothing."));
  page.adults = say(voice, QT_TRANSLATE_NOOP("words", "Adults only: whoever tastes is of legal drinking age where you are."));
  page.driving = say(voice, QT_TRANSLATE_NOOP("words", "Who drives or works a machine afterwards? You are offered the pouring first. Nothing is drunk before driving; everybody has a way home."));
  page.pregnancy = say(voice, QT_TRANSLATE_NOOP("words", "No alcohol in pregnancy. If that might be you, sit out: no reason is asked."));
  page.medicines = say(voice, QT_TRANSLATE_NOOP("words", "If you take medicines, ask your doctor or pharmacist first."));
  page.law = say(voice, QT_TRANSLATE_NOOP("words", "Your local law prevails over anything said here."));
  page.consent = say(voice, QT_TRANSLATE_NOOP("words", "Taking part is everybody’s own choice. Anybody may sit out or stop at any time; nobody is asked why, and nothing about your health is written down."));
  return page;
}

std::vector<std::string> CarePage::all() const {
  std::vector<std::string> lines;
  for (const std::string* each : {&allergens, &dosed, &sulphite, &amount, &spitting, &adults, &driving, &pregnancy, &medicines, &law, &consent})
    if (!each->empty()) lines.push_back(*each);
  return lines;
}

PlaceQuestions placeQuestions(const Voice& voice, int tasters) {
  PlaceQuestions questions;
  questions.ofAge = say(voice, QT_TRANSLATE_NOOP("words", "I am an adult where we are."));
  questions.careHeard = say(voice, QT_TRANSLATE_NOOP("words", "I have heard what is in the cups and how much alcohol it is at most."));
  questions.consent = say(voice, QT_TRANSLATE_NOOP("words", "I taste of my own free will and may stop at any time."));
  questions.signedName = say(voice, QT_TRANSLATE_NOOP("words", "Under my name"));
  questions.nickname = say(voice, QT_TRANSLATE_NOOP("words", "Under a nickname"));
  questions.loose = say(voice, QT_TRANSLATE_NOOP("words", "Only in the sums, as a letter"));
  if (tasters < 4)
    questions.fewFriends = sayCount(voice, QT_TRANSLATE_NOOP("words", "With one person it is plain who answered what. A signed sheet is more honest."),
                                    QT_TRANSLATE_NOOP("words", "With {n} people it will be guessed who answered what. Signed sheets are more honest."), tasters);
  questions.sitOut = say(voice, QT_TRANSLATE_NOOP("words", "I would rather sit out. No reason is asked."));
  return questions;
}

int guessedAmong(const Plan& plan) { return plan.panelPlanned > 0 ? plan.panelPlanned : plan.makersPlanned; }

}  // namespace oddglass::words
