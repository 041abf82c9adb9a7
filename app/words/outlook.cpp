#include "words/plan.h"

#include "words/mark.h"
#include "words/numbers.h"

#include <algorithm>

namespace oddglass::words {
namespace {

std::string timesRound(const Voice& voice, int rounds) {
  if (rounds == 1) return say(voice, QT_TRANSLATE_NOOP("words", "once round"));
  if (rounds == 2) return say(voice, QT_TRANSLATE_NOOP("words", "twice round"));
  return say(voice, QT_TRANSLATE_NOOP("words", "{n} times round"), {{"n", spelled(voice, rounds)}});
}

double chanceHalf(const planning::Outlook& outlook) {
  for (const planning::Finding& each : outlook.findings)
    if (each.sharePm == 500) return each.chance;
  return 0;
}

/// "six people once round", "you alone, three times round".
std::string whoOften(const Voice& voice, const planning::Outlook& outlook) {
  const Values values{{"n", spelled(voice, outlook.people)}, {"round", timesRound(voice, outlook.people > 0 ? outlook.trials / outlook.people : 1)}};
  if (outlook.claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "you alone, {round},"), values);
  return say(voice, outlook.people == 1 ? QT_TRANSLATE_NOOP("words", "one person {round}") : QT_TRANSLATE_NOOP("words", "{n} people {round}"), values);
}

std::string alikeLine(const Voice& voice, const planning::AlikeOutlook& alike) {
  Values values{{"limit", shareLimit(voice, alike.limitPm)}, {"often", roughlyOften(voice, alike.chance)}};
  if (!alike.largest) return say(voice, QT_TRANSLATE_NOOP("words", "So few tastings cannot come out as alike within {limit}, whatever is answered."), values);
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "Alike within {limit} takes no more than 1 right answer. With nothing to taste it would come out {often}."),
                  QT_TRANSLATE_NOOP("words", "Alike within {limit} takes no more than {n} right answers. With nothing to taste it would come out {often}."), *alike.largest, values);
}

}  // namespace

std::string canTaste(const Voice& voice, Claim claim, int sharePm) {
  if (claim == Claim::me) return say(voice, QT_TRANSLATE_NOOP("words", "you can taste {often}"), {{"often", timesLimit(voice, sharePm)}});
  return say(voice, QT_TRANSLATE_NOOP("words", "{share} can taste"), {{"share", shareLimit(voice, sharePm)}});
}

std::string outlookHeadline(const Voice& voice, const planning::Outlook& outlook, Sought sought) {
  if (outlook.people == 0) return say(voice, QT_TRANSLATE_NOOP("words", "Nobody counts yet. Add at least one person who did not make it, or taste alone."));
  Values values{{"who", whoOften(voice, outlook)}, {"what", canTaste(voice, outlook.claim, 500)}};
  const char* source = nullptr;
  if (sought == Sought::alike) {
    const double chance = outlook.alike ? outlook.alike->chance : 0;
    values["often"] = roughlyOften(voice, chance);
    source = !outlook.alike                ? QT_TRANSLATE_NOOP("words", "Set the limit: how few may still taste it?")
             : !outlook.alike->largest     ? QT_TRANSLATE_NOOP("words", "{who} cannot show that two drinks are alike.")
                                           : QT_TRANSLATE_NOOP("words", "With nothing to taste, {who} would show it {often}.");
  } else if (!outlook.needed) {
    source = QT_TRANSLATE_NOOP("words", "{who} can show nothing, whatever is answered.");
  } else if (chanceHalf(outlook) < 0.5) {
    values["often"] = roughlyMissed(voice, chanceHalf(outlook));
    source = QT_TRANSLATE_NOOP("words", "{who} would miss what {what} {often}.");
  } else {
    values["often"] = roughlyOften(voice, chanceHalf(outlook));
    source = QT_TRANSLATE_NOOP("words", "{who} would find what {what} {often}.");
  }
  return capitalised(say(voice, source, values));
}

