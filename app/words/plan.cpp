#include "words/plan.h"

#include "words/care.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"

namespace oddglass::words {
namespace {

/// What a way brings: ", and would then find what half can taste about 3 times in 4".
std::string gain(const Voice& voice, const planning::WayOut& way, Claim claim, Sought sought) {
  if (sought == Sought::alike)
    return way.chanceAlike ? say(voice, QT_TRANSLATE_NOOP("words", "With nothing to taste it would come out as alike {often}."), {{"often", roughlyOften(voice, *way.chanceAlike)}}) : std::string();
  return way.chanceHalf ? say(voice, QT_TRANSLATE_NOOP("words", "What {what} would be found {often}."),
                              {{"what", canTaste(voice, claim, 500)}, {"often", roughlyOften(voice, *way.chanceHalf)}})
                        : std::string();
}

std::string reasonLine(const Voice& voice, planning::Because because) {
  switch (because) {
    case planning::Because::natureUnknown: return say(voice, QT_TRANSLATE_NOOP("words", "Nobody has said yet what the difference would be, so people are asked which cup is the odd one."));
    case planning::Because::fewerCups: return say(voice, QT_TRANSLATE_NOOP("words", "Three cups instead of four: less to drink, and less that lingers from one cup to the next."));
    case planning::Because::strong: return say(voice, QT_TRANSLATE_NOOP("words", "At this strength a fourth cup would tire more than it tells."));
  }
  return {};
}

}  // namespace

std::string wayOutLine(const Voice& voice, const planning::WayOut& way, const planning::Outlook& now, Sought sought) {
  Values values;
  if (way.cupMl) values["ml"] = whole(voice, *way.cupMl);
  if (way.people) values["people"] = people(voice, *way.people);
  if (way.rounds) values["rounds"] = rounds(voice, *way.rounds);
  if (way.evenings) values["evenings"] = whole(voice, *way.evenings);
  if (way.grams) values["grams"] = decimal(voice, *way.grams, 1);
  std::string line;
  switch (way.way) {
    case planning::Way::nameTheThing:
      line = say(voice, QT_TRANSLATE_NOOP("words", "Name one thing to look for, and pour pairs another time: two cups instead of three."));
      break;
    case planning::Way::pourLess:
      line = way.rounds ? say(voice, QT_TRANSLATE_NOOP("words", "Pour {ml} mL into each cup and taste {rounds}."), values)
                        : say(voice, QT_TRANSLATE_NOOP("words", "Pour {ml} mL into each cup."), values);
      break;
    case planning::Way::spit:
      line = say(voice, QT_TRANSLATE_NOOP("words", "Offer spit cups. It takes in less; the grams here are counted as if all were swallowed."));
      break;
    case planning::Way::anotherEvening:
      line = way.rounds ? say(voice, QT_TRANSLATE_NOOP("words", "Taste {rounds}, spread over {evenings} evenings."), values)
                        : say(voice, QT_TRANSLATE_NOOP("words", "Spread the rounds over {evenings} evenings."), values);
      break;
    case planning::Way::morePeople:
      line = say(voice, QT_TRANSLATE_NOOP("words", "Ask more people: {people} who did not make it."), values);
      break;
    case planning::Way::moreRounds:
      line = say(voice, QT_TRANSLATE_NOOP("words", "Taste {rounds}."), values);
      break;
  }
  if (way.grams) line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "Up to {grams} g of alcohol a person in an evening."), values);
  if (const std::string brings = gain(voice, way, now.claim, sought); !brings.empty()) line += ' ' + brings;
  return line;
}

std::vector<std::string> recommendationLines(const Voice& voice, const planning::Recommendation& recommendation) {
  std::vector<std::string> lines;
  lines.push_back(methodLine(voice, recommendation.method, "…"));
  for (const planning::Because because : recommendation.because) lines.push_back(reasonLine(voice, because));
  return lines;
}

std::string panelLine(const Voice& voice, const planning::Setup& setup, bool hasPourer) {
  Values values{{"all", people(voice, setup.panel + setup.makers)}, {"count", whole(voice, setup.panel)}, {"makers", whole(voice, setup.makers)}};
  std::string line;
  if (setup.panel == 0 && setup.makers == 1)
    line = say(voice, QT_TRANSLATE_NOOP("words", "One maker tastes alone: the answers speak of that person only."));
  else if (setup.panel == 0)
    line = say(voice, QT_TRANSLATE_NOOP("words", "Nobody is left who did not make it: nobody counts."));
  else if (setup.makers == 0)
    line = sayCount(voice, QT_TRANSLATE_NOOP("words", "1 person tastes and counts."), QT_TRANSLATE_NOOP("words", "{n} people taste, and all of them count."), setup.panel);
  else
    line = sayCount(voice, QT_TRANSLATE_NOOP("words", "{all} taste, {makers} of them had a hand in it: 1 counts."),
                    QT_TRANSLATE_NOOP("words", "{all} taste, {makers} of them had a hand in it: {n} count."), setup.panel, values);
  if (hasPourer) line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "One more pours and does not taste."));
  if (setup.spares > 0)
    line += ' ' + sayCount(voice, QT_TRANSLATE_NOOP("words", "1 spare place is poured as well."), QT_TRANSLATE_NOOP("words", "{n} spare places are poured as well."), setup.spares);
  return line;
}

std::vector<std::string> amountLines(const Voice& voice, const planning::Setup& setup, const planning::Amounts& amounts, const std::vector<std::string>& lotNames) {
  std::vector<std::string> lines;
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{cups} a person, {ml} mL in each: {all} mL in all."),
                      {{"cups", cups(voice, amounts.cupsPerPerson)}, {"ml", whole(voice, setup.cupMl)}, {"all", whole(voice, amounts.mlPerPerson)}}));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{cups} on the table, and about {minutes}."), {{"cups", cups(voice, amounts.cups)}, {"minutes", minutes(voice, amounts.minutes)}}));
  for (std::size_t i = 0; i < amounts.lots.size(); ++i) {
    const planning::LotAmount& lot = amounts.lots[i];
    Values values{{"lot", i < lotNames.size() ? lotNames[i] : std::string()}, {"ml", whole(voice, lot.ml)}};
    if (!lot.bottles) {
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{lot}: up to {ml} mL. Its bottle size is not known."), values));
      continue;
    }
    values["bottles"] = bottles(voice, *lot.bottles);
    std::string line = say(voice, QT_TRANSLATE_NOOP("words", "{lot}: up to {ml} mL, {bottles}."), values);
    if (!lot.enough && i < setup.lots.size())
      line += ' ' + sayCount(voice, QT_TRANSLATE_NOOP("words", "Only 1 is free."), QT_TRANSLATE_NOOP("words", "Only {n} are free."), setup.lots[i].freeBottles);
    lines.push_back(line);
  }
  if (!amounts.grams) {
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "No strength is known for one of the drinks, so the alcohol cannot be worked out.")));
  } else {
    lines.push_back(amountLine(voice, *amounts.grams, amounts.drinks, amounts.drinkGrams));
    if (amounts.aboveCeiling)
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "That is above your ceiling of {grams} g an evening."), {{"grams", whole(voice, setup.ceilingGrams)}}));
  }
  return lines;
}

}  // namespace oddglass::words
