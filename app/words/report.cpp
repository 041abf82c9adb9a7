#include "words/report.h"

#include "domain/flight_form.h"
#include "domain/problem.h"
#include "planning/outlook.h"
#include "planning/setup_of.h"
#include "words/drinks.h"
#include "words/give_aways.h"
#include "words/lots.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/plan.h"
#include "words/reading.h"
#include "words/routine.h"
#include "words/seal.h"
#include "words/serving.h"
#include "words/sheet_plan.h"
#include "words/units.h"
#include "words/verdict.h"

#include <algorithm>

namespace oddglass::words {
namespace {

std::string soughtLine(const Voice& voice, const Plan& plan) {
  const Values values{{"limit", plan.limitPm ? shareLimit(voice, *plan.limitPm) : std::string()}};
  switch (plan.sought) {
    case Sought::difference: return say(voice, QT_TRANSLATE_NOOP("words", "Sought: a difference."));
    case Sought::alike: return say(voice, QT_TRANSLATE_NOOP("words", "Sought: whether they are alike, with a limit of fewer than {limit} set before."), values);
    case Sought::both: return say(voice, QT_TRANSLATE_NOOP("words", "Sought: a difference, or whether they are alike, with a limit of fewer than {limit} set before."), values);
  }
  return {};
}

std::string claimLine(const Voice& voice, Claim claim) {
  switch (claim) {
    case Claim::people: return say(voice, QT_TRANSLATE_NOOP("words", "The verdict speaks of people like these."));
    case Claim::table: return say(voice, QT_TRANSLATE_NOOP("words", "The verdict speaks of this table."));
    case Claim::me: return say(voice, QT_TRANSLATE_NOOP("words", "The verdict speaks of one taster alone."));
  }
  return {};
}

}  // namespace

ReportWords reportWords(const Voice& voice) {
  const auto w = [&](const char* source) { return say(voice, source); };
  ReportWords words;
  words.planHeading = w(QT_TRANSLATE_NOOP("words", "Asked and settled before"));
  words.lotHeading = w(QT_TRANSLATE_NOOP("words", "The drinks"));
  words.lotNote = w(QT_TRANSLATE_NOOP("words", "As they stood on the shelf at the seal."));
  words.servingHeading = w(QT_TRANSLATE_NOOP("words", "How it was served"));
  words.answersHeading = w(QT_TRANSLATE_NOOP("words", "The answers"));
  words.surenessHeading = w(QT_TRANSLATE_NOOP("words", "By sureness"));
  words.cluesHeading = w(QT_TRANSLATE_NOOP("words", "By what told them"));
  words.recordHeading = w(QT_TRANSLATE_NOOP("words", "The record"));
  words.makerHeading = w(QT_TRANSLATE_NOOP("words", "For the maker alone"));
  words.peopleHeading = w(QT_TRANSLATE_NOOP("words", "Person by person"));
  words.flightsHeading = w(QT_TRANSLATE_NOOP("words", "Flight by flight"));
  words.remarksHeading = w(QT_TRANSLATE_NOOP("words", "Written on the sheets"));
  words.saidHeading = w(QT_TRANSLATE_NOOP("words", "Said aloud"));
  words.deviationsHeading = w(QT_TRANSLATE_NOOP("words", "What went otherwise"));
  words.picture = w(QT_TRANSLATE_NOOP("words", "The numbers of the picture"));
  words.lotHeaders = {w(QT_TRANSLATE_NOOP("words", "letter")), w(QT_TRANSLATE_NOOP("words", "drink and lot")), w(QT_TRANSLATE_NOOP("words", "kind")), w(QT_TRANSLATE_NOOP("words", "from")),
                      w(QT_TRANSLATE_NOOP("words", "alcohol by volume")), w(QT_TRANSLATE_NOOP("words", "packaged on")), w(QT_TRANSLATE_NOOP("words", "age when tasted")),
                      w(QT_TRANSLATE_NOOP("words", "best before")), w(QT_TRANSLATE_NOOP("words", "storage")), w(QT_TRANSLATE_NOOP("words", "listed allergens"))};
  words.orderHeaders = {w(QT_TRANSLATE_NOOP("words", "order, left to right")), w(QT_TRANSLATE_NOOP("words", "flights"))};
  words.flightHeaders = {w(QT_TRANSLATE_NOOP("words", "who")), w(QT_TRANSLATE_NOOP("words", "panel or maker")), w(QT_TRANSLATE_NOOP("words", "round")),
                         w(QT_TRANSLATE_NOOP("words", "as poured, left to right")), w(QT_TRANSLATE_NOOP("words", "answer")), w(QT_TRANSLATE_NOOP("words", "came to")),
                         w(QT_TRANSLATE_NOOP("words", "how sure")), w(QT_TRANSLATE_NOOP("words", "what told"))};
  words.allAnswers = w(QT_TRANSLATE_NOOP("words", "all that count"));
  words.withoutLookOrFizz = w(QT_TRANSLATE_NOOP("words", "without look and fizz"));
  words.withoutSaid = w(QT_TRANSLATE_NOOP("words", "without those after something was said"));
  words.withoutEither = w(QT_TRANSLATE_NOOP("words", "without either"));
  words.who = w(QT_TRANSLATE_NOOP("words", "who"));
  words.answer = w(QT_TRANSLATE_NOOP("words", "answer"));
  words.counted = w(QT_TRANSLATE_NOOP("words", "counts"));
  words.trials = w(QT_TRANSLATE_NOOP("words", "tastings"));
  words.right = w(QT_TRANSLATE_NOOP("words", "right"));
  words.wrong = w(QT_TRANSLATE_NOOP("words", "wrong"));
  words.missing = w(QT_TRANSLATE_NOOP("words", "missing"));
  words.notCounted = w(QT_TRANSLATE_NOOP("words", "does not count"));
  words.maker = w(QT_TRANSLATE_NOOP("words", "maker"));
  words.panel = w(QT_TRANSLATE_NOOP("words", "panel"));
  words.panelOrMaker = words.flightHeaders[1];
  words.round = words.flightHeaders[2];
  words.drink = w(QT_TRANSLATE_NOOP("words", "drink"));
  words.cameTo = words.flightHeaders[5];
  return words;
}

std::string reportDates(const Voice& voice, const RevealedSession& session) {
  const auto tasted = std::ranges::find(session.log, Event::opened, &LoggedEvent::event);
  const std::string when = tasted == session.log.end() ? std::string() : say(voice, QT_TRANSLATE_NOOP("words", "First cup on {day} at {time}."), {{"day", day(voice, tasted->at)}, {"time", timeOfDay(voice, tasted->at)}}) + ' ';
  return when + say(voice, QT_TRANSLATE_NOOP("words", "Sealed on {sealed} at {sealedTime}, opened on {opened} at {openedTime}."),
             {{"sealed", day(voice, session.sealedAt)}, {"sealedTime", timeOfDay(voice, session.sealedAt)},
              {"opened", day(voice, session.revealedAt)}, {"openedTime", timeOfDay(voice, session.revealedAt)}});
}

std::vector<std::string> planLines(const Voice& voice, const Plan& plan) {
  std::vector<std::string> lines;
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Purpose: {question}"), {{"question", questionLine(voice, plan.question, plan.attribute, plan.claim == Claim::me)}}));
  std::string method = say(voice, QT_TRANSLATE_NOOP("words", "Method: {method}. {how}"), {{"method", methodName(voice, plan.method)}, {"how", methodLine(voice, plan.method, plan.attribute)}});
  if (const std::string marked = markedLine(voice, plan); !marked.empty()) method += ' ' + marked;
  if (formOf(plan.method).picks > 0) method += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "There is no “no difference” answer: a guess is a guess."));
  lines.push_back(method);
  if (plan.question == Question::notice) lines.push_back(knownLine(voice, plan));
  if (namesAThing(plan.method) && plan.question != Question::notice)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Asked in one direction only: does {lot} have more of “{more}”?"), {{"lot", lotNamed(voice, plan, plan.expected.value_or(Slot{1}))}, {"more", plan.attribute}}));
  else if (plan.method == Method::preference)
    lines.push_back(plan.mayHaveNone ? say(voice, QT_TRANSLATE_NOOP("words", "“No preference” could be answered.")) : say(voice, QT_TRANSLATE_NOOP("words", "“No preference” could not be answered.")));
  else if (!plan.sheet)
    lines.push_back(soughtLine(voice, plan));
  if (plan.comparisons() == 3) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Three lots in three pairs, each pair compared by itself; the risk of a false alarm holds for the three together (Holm).")));
  if (plan.alsoPrefer) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "After the choice it was asked which one was liked better; that is looked at afterwards.")));
  if (plan.stopping)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Looked at after whole rounds, for going on or stopping only: a difference that {what} should not be missed more often than {risk}."),
                        {{"what", canTell(voice, plan.claim, plan.stopping->sharePm)}, {"risk", risk(voice, plan.stopping->betaPm)}}));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Risk of a false alarm (alpha): {risk}."), {{"risk", risk(voice, plan.alphaPm)}}));
  if (plan.claim == Claim::me)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Planned: one taster alone, {rounds}."), {{"rounds", rounds(voice, plan.rounds)}}));
  else
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Planned: {people} in the panel, {rounds}; makers beside it: {makers}."),
                        {{"people", people(voice, plan.panelPlanned)}, {"rounds", rounds(voice, plan.rounds)}, {"makers", whole(voice, plan.makersPlanned)}}));
  lines.push_back(claimLine(voice, plan.claim));
  for (std::string& each : powerBefore(voice, plan)) lines.push_back(std::move(each));
  return lines;
}

