#include "words/history.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/routine.h"

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

namespace {

std::string entry(const Voice& voice, const LoggedEvent& event, const LogDetails& details) {
  Values values;
  if (event.place) values["place"] = whole(voice, event.place->value);
  if (event.round) values["round"] = whole(voice, event.round->value);
  if (details.code) values["code"] = std::to_string(details.code->value);
  if (details.byCode) values["by"] = std::to_string(details.byCode->value);
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
      if (details.code && details.byCode) return line(QT_TRANSLATE_NOOP("words", "Cup {code} was spilled and poured again as {by}."));
      return where ? line(QT_TRANSLATE_NOOP("words", "A cup was spilled at place {place}, round {round}, and poured again under a spare code."))
                   : line(QT_TRANSLATE_NOOP("words", "A cup was spilled and poured again under a spare code."));
    case Event::voided:
      return where ? line(QT_TRANSLATE_NOOP("words", "Round {round} at place {place} was set aside and does not count."))
                   : line(QT_TRANSLATE_NOOP("words", "A round was set aside and does not count."));
    case Event::said: {
      std::vector<std::string> heard;
      for (const Place place : details.heardBy) heard.push_back(whole(voice, place.value));
      if (heard.empty()) return line(QT_TRANSLATE_NOOP("words", "Something was said aloud, and everybody heard it."));
      values["places"] = listed(voice, heard);
      return line(heard.size() == 1 ? QT_TRANSLATE_NOOP("words", "Something was said aloud, heard at place {places}.")
                                    : QT_TRANSLATE_NOOP("words", "Something was said aloud, heard at places {places}."));
    }
    case Event::matsSwapped:
      if (event.round && details.places.size() == 2) {
        values["places"] = listed(voice, {whole(voice, details.places[0].value), whole(voice, details.places[1].value)});
        return line(QT_TRANSLATE_NOOP("words", "Places {places} had each other's cups before them in round {round}."));
      }
      return event.round ? line(QT_TRANSLATE_NOOP("words", "Two places had each other's cups before them in round {round}."))
                         : line(QT_TRANSLATE_NOOP("words", "Two places had each other's cups before them."));
    case Event::placeFreed:
      return event.place ? line(QT_TRANSLATE_NOOP("words", "The wrong person sat at place {place}, and got up again.")) : line(QT_TRANSLATE_NOOP("words", "The wrong person sat down, and got up again."));
    case Event::found:
      if (event.readBy && where) return say(voice, QT_TRANSLATE_NOOP("words", "What stood under the cups of round {round} at place {place} was read off, {who}."), {{"round", values["round"]}, {"place", values["place"]}, {"who", readByWords(voice, *event.readBy)}});
      return where ? line(QT_TRANSLATE_NOOP("words", "What stood under the cups of round {round} at place {place} was read off."))
                   : line(QT_TRANSLATE_NOOP("words", "What stood under the cups was read off."));
    case Event::opened: return line(QT_TRANSLATE_NOOP("words", "The table was opened."));
    case Event::began:
      return where ? line(QT_TRANSLATE_NOOP("words", "Place {place} began round {round}.")) : line(QT_TRANSLATE_NOOP("words", "A round was begun."));
    case Event::answered:
      if (where && details.typedBy) {
        values["typist"] = whole(voice, details.typedBy->value);
        return details.typedBy->value > 0 ? line(QT_TRANSLATE_NOOP("words", "Place {place} locked round {round}: typed in by place {typist}.")) : line(QT_TRANSLATE_NOOP("words", "Place {place} locked round {round}: typed in by somebody not at the table."));
      }
      return where ? line(QT_TRANSLATE_NOOP("words", "Place {place} locked round {round}.")) : line(QT_TRANSLATE_NOOP("words", "An answer was locked."));
    case Event::looked:
      if (!event.round) return line(QT_TRANSLATE_NOOP("words", "After a round the program opened the key for itself, to say go on or stop."));
      return line(QT_TRANSLATE_NOOP("words", "After round {round} the program opened the key for itself, to say go on or stop."));
    case Event::judged:
      if (!details.goOn || !event.round) return line(QT_TRANSLATE_NOOP("words", "The program had looked after a round."));
      return *details.goOn ? line(QT_TRANSLATE_NOOP("words", "After round {round} it said: go on.")) : line(QT_TRANSLATE_NOOP("words", "After round {round} it said: stop."));
    case Event::closed:
      return details.missing && *details.missing > 0
                 ? sayCount(voice, QT_TRANSLATE_NOOP("words", "The table was closed. 1 answer is missing."),
                            QT_TRANSLATE_NOOP("words", "The table was closed. {n} answers are missing."), *details.missing)
                 : line(QT_TRANSLATE_NOOP("words", "The table was closed."));
    case Event::revealed:
      if (!details.commitmentHolds) return line(QT_TRANSLATE_NOOP("words", "The key was opened."));
      return *details.commitmentHolds ? line(QT_TRANSLATE_NOOP("words", "The key was opened. Plan and key are what was sealed."))
                                      : line(QT_TRANSLATE_NOOP("words", "The key was opened. Plan or key are not what was sealed."));
    case Event::broken: return line(QT_TRANSLATE_NOOP("words", "The seal was broken early. No verdict can come of this session."));
    case Event::abandoned: return line(QT_TRANSLATE_NOOP("words", "The session was abandoned."));
    case Event::decided: return line(QT_TRANSLATE_NOOP("words", "What will be done was written down."));
    case Event::erased: return line(QT_TRANSLATE_NOOP("words", "What somebody left here was destroyed at their wish."));
  }
  return {};
}

}  // namespace

