#include "words/record.h"

#include "words/mark.h"
#include "words/numbers.h"

#include <algorithm>

namespace oddglass::words {
std::string brokenLine(const Voice& voice, const RevealedSession& session) {
  const auto broken = std::find_if(session.log.begin(), session.log.end(), [](const LoggedEvent& each) { return each.event == Event::broken; });
  if (broken == session.log.end()) return {};
  return say(voice, QT_TRANSLATE_NOOP("words", "The key was opened at {time}, before everyone had answered. The answers are kept, but there is no blind verdict, and the report will always say so."),
             {{"time", timeOfDay(voice, broken->at)}});
}

std::string openingsLine(const Voice& voice, int openings) {
  if (openings == 0) return say(voice, QT_TRANSLATE_NOOP("words", "The pour sheet was not opened in the program."));
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "The pour sheet was opened once."), QT_TRANSLATE_NOOP("words", "The pour sheet was opened {n} times."), openings);
}

std::string commitmentLine(const Voice& voice, const RevealedSession& session) {
  const Values values{{"mark", session.sealMark}, {"commitment", session.commitment}};
  // Where hands hid the key it was never sealed: the seal holds plan, places and codes.
  if (session.commitmentHolds && session.plan.routine != Routine::pourer)
    return say(voice, QT_TRANSLATE_NOOP("words", "Seal mark {mark}. Plan, places and codes are what was sealed; the commitment is {commitment}."), values);
  return say(voice, session.commitmentHolds ? QT_TRANSLATE_NOOP("words", "Seal mark {mark}. Plan and key are what was sealed; the commitment is {commitment}.")
                                            : QT_TRANSLATE_NOOP("words", "Seal mark {mark}. Plan or key are not what was sealed; the commitment was {commitment}."), values);
}

}  // namespace oddglass::words
