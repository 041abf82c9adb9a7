#include "words/deviations.h"

#include "words/history.h"
#include "words/mark.h"
#include "words/numbers.h"

#include <algorithm>
#include <map>

namespace oddglass::words {
namespace {

int times(const RevealedSession& session, Event event) {
  return static_cast<int>(std::count_if(session.log.begin(), session.log.end(), [&](const LoggedEvent& each) { return each.event == event; }));
}

int people(const RevealedSession& session, bool ShownPerson::*what) {
  return static_cast<int>(std::count_if(session.people.begin(), session.people.end(), [&](const ShownPerson& each) { return each.*what; }));
}

/// Cups that held another drink than the key says.
int pouredOtherwise(const std::vector<PanelFlight>& flights) {
  int cups = 0;
  for (const PanelFlight& flight : flights)
    for (std::size_t i = 0; i < flight.poured.size() && i < flight.drawn.size(); ++i)
      if (flight.poured[i] && *flight.poured[i] != flight.drawn[i]) ++cups;
  return cups;
}

struct Lines {
  const Voice& voice;
  std::vector<std::string> all;

  void add(int count, const char* one, const char* many) {
    if (count > 0) all.push_back(sayCount(voice, one, many, count));
  }
};

}  // namespace

std::vector<std::string> deviations(const Voice& voice, const RevealedSession& session) {
  Lines lines{voice, {}};
  if (!session.commitmentHolds)
    lines.all.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Plan or key are not what was sealed. Nothing below can be trusted as a blind result, and this stays with the session for good.")));
  if (const std::string broken = brokenLine(voice, session); !broken.empty()) lines.all.push_back(broken);

  int missing = 0;
  std::map<VoidReason, int> aside;
  for (const PanelFlight& flight : session.panel) {
    if (flight.voided) ++aside[*flight.voided];
    else if (!flight.chosen) ++missing;
  }
  lines.add(missing, QT_TRANSLATE_NOOP("words", "1 answer is missing and was not filled in."), QT_TRANSLATE_NOOP("words", "{n} answers are missing and were not filled in."));
  for (const auto& [reason, count] : aside)
    lines.all.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "1 flight does not count: {reason}. That was decided before the key was opened."),
                                 QT_TRANSLATE_NOOP("words", "{n} flights do not count: {reason}. That was decided before the key was opened."), count,
                                 {{"reason", voidReason(voice, reason)}}));
  lines.add(pouredOtherwise(session.panel), QT_TRANSLATE_NOOP("words", "1 cup held another drink than the sheet says. It is counted as it was poured."),
            QT_TRANSLATE_NOOP("words", "{n} cups held another drink than the sheet says. They are counted as they were poured."));
  lines.add(times(session, Event::spilled), QT_TRANSLATE_NOOP("words", "1 cup was spilled and poured again under a spare code."),
            QT_TRANSLATE_NOOP("words", "{n} cups were spilled and poured again under spare codes."));
  lines.add(people(session, &ShownPerson::late), QT_TRANSLATE_NOOP("words", "1 person came late and took a spare place."),
            QT_TRANSLATE_NOOP("words", "{n} people came late and took spare places."));
  lines.add(people(session, &ShownPerson::left), QT_TRANSLATE_NOOP("words", "1 person stopped before the end."), QT_TRANSLATE_NOOP("words", "{n} people stopped before the end."));
  lines.add(static_cast<int>(session.said.size()), QT_TRANSLATE_NOOP("words", "Once something was said aloud."), QT_TRANSLATE_NOOP("words", "{n} times something was said aloud."));
  lines.add(session.erasedPeople, QT_TRANSLATE_NOOP("words", "What 1 person left here was destroyed at their wish; everything was worked out again."),
            QT_TRANSLATE_NOOP("words", "What {n} people left here was destroyed at their wish; everything was worked out again."));
  if (!session.plan.hasPourer)
    lines.all.push_back(say(voice, QT_TRANSLATE_NOOP("words", "No pourer was named at the plan.")));
  return lines.all;
}

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
  return say(voice, session.commitmentHolds ? QT_TRANSLATE_NOOP("words", "Seal mark {mark}. Plan and key are what was sealed; the commitment is {commitment}.")
                                            : QT_TRANSLATE_NOOP("words", "Seal mark {mark}. Plan or key are not what was sealed; the commitment was {commitment}."), values);
}

}  // namespace oddglass::words