std::string eventLine(const Voice& voice, const LoggedEvent& event, const LogDetails& details) {
  std::string text = entry(voice, event, details);
  if (details.reason) text += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "Reason: {reason}."), {{"reason", voidReason(voice, *details.reason)}});
  if (details.clockBack) text += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "(By the clock this came before the entry above it.)"));
  if (!details.words.empty()) text += ' ' + quoted(voice, details.words);
  return text;
}

std::string voidReason(const Voice& voice, VoidReason reason) {
  switch (reason) {
    case VoidReason::notSure: return say(voice, QT_TRANSLATE_NOOP("words", "the pourer was not sure"));
    case VoidReason::pouredWrong: return say(voice, QT_TRANSLATE_NOOP("words", "poured wrong"));
    case VoidReason::mixedUp: return say(voice, QT_TRANSLATE_NOOP("words", "cups mixed up"));
    case VoidReason::wrongPerson: return say(voice, QT_TRANSLATE_NOOP("words", "tasted by somebody else"));
    case VoidReason::cupLost: return say(voice, QT_TRANSLATE_NOOP("words", "a cup was lost"));
    case VoidReason::other: return say(voice, QT_TRANSLATE_NOOP("words", "another reason"));
    case VoidReason::cannotRead: return say(voice, QT_TRANSLATE_NOOP("words", "what stood under a cup could not be read"));
    case VoidReason::doesNotAddUp: return say(voice, QT_TRANSLATE_NOOP("words", "what was read under the cups does not add up"));
    case VoidReason::misread: return say(voice, QT_TRANSLATE_NOOP("words", "a code was misread"));
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

std::string checkLine(const Voice& voice, const std::string& what, bool holds, const std::string& where) {
  struct Said {
    const char* holds;
    const char* breaks;
  };
  static const std::map<std::string, Said> all{
      {"chain", {QT_TRANSLATE_NOOP("words", "No entry of the record was altered, and none is missing."), QT_TRANSLATE_NOOP("words", "An entry of the record was altered or is missing.")}},
      {"states", {QT_TRANSLATE_NOOP("words", "The steps follow each other as they may."), QT_TRANSLATE_NOOP("words", "A step was taken that is not allowed there.")}},
      {"plan", {QT_TRANSLATE_NOOP("words", "The plan is the one that was sealed."), QT_TRANSLATE_NOOP("words", "The plan is not the one that was sealed.")}},
      {"commitment", {QT_TRANSLATE_NOOP("words", "Plan and key are what was sealed."), QT_TRANSLATE_NOOP("words", "Plan or key are not what was sealed.")}},
      {"orders", {QT_TRANSLATE_NOOP("words", "Orders and codes follow from the seed."), QT_TRANSLATE_NOOP("words", "Orders or codes do not follow from the seed.")}},
      {"answers", {QT_TRANSLATE_NOOP("words", "The answers are the ones that were locked."), QT_TRANSLATE_NOOP("words", "An answer is not the one that was locked.")}},
      {"words", {QT_TRANSLATE_NOOP("words", "The remarks on the sheets are the ones that were locked."), QT_TRANSLATE_NOOP("words", "A remark on a sheet is not the one that was locked.")}},
      {"promises", {QT_TRANSLATE_NOOP("words", "What would be done is what was written before."), QT_TRANSLATE_NOOP("words", "What would be done is not what was written before.")}},
      {"remarks", {QT_TRANSLATE_NOOP("words", "Reasons and decisions are as they were written."), QT_TRANSLATE_NOOP("words", "A reason or a decision is not as it was written.")}},
      {"found", {QT_TRANSLATE_NOOP("words", "What was read off under the cups is as it was read, and adds up wherever it counts."), QT_TRANSLATE_NOOP("words", "What was read off under the cups was altered, or does not add up where it counts.")}},
      {"poured", {QT_TRANSLATE_NOOP("words", "What the pourer said about the cups is as it was said."), QT_TRANSLATE_NOOP("words", "What the pourer said about the cups was altered.")}},
      {"people", {QT_TRANSLATE_NOOP("words", "Names stand only where somebody signed."), QT_TRANSLATE_NOOP("words", "A name stands where nobody signed.")}},
  };
  const auto found = all.find(what);
  const Said said = found == all.end() ? Said{QT_TRANSLATE_NOOP("words", "This holds: {what}."), QT_TRANSLATE_NOOP("words", "This does not hold: {what}.")} : found->second;
  const std::string text = say(voice, holds ? said.holds : said.breaks, {{"what", what}});
  return holds || where.empty() ? text : say(voice, QT_TRANSLATE_NOOP("words", "{sentence} First at: {where}."), {{"sentence", text}, {"where", where}});
}

std::string checkHeadline(const Voice& voice, bool holds, bool keyOpen) {
  if (!holds)
    return say(voice, QT_TRANSLATE_NOOP("words", "This record does not check. What there is is shown, not trusted. Compare with your backup."));
  return keyOpen ? say(voice, QT_TRANSLATE_NOOP("words", "This record checks."))
                 : say(voice, QT_TRANSLATE_NOOP("words", "This record checks so far. Plan and key are compared with the seal once the key is open."));
}

}  // namespace oddglass::words
