#include "words/too_early.h"

#include "words/drinks.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/units.h"

namespace oddglass::words {
namespace {

using planning::GravityWatch;
using planning::TooEarly;

std::string daysLong(const Voice& voice, int days) { return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 day"), QT_TRANSLATE_NOOP("words", "{n} days"), days); }

std::string readingLine(const Voice& voice, const TooEarly& early) {
  const Values values{{"last", early.last ? gravity(voice, *early.last) : ""}, {"day", early.lastDay}, {"since", early.since ? gravity(voice, *early.since) : ""},
                      {"then", early.sinceDay}, {"long", daysLong(voice, early.days)}};
  switch (early.gravity) {
    case GravityWatch::none: return say(voice, QT_TRANSLATE_NOOP("words", "No gravity was read. One reading, and another some days later, say whether it still ferments."));
    case GravityWatch::one: return say(voice, QT_TRANSLATE_NOOP("words", "Read once: {last} on {day}. One reading cannot say whether it still ferments."), values);
    case GravityWatch::tooClose: return say(voice, QT_TRANSLATE_NOOP("words", "{last} on {day}, {since} on {then}: {long} apart say little."), values);
    case GravityWatch::falling: return say(voice, QT_TRANSLATE_NOOP("words", "{since} on {then}, {last} on {day}: it fell within {long}, so it still fermented then."), values);
    case GravityWatch::fell: return say(voice, QT_TRANSLATE_NOOP("words", "{since} on {then}, {last} on {day}: it fell in those {long}. Whether it still does, only another reading says."), values);
    case GravityWatch::rising: return say(voice, QT_TRANSLATE_NOOP("words", "{since} on {then}, {last} on {day}: gravity does not rise by itself. One of the two was read wrong, or something was added."), values);
    case GravityWatch::steady:
      return say(voice, QT_TRANSLATE_NOOP("words", "{last} on {day}, {since} on {then}: no fall that a hydrometer shows, over {long}. Slow yeast, or sugar added later, would not show in it."), values);
  }
  return {};
}

std::string headlineOf(const Voice& voice, const TooEarly& early) {
  if (!early.gushedOn.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "A bottle gushed. See to the others first."));
  switch (early.gravity) {
    case GravityWatch::none: return say(voice, QT_TRANSLATE_NOOP("words", "Cannot be told: no gravity was read."));
    case GravityWatch::one:
    case GravityWatch::tooClose:
    case GravityWatch::fell: return say(voice, QT_TRANSLATE_NOOP("words", "Cannot be told yet. Read it again, on {day} or later."), {{"day", early.nextDay}});
    case GravityWatch::falling: return say(voice, QT_TRANSLATE_NOOP("words", "Too early to bottle: it was still falling on {day}."), {{"day", early.lastDay}});
    case GravityWatch::rising: return say(voice, QT_TRANSLATE_NOOP("words", "Cannot be told: the readings contradict each other."));
    case GravityWatch::steady: return say(voice, QT_TRANSLATE_NOOP("words", "Steady for {long}. Whether to bottle or to drink it is yours."), {{"long", daysLong(voice, early.days)}});
  }
  return {};
}

void addLeft(const Voice& voice, const TooEarly& early, std::vector<std::string>& lines) {
  if (early.extractLeft)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "About {grams} g in a litre is left of what was dissolved in it. Not all of that is sugar that yeast can use."),
                        {{"grams", decimal(voice, *early.extractLeft, 0)}}));
  if (early.fallLeft)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Down to the final gravity that you gave it could fall by another {fall}. In a closed bottle that would add about {volumes} volumes of gas; "
                                                          "bottles for beer are typically made for about {most} in all, lighter glass for less."),
                        {{"fall", gravityBetween(voice, *early.last, *early.last - *early.fallLeft)}, {"volumes", decimal(voice, *early.volumesLeft, 1)}, {"most", decimal(voice, planning::beerBottleVolumes, 0)}}));
  if (!early.stabilisedOn.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Stabilised on {day}. That hinders yeast; it does not stop one that is busy."), {{"day", early.stabilisedOn}}));
  if (early.daysInBottle) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "In the bottle since {day}: {long}."), {{"day", early.bottledOn}, {"long", daysLong(voice, *early.daysInBottle)}}));
}

