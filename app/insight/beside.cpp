#include "insight/beside.h"

#include "insight/sheets.h"

#include "domain/flight_form.h"
#include "insight/choices.h"
#include "stats/binomial.h"
#include "stats/positions.h"
#include "stats/replicated.h"

#include <algorithm>
#include <map>

namespace oddglass::insight {

std::vector<SureLine> surenessOf(const std::vector<Trial>& trials) {
  std::vector<SureLine> lines{{Sureness::guess}, {Sureness::fairly}, {Sureness::sure}};
  bool asked = false;
  for (const auto& trial : trials)
    for (auto& line : lines)
      if (trial.sureness == line.sureness) {
        ++line.trials;
        line.right += trial.right();
        asked = true;
      }
  if (!asked) lines.clear();
  return lines;
}

std::vector<ClueLine> cluesOf(const std::vector<Trial>& trials) {
  std::vector<ClueLine> lines{{Clue::taste}, {Clue::smell}, {Clue::mouthfeel}, {Clue::look}, {Clue::fizz}, {Clue::guess}};
  bool asked = false;
  for (const auto& trial : trials)
    for (auto& line : lines)
      if (trial.clue == line.clue) {
        ++line.trials;
        line.right += trial.right();
        asked = true;
      }
  if (!asked) lines.clear();
  return lines;
}

bool mostlyByLookOrFizz(int rightByLookOrFizz, int right) { return right > 0 && 3 * rightByLookOrFizz >= right; }

std::optional<PlaceHabit> habitOf(const std::vector<Trial>& trials, const Plan& plan) {
  const FlightForm form = formOf(plan.method);
  const int places = form.cups - (form.hasMarked ? 1 : 0), before = form.hasMarked ? 2 : 1;
  const auto judged = [&](std::vector<int> counts, double pValue) { return PlaceHabit{std::move(counts), pValue, stats::atMost(pValue, plan.alphaPm / 1000.0)}; };
  if (places == 3 && form.picks == 1) {
    std::vector<stats::WrongChoice> wrong;
    for (const auto& trial : trials)
      if (!trial.right() && trial.picks.size() == 1 && trial.rightCups.size() == 1) wrong.push_back({trial.picks[0].value - before, trial.rightCups[0].value - before});
    const auto check = stats::habitCheck(wrong);
    return check ? std::optional(judged(check->counts, check->pExact)) : std::nullopt;
  }
  if (places != 2 || form.saysSame) return std::nullopt;
  // Orders are dealt evenly, so without a habit a wrong choice, or a preference, falls on either place as often.
  std::vector<int> counts(2, 0);
  for (const auto& trial : trials) {
    if (!form.hasRight && trial.preferredAt) ++counts[static_cast<std::size_t>(trial.preferredAt->value - before)];
    if (form.hasRight && !trial.right() && trial.picks.size() == 1) ++counts[static_cast<std::size_t>(trial.picks[0].value - before)];
  }
  if (counts[0] + counts[1] == 0) return std::nullopt;
  return judged(counts, stats::twoSidedHalf(counts[0], counts[0] + counts[1]));
}

std::vector<PersonLine> personLines(const std::vector<Trial>& trials, std::pair<Slot, Slot> lots) {
  std::map<Place, PersonLine> lines;
  for (const auto& trial : trials) {
    auto& line = lines.try_emplace(trial.place, PersonLine{trial.place}).first->second;
    ++line.trials;
    line.right += trial.right();
    line.first += trial.preferred == lots.first;
    line.second += trial.preferred == lots.second;
    line.none += trial.preferredNone;
  }
  std::vector<PersonLine> list;
  for (const auto& [place, line] : lines) list.push_back(line);
  return list;
}

std::optional<PeopleDiffer> peopleDifferOf(const std::vector<Trial>& trials, Method method) {
  if (formOf(method).picks == 0) return std::nullopt;
  const auto people = countsByPerson(trials);
  if (people.size() < 2) return std::nullopt;
  const auto fit = stats::fitReplicated(people, stats::guessing(statsMethod(method)));
  if (!fit || !fit->gamma) return std::nullopt;
  return PeopleDiffer{fit->mu, *fit->gamma, *fit->pValue};
}

std::vector<Deviation> deviationsOf(const RevealedSession& session) {
  std::map<DeviationKind, int> counts;
  if (!session.commitmentHolds) counts[DeviationKind::commitmentBroken] = 1;
  counts[DeviationKind::pourSheetOpened] = session.pourSheetOpenings;
  const auto cups = [&](const RevealedFlight& flight) {
    for (std::size_t k = 0; k < flight.poured.size() && k < flight.drawn.size(); ++k) {
      if (!flight.poured[k])
        ++counts[DeviationKind::notSure];
      else if (*flight.poured[k] != flight.drawn[k])
        ++counts[DeviationKind::pouredOtherwise];
    }
  };
  for (const auto& flight : session.panel) cups(flight);
  for (const auto& flight : session.makers) cups(flight);
  for (const auto& event : session.log)
    if (event.event == Event::spilled) ++counts[DeviationKind::spilled];
  const auto lost = [&](const auto& panel, const auto& makers) {
    counts[DeviationKind::voided] = panel.voided + makers.voided;
    counts[DeviationKind::missing] = panel.missing + makers.missing;
  };
  if (session.plan.sheet) lost(panelSheets(session), makerSheets(session));
  else lost(panelTasted(session), makersTasted(session));
  for (const auto& person : session.people) {
    counts[DeviationKind::late] += person.late;
    counts[DeviationKind::left] += person.left;
  }
  counts[DeviationKind::said] = static_cast<int>(session.said.size());
  counts[DeviationKind::erased] = session.erasedPeople;
  std::vector<Deviation> list;
  for (const auto& [kind, count] : counts)
    if (count > 0) list.push_back({kind, count});
  return list;
}

bool sealBroken(const RevealedSession& session) {
  return std::any_of(session.log.begin(), session.log.end(), [](const LoggedEvent& entry) { return entry.event == Event::broken; });
}

}  // namespace oddglass::insight
