#include "words/sheet_out.h"

#include "domain/item_kinds.h"
#include "words/give_aways.h"
#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/report.h"
#include "words/reading.h"
#include "words/record.h"
#include "words/routine.h"
#include "words/sheet_counts.h"
#include "words/verdict.h"

#include <algorithm>

namespace oddglass::words {
namespace {

using insight::GapVerdict;
using insight::LotGap;
using insight::PointsLine;
using insight::SheetFindings;

bool isOwn(const Plan& plan, const LotGap& gap) { return plan.lots[static_cast<std::size_t>(gap.lot.value) - 1].role == LotRole::compared; }

/// What the main questions say of the plan's own drinks against the reference.
struct Told {
  std::vector<std::string> less, more;
  int within = 0, open = 0;
  bool differs() const { return !less.empty() || !more.empty(); }
};

Told toldOf(const Voice& voice, const Plan& plan, const SheetFindings& findings) {
  Told told;
  for (const PointsLine& line : findings.points) {
    if (!line.isMain) continue;
    for (const LotGap& gap : line.gaps) {
      if (!isOwn(plan, gap)) continue;
      const std::string what = questionName(voice, line.kind, line.part, line.word);
      switch (gap.verdict) {
        case GapVerdict::less: told.less.push_back(what); break;
        case GapVerdict::more: told.more.push_back(what); break;
        case GapVerdict::within: ++told.within; break;
        case GapVerdict::cannotTell: ++told.open; break;
      }
    }
  }
  return told;
}

void speakGaps(CameOut& out, const Voice& voice, const Plan& plan, const SheetFindings& findings) {
  const Told told = toldOf(voice, plan, findings);
  const Values values{{"reference", lotNamed(voice, plan, *findings.target)}, {"less", listed(voice, told.less)}, {"more", listed(voice, told.more)}};
  if (told.differs()) {
    out.shape = Shape::disc;
    out.word = verdictWord(voice, insight::Verdict::shown);
    if (told.more.empty()) out.headline = say(voice, QT_TRANSLATE_NOOP("words", "Less than {reference} in {less}."), values);
    else if (told.less.empty()) out.headline = say(voice, QT_TRANSLATE_NOOP("words", "More than {reference} in {more}."), values);
    else out.headline = say(voice, QT_TRANSLATE_NOOP("words", "Beside {reference}: less in {less}, more in {more}."), values);
    out.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "More or less is not better or worse. It says how people like these found it, not how it was made."));
  } else if (told.within > 0 && told.open == 0) {
    out.shape = Shape::bars;
    out.word = verdictWord(voice, insight::Verdict::alike);
    out.headline = say(voice, QT_TRANSLATE_NOOP("words", "Within your limits of {reference} in all you asked about."), values);
    out.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "It speaks of what was asked, and of gaps above your limits. Smaller ones may be there."));
  } else {
    out.shape = Shape::ring;
    out.word = verdictWord(voice, insight::Verdict::notShown);
    out.headline = say(voice, QT_TRANSLATE_NOOP("words", "No difference from {reference} shown. That is not “no difference”."), values);
    out.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "The ranges below say how large a gap may still be there."));
  }
}

void speakGood(CameOut& out, const Voice& voice, const Plan& plan, const SheetFindings& findings) {
  const auto liking = std::ranges::find_if(findings.points, isOverallLiking);
  out.shape = Shape::ring;
  out.word = say(voice, QT_TRANSLATE_NOOP("words", "a score"));
  if (liking == findings.points.end()) {
    out.headline = findings.people == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "This is what one person found in it.")) : say(voice, QT_TRANSLATE_NOOP("words", "This is what people found in it."));
    return;
  }
  std::vector<std::string> lines;
  for (const insight::LotMean& lot : liking->lots)
    if (plan.lots[static_cast<std::size_t>(lot.lot.value) - 1].role == LotRole::compared) lines.push_back(meanLine(voice, plan, *liking, lot));
  if (lines.size() == 1) out.headline = lines.front();
  else out.headline = findings.people == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "This is how one person liked them.")) : say(voice, QT_TRANSLATE_NOOP("words", "This is how people liked them."));
  out.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "Friends are kind, and a score by itself says little: read it beside a bought drink, and beside the same drink poured twice."));
}

