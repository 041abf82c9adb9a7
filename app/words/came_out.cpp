#include "words/came_out.h"

#include "domain/flight_form.h"
#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/reading.h"
#include "words/record.h"
#include "words/verdict.h"

namespace oddglass::words {
namespace {

using insight::Caution;
using insight::Findings;
using insight::Verdict;

std::string caution(const Voice& voice, Caution each, const Findings& findings) {
  switch (each) {
    case Caution::roundsPooled:
      return say(voice, QT_TRANSLATE_NOOP("words", "People tasted several times each, so the verdict speaks of this table, not of people at large."));
    case Caution::fewerThanPlanned: return say(voice, QT_TRANSLATE_NOOP("words", "Fewer answers count than were planned."));
    case Caution::halfLikelyMissed:
      if (findings.verdict != Verdict::notShown || findings.method == Method::preference || formOf(findings.method).saysSame) return {};
      return say(voice, QT_TRANSLATE_NOOP("words", "This was a small tasting: more often than not it would have missed a difference that {what}."), {{"what", canTell(voice, findings.claim, 500)}});
    case Caution::mostlyLookOrFizz:
      return say(voice, QT_TRANSLATE_NOOP("words", "A third or more of the right answers came from look or fizz. (The third is our own threshold.)"));
    case Caution::placeHabit:
      return findings.method == Method::preference
                 ? say(voice, QT_TRANSLATE_NOOP("words", "Looked at afterwards: one place was preferred, whatever stood there. This is no part of the verdict."))
                 : say(voice, QT_TRANSLATE_NOOP("words", "Looked at afterwards: the wrong answers favoured one place among the cups. This is no part of the verdict."));
    case Caution::countsOnly: return {};
  }
  return {};
}

}  // namespace

std::vector<std::string> firstLines(const Voice& voice, const RevealedSession& session) {
  std::vector<std::string> lines;
  if (!session.commitmentHolds)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Plan or key are not what was sealed. Nothing below can be trusted as a blind result, and this stays with the session for good.")));
  if (const std::string broken = brokenLine(voice, session); !broken.empty()) lines.push_back(broken);
  if (session.cameFrom == CameFrom::demo) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "This is a demo: drinks, people and answers are invented.")));
  if (session.cameFrom == CameFrom::import) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "This session was read from a file, not tasted here.")));
  return lines;
}

namespace {

/// The pourer opens the sheet once in every tasting; the record says so. Broken seals stand first.
bool wentOtherwise(const insight::Deviation& deviation) {
  if (deviation.kind == insight::DeviationKind::pourSheetOpened) return deviation.count > 1;
  return deviation.kind != insight::DeviationKind::commitmentBroken;
}

}  // namespace

std::vector<std::string> deviationLines(const Voice& voice, const std::vector<insight::Deviation>& deviations) {
  std::vector<std::string> lines;
  for (const insight::Deviation& each : deviations)
    if (wentOtherwise(each)) lines.push_back(deviationLine(voice, each));
  return lines;
}

namespace {

}  // namespace

std::string promiseFor(const Voice& voice, const RevealedSession& session, Verdict verdict) {
  const auto written = [&](Outcome outcome) -> std::string {
    const auto found = session.promises.find(outcome);
    if (found == session.promises.end() || found->second.empty()) return {};
    return say(voice, QT_TRANSLATE_NOOP("words", "Written before anything was poured, for this outcome: {text}"), {{"text", quoted(voice, found->second)}});
  };
  switch (verdict) {
    case Verdict::shown:
    case Verdict::both: return written(Outcome::shown);
    case Verdict::notShown: return written(Outcome::notShown);
    case Verdict::alike: return written(Outcome::alike);
    case Verdict::none: return {};
  }
  return {};
}

namespace {

/// The words of one verdict: the plan's own, or that of one of three pairs.
CameOut verdictOf(const Voice& voice, const Plan& plan, const Findings& findings) {
  CameOut out;
  const Spoken spoken = speak(voice, plan, findings);
  out.shape = spoken.shape;
  out.word = spoken.word;
  out.headline = spoken.headline;
  out.under = spoken.under;
  out.notSaid = spoken.notSaid;
  out.next = spoken.next;
  out.count = countLine(voice, plan, findings);
  out.range = rangeLine(voice, plan, findings);
  out.missed = missedLine(voice, plan, findings);
  out.weaker = weakerLine(voice, plan, findings);
  out.howKnew = howKnewLine(voice, findings);
  out.sureness = surenessLine(voice, findings);
  out.method = methodLine(voice, plan, findings);
  out.interval = intervalWords(voice, plan, findings);
  out.beside = besideLines(voice, plan, findings);
  for (const Caution each : findings.cautions)
    if (const std::string line = caution(voice, each, findings); !line.empty()) out.cautions.push_back(line);
  return out;
}

}  // namespace

