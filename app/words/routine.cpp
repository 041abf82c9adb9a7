#include "words/routine.h"

#include "words/history.h"
#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {

std::string routineName(const Voice& voice, Routine routine) {
  switch (routine) {
    case Routine::pourer: return say(voice, QT_TRANSLATE_NOOP("words", "Somebody pours by a sheet"));
    case Routine::couple: return say(voice, QT_TRANSLATE_NOOP("words", "Two people, half the key each"));
    case Routine::die: return say(voice, QT_TRANSLATE_NOOP("words", "A die for each pair"));
    case Routine::alone: return say(voice, QT_TRANSLATE_NOOP("words", "Alone, under the cups"));
    case Routine::bottles: return say(voice, QT_TRANSLATE_NOOP("words", "Whole bottles, labels covered"));
  }
  return {};
}

std::string routineLine(const Voice& voice, Routine routine) {
  switch (routine) {
    case Routine::pourer: return say(voice, QT_TRANSLATE_NOOP("words", "The program draws which cup holds what; somebody who made none of it and does not taste pours by the sheet."));
    case Routine::couple: return say(voice, QT_TRANSLATE_NOOP("words", "One pours, the other puts the codes on, and both taste: each has half of the key, and one half alone tells nothing."));
    case Routine::die: return say(voice, QT_TRANSLATE_NOOP("words", "For pairs: a die says which of two cups gets which drink. Whoever pours keeps the list and does not taste; it may be a maker."));
    case Routine::alone: return say(voice, QT_TRANSLATE_NOOP("words", "One person: what is in a cup stands under it, you mix them up unseen, and turn them over once your answer is locked."));
    case Routine::bottles: return say(voice, QT_TRANSLATE_NOOP("words", "Labels are covered, the bottles mixed up and lettered; at the end the covers come off. For pairs, preferences and score sheets."));
  }
  return {};
}

std::string notByHandLine(const Voice& voice, NotByHand why, Routine routine) {
  switch (why) {
    case NotByHand::method:
      if (routine == Routine::die) return say(voice, QT_TRANSLATE_NOOP("words", "A die decides between two cups, so it serves pairs and preferences only."));
      if (routine == Routine::bottles) return say(voice, QT_TRANSLATE_NOOP("words", "Whole bottles serve pairs, preferences and score sheets only: a bottle that is poured twice into one flight would show itself."));
      return say(voice, QT_TRANSLATE_NOOP("words", "Hands cannot hide this way of asking: its cups must be drawn. Triangle, tetrad, duo-trio, pair, 3-AFC and preference can be hidden by hand."));
    case NotByHand::threeLots: return say(voice, QT_TRANSLATE_NOOP("words", "Hands hide two drinks, not three."));
    case NotByHand::eitherMarked: return say(voice, QT_TRANSLATE_NOOP("words", "The marked cup stands open, so say which drink it holds."));
    case NotByHand::stopsEarly: return say(voice, QT_TRANSLATE_NOOP("words", "A plan that is looked at between rounds needs a key that the program drew."));
    case NotByHand::duplicate: return say(voice, QT_TRANSLATE_NOOP("words", "A hidden second cup of one drink needs a key that the program drew: by hand somebody would know which one it is."));
    case NotByHand::markedSheet: return say(voice, QT_TRANSLATE_NOOP("words", "A marked cup would come out of one of the lettered bottles and tell which one it is."));
    case NotByHand::onlyOne: return say(voice, QT_TRANSLATE_NOOP("words", "Alone means one taster."));
    case NotByHand::needsTwo: return say(voice, QT_TRANSLATE_NOOP("words", "Half a key each needs two people at least."));
    case NotByHand::needsPourer: return say(voice, QT_TRANSLATE_NOOP("words", "Somebody who does not taste has to throw the die and pour."));
    case NotByHand::noPourer: return say(voice, QT_TRANSLATE_NOOP("words", "Nobody pours by a sheet in this routine, so no pourer can be named."));
    case NotByHand::spares: return say(voice, QT_TRANSLATE_NOOP("words", "Alone nobody comes late, so there are no spare places."));
    case NotByHand::oneBottle: return say(voice, QT_TRANSLATE_NOOP("words", "One bottle of each drink has to last for everybody: a second one under the same letter would tell."));
    case NotByHand::oneEvening: return say(voice, QT_TRANSLATE_NOOP("words", "An opened bottle does not keep until another evening, and its label comes off once."));
  }
  return {};
}

