#include "insight/findings.h"

#include "insight/beside.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace oddglass::insight {

namespace {

template <class Left>
std::vector<Trial> without(const std::vector<Trial>& trials, Left&& left) {
  std::vector<Trial> rest;
  std::copy_if(trials.begin(), trials.end(), std::back_inserter(rest), [&](const Trial& trial) { return !left(trial); });
  return rest;
}

// A reading of some of the trials, where they are fewer than all. Too few for a verdict has then its own reason.
std::optional<Reading> readRest(const std::vector<Trial>& rest, std::size_t all, const Plan& plan) {
  if (rest.size() == all) return std::nullopt;
  Reading reading = readTrials(rest, plan);
  if (reading.verdict == Verdict::none) reading.why = NoVerdict::tooFewWithout;
  return reading;
}

void readAll(Findings& findings, const std::vector<Trial>& trials, const RevealedSession& session) {
  const auto said = [&](const Trial& trial) { return afterSaid(trial, session.said); };
  const auto unseen = without(trials, byLookOrFizz), unheard = without(trials, said), neither = without(unseen, said);
  findings.all = readTrials(trials, session.plan);
  findings.withoutLookOrFizz = readRest(unseen, trials.size(), session.plan);
  findings.withoutSaid = readRest(unheard, trials.size(), session.plan);
  if (findings.withoutLookOrFizz && findings.withoutSaid && neither.size() < std::min(unseen.size(), unheard.size()))
    findings.withoutEither = readRest(neither, trials.size(), session.plan);
  findings.verdict = findings.all.verdict;
  const auto weaken = [&](const std::optional<Reading>& reading, WeakenedBy by) {
    if (!reading) return;
    const Verdict then = weaker(findings.verdict, reading->verdict);
    if (then == findings.verdict) return;
    findings.verdict = then;
    findings.weakenedBy = by;
  };
  weaken(findings.withoutLookOrFizz, WeakenedBy::lookOrFizz);
  weaken(findings.withoutSaid, WeakenedBy::said);
  weaken(findings.withoutEither, WeakenedBy::either);
  if (findings.verdict == Verdict::none) findings.why = findings.printed().why;
}

template <class Flight>
void confirm(Findings& findings, const Tasted<Flight>& tasted, const RevealedSession& session) {
  findings.flights = tasted.flights;
  findings.missing = tasted.missing;
  findings.voided = tasted.voided;
  readAll(findings, tasted.trials, session);
  findings.sureness = surenessOf(tasted.trials);
  findings.clues = cluesOf(tasted.trials);
  for (const auto& trial : tasted.trials)
    if (trial.right()) ++(byLookOrFizz(trial) ? findings.rightByLookOrFizz : findings.rightWithoutLookOrFizz);
  findings.mostlyByLookOrFizz = mostlyByLookOrFizz(findings.rightByLookOrFizz, findings.all.right);
  findings.habit = habitOf(tasted.trials, session.plan.alphaPm);
  if (session.plan.claim != Claim::me) findings.peopleDiffer = peopleDifferOf(tasted.trials);
}

std::vector<Caution> cautionsOf(const Findings& findings, const Plan& plan) {
  std::vector<Caution> cautions;
  const Reading& all = findings.all;
  if (findings.claim == Claim::table) cautions.push_back(Caution::roundsPooled);
  const int planned = (findings.claim == Claim::me ? plan.makersPlanned : plan.panelPlanned) * plan.rounds;
  if (all.trials < planned) cautions.push_back(Caution::fewerThanPlanned);
  if (!all.missed.empty() && all.missed.back().chance < 0.5) cautions.push_back(Caution::halfLikelyMissed);
  if (findings.mostlyByLookOrFizz) cautions.push_back(Caution::mostlyLookOrFizz);
  if (findings.habit && findings.habit->stands) cautions.push_back(Caution::placeHabit);
  if (all.people < 20) cautions.push_back(Caution::countsOnly);
  return cautions;
}

bool sealBroken(const RevealedSession& session) {
  return std::any_of(session.log.begin(), session.log.end(), [](const LoggedEvent& entry) { return entry.event == Event::broken; });
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

Findings findingsOf(const RevealedSession& session) {
  Findings findings;
  findings.claim = session.plan.claim;
  findings.sought = session.plan.sought;
  findings.alphaPm = session.plan.alphaPm;
  findings.limitPm = session.plan.limitPm;
  if (session.plan.claim == Claim::me) {
    confirm(findings, makersTasted(session), session);
  } else {
    confirm(findings, panelTasted(session), session);
    for (const auto& line : personLines(makersTasted(session).trials)) findings.makers.push_back({line.place, line.right, line.trials});
  }
  if (sealBroken(session)) {
    findings.verdict = Verdict::none;
    findings.why = NoVerdict::sealBroken;
    findings.weakenedBy = WeakenedBy::nothing;
  }
  findings.deviations = deviationsOf(session);
  findings.cautions = cautionsOf(findings, session.plan);
  return findings;
}

std::vector<PersonLine> panelByPerson(const RevealedSession& session) { return personLines(panelTasted(session).trials); }

}  // namespace oddglass::insight
