#include "insight/findings.h"

#include "domain/flight_form.h"
#include "domain/give_aways.h"
#include "insight/beside.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <utility>

namespace oddglass::insight {

namespace {

using Lots = std::pair<Slot, Slot>;

template <class Left>
std::vector<Trial> without(const std::vector<Trial>& trials, Left&& left) {
  std::vector<Trial> rest;
  std::copy_if(trials.begin(), trials.end(), std::back_inserter(rest), [&](const Trial& trial) { return !left(trial); });
  return rest;
}

// A reading of some of the trials, where they are fewer than all. Too few for a verdict has then its own reason.
std::optional<Reading> readRest(const std::vector<Trial>& rest, std::size_t all, const Plan& plan, const OtherPairs& others, Depth depth) {
  if (rest.size() == all) return std::nullopt;
  Reading reading = readTrials(rest, plan, others, depth);
  if (reading.verdict == Verdict::none) reading.why = NoVerdict::tooFewWithout;
  return reading;
}

void readAll(Findings& findings, const std::vector<Trial>& trials, const RevealedSession& session, const OtherPairs& others, Depth depth) {
  const auto said = [&](const Trial& trial) { return afterSaid(trial, session.said); };
  const auto unseen = without(trials, byLookOrFizz), unheard = without(trials, said), neither = without(unseen, said);
  findings.all = readTrials(trials, session.plan, others, depth);
  findings.withoutLookOrFizz = readRest(unseen, trials.size(), session.plan, others, depth);
  findings.withoutSaid = readRest(unheard, trials.size(), session.plan, others, depth);
  if (findings.withoutLookOrFizz && findings.withoutSaid && neither.size() < std::min(unseen.size(), unheard.size()))
    findings.withoutEither = readRest(neither, trials.size(), session.plan, others, depth);
  findings.verdict = findings.all.verdict;
  const auto weaken = [&](const std::optional<Reading>& reading, WeakenedBy by) {
    if (!reading) return;
    const Verdict then = contradict(findings.all, *reading) ? Verdict::notShown : weaker(findings.verdict, reading->verdict);
    if (then == findings.verdict) return;
    findings.verdict = then;
    findings.weakenedBy = by;
  };
  const bool lookWeakens = !lookMayTell(session.plan);
  if (lookWeakens) weaken(findings.withoutLookOrFizz, WeakenedBy::lookOrFizz);
  weaken(findings.withoutSaid, WeakenedBy::said);
  if (lookWeakens) weaken(findings.withoutEither, WeakenedBy::either);
  if (findings.verdict == Verdict::none) findings.why = findings.printed().why;
}

Findings blank(const Plan& plan) {
  Findings findings;
  findings.question = plan.question;
  findings.method = plan.method;
  findings.expected = plan.expected;
  findings.claim = plan.claim;
  findings.sought = plan.sought;
  findings.alphaPm = plan.alphaPm;
  findings.limitPm = plan.limitPm;
  return findings;
}

template <class Flight>
void count(Findings& findings, const Tasted<Flight>& tasted, const Plan& plan) {
  findings.flights = tasted.flights;
  findings.missing = tasted.missing;
  findings.voided = tasted.voided;
  findings.sureness = surenessOf(tasted.trials);
  findings.clues = cluesOf(tasted.trials);
  int right = 0;
  for (const auto& trial : tasted.trials) {
    right += trial.right();
    if (trial.right()) ++(byLookOrFizz(trial) ? findings.rightByLookOrFizz : findings.rightWithoutLookOrFizz);
  }
  findings.mostlyByLookOrFizz = !lookMayTell(plan) && mostlyByLookOrFizz(findings.rightByLookOrFizz, right);
}

// Right answers by sureness or by what told mean something only where an answer can be right.
void dropRight(Findings& findings) {
  findings.sureness.clear();
  findings.clues.clear();
}

// Where a sequential plan ended, as the log says it.
void tellStop(Reading& reading, int lastRound, bool stopped) {
  if (!reading.sequential) return;
  reading.sequential->afterRound = lastRound;
  reading.sequential->stoppedEarly = stopped;
}

int lastRoundOf(const std::vector<Trial>& trials) {
  int last = 0;
  for (const Trial& trial : trials) last = std::max(last, trial.round.value);
  return last;
}

template <class Flight>
void confirm(Findings& findings, const Tasted<Flight>& tasted, const RevealedSession& session, Lots lots, const OtherPairs& others, Depth depth) {
  const Plan& plan = session.plan;
  findings.lots = lots;
  count(findings, tasted, plan);
  readAll(findings, tasted.trials, session, others, depth);
  if (depth == Depth::verdict) return;
  if (!formOf(plan.method).hasRight) dropRight(findings);
  const bool stopped = std::ranges::any_of(session.log, [](const LoggedEvent& entry) { return entry.goOn == false; });
  const int last = lastRoundOf(tasted.trials);
  tellStop(findings.all, last, stopped);
  for (auto* each : {&findings.withoutLookOrFizz, &findings.withoutSaid, &findings.withoutEither})
    if (*each) tellStop(**each, last, stopped);
  findings.habit = habitOf(tasted.trials, plan);
  findings.liking = likingOf(tasted.trials, plan, lots);
  findings.surenessIndex = surenessIndexOf(tasted.trials, plan.method, 1.0 - 2.0 * plan.alphaPm / 1000.0);
  if (plan.claim != Claim::me) findings.peopleDiffer = peopleDifferOf(tasted.trials, plan.method);
}

// The largest p of a pair over all its readings that can weaken it: the verdicts of the others have to hold beside it.
double worst(const Findings& pair, std::optional<double> Reading::*p, bool lookWeakens) {
  double largest = (pair.all.*p).value_or(1.0);
  for (const auto* each : {&pair.withoutLookOrFizz, &pair.withoutSaid, &pair.withoutEither})
    if (*each && (lookWeakens || each == &pair.withoutSaid)) largest = std::max(largest, ((**each).*p).value_or(1.0));
  return largest;
}

std::vector<Lots> pairsOf(const Plan& plan) {
  std::vector<Slot> slots;
  for (const PlannedLot& lot : plan.lots) slots.push_back(lot.slot);
  std::ranges::sort(slots);
  return {{slots[0], slots[1]}, {slots[0], slots[2]}, {slots[1], slots[2]}};
}

// What is said of all three pairs: shown where one is, alike where all are, no verdict where none has one.
void sumUp(Findings& findings) {
  const auto every = [&](auto&& is) { return std::ranges::all_of(findings.pairs, is); };
  const auto some = [&](auto&& is) { return std::ranges::any_of(findings.pairs, is); };
  findings.all = {};
  findings.all.pValue.reset();
  for (const Findings& pair : findings.pairs) {
    findings.all.right += pair.all.right;
    findings.all.trials += pair.all.trials;
    findings.all.people = std::max(findings.all.people, pair.all.people);
    findings.all.expected += pair.all.expected;
  }
  if (some([](const Findings& pair) { return pair.verdict == Verdict::shown || pair.verdict == Verdict::both; }))
    findings.verdict = Verdict::shown;
  else if (every([](const Findings& pair) { return pair.verdict == Verdict::alike; }))
    findings.verdict = Verdict::alike;
  else if (every([](const Findings& pair) { return pair.verdict == Verdict::none; }))
    findings.why = findings.pairs.front().why;
  else
    findings.verdict = Verdict::notShown;
  findings.all.verdict = findings.verdict;
  findings.all.why = findings.why;
}

template <class Sort>
void confirmPairs(Findings& findings, const RevealedSession& session, Sort&& sorted, Depth depth) {
  const auto all = sorted(std::nullopt);
  count(findings, all, session.plan);
  if (depth == Depth::whole) findings.habit = habitOf(all.trials, session.plan);
  std::vector<double> p, alikeP;
  for (const Lots& lots : pairsOf(session.plan)) {
    Findings alone = blank(session.plan);
    readAll(alone, sorted(lots).trials, session, {}, Depth::verdict);
    p.push_back(worst(alone, &Reading::pValue, !lookMayTell(session.plan)));
    alikeP.push_back(worst(alone, &Reading::alikeP, !lookMayTell(session.plan)));
  }
  const auto others = [](std::vector<double> values, std::size_t own) {
    values.erase(values.begin() + static_cast<std::ptrdiff_t>(own));
    return values;
  };
  const auto lots = pairsOf(session.plan);
  for (std::size_t i = 0; i < lots.size(); ++i) {
    Findings pair = blank(session.plan);
    confirm(pair, sorted(lots[i]), session, lots[i], {others(p, i), others(alikeP, i)}, depth);
    pair.habit.reset();
    findings.pairs.push_back(std::move(pair));
  }
  sumUp(findings);
}

template <class Sort>
void confirmPlan(Findings& findings, const RevealedSession& session, Sort&& sorted, Depth depth) {
  if (session.plan.comparisons() == 3)
    confirmPairs(findings, session, sorted, depth);
  else
    confirm(findings, sorted(std::nullopt), session, lotsOf(session.plan), {}, depth);
}

std::vector<Caution> pairCautions(const Findings& findings) {
  std::vector<Caution> cautions;
  const Reading& all = findings.all;
  if (!all.missed.empty() && all.missed.back().chance < 0.5) cautions.push_back(Caution::halfLikelyMissed);
  if (findings.mostlyByLookOrFizz) cautions.push_back(Caution::mostlyLookOrFizz);
  return cautions;
}

std::vector<Caution> cautionsOf(const Findings& findings, const RevealedSession& session) {
  const Plan& plan = session.plan;
  std::vector<Caution> cautions;
  if (findings.claim == Claim::table) cautions.push_back(Caution::roundsPooled);
  // A plan that was told to stop early is not short of answers.
  const int rounds = findings.all.sequential && findings.all.sequential->stoppedEarly ? findings.all.sequential->afterRound : plan.rounds;
  const int planned = (findings.claim == Claim::me ? plan.makersPlanned : plan.panelPlanned) * rounds;
  if (findings.flights - findings.missing - findings.voided < planned) cautions.push_back(Caution::fewerThanPlanned);
  if (findings.pairs.empty())
    for (const Caution each : pairCautions(findings)) cautions.push_back(each);
  if (findings.habit && findings.habit->stands) cautions.push_back(Caution::placeHabit);
  if (findings.all.people < 20) cautions.push_back(Caution::countsOnly);
  return cautions;
}

void breakSeal(Findings& findings) {
  findings.verdict = Verdict::none;
  findings.why = NoVerdict::sealBroken;
  findings.weakenedBy = WeakenedBy::nothing;
  for (Findings& pair : findings.pairs) breakSeal(pair);
}

}  // namespace

const Reading& Findings::printed() const {
  switch (weakenedBy) {
    case WeakenedBy::lookOrFizz: return *withoutLookOrFizz;
    case WeakenedBy::said: return *withoutSaid;
    case WeakenedBy::either: return *withoutEither;
    case WeakenedBy::nothing: break;
  }
  return all;
}

namespace {

Findings confirmed(const RevealedSession& session, Depth depth) {
  Findings findings = blank(session.plan);
  if (session.plan.claim == Claim::me) confirmPlan(findings, session, [&](std::optional<Lots> lots) { return makersTasted(session, lots); }, depth);
  else confirmPlan(findings, session, [&](std::optional<Lots> lots) { return panelTasted(session, lots); }, depth);
  if (sealBroken(session)) breakSeal(findings);
  return findings;
}

}  // namespace

Findings findingsOf(const RevealedSession& session) {
  Findings findings = confirmed(session, Depth::whole);
  if (session.plan.claim != Claim::me)
    for (const auto& line : personLines(makersTasted(session).trials, lotsOf(session.plan)))
      findings.makers.push_back({line.place, line.right, line.trials, line.first, line.second, line.none});
  findings.deviations = deviationsOf(session);
  findings.cautions = cautionsOf(findings, session);
  for (Findings& pair : findings.pairs) pair.cautions = pairCautions(pair);
  return findings;
}

Verdict verdictOf(const RevealedSession& session) { return confirmed(session, Depth::verdict).verdict; }

std::vector<PersonLine> panelByPerson(const RevealedSession& session) { return personLines(panelTasted(session).trials, lotsOf(session.plan)); }

}  // namespace oddglass::insight