void speakNothing(CameOut& out, const Voice& voice, insight::NoVerdict why) {
  out.shape = Shape::dash;
  out.word = verdictWord(voice, insight::Verdict::none);
  out.headline = say(voice, QT_TRANSLATE_NOOP("words", "No verdict: {reason}."), {{"reason", noVerdictReason(voice, {}, why)}});
  out.notSaid = say(voice, QT_TRANSLATE_NOOP("words", "The answers are kept."));
}

std::string movedLine(const Voice& voice, const SheetFindings& findings) {
  std::vector<std::string> parts;
  for (const PointsLine& line : findings.points)
    if (line.moved && (line.isMain || isOverallLiking(line)))
      parts.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{moved} {of} in {what}"), {{"moved", points(voice, line.kind, *line.moved)}, {"of", outOf(voice, line.kind)}, {"what", questionName(voice, line.kind, line.part, line.word)}}));
  if (parts.empty()) return {};
  return say(voice, QT_TRANSLATE_NOOP("words", "The same drink, poured twice, moved by {how}: read smaller gaps as nothing."), {{"how", listed(voice, parts)}});
}

OutSection questionSection(const Voice& voice, const Plan& plan, const SheetFindings& findings, const PointsLine& line) {
  OutSection section{capitalised(questionName(voice, line.kind, line.part, line.word)), {}, {}, {}, About::points, line.item};
  // Of one or two people it is said once, above, that nothing can be told of gaps.
  if (findings.people >= insight::fewestForARange)
    for (const LotGap& gap : line.gaps) section.lines.push_back(gapLine(voice, plan, findings, line, gap));
  if (line.rangeLow)
    section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "The reference's own vintages lie {low} to {high} apart from the one you chose."),
                                {{"low", points(voice, line.kind, *line.rangeLow)}, {"high", points(voice, line.kind, *line.rangeHigh)}}));
  for (const insight::LotMean& lot : line.lots) section.lines.push_back(meanLine(voice, plan, line, lot));
  return section;
}

std::string nextLine(const Voice& voice, const Plan& plan, const SheetFindings& findings) {
  const auto line = std::ranges::find(findings.points, findings.next.item, &PointsLine::item);
  const Values values{{"what", line == findings.points.end() ? std::string() : questionName(voice, line->kind, line->part, line->word)},
                      {"drink", findings.next.lot.value > 0 ? lotNamed(voice, plan, findings.next.lot) : std::string()}};
  switch (findings.next.step) {
    case insight::NextStep::pairOnWord: return say(voice, QT_TRANSLATE_NOOP("words", "Next: change one thing, and pour pairs of old and new on “{what}”."), values);
    case insight::NextStep::justRight: return say(voice, QT_TRANSLATE_NOOP("words", "Next: ask whether its “{what}” is too little, too much or just right, and pour pairs on it."), values);
    case insight::NextStep::morePeople: return say(voice, QT_TRANSLATE_NOOP("words", "Next: the same sheet with more people, or fewer questions and more rounds."), values);
    case insight::NextStep::addReference: return say(voice, QT_TRANSLATE_NOOP("words", "Next: pour a bought drink beside it, and the same cup twice."), values);
    case insight::NextStep::again: return say(voice, QT_TRANSLATE_NOOP("words", "Next: the same table again when it has aged, or a question you have not asked."), values);
  }
  return {};
}

// Where no verdict is given, what was written for each outcome.
std::string promisesToJudge(const Voice& voice, const RevealedSession& session) {
  std::string written;
  for (const auto& [outcome, promise] : session.promises)
    if (!promise.empty()) written += ' ' + promiseLine(voice, session.plan, outcome, quoted(voice, promise)) + '.';
  if (written.empty()) return {};
  return say(voice, QT_TRANSLATE_NOOP("words", "Written before anything was poured; which of them holds is yours to say.")) + written;
}