std::string promiseLine(const Voice& voice, const Plan& plan, Outcome outcome, const std::string& promise) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{if}: {promise}"), {{"if", outcomeIf(voice, outcome, plan.method, plan.question)}, {"promise", promise}});
}

std::vector<std::string> servingLines(const Voice& voice, const RevealedSession& session) {
  const int makers = static_cast<int>(std::count_if(session.people.begin(), session.people.end(), [](const ShownPerson& each) { return each.isMaker; }));
  const int panel = static_cast<int>(session.people.size()) - makers;
  std::vector<std::string> lines;
  if (session.plan.claim == Claim::me)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "One taster sat down, alone.")));
  else
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Tasters who sat down: {people} in the panel; makers beside it: {makers}."), {{"people", people(voice, panel)}, {"makers", whole(voice, makers)}}));
  if (std::string experience = experienceLine(voice, session); !experience.empty()) lines.push_back(std::move(experience));
  if (std::string typed = typedInLine(voice, session.typedIn); !typed.empty()) lines.push_back(std::move(typed));
  const FlightForm form = formOf(session.plan.method);
  const bool hasOrders = session.plan.routine == Routine::pourer || session.plan.routine == Routine::bottles;
  lines.push_back(say(voice, hasOrders ? QT_TRANSLATE_NOOP("words", "{volume} in each cup, {cups} a flight, each under its own code. Orders were drawn at random, block by block; a full block holds each possible order equally often.")
                                       : QT_TRANSLATE_NOOP("words", "{volume} in each cup, {cups} a flight, each under its own code. The codes were drawn; which cup held what was left to hands."),
                      {{"volume", volume(voice, session.plan.cupMl)}, {"cups", cups(voice, cupsInFlight(session.plan))}}));
  if (session.plan.sheet) {
    if (session.plan.sheet->hasDuplicate) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "One of the drinks was poured twice under two codes; which one was drawn too.")));
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{n} seconds between two cups. In between: {cleanser}."),
                        {{"n", whole(voice, session.plan.sheet->pauseSeconds)}, {"cleanser", session.plan.sheet->cleanser.empty() ? notKnown(voice) : session.plan.sheet->cleanser}}));
  } else if (form.hasMarked) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "The first cup of a flight is the marked one; below it stands in brackets.")));
  if (session.plan.evenings > 1) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Planned over {n} evenings."), {{"n", whole(voice, session.plan.evenings)}}));
  if (const std::string hidden = hiddenLine(voice, session.plan.routine, session.plan.method); !hidden.empty()) {
    lines.push_back(hidden);
    lines.push_back(keyReadLine(voice, session.plan.routine, session.readBy));
  }
  lines.push_back(session.plan.hasPourer ? say(voice, QT_TRANSLATE_NOOP("words", "Somebody who did not taste was named as the pourer before the seal."))
                                         : say(voice, QT_TRANSLATE_NOOP("words", "No pourer was named before the seal.")));
  for (std::string& line : maskingLines(voice, session.plan)) lines.push_back(std::move(line));
  for (std::string& line : servedLines(voice, session.plan.serving)) lines.push_back(std::move(line));
  lines.push_back(notRecordedLine(voice, session.plan.serving));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Orders dealt to those who sat down; the letters are those of the drinks above.")));
  return lines;
}

