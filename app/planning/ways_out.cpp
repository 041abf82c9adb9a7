#include "planning/ways_out.h"

#include "domain/flight_form.h"
#include "planning/amounts.h"
#include "planning/flight_cups.h"

#include <algorithm>

namespace oddglass::planning {

namespace {

constexpr int smallestCupMl = 15;   // volumes from 15 mL appear in sources
constexpr int mostRounds = 8, mostPeople = 60, mostEvenings = 6;

bool fits(const Setup& setup) {
  const auto round = gramsOfRound(setup, setup.cupMl);
  return !round || *round * setup.roundsAnEvening() <= setup.ceilingGrams;
}

WayOut priced(Way kind, const Setup& then) {
  WayOut out{};
  out.way = kind;
  const Amounts amounts = amountsOf(then);
  out.grams = amounts.grams;
  out.enoughBottles = std::ranges::all_of(amounts.lots, &LotAmount::enough);
  return out;
}

WayOut way(Way kind, const Setup& then, const Reach& reach) {
  WayOut out = priced(kind, then);
  out.needed = reach.needed;
  out.chanceHalf = reach.half;
  out.chanceAlike = reach.alike;
  return out;
}

// The same difference, as d', asked by another method; nothing where that finds no more, or goes beyond the ceiling.
std::optional<WayOut> by(Way kind, const Setup& setup, Method method, double now) {
  Setup then = setup;
  then.method = method;
  then.marked.reset();
  then.expected.reset();
  WayOut out = priced(kind, then);
  out.needed = neededInTurn(then, sizeOf(then)).front();
  out.chanceHalf = chanceOf(then, sizeOf(then), differenceOfDPrime(method, dPrimeOfShare(setup.method, 500)).value_or(Difference{})).chance;
  if (*out.chanceHalf <= now || out.grams.value_or(0.0) > setup.ceilingGrams) return std::nullopt;
  return out;
}

// What is held against the full risk, and tasted by everybody once less: any two of the three lots, at worst.
WayOut oneTarget(const Setup& setup) {
  std::optional<WayOut> worst;
  for (const auto& [lower, higher] : comparedLots(setup)) {
    Setup then = setup;
    then.lots = {setup.lots[static_cast<std::size_t>(lower)], setup.lots[static_cast<std::size_t>(higher)]};
    const WayOut out = way(Way::oneTarget, then, reachOf(then, sizeOf(then)));
    if (!worst || out.grams.value_or(0.0) > worst->grams.value_or(0.0)) worst = out;
  }
  return *worst;
}

std::optional<int> roundsThatReach(const Setup& setup) {
  if (setup.method == Method::preference) return std::nullopt;
  for (int rounds = setup.rounds; rounds <= mostRounds; ++rounds)
    if (reachesFar(setup, reachOf(setup, {setup.counting(), rounds}))) return rounds;
  return std::nullopt;
}

std::optional<int> peopleThatReach(const Setup& setup) {
  for (int people = setup.panel + 1; people <= mostPeople; ++people)
    if (reachesFar(setup, reachOf(setup, {people, setup.rounds}))) return people;
  return std::nullopt;
}

// The largest cup, in steps of 5 mL and below the present one, with which the plan stays under the ceiling.
std::optional<Setup> withLess(Setup then) {
  for (int ml = then.cupMl - 1; ml >= smallestCupMl; --ml) {
    if (ml % 5 != 0) continue;
    then.cupMl = ml;
    if (fits(then)) return then;
  }
  return std::nullopt;
}

// The fewest evenings on which the plan stays under the ceiling.
std::optional<Setup> overEvenings(Setup then) {
  for (++then.evenings; then.evenings <= std::min(mostEvenings, then.rounds); ++then.evenings)
    if (fits(then)) return then;
  return std::nullopt;
}

}  // namespace

Reach reachOf(const Setup& setup, const Size& size) {
  Reach reach;
  reach.needed = neededInTurn(setup, size).front();
  reach.half = chanceOf(setup, size, differenceOfShare(setup.method, halfOf(setup.method))).chance;
  if (setup.limitPm) reach.alike = alikeChanceOf(setup, size, *setup.limitPm).chance;
  return reach;
}

bool reachesFar(const Setup& setup, const Reach& reach) {
  const bool difference = setup.sought == Sought::alike || reach.half >= 0.8;
  const bool alike = setup.sought == Sought::difference || reach.alike.value_or(0.0) >= 0.8;
  return difference && alike;
}

std::vector<WayOut> waysOutOf(const Setup& setup) {
  if (setup.counting() == 0 || setup.lots.size() < 2) return {};
  const Reach now = reachOf(setup, sizeOf(setup));
  const bool far = reachesFar(setup, now), under = fits(setup), seeksDifference = setup.sought != Sought::alike;
  if (far && under) return {};
  std::vector<WayOut> ways;
  Setup full = setup;  // with the rounds that it takes
  if (const auto wanted = roundsThatReach(setup)) full.rounds = *wanted;
  const bool isMore = full.rounds != setup.rounds;
  const Reach then = isMore ? reachOf(full, sizeOf(full)) : now;

  if (setup.comparisons() > 1)
    if (const WayOut out = oneTarget(setup); out.grams.value_or(0.0) <= setup.ceilingGrams) ways.push_back(out);
  const bool mayChange = !far && seeksDifference && setup.method != Method::preference;
  if (mayChange && setup.comparisons() == 1 && !namesAThing(setup.method))
    if (const auto out = by(Way::nameTheThing, setup, Method::pair, now.half)) ways.push_back(*out);
  if (!fits(full)) {
    if (const auto less = withLess(full)) {
      WayOut out = way(Way::pourLess, *less, then);
      out.cupMl = less->cupMl;
      if (isMore) out.rounds = full.rounds;
      ways.push_back(out);
    }
    WayOut spit{};
    spit.way = Way::spit;
    ways.push_back(spit);
    if (const auto spread = overEvenings(full)) {
      WayOut out = way(Way::anotherEvening, *spread, then);
      out.evenings = spread->evenings;
      if (isMore) out.rounds = full.rounds;
      ways.push_back(out);
    }
  }
  if (!far && under && setup.panel > 0)
    if (const auto people = peopleThatReach(setup)) {
      Setup more = setup;
      more.panel = *people;
      WayOut out = way(Way::morePeople, more, reachOf(more, sizeOf(more)));
      out.people = people;
      ways.push_back(out);
    }
  if (mayChange && formOf(setup.method).cups < 4 && !namesAThing(setup.method) && !setup.lingers && !isStrong(setup))
    if (const auto out = by(Way::fourCups, setup, Method::tetrad, now.half)) ways.push_back(*out);
  if (!far && isMore && fits(full)) {
    WayOut out = way(Way::moreRounds, full, then);
    out.rounds = full.rounds;
    ways.push_back(out);
  }
  return ways;
}

}  // namespace oddglass::planning
