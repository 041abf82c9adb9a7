#include "words/history.h"

#include "words/mark.h"
#include "words/numbers.h"

namespace oddglass::words {

std::string stateName(const Voice& voice, State state) {
  switch (state) {
    case State::draft: return say(voice, QT_TRANSLATE_NOOP("words", "being planned"));
    case State::sealed: return say(voice, QT_TRANSLATE_NOOP("words", "sealed and not yet tasted"));
    case State::tasting: return say(voice, QT_TRANSLATE_NOOP("words", "at the table"));
    case State::closed: return say(voice, QT_TRANSLATE_NOOP("words", "closed, with the key still sealed"));
    case State::revealed: return say(voice, QT_TRANSLATE_NOOP("words", "revealed"));
    case State::broken: return say(voice, QT_TRANSLATE_NOOP("words", "broken: the key was opened early"));
    case State::abandoned: return say(voice, QT_TRANSLATE_NOOP("words", "abandoned"));
  }
  return {};
}

std::string eventLine(const Voice& voice, const LoggedEvent& event) {
  Values values;
  if (event.place) values["place"] = whole(voice, event.place->value);
  if (event.round) values["round"] = whole(voice, event.round->value);
  const bool where = event.place && event.round;
  const auto line = [&](const char* source) { return say(voice, source, values); };
  switch (event.event) {
    case Event::sealed: return line(QT_TRANSLATE_NOOP("words", "The plan was sealed."));
    case Event::pourSheetOpened: return line(QT_TRANSLATE_NOOP("words", "The pour sheet was opened."));
    case Event::poured: return line(QT_TRANSLATE_NOOP("words", "The pourer said that everything stands ready."));
    case Event::asPoured:
      return where ? line(QT_TRANSLATE_NOOP("words", "The pourer said what really went into a cup at place {place}, round {round}."))
                   : line(QT_TRANSLATE_NOOP("words", "The pourer said what really went into a cup."));
    case Event::placeTaken:
      return event.place ? line(QT_TRANSLATE_NOOP("words", "Somebody sat down at place {place}.")) : line(QT_TRANSLATE_NOOP("words", "Somebody sat down."));
    case Event::placeLeft:
      return event.place ? line(QT_TRANSLATE_NOOP("words", "Place {place} stopped.")) : line(QT_TRANSLATE_NOOP("words", "Somebody stopped."));
    case Event::spilled:
      return where ? line(QT_TRANSLATE_NOOP("words", "A cup was spilled at place {place}, round {round}, and poured again under a spare code."))
                   : line(QT_TRANSLATE_NOOP("words", "A cup was spilled and poured again under a spare code."));
    case Event::voided:
      return where ? line(QT_TRANSLATE_NOOP("words", "Round {round} at place {place} was set aside and does not count."))
                   : line(QT_TRANSLATE_NOOP("words", "A round was set aside and does not count."));
    case Event::said: return line(QT_TRANSLATE_NOOP("words", "Something was said aloud."));
    case Event::opened: return line(QT_TRANSLATE_NOOP("words", "The table was opened."));
    case Event::began:
      return where ? line(QT_TRANSLATE_NOOP("words", "Place {place} began round {round}.")) : line(QT_TRANSLATE_NOOP("words", "A round was begun."));
    case Event::answered:
      return where ? line(QT_TRANSLATE_NOOP("words", "Place {place} locked round {round}.")) : line(QT_TRANSLATE_NOOP("words", "An answer was locked."));
    case Event::closed: return line(QT_TRANSLATE_NOOP("words", "The table was closed."));
    case Event::revealed: return line(QT_TRANSLATE_NOOP("words", "The key was opened."));
    case Event::broken: return line(QT_TRANSLATE_NOOP("words", "The seal was broken early. No verdict can come of this session."));
    case Event::abandoned: return line(QT_TRANSLATE_NOOP("words", "The session was abandoned."));
    case Event::decided: return line(QT_TRANSLATE_NOOP("words", "What will be done was written down."));
    case Event::erased: return line(QT_TRANSLATE_NOOP("words", "Somebody's words were destroyed at their wish."));
  }
  return {};
}

std::string voidReason(const Voice& voice, VoidReason reason) {
  switch (reason) {
    case VoidReason::notSure: return say(voice, QT_TRANSLATE_NOOP("words", "the pourer was not sure"));
    case VoidReason::pouredWrong: return say(voice, QT_TRANSLATE_NOOP("words", "poured wrong"));
    case VoidReason::mixedUp: return say(voice, QT_TRANSLATE_NOOP("words", "cups mixed up"));
    case VoidReason::wrongPerson: return say(voice, QT_TRANSLATE_NOOP("words", "tasted by somebody else"));
    case VoidReason::cupLost: return say(voice, QT_TRANSLATE_NOOP("words", "a cup was lost"));
    case VoidReason::other: return say(voice, QT_TRANSLATE_NOOP("words", "another reason"));
  }
  return {};
}

std::string cameFrom(const Voice& voice, CameFrom from) {
  switch (from) {
    case CameFrom::here: return say(voice, QT_TRANSLATE_NOOP("words", "made here"));
    case CameFrom::import: return say(voice, QT_TRANSLATE_NOOP("words", "read from a file"));
    case CameFrom::demo: return say(voice, QT_TRANSLATE_NOOP("words", "demo"));
  }
  return {};
}

std::string checkLine(const Voice& voice, std::optional<Seq> firstBroken, std::optional<bool> commitmentHolds) {
  if (firstBroken)
    return say(voice, QT_TRANSLATE_NOOP("words", "This record does not check: entry {n} was altered or is missing. The rest is shown, not trusted. Compare with your backup."),
               {{"n", whole(voice, firstBroken->value)}});
  if (!commitmentHolds)
    return say(voice, QT_TRANSLATE_NOOP("words", "Every entry of this record checks. Plan and key are checked against the seal once the key is open."));
  if (!*commitmentHolds)
    return say(voice, QT_TRANSLATE_NOOP("words", "Every entry of this record checks, but plan or key are not what was sealed. This stays with the session for good."));
  return say(voice, QT_TRANSLATE_NOOP("words", "Every entry of this record checks, and plan and key are what was sealed."));
}

}  // namespace oddglass::words
