#include "domain/flight_form.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/plan.h"
#include "words/units.h"

namespace oddglass::words {
namespace {

/// What a way brings: "What half can taste would be found about 3 times in 4."
std::string gain(const Voice& voice, const planning::WayOut& way, const planning::Outlook& now, Sought sought) {
  if (sought == Sought::alike)
    return way.chanceAlike ? say(voice, QT_TRANSLATE_NOOP("words", "It would come out as alike within the limit {often} {nobody}."),
                                 {{"often", roughlyOften(voice, *way.chanceAlike)}, {"nobody", ifNobodyTells(voice, now.claim)}}) : std::string();
  if (!way.chanceHalf) return {};
  return capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{what} would be found {often}."),
                         {{"what", whatIsFound(voice, now, planning::halfOf(now.method))}, {"often", roughlyOften(voice, *way.chanceHalf)}}));
}

std::string what(const Voice& voice, const planning::WayOut& way, const planning::Outlook& now, const Values& values) {
  switch (way.way) {
    case planning::Way::oneTarget: return say(voice, QT_TRANSLATE_NOOP("words", "Compare two of the three now, and the third another day."));
    case planning::Way::nameTheThing:
      return formOf(now.method).cups > 2 ? say(voice, QT_TRANSLATE_NOOP("words", "Name one thing to look for, and pour pairs another time: two cups instead of {cups}."), values)
                                         : say(voice, QT_TRANSLATE_NOOP("words", "Name one thing to look for, and pour pairs another time."));
    case planning::Way::pourLess:
      return way.rounds ? say(voice, QT_TRANSLATE_NOOP("words", "Pour {volume} into each cup and taste {rounds}."), values)
                        : say(voice, QT_TRANSLATE_NOOP("words", "Pour {volume} into each cup."), values);
    case planning::Way::spit: return say(voice, QT_TRANSLATE_NOOP("words", "Offer spit cups. It takes in less; the grams here are counted as if all were swallowed."));
    case planning::Way::anotherEvening:
      return way.rounds ? say(voice, QT_TRANSLATE_NOOP("words", "Taste {rounds}, spread over {evenings} evenings."), values)
                        : say(voice, QT_TRANSLATE_NOOP("words", "Spread the rounds over {evenings} evenings."), values);
    case planning::Way::morePeople: return say(voice, QT_TRANSLATE_NOOP("words", "Ask more people: {people} who did not make it."), values);
    case planning::Way::fourCups: return say(voice, QT_TRANSLATE_NOOP("words", "Pour four cups, two of each drink (a tetrad)."));
    case planning::Way::moreRounds: return say(voice, QT_TRANSLATE_NOOP("words", "Taste {rounds}."), values);
  }
  return {};
}

}  // namespace

std::string wayOutLine(const Voice& voice, const planning::WayOut& way, const planning::Outlook& now, Sought sought) {
  Values values{{"cups", spelled(voice, formOf(now.method).cups)}};
  if (way.cupMl) values["volume"] = volume(voice, *way.cupMl);
  if (way.people) values["people"] = people(voice, *way.people);
  if (way.rounds) values["rounds"] = rounds(voice, *way.rounds);
  if (way.evenings) values["evenings"] = whole(voice, *way.evenings);
  if (way.grams) values["grams"] = decimal(voice, *way.grams, 1);
  std::string line = what(voice, way, now, values);
  if (way.grams) line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "Up to {grams} g of alcohol a person in an evening."), values);
  if (!way.enoughBottles) line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "That takes more bottles than are free."));
  if (const std::string brings = gain(voice, way, now, sought); !brings.empty()) line += ' ' + brings;
  return line;
}

}  // namespace oddglass::words
