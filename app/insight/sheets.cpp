#include "insight/sheets.h"

#include "domain/flight_form.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace oddglass::insight {
namespace {

bool wasHeard(const RevealedFlight& flight, const std::vector<SaidAloud>& said) {
  return std::ranges::any_of(said, [&](const SaidAloud& remark) {
    return remark.seq < flight.lockedAt && (remark.heardBy.empty() || remark.heardBy.contains(flight.place));
  });
}

template <class Flight>
void add(Sheets<Flight>& sheets, const RevealedFlight& flight) {
  std::set<int> unsure;
  for (const SheetReply& reply : flight.replies) {
    Slot lot{0};
    if (reply.cup) {
      const auto poured = flight.poured.at(static_cast<std::size_t>(reply.cup->value - 1));
      if (!poured) {
        unsure.insert(reply.cup->value);
        continue;
      }
      lot = *poured;
    }
    sheets.to[reply.item].push_back({flight.place, flight.round, reply.cup.value_or(Position{0}), lot, reply.value, reply.words, flight.lockedAt});
  }
  sheets.unsure += static_cast<int>(unsure.size());
  if (sheets.places.empty() || sheets.places.back() != flight.place) sheets.places.push_back(flight.place);
}

template <class Flight>
Sheets<Flight> read(const std::vector<Flight>& flights, const RevealedSession& session, bool unheard) {
  std::set<Place> erased;
  for (const ShownPerson& person : session.people)
    if (person.erased) erased.insert(person.place);
  std::vector<const RevealedFlight*> all;
  for (const Flight& flight : flights)
    if (!erased.contains(flight.place)) all.push_back(&flight);
  std::ranges::sort(all, {}, [](const RevealedFlight* flight) { return std::pair(flight->place, flight->round); });
  Sheets<Flight> sheets;
  for (const RevealedFlight* flight : all) {
    if (unheard && flight->isAnswered() && wasHeard(*flight, session.said)) continue;
    ++sheets.flights;
    if (flight->voided) ++sheets.voided;
    else if (!flight->isAnswered()) ++sheets.missing;
    else add(sheets, *flight);
  }
  for (auto& [item, answers] : sheets.to) std::ranges::stable_sort(answers, {}, [](const Answer& each) { return std::tuple(each.place, each.round, each.cup); });
  return sheets;
}

// Means over whatever `key` tells apart, in the order of the keys.
template <class Key>
std::vector<Score> averaged(const std::vector<Answer>& answers, Key key) {
  std::map<decltype(key(answers.front())), std::pair<Score, int>> sums;
  for (const Answer& answer : answers) {
    if (!answer.value) continue;
    auto& [score, count] = sums[key(answer)];
    if (count++ == 0) score = {answer.place, answer.round, answer.lot, 0.0};
    score.value += *answer.value;
  }
  std::vector<Score> scores;
  for (auto& [at, sum] : sums) {
    sum.first.value /= sum.second;
    scores.push_back(sum.first);
  }
  return scores;
}

}  // namespace

Sheets<PanelFlight> panelSheets(const RevealedSession& session, bool unheard) { return read(session.panel, session, unheard); }
Sheets<MakerFlight> makerSheets(const RevealedSession& session, bool unheard) { return read(session.makers, session, unheard); }

std::vector<Score> scoresOf(const std::vector<Answer>& answers) {
  return averaged(answers, [](const Answer& answer) { return std::tuple(answer.place, answer.lot, answer.round); });
}

std::vector<Score> byPerson(const std::vector<Answer>& answers) {
  return averaged(answers, [](const Answer& answer) { return std::pair(answer.place, answer.lot); });
}

std::vector<Answer> firstOf(const std::vector<Answer>& answers) {
  std::map<std::pair<Place, Slot>, Answer> first;
  for (const Answer& answer : answers) first.emplace(std::pair(answer.place, answer.lot), answer);
  std::vector<Answer> all;
  for (auto& [at, answer] : first) all.push_back(std::move(answer));
  return all;
}

std::vector<Twice> twiceOf(const std::vector<Answer>& answers) {
  std::map<std::tuple<Place, Round, Slot>, std::vector<double>> cups;
  for (const Answer& answer : answers)
    if (answer.value) cups[{answer.place, answer.round, answer.lot}].push_back(*answer.value);
  std::vector<Twice> all;
  for (const auto& [at, values] : cups)
    if (values.size() == 2) all.push_back({std::get<0>(at), std::get<1>(at), std::get<2>(at), values[0], values[1]});
  return all;
}

}  // namespace oddglass::insight
