#include "words/seal.h"

#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {
namespace {

std::string whoLine(const Voice& voice, const SealFacts& facts) {
  const int trials = facts.panel * facts.rounds;
  Values values{{"people", people(voice, facts.panel)}, {"rounds", rounds(voice, facts.rounds)}, {"trials", whole(voice, trials)}};
  if (facts.claim == Claim::me)
    return sayCount(voice, QT_TRANSLATE_NOOP("words", "You taste alone, once: one tasting."), QT_TRANSLATE_NOOP("words", "You taste alone, {n} times."), trials);
  if (facts.rounds == 1) return say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it, once each: {trials} tastings count."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "{people} who did not make it, {rounds} each: {trials} tastings count."), values);
}

std::vector<std::string> rule(const Voice& voice, const SealFacts& facts) {
  const int trials = facts.panel * facts.rounds;
  Values values{{"trials", whole(voice, trials)}, {"chance", risk(voice, facts.alphaPm)}};
  std::vector<std::string> lines{whoLine(voice, facts)};
  if (facts.makers > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "1 maker tastes as well; that answer stands beside the others and is not counted with them."),
                             QT_TRANSLATE_NOOP("words", "{n} makers taste as well; their answers stand beside the others and are not counted with them."), facts.makers));
  if (facts.sought != Sought::alike) {
    if (facts.needed) {
      values["needed"] = whole(voice, *facts.needed);
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "A difference is shown from {needed} right answers of {trials} on. Guessing alone reaches that no more often than {chance}."), values));
    } else {
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "So few tastings can show nothing, whatever is answered. This is practice.")));
    }
  }
  if (facts.sought != Sought::difference && facts.limitPm) {
    const bool alone = facts.claim == Claim::me;
    values["limit"] = alone ? timesLimit(voice, *facts.limitPm) : shareLimit(voice, *facts.limitPm);
    if (facts.alikeAtMost) {
      values["most"] = whole(voice, *facts.alikeAtMost);
      lines.push_back(say(voice, alone ? QT_TRANSLATE_NOOP("words", "They count as alike up to {most} right answers of {trials}: you may still be able to tell, but less often than {limit}.")
                                       : QT_TRANSLATE_NOOP("words", "They count as alike up to {most} right answers of {trials}: fewer than {limit} of people may still be able to tell."), values));
    } else {
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "So few tastings cannot come out as alike within a limit of {limit}, whatever is answered."), values));
    }
  }
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "If answers are missing at the end, these numbers follow from who has answered. That is worked out before anybody sees the key.")));
  if (!facts.pourer.empty())
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{name} pours, sees the sheet and does not taste."), {{"name", facts.pourer}}));
  return lines;
}

}  // namespace

std::string outcomeIf(const Voice& voice, Outcome outcome) {
  switch (outcome) {
    case Outcome::shown: return say(voice, QT_TRANSLATE_NOOP("words", "If they are told apart"));
    case Outcome::notShown: return say(voice, QT_TRANSLATE_NOOP("words", "If no difference is shown"));
    case Outcome::alike: return say(voice, QT_TRANSLATE_NOOP("words", "If they come out as alike within the limit"));
  }
  return {};
}

SealPage sealPage(const Voice& voice, const SealFacts& facts) {
  SealPage page;
  const Values drinks{{"one", facts.drinks.empty() ? std::string() : facts.drinks.front()}, {"other", facts.drinks.size() < 2 ? std::string() : facts.drinks[1]}};
  page.question = facts.claim == Claim::me ? say(voice, QT_TRANSLATE_NOOP("words", "Can you tell {one} from {other}?"), drinks)
                                           : say(voice, QT_TRANSLATE_NOOP("words", "Can anyone tell {one} from {other}?"), drinks);
  page.rule = rule(voice, facts);
  for (const Outcome outcome : {Outcome::shown, Outcome::notShown, Outcome::alike}) {
    if (outcome == Outcome::alike && facts.sought == Sought::difference) continue;
    const auto words = facts.promises.find(outcome);
    const bool written = words != facts.promises.end() && !words->second.empty();
    page.promises.push_back(say(voice, written ? QT_TRANSLATE_NOOP("words", "{if}: {promise}") : QT_TRANSLATE_NOOP("words", "{if}: nothing is promised yet."),
                                {{"if", outcomeIf(voice, outcome)}, {"promise", written ? words->second : std::string()}}));
  }
  page.binding = say(voice, QT_TRANSLATE_NOOP("words", "After the seal none of this can be changed, and nobody knows which cup holds what but the pour sheet."));
  return page;
}

std::string sealMarkLine(const Voice& voice, const std::string& sealMark) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Sealed. The seal mark is {mark}. Say it to everybody and write it where all can see it: a mark that only you hold proves nothing."), {{"mark", sealMark}});
}

std::string afterSealLine(const Voice& voice, const std::string& pourer) {
  if (pourer.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "Next: whoever pours takes the sheet. If you made one of the drinks, or are going to taste, leave the room first."));
  return say(voice, QT_TRANSLATE_NOOP("words", "Next: hand this over to {name}, who pours. Everybody else leaves the room."), {{"name", pourer}});
}

AskTwice breakSeal(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "Breaking the seal opens the key now and ends this session. The answers are kept, but no verdict can come of it, and the record will always say so.")),
          say(voice, QT_TRANSLATE_NOOP("words", "This cannot be undone. Break the seal?")),
          say(voice, QT_TRANSLATE_NOOP("words", "Break the seal")), say(voice, QT_TRANSLATE_NOOP("words", "Leave it sealed"))};
}

AskTwice abandonSession(const Voice& voice) {
  return {say(voice, QT_TRANSLATE_NOOP("words", "Giving this session up keeps the key closed for good. It stays in the list, without a verdict, and its bottles are free again.")),
          say(voice, QT_TRANSLATE_NOOP("words", "This cannot be undone. Give this session up?")),
          say(voice, QT_TRANSLATE_NOOP("words", "Give it up")), say(voice, QT_TRANSLATE_NOOP("words", "Keep it"))};
}

AskTwice eraseTaster(const Voice& voice, const std::string& name, ErasureKind kind) {
  const Values values{{"name", name}};
  AskTwice ask;
  switch (kind) {
    case ErasureKind::words:
      ask.first = say(voice, QT_TRANSLATE_NOOP("words", "This cannot be undone: the name and the words of {name} are destroyed here. The answers stay, without a name. Copies already printed or sent cannot be called back."), values);
      break;
    case ErasureKind::everything:
      ask.first = say(voice, QT_TRANSLATE_NOOP("words", "This cannot be undone: the answers, words and name of {name} are destroyed here. Findings are worked out again. Copies already printed or sent cannot be called back."), values);
      break;
  }
  ask.second = say(voice, QT_TRANSLATE_NOOP("words", "Destroy it now?"));
  ask.yes = say(voice, QT_TRANSLATE_NOOP("words", "Destroy it"));
  ask.no = say(voice, QT_TRANSLATE_NOOP("words", "Keep it"));
  return ask;
}

std::string sealLimits(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "The seal keeps honest people honest. Whoever opens the store with other tools can read the key, and a copy of the store could be opened unseen: the program cannot notice that."));
}

}  // namespace oddglass::words