insight::Verdict asVerdict(Shape shape) {
  switch (shape) {
    case Shape::disc: return insight::Verdict::shown;
    case Shape::ring: return insight::Verdict::notShown;
    case Shape::bars: return insight::Verdict::alike;
    case Shape::dash: break;
  }
  return insight::Verdict::none;
}

}  // namespace

CameOut sheetOut(const Voice& voice, const RevealedSession& session, const SheetFindings& findings) {
  const Plan& plan = session.plan;
  CameOut out;
  out.first = firstLines(voice, session);
  std::vector<std::string> drinks;
  for (const PlannedLot& lot : plan.lots)
    if (lot.role != LotRole::warmUp) drinks.push_back(lotTitle(voice, lot));
  out.what = listed(voice, drinks);
  if (findings.why) speakNothing(out, voice, *findings.why);
  else if (plan.question == Question::lacks && findings.hasVerdicts) speakGaps(out, voice, plan, findings);
  else speakGood(out, voice, plan, findings);
  out.count = say(voice, QT_TRANSLATE_NOOP("words", "{people} filled in a sheet."), {{"people", people(voice, findings.people)}});
  if (findings.people < insight::fewestForARange && !findings.why) out.range = say(voice, QT_TRANSLATE_NOOP("words", "With fewer than three people there is no range and no verdict: look at the answers themselves."));
  out.missed = movedLine(voice, findings);
  for (const PointsLine& line : findings.points)
    if (line.isMain) out.sections.push_back(questionSection(voice, plan, findings, line));
  bool isFirst = true;
  for (const PointsLine& line : findings.points) {
    if (line.isMain) continue;
    out.sections.push_back(questionSection(voice, plan, findings, line));
    if (isFirst) out.sections.back().lines.insert(out.sections.back().lines.begin(), say(voice, QT_TRANSLATE_NOOP("words", "Looked at afterwards, from here on: hints for the next evening, no part of the verdict.")));
    isFirst = false;
  }
  for (OutSection& section : countSections(voice, plan, findings)) out.sections.push_back(std::move(section));
  out.beside = giveAwayLines(voice, plan.giveAways);
  out.deviations = deviationLines(voice, findings.deviations);
  for (const insight::Caution each : findings.cautions)
    if (each == insight::Caution::fewerThanPlanned) out.cautions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Fewer answers count than were planned.")));
  out.next = findings.why ? std::string() : nextLine(voice, plan, findings);
  if (findings.hasVerdicts && plan.question == Question::lacks) {
    out.promise = promiseFor(voice, session, asVerdict(out.shape));
    // Within all limits no gap is shown either, and that is what a sheet's plan asks about.
    if (out.promise.empty() && out.shape == Shape::bars) out.promise = promiseFor(voice, session, insight::Verdict::notShown);
  }
  else if (plan.question == Question::good && !findings.why) out.promise = promisesToJudge(voice, session);
  if (!session.decision.empty()) out.decision = say(voice, QT_TRANSLATE_NOOP("words", "Decided: {text}"), {{"text", quoted(voice, session.decision)}});
  const std::vector<std::string> standards = standardsOf(plan);
  out.method = standards.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Score sheets, as is common practice.")) : say(voice, QT_TRANSLATE_NOOP("words", "Score sheets after {standards}, not certified."), {{"standards", listed(voice, standards)}});
  out.method += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "Gaps by paired t over people, each one's cups averaged first; several drinks by Dunnett; limits by two one-sided tests; held together over the main questions by Holm, over the others by Benjamini and Hochberg."));
  if (const std::string line = keyReadLine(voice, session.plan.routine, session.readBy); !line.empty()) out.method += ' ' + line;
  return out;
}

}  // namespace oddglass::words