std::string readByWords(const Voice& voice, ReadBy by) {
  switch (by) {
    case ReadBy::taster: return say(voice, QT_TRANSLATE_NOOP("words", "by whoever tasted"));
    case ReadBy::pourer: return say(voice, QT_TRANSLATE_NOOP("words", "by whoever poured"));
    case ReadBy::another: return say(voice, QT_TRANSLATE_NOOP("words", "by somebody who neither poured nor tasted"));
    case ReadBy::twoSheets: return say(voice, QT_TRANSLATE_NOOP("words", "off two people's sheets, half of it on each"));
  }
  return {};
}

std::string keyReadLine(const Voice& voice, Routine routine, const std::set<ReadBy>& readBy) {
  if (isDrawn(routine)) return {};
  if (readBy.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "Hands hid the key, and it has not been read off."));
  std::vector<std::string> who;
  for (const ReadBy by : readBy) who.push_back(readByWords(voice, by));
  return say(voice, QT_TRANSLATE_NOOP("words", "Hands hid the key; what stood in the cups was read off after the answers were locked, {who}. The seal vouches for plan and codes, not for what was read."),
             {{"who", listed(voice, who)}});
}

std::string hiddenLine(const Voice& voice, Routine routine, Method method) {
  switch (routine) {
    case Routine::pourer: return {};
    case Routine::couple: return say(voice, QT_TRANSLATE_NOOP("words", "Hidden by two people: one poured and marked the cups, the other put the codes on and took the marks off; each kept half of the key."));
    case Routine::die: return say(voice, QT_TRANSLATE_NOOP("words", "Hidden by a die: it said which cup of each pair got which drink. Whoever poured kept the list and did not taste."));
    case Routine::alone:
      return method == Method::triangle
                 ? say(voice, QT_TRANSLATE_NOOP("words", "Hidden by the taster: four cups for each triangle, two and two, mixed up unseen, one set aside unseen and turned over last."))
                 : say(voice, QT_TRANSLATE_NOOP("words", "Hidden by the taster: what was in a cup stood under it, and the cups were mixed up unseen."));
    case Routine::bottles: return say(voice, QT_TRANSLATE_NOOP("words", "Hidden as whole bottles: labels covered, mixed up, lettered; the covers came off after the close."));
  }
  return {};
}

std::string bottleLetter(int bottle) { return std::string(1, static_cast<char>('A' + (bottle - 1) % 26)); }

std::string readQuestion(const Voice& voice, Routine routine, Code code) {
  const Values values{{"code", std::to_string(code.value)}};
  if (routine == Routine::alone)
    return code.value == 0 ? say(voice, QT_TRANSLATE_NOOP("words", "Turn over the cup that you set aside: what is under it?"))
                           : say(voice, QT_TRANSLATE_NOOP("words", "Turn cup {code} over: what is under it?"), values);
  return code.value == 0 ? say(voice, QT_TRANSLATE_NOOP("words", "The cup that was set aside: what was in it?")) : say(voice, QT_TRANSLATE_NOOP("words", "Cup {code}: what does the list say was in it?"), values);
}

std::string asideLine(const Voice& voice, Place place, Round round, VoidReason reason) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Round {round} at place {place} is set aside and counted so: {why}."),
             {{"round", whole(voice, round.value)}, {"place", whole(voice, place.value)}, {"why", voidReason(voice, reason)}});
}

std::string cannotReadWord(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "Cannot be read")); }

}  // namespace oddglass::words
