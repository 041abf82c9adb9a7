#include "insight/trials.h"

#include "domain/flight_form.h"
#include "domain/trial.h"

#include <algorithm>
#include <set>

namespace oddglass::insight {

namespace {

// What a flight says, or nothing where it is no flight of the method as poured.
std::optional<Trial> trialOf(const RevealedFlight& flight, const Plan& plan) {
  const auto lots = comparedIn(flight);
  if (!lots) return std::nullopt;
  Trial trial{flight.place, flight.round, flight.lockedAt, flight.picks};
  std::ranges::sort(trial.picks);
  trial.sureness = flight.sureness;
  trial.clue = flight.clue;
  trial.lots = *lots;
  trial.saidSame = flight.saidSame;
  trial.wasSame = isSame(plan, flight);
  trial.preferredAt = flight.preferred;
  trial.preferred = preferredLot(flight);
  trial.preferredNone = flight.preferredNone;
  if (!formOf(plan.method).hasRight) return lots->first != lots->second && (trial.preferred || trial.preferredNone) ? std::optional(std::move(trial)) : std::nullopt;
  const auto right = isRight(plan, flight);
  if (!right) return std::nullopt;
  trial.isRight = *right;
  trial.rightCups = rightCups(plan, flight).value_or(std::vector<Position>{});
  return trial;
}

std::optional<std::pair<Slot, Slot>> pairDrawn(const RevealedFlight& flight) {
  RevealedFlight drawn;
  drawn.drawn = flight.drawn;
  return comparedIn(drawn);
}

template <class Flight>
Tasted<Flight> sorted(const std::vector<Flight>& flights, const RevealedSession& session, const std::optional<std::pair<Slot, Slot>>& lots) {
  std::set<Place> erased;
  for (const auto& person : session.people)
    if (person.erased) erased.insert(person.place);
  Tasted<Flight> tasted;
  for (const auto& flight : flights) {
    if (erased.contains(flight.place)) continue;
    auto trial = trialOf(flight, session.plan);
    // A flight set aside is void whether or not somebody answered it before; an answer never given is missing.
    const bool counts = !flight.voided && flight.isAnswered() && trial;
    if (lots && (counts ? std::optional(trial->lots) : pairDrawn(flight)) != lots) continue;
    ++tasted.flights;
    if (flight.voided || (flight.isAnswered() && !trial))
      ++tasted.voided;
    else if (!flight.isAnswered())
      ++tasted.missing;
    else
      tasted.trials.push_back(std::move(*trial));
  }
  return tasted;
}

}  // namespace

std::pair<Slot, Slot> lotsOf(const Plan& plan) { return plan.lots.size() == 2 ? std::pair{plan.lots[0].slot, plan.lots[1].slot} : std::pair{Slot{1}, Slot{2}}; }

Tasted<PanelFlight> panelTasted(const RevealedSession& session, std::optional<std::pair<Slot, Slot>> lots) { return sorted(session.panel, session, lots); }

Tasted<MakerFlight> makersTasted(const RevealedSession& session, std::optional<std::pair<Slot, Slot>> lots) { return sorted(session.makers, session, lots); }

bool byLookOrFizz(const Trial& trial) { return trial.clue == Clue::look || trial.clue == Clue::fizz; }

bool afterSaid(const Trial& trial, const std::vector<SaidAloud>& said) {
  return std::any_of(said.begin(), said.end(), [&](const SaidAloud& remark) {
    return remark.seq < trial.lockedAt && (remark.heardBy.empty() || remark.heardBy.contains(trial.place));
  });
}

}  // namespace oddglass::insight