std::string watchedLine(const Voice& voice, const planning::Watched& watched) {
  Values values{{"what", capitalised(noteKindName(voice, watched.kind))}, {"level", noteLevelName(voice, watched.kind, watched.level)}, {"day", watched.day}};
  if (!watched.levelBefore) return say(voice, QT_TRANSLATE_NOOP("words", "{what} on {day}: {level}. Look again: two looks show a direction."), values);
  values["before"] = noteLevelName(voice, watched.kind, *watched.levelBefore);
  values["then"] = watched.before;
  if (watched.level < *watched.levelBefore) return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {before} on {then}, {level} on {day}. It goes."), values);
  if (watched.level > *watched.levelBefore) return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {before} on {then}, {level} on {day}. It grows."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {level} on {then} and on {day}."), values);
}

void addHints(const Voice& voice, const TooEarly& early, std::vector<std::string>& lines) {
  for (const planning::Watched& watched : early.watched) {
    lines.push_back(watchedLine(voice, watched));
    if (watched.kind == NoteKind::sediment && watched.level == 3)
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "So much sediment usually means that it was bottled too early (common practice).")));
    if (watched.kind == NoteKind::sulphur && watched.level > 0)
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "A smell of sulphur often goes within weeks, cold and on its yeast; one of onion or rubber seldom does (fermentation guides).")));
  }
}

std::string whereLine(const Voice& voice, const Lot& lot) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{lot}: {bottles}, {where}"),
             {{"lot", lot.name}, {"bottles", bottles(voice, lot.bottles)},
              {"where", lot.storage.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "not said where")) : lot.storage}});
}

}  // namespace

std::vector<std::string> TooEarlyWords::body() const {
  if (!isUrgent) return lines;
  std::vector<std::string> all{lines.front()};
  all.insert(all.end(), bottles.begin(), bottles.end());
  all.push_back(cautions.front());
  all.insert(all.end(), lines.begin() + 1, lines.end());
  return all;
}

std::vector<std::string> TooEarlyWords::smallPrint() const { return isUrgent ? std::vector(cautions.begin() + 1, cautions.end()) : cautions; }

TooEarlyWords tooEarlyWords(const Voice& voice, const Beverage& drink, const std::vector<Lot>& lots, const TooEarly& early) {
  TooEarlyWords words;
  words.headline = headlineOf(voice, early);
  words.isUrgent = !early.gushedOn.empty();
  if (words.isUrgent) words.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "One ran over on {day}. It may have been that bottle alone, or the first of many."), {{"day", early.gushedOn}}));
  words.lines.push_back(readingLine(voice, early));
  addLeft(voice, early, words.lines);
  addHints(voice, early, words.lines);
  if (drink.kind == Kind::mead && early.daysInBottle)
    words.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Meads of 6 to 8 % are often left for 3 to 6 months, above 12 % for a year or two; many disagree (common practice).")));
  if (words.isUrgent) {
    for (const Lot& lot : lots)
      if (lot.bottles > 0) words.bottles.push_back(whereLine(voice, lot));
    if (words.bottles.empty()) words.bottles.push_back(say(voice, QT_TRANSLATE_NOOP("words", "No other bottle of it is on the shelf. Those given away are not followed: tell whoever has one.")));
    else words.bottles.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Those given away are not followed: tell whoever has one.")));
    words.cautions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Bottles under too much pressure can burst. Keep the others cold, upright and away from people; handle them with gloves and goggles, and open them cold, outside, "
                                                                   "pointing away. Where you are not sure, leave them closed and ask somebody who knows.")));
  } else {
    words.cautions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Pressure: a fall of {little} in a closed bottle adds about {each} volumes of gas, so {more} about {four}. Bottle only what has been steady for several days, and in glass made for it."),
                                 {{"little", gravityBetween(voice, 10010, 10000)}, {"more", gravityBetween(voice, 10040, 10000)}, {"each", decimal(voice, planning::volumesEach, 2)}, {"four", decimal(voice, 4 * planning::volumesEach, 1)}}));
  }
  words.cautions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Steady means: within {little} over {n} days or more, our own rule after common practice. Gas by Balling's figures, rounded up."),
                               {{"little", gravityBetween(voice, 10010, 10000)}, {"n", std::to_string(planning::steadyDays)}}));
  return words;
}

}  // namespace oddglass::words