std::vector<std::string> answerLines(const Voice& voice, const insight::Findings& findings) {
  std::vector<std::string> lines;
  const Values values{{"flights", whole(voice, findings.flights)}, {"trials", whole(voice, findings.flights - findings.missing - findings.voided)},
                      {"right", whole(voice, findings.all.right)}, {"missing", whole(voice, findings.missing)}, {"voided", whole(voice, findings.voided)}};
  lines.push_back(formOf(findings.method).hasRight
                      ? say(voice, QT_TRANSLATE_NOOP("words", "Flights laid: {flights}. Answers that count: {trials}, of them right: {right}. Missing: {missing}. Set aside: {voided}."), values)
                      : say(voice, QT_TRANSLATE_NOOP("words", "Flights laid: {flights}. Answers that count: {trials}. Missing: {missing}. Set aside: {voided}."), values));
  if (formOf(findings.method).picks > 0)
    for (const insight::Missed& each : findings.printed().missed)
      lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Power: a difference that {what} would have come out {often}."),
                          {{"what", canTell(voice, findings.claim, each.sharePm)}, {"often", timesIn(voice, each.chance)}}));
  return lines;
}

std::string typedInLine(const Voice& voice, const TypedIn& typedIn) {
  if (typedIn.fromPaper + typedIn.fromFile == 0) return {};
  std::string line = say(voice, QT_TRANSLATE_NOOP("words", "Flights that were not answered on the screen: {paper} typed in from paper, {file} taken from a table."), {{"paper", whole(voice, typedIn.fromPaper)}, {"file", whole(voice, typedIn.fromFile)}});
  if (typedIn.byTasters + typedIn.byOthers > 0)
    line += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "Typed in by tasters who had locked everything: {tasters}; by people who were not at the table: {others}."), {{"tasters", whole(voice, typedIn.byTasters)}, {"others", whole(voice, typedIn.byOthers)}});
  return line;
}

