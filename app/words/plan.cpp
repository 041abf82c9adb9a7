#include "words/plan.h"

#include "domain/by_hand.h"
#include "words/care.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/units.h"

namespace oddglass::words {
namespace {

void addCupsOnTheTable(const Voice& voice, const planning::Setup& setup, const planning::Amounts& amounts, std::vector<std::string>& lines) {
  const Values values{{"cups", cups(voice, amounts.cups)}, {"minutes", minutes(voice, amounts.minutes)}, {"evenings", whole(voice, amounts.evenings)},
                      {"one", cups(voice, amounts.cupsAnEvening)}, {"volume", volume(voice, amounts.mlAnEvening)}};
  if (amounts.evenings == 1)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{cups} on the table, and about {minutes}."), values));
  else
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Over {evenings} evenings: on the longest {one} a person, {volume}, and about {minutes}. {cups} in all."), values));
  if (amounts.wave)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "In {waves} waves of {places}: {cups} on the trays at a time, {volume}."),
                        {{"waves", whole(voice, amounts.wave->waves)}, {"places", whole(voice, amounts.wave->places)}, {"cups", cups(voice, amounts.wave->cups)},
                         {"volume", volume(voice, amounts.wave->ml)}}));
  if (setup.comparisons() > 1) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "That is three comparisons: each pair of the drinks by itself.")));
}

}  // namespace

std::string panelLine(const Voice& voice, const planning::Setup& setup, bool hasPourer) {
  Values values{{"all", people(voice, setup.panel + setup.makers)}, {"count", whole(voice, setup.panel)}, {"makers", whole(voice, setup.makers)}};
  std::string line;
  if (setup.routine == Routine::alone && setup.panel == 0 && setup.makers == 1)
    line = say(voice, QT_TRANSLATE_NOOP("words", "One person tastes alone and hides the cups too: the answers speak of that person only."));
  else if (setup.panel == 0 && setup.makers == 1)
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
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{cups} a person, {volume} in each: {all} in all."),
                      {{"cups", cups(voice, amounts.cupsPerPerson)}, {"volume", volume(voice, setup.cupMl)}, {"all", volume(voice, amounts.mlPerPerson)}}));
  if (const auto hands = pouredByHand(setup.routine, setup.method, setup.expected); hands && hands->setsOneAside)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Of the {n} cups of a round one is set aside and not tasted; it is counted in, for it may be drunk in the end."), {{"n", whole(voice, hands->total())}}));
  addCupsOnTheTable(voice, setup, amounts, lines);
  for (std::size_t i = 0; i < amounts.lots.size(); ++i) {
    const planning::LotAmount& lot = amounts.lots[i];
    Values values{{"lot", i < lotNames.size() ? lotNames[i] : std::string()}, {"volume", volume(voice, lot.ml)}};
    if (!lot.bottles) {
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{lot}: up to {volume}. Its bottle size is not known."), values));
      continue;
    }
    values["bottles"] = bottles(voice, *lot.bottles);
    std::string line = say(voice, QT_TRANSLATE_NOOP("words", "{lot}: up to {volume}, {bottles}."), values);
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