std::vector<std::string> outlookLines(const Voice& voice, const planning::Outlook& outlook, Sought sought) {
  std::vector<std::string> lines;
  if (outlook.people == 0) return lines;
  if (sought != Sought::alike && outlook.needed) {
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{needed} of {trials} right answers are needed."),
                        {{"needed", whole(voice, *outlook.needed)}, {"trials", whole(voice, outlook.trials)}}));
    for (const planning::Finding& each : outlook.findings)
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "What {what} would be found {often}."),
                          {{"what", canTaste(voice, outlook.claim, each.sharePm)}, {"often", timesIn(voice, each.chance)}}));
  }
  if (sought != Sought::difference && outlook.alike) lines.push_back(alikeLine(voice, *outlook.alike));
  return lines;
}

std::string outlookMethod(const Voice& voice, const planning::Outlook& outlook, int gammaPm) {
  if (outlook.people > 0 && outlook.trials > outlook.people && outlook.claim != Claim::me)
    return say(voice, QT_TRANSLATE_NOOP("words", "Worked out with the person as the unit, not the cup: people are taken to differ with a spread (gamma) of {gamma}, our own figure. The sum behind it is exact."),
               {{"gamma", decimal(voice, gammaPm / 1000.0, 2)}});
  return say(voice, QT_TRANSLATE_NOOP("words", "Worked out exactly from the binomial distribution."));
}

std::string tooSmallLine(const Voice& voice, const planning::Outlook& outlook, planning::TooSmall rule) {
  Values values{{"missed", roughlyMissed(voice, chanceHalf(outlook))}, {"what", canTaste(voice, outlook.claim, 500)}};
  switch (rule) {
    case planning::TooSmall::practice:
      return say(voice, QT_TRANSLATE_NOOP("words", "Even all right would show nothing. You may pour it as practice; it will end without a verdict."));
    case planning::TooSmall::halfMissed:
      return say(voice, QT_TRANSLATE_NOOP("words", "What {what} would be missed {missed}. You may go on; this stays in the report."), values);
    case planning::TooSmall::alikeUnlikely:
      return say(voice, QT_TRANSLATE_NOOP("words", "Likely to end in “not shown”, even with nothing to taste. You may go on; this stays in the report."));
    case planning::TooSmall::limitTooWide:
      return say(voice, QT_TRANSLATE_NOOP("words", "Half the room tasting it is not alike. Set a limit of half the people or fewer."));
    case planning::TooSmall::fewFriends:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "With one person you will know who wrote what. A signed sheet is more honest."),
                      QT_TRANSLATE_NOOP("words", "With {n} people you will guess who wrote what. Signed sheets are more honest."), outlook.people);
  }
  return {};
}

OutlookPicture outlookPicture(const Voice& voice, const planning::Outlook& outlook) {
  OutlookPicture picture;
  picture.title = outlook.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "How often you would show a difference, if you can taste it"))
                                             : say(voice, QT_TRANSLATE_NOOP("words", "How often this panel would show a difference, if it can be tasted"));
  picture.nothing = say(voice, QT_TRANSLATE_NOOP("words", "hardly ever"));
  picture.always = say(voice, QT_TRANSLATE_NOOP("words", "nearly every time"));
  picture.headers = {outlook.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "how often you can taste it")) : say(voice, QT_TRANSLATE_NOOP("words", "who can taste it")),
                     say(voice, QT_TRANSLATE_NOOP("words", "a difference is shown"))};
  std::vector<std::string> sentences;
  for (const planning::Finding& each : outlook.findings) {
    OutlookBar bar;
    const Values values{{"what", canTaste(voice, outlook.claim, each.sharePm)}, {"often", timesIn(voice, each.chance)}};
    bar.label = say(voice, QT_TRANSLATE_NOOP("words", "what {what}"), values);
    bar.value = timesIn(voice, each.chance);
    bar.readOut = say(voice, QT_TRANSLATE_NOOP("words", "What {what} would be found {often}."), values);
    bar.share = std::clamp(each.chance, 0.0, 1.0);
    sentences.push_back(bar.readOut);
    picture.rows.push_back({bar.label, bar.value});
    picture.bars.push_back(std::move(bar));
  }
  for (const std::string& each : sentences) picture.sentence += (picture.sentence.empty() ? "" : " ") + each;
  return picture;
}

}  // namespace oddglass::words
