#include "words/report.h"

#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/seal.h"
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

std::string dash() { return "–"; }

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
  words.notCertified = w(QT_TRANSLATE_NOOP("words", "After ISO 4120:2021; nobody has certified this test."));
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
  words.readingHeaders = {w(QT_TRANSLATE_NOOP("words", "answers")), w(QT_TRANSLATE_NOOP("words", "right")), w(QT_TRANSLATE_NOOP("words", "tastings")),
                          w(QT_TRANSLATE_NOOP("words", "needed")), w(QT_TRANSLATE_NOOP("words", "at most for alike")), w(QT_TRANSLATE_NOOP("words", "exact p, one-sided")),
                          w(QT_TRANSLATE_NOOP("words", "share who can tell, low end")), w(QT_TRANSLATE_NOOP("words", "high end")), w(QT_TRANSLATE_NOOP("words", "level of the range"))};
  words.flightHeaders = {w(QT_TRANSLATE_NOOP("words", "who")), w(QT_TRANSLATE_NOOP("words", "panel or maker")), w(QT_TRANSLATE_NOOP("words", "round")),
                         w(QT_TRANSLATE_NOOP("words", "as poured, left to right")), w(QT_TRANSLATE_NOOP("words", "cup chosen")), w(QT_TRANSLATE_NOOP("words", "came to")),
                         w(QT_TRANSLATE_NOOP("words", "how sure")), w(QT_TRANSLATE_NOOP("words", "what told"))};
  words.allAnswers = w(QT_TRANSLATE_NOOP("words", "all that count"));
  words.withoutLookOrFizz = w(QT_TRANSLATE_NOOP("words", "without look and fizz"));
  words.withoutSaid = w(QT_TRANSLATE_NOOP("words", "without those after something was said"));
  words.withoutEither = w(QT_TRANSLATE_NOOP("words", "without either"));
  words.who = w(QT_TRANSLATE_NOOP("words", "who"));
  words.trials = w(QT_TRANSLATE_NOOP("words", "tastings"));
  words.right = w(QT_TRANSLATE_NOOP("words", "right"));
  words.wrong = w(QT_TRANSLATE_NOOP("words", "wrong"));
  words.missing = w(QT_TRANSLATE_NOOP("words", "missing"));
  words.notCounted = w(QT_TRANSLATE_NOOP("words", "does not count"));
  words.maker = w(QT_TRANSLATE_NOOP("words", "maker"));
  words.panel = w(QT_TRANSLATE_NOOP("words", "panel"));
  return words;
}

std::string reportDates(const Voice& voice, const RevealedSession& session) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Sealed on {sealed} at {sealedTime}, opened on {opened} at {openedTime}."),
             {{"sealed", day(voice, session.sealedAt)}, {"sealedTime", timeOfDay(voice, session.sealedAt)},
              {"opened", day(voice, session.revealedAt)}, {"openedTime", timeOfDay(voice, session.revealedAt)}});
}

std::vector<std::string> planLines(const Voice& voice, const Plan& plan) {
  std::vector<std::string> lines;
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Purpose: {question}"), {{"question", questionLine(voice, plan.question, plan.attribute)}}));
  std::string method = say(voice, QT_TRANSLATE_NOOP("words", "Method: {method}. {how}"), {{"method", methodName(voice, plan.method)}, {"how", methodLine(voice, plan.method, plan.attribute)}});
  if (const std::string marked = markedLine(voice, plan); !marked.empty()) method += ' ' + marked;
  if (plan.method != Method::preference) method += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "There is no “no difference” answer: a guess is a guess."));
  lines.push_back(method);
  lines.push_back(soughtLine(voice, plan));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Risk of a false alarm (alpha): {risk}."), {{"risk", risk(voice, plan.alphaPm)}}));
  if (plan.claim == Claim::me)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Planned: one taster alone, {rounds}."), {{"rounds", rounds(voice, plan.rounds)}}));
  else
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Planned: {people} in the panel, {rounds}; makers beside it: {makers}."),
                        {{"people", people(voice, plan.panelPlanned)}, {"rounds", rounds(voice, plan.rounds)}, {"makers", whole(voice, plan.makersPlanned)}}));
  lines.push_back(claimLine(voice, plan.claim));
  return lines;
}

std::string promiseLine(const Voice& voice, Outcome outcome, const std::string& promise) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{if}: {promise}"), {{"if", outcomeIf(voice, outcome)}, {"promise", promise}});
}

std::vector<std::string> servingLines(const Voice& voice, const RevealedSession& session) {
  const int makers = static_cast<int>(std::count_if(session.people.begin(), session.people.end(), [](const ShownPerson& each) { return each.isMaker; }));
  const int panel = static_cast<int>(session.people.size()) - makers;
  std::vector<std::string> lines;
  if (session.plan.claim == Claim::me)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "One taster sat down, alone.")));
  else
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Tasters who sat down: {people} in the panel; makers beside it: {makers}."), {{"people", people(voice, panel)}, {"makers", whole(voice, makers)}}));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{ml} mL in each cup, three cups a flight, each under its own code. Orders were drawn at random, block by block; a full block holds each of the six possible orders once."), {{"ml", whole(voice, session.plan.cupMl)}}));
  lines.push_back(session.plan.hasPourer ? say(voice, QT_TRANSLATE_NOOP("words", "Somebody who did not taste was named as the pourer before the seal."))
                                         : say(voice, QT_TRANSLATE_NOOP("words", "No pourer was named before the seal.")));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Not recorded: vessel, temperature, light, bottle numbers, masking of colour or fizz, swallowing or spitting, place, experience of the tasters.")));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Orders dealt to those who sat down; A is the first of the drinks, B the second.")));
  return lines;
}

std::vector<std::string> answerLines(const Voice& voice, const insight::Findings& findings) {
  std::vector<std::string> lines;
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Flights laid: {flights}. Answers that count: {trials}, of them right: {right}. Missing: {missing}. Set aside: {voided}."),
                      {{"flights", whole(voice, findings.flights)}, {"trials", whole(voice, findings.all.trials)}, {"right", whole(voice, findings.all.right)},
                       {"missing", whole(voice, findings.missing)}, {"voided", whole(voice, findings.voided)}}));
  for (const insight::Missed& each : findings.printed().missed)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Power: a difference that {what} would have come out {often}."),
                        {{"what", canTell(voice, findings.claim, each.sharePm)}, {"often", timesIn(voice, each.chance)}}));
  return lines;
}

std::vector<std::string> readingRow(const Voice& voice, const std::string& what, const insight::Reading& reading) {
  const auto count = [&](const std::optional<int>& value) { return value ? whole(voice, *value) : dash(); };
  const auto& range = reading.range;
  return {what, whole(voice, reading.right), whole(voice, reading.trials), count(reading.needed), count(reading.largest), reading.pValue ? pValue(voice, *reading.pValue) : dash(),
          range ? decimal(voice, range->low, 2) : dash(), range ? decimal(voice, range->high, 2) : dash(), range ? decimal(voice, range->level, 2) : dash()};
}

std::string pValue(const Voice& voice, double p) {
  if (p < 0.00005) return say(voice, QT_TRANSLATE_NOOP("words", "below {p}"), {{"p", decimal(voice, 0.0001, 4)}});
  return decimal(voice, p, 4);
}

}  // namespace oddglass::words