std::string standardLine(const Voice& voice, const Plan& plan) {
  const std::vector<std::string> standards = standardsOf(plan);
  if (standards.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "After common practice; nobody has certified this test."));
  return say(voice, QT_TRANSLATE_NOOP("words", "After {standard}; nobody has certified this test."), {{"standard", listed(voice, standards)}});
}

std::vector<std::string> powerBefore(const Voice& voice, const Plan& plan) {
  std::vector<std::string> lines;
  try {
    const planning::Setup setup = planning::setupOf(plan);
    if (setup.counting() == 0) return {};
    if (plan.sheet) {
      lines = {sheetPlanWords(voice, planning::sheetOutlook(setup, plan.items)).headline};
    } else {
      const planning::Outlook outlook = planning::outlookFor(setup);
      lines = outlookLines(voice, outlook, plan.sought);
      lines.insert(lines.begin(), outlookHeadline(voice, outlook, plan.sought));
    }
  } catch (const Problem&) {
    return {};
  }
  lines.front() = say(voice, QT_TRANSLATE_NOOP("words", "Worked out before anything was poured: {what}"), {{"what", lines.front()}});
  return lines;
}

std::string experienceLine(const Voice& voice, const RevealedSession& session) {
  if (!session.satBefore || session.people.empty()) return {};
  const SatBefore& sat = *session.satBefore;
  const Values values{{"panel", whole(voice, sat.panel)}, {"makers", whole(voice, sat.makers)}};
  if (session.plan.claim == Claim::me)
    return sat.panel + sat.makers > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "Experience: had answered in an earlier session kept here.")) : say(voice, QT_TRANSLATE_NOOP("words", "Experience: had answered in no earlier session kept here."));
  return say(voice, QT_TRANSLATE_NOOP("words", "Experience: of the panel {panel} had answered in an earlier session kept here, of the makers {makers}. Whoever asked to be only in the sums is not looked up."), values);
}

std::string cupLiked(const Voice& voice, Position position) { return say(voice, QT_TRANSLATE_NOOP("words", "liked cup {n}"), {{"n", whole(voice, position.value)}}); }

std::string noPreference(const Voice& voice) { return say(voice, QT_TRANSLATE_NOOP("words", "no preference")); }

std::string pValue(const Voice& voice, double p) {
  if (p < 0.00005) return say(voice, QT_TRANSLATE_NOOP("words", "below {p}"), {{"p", decimal(voice, 0.0001, 4)}});
  return decimal(voice, p, 4);
}

}  // namespace oddglass::words