std::string lotTitle(const Voice& voice, const PlannedLot& lot) {
  if (lot.lotName.empty()) return lot.beverageName;
  return say(voice, QT_TRANSLATE_NOOP("words", "{drink}, {lot}"), {{"drink", lot.beverageName}, {"lot", lot.lotName}});
}

std::string deviationLine(const Voice& voice, const insight::Deviation& deviation) {
  const int n = deviation.count;
  switch (deviation.kind) {
    case insight::DeviationKind::commitmentBroken: return say(voice, QT_TRANSLATE_NOOP("words", "Plan or key are not what was sealed."));
    case insight::DeviationKind::pourSheetOpened: return openingsLine(voice, n);
    case insight::DeviationKind::pouredOtherwise:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 cup held another drink than the sheet says. It is counted as it was poured."),
                      QT_TRANSLATE_NOOP("words", "{n} cups held another drink than the sheet says. They are counted as they were poured."), n);
    case insight::DeviationKind::notSure:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "Of 1 cup the pourer was not sure."), QT_TRANSLATE_NOOP("words", "Of {n} cups the pourer was not sure."), n);
    case insight::DeviationKind::spilled:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 cup was spilled and poured again under a spare code."),
                      QT_TRANSLATE_NOOP("words", "{n} cups were spilled and poured again under spare codes."), n);
    case insight::DeviationKind::voided:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 flight was set aside and does not count."), QT_TRANSLATE_NOOP("words", "{n} flights were set aside and do not count."), n);
    case insight::DeviationKind::missing:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 answer is missing and was not filled in."), QT_TRANSLATE_NOOP("words", "{n} answers are missing and were not filled in."), n);
    case insight::DeviationKind::late:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 person came late and took a spare place."), QT_TRANSLATE_NOOP("words", "{n} people came late and took spare places."), n);
    case insight::DeviationKind::left:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 person stopped before the end."), QT_TRANSLATE_NOOP("words", "{n} people stopped before the end."), n);
    case insight::DeviationKind::said:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "Once something was said aloud."), QT_TRANSLATE_NOOP("words", "{n} times something was said aloud."), n);
    case insight::DeviationKind::erased:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "What 1 person left here was destroyed at their wish, and everything was worked out again."),
                      QT_TRANSLATE_NOOP("words", "What {n} people left here was destroyed at their wish, and everything was worked out again."), n);
  }
  return {};
}

CameOut cameOut(const Voice& voice, const RevealedSession& session, const Findings& findings) {
  CameOut out = verdictOf(voice, session.plan, findings);
  out.first = firstLines(voice, session);
  std::vector<std::string> drinks;
  for (const PlannedLot& lot : session.plan.lots) drinks.push_back(lotTitle(voice, lot));
  if (drinks.size() == 2) out.what = say(voice, QT_TRANSLATE_NOOP("words", "{one} beside {other}"), {{"one", drinks[0]}, {"other", drinks[1]}});
  if (drinks.size() == 3) out.what = listed(voice, drinks);
  for (const Findings& pair : findings.pairs) {
    out.pairs.push_back(verdictOf(voice, session.plan, pair));
    CameOut& said = out.pairs.back();
    const auto names = namesOf(voice, session.plan, *pair.lots);
    said.what = say(voice, QT_TRANSLATE_NOOP("words", "{one} beside {other}"), {{"one", names.one}, {"other", names.other}});
    said.headline = pairHeadline(voice, session.plan, pair);
    // What is true of the whole plan is said once, above.
    said.method.clear();
    said.under.clear();
    said.notSaid.clear();
    said.next.clear();
  }
  out.deviations = deviationLines(voice, findings.deviations);
  out.promise = promiseFor(voice, session, findings.verdict);
  if (!session.decision.empty()) out.decision = say(voice, QT_TRANSLATE_NOOP("words", "Decided: {text}"), {{"text", quoted(voice, session.decision)}});
  return out;
}
std::vector<std::string> CameOut::lines() const {
  std::vector<std::string> all;
  const auto add = [&](const std::string& line) {
    if (!line.empty()) all.push_back(line);
  };
  for (const std::string* each : {&under, &count, &notSaid, &range, &missed, &weaker, &howKnew, &sureness}) add(*each);
  for (const OutSection& section : sections) {
    add(section.heading);
    for (const std::string& each : section.lines) add(each);
  }
  for (const CameOut& pair : pairs) {
    add(pair.headline);
    for (const std::string& each : pair.lines()) add(each);
  }
  for (const std::string& each : beside) add(each);
  for (const std::string& each : cautions) add(each);
  for (const std::string& each : deviations) add(each);
  for (const std::string* each : {&next, &promise, &decision, &method}) add(*each);
  return all;
}

}  // namespace oddglass::words
