#include "words/seal.h"

#include "words/mark.h"

namespace oddglass::words {

std::string sealMarkLine(const Voice& voice, const std::string& sealMark) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Sealed. The seal mark is {mark}. Say it to everybody and write it where all can see it: a mark that only you hold proves nothing."), {{"mark", sealMark}});
}

std::string afterSealLine(const Voice& voice, const std::string& pourer, Routine routine) {
  if (routine == Routine::die && !pourer.empty())
    return say(voice, QT_TRANSLATE_NOOP("words", "Next: hand this over to {name}, who throws the die and pours. Everybody else leaves the room."), {{"name", pourer}});
  if (routine != Routine::pourer) return say(voice, QT_TRANSLATE_NOOP("words", "Next: hide the cups, step by step. The program has drawn the codes and nothing else."));
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
