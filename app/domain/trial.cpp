#include "domain/trial.h"

#include "domain/flight_form.h"

#include <algorithm>
#include <map>

namespace oddglass {
namespace {

// The lot of each cup as poured; nothing when one of them is not known.
std::optional<std::vector<Slot>> lotsIn(const RevealedFlight& flight) {
  if (flight.poured.empty()) return flight.drawn;
  std::vector<Slot> lots;
  for (const std::optional<Slot>& each : flight.poured) {
    if (!each) return std::nullopt;
    lots.push_back(*each);
  }
  return lots;
}

std::vector<Position> positionsOf(const std::vector<Slot>& lots, Slot lot, std::size_t from = 0) {
  std::vector<Position> positions;
  for (std::size_t i = from; i < lots.size(); ++i)
    if (lots[i] == lot) positions.push_back({static_cast<int>(i) + 1});
  return positions;
}

// The lot that stands in `fewer` cups while one other lot stands in all the rest.
std::optional<Slot> minority(const std::vector<Slot>& lots, std::size_t fewer) {
  std::map<Slot, std::size_t> counts;
  for (Slot lot : lots) ++counts[lot];
  if (counts.size() != 2) return std::nullopt;
  for (const auto& [lot, count] : counts)
    if (count == fewer) return lot;
  return std::nullopt;
}

}  // namespace

std::optional<std::pair<Slot, Slot>> comparedIn(const RevealedFlight& flight) {
  const auto lots = lotsIn(flight);
  if (!lots || lots->empty()) return std::nullopt;
  const auto [low, high] = std::ranges::minmax(*lots);
  if (std::ranges::any_of(*lots, [&](Slot lot) { return lot != low && lot != high; })) return std::nullopt;
  return std::pair{low, high};
}

std::optional<std::vector<Position>> rightCups(const Plan& plan, const RevealedFlight& flight) {
  const auto lots = lotsIn(flight);
  if (!lots || static_cast<int>(lots->size()) != formOf(plan.method).cups) return std::nullopt;
  switch (plan.method) {
    case Method::triangle:
    case Method::twoOutOfFive: {
      const auto odd = minority(*lots, plan.method == Method::triangle ? 1 : 2);
      return odd ? std::optional(positionsOf(*lots, *odd)) : std::nullopt;
    }
    case Method::duoTrio: {
      auto like = positionsOf(*lots, lots->front(), 1);
      return like.size() == 1 ? std::optional(std::move(like)) : std::nullopt;
    }
    case Method::tetrad: return minority(*lots, 2) ? std::optional(positionsOf(*lots, lots->front())) : std::nullopt;
    case Method::pair:
    case Method::threeAfc: {
      auto more = positionsOf(*lots, plan.expected.value_or(Slot{1}));
      return more.size() == 1 && comparedIn(flight) ? std::optional(std::move(more)) : std::nullopt;
    }
    case Method::sameDifferent:
    case Method::aNotA:
    case Method::preference:
    case Method::sheet: return std::vector<Position>{};
  }
  return std::nullopt;
}

std::optional<bool> isSame(const Plan& plan, const RevealedFlight& flight) {
  const auto lots = lotsIn(flight);
  if (!lots || lots->size() != 2 || !formOf(plan.method).saysSame) return std::nullopt;
  // A marked cup that held another lot than the one everybody was told of taught the wrong thing.
  if (plan.method == Method::aNotA && plan.marked && lots->front() != *plan.marked) return std::nullopt;
  return lots->front() == lots->back();
}

std::optional<bool> isRight(const Plan& plan, const RevealedFlight& flight) {
  if (formOf(plan.method).saysSame) {
    const auto same = isSame(plan, flight);
    return same && flight.saidSame ? std::optional(*same == *flight.saidSame) : std::nullopt;
  }
  const auto right = rightCups(plan, flight);
  if (!right || right->empty() || flight.picks.empty()) return std::nullopt;
  auto picks = flight.picks;
  std::ranges::sort(picks);
  if (picks == *right) return true;
  if (plan.method != Method::tetrad) return false;
  // The other group of a tetrad says the same.
  return std::ranges::none_of(picks, [&](Position pick) { return std::ranges::find(*right, pick) != right->end(); });
}

std::optional<Slot> preferredLot(const RevealedFlight& flight) {
  const auto lots = lotsIn(flight);
  if (!lots || !flight.preferred || flight.preferred->value > static_cast<int>(lots->size())) return std::nullopt;
  return (*lots)[static_cast<std::size_t>(flight.preferred->value) - 1];
}

}  // namespace oddglass
