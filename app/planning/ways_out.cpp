#include "planning/ways_out.h"

#include "planning/amounts.h"
#include "stats/power.h"
#include "stats/psychometric.h"

#include <algorithm>
#include <cmath>

namespace oddglass::planning {

namespace {

constexpr int smallestCupMl = 15;   // volumes from 15 mL appear in sources
constexpr int mostRounds = 8, mostPeople = 60;

bool fits(const Setup& setup, int cupMl, int rounds) {
  const auto round = gramsPerRound(setup, cupMl);
  return !round || *round * rounds <= setup.ceilingGrams;
}

// The largest cup, in steps of 5 mL and not above the present one, with which so many rounds stay under the ceiling.
std::optional<int> cupFor(const Setup& setup, int rounds) {
  for (int ml = setup.cupMl - 1; ml >= smallestCupMl; --ml)
    if (ml % 5 == 0 && fits(setup, ml, rounds)) return ml;
  return std::nullopt;
}

std::optional<double> gramsOf(const Setup& setup, int cupMl, int rounds) {
  const auto round = gramsPerRound(setup, cupMl);
  if (!round) return std::nullopt;
  return *round * rounds;
}

WayOut way(Way kind, const Reach& reach) {
  WayOut out{};
  out.way = kind;
  out.needed = reach.needed;
  out.chanceHalf = reach.half;
  out.chanceAlike = reach.alike;
  return out;
}

// What half can taste as odd is a larger share in a pair, where the thing is named: the same d' in both.
WayOut named(const Setup& setup) {
  using stats::Method;
  const double dPrime = stats::dPrimeOf(Method::triangle, stats::rightAnswersOfShare(Method::triangle, 0.5)).value_or(0.0);
  const double share = stats::shareOf(Method::pair, stats::rightAnswers(Method::pair, dPrime));
  const auto power = stats::powerOfRounds(Method::pair, setup.counting(), setup.rounds, share, setup.gamma(), setup.alpha());
  WayOut out{};
  out.way = Way::nameTheThing;
  out.needed = power.critical;
  out.chanceHalf = power.power;
  return out;
}

std::optional<int> roundsThatReach(const Setup& setup) {
  for (int rounds = setup.rounds; rounds <= mostRounds; ++rounds)
    if (reachesFar(setup, reachOf(setup, setup.counting(), rounds))) return rounds;
  return std::nullopt;
}

std::optional<int> peopleThatReach(const Setup& setup) {
  for (int people = setup.panel + 1; people <= mostPeople; ++people)
    if (reachesFar(setup, reachOf(setup, people, setup.rounds))) return people;
  return std::nullopt;
}

}  // namespace

Reach reachOf(const Setup& setup, int people, int rounds) {
  const auto power = stats::powerOfRounds(stats::Method::triangle, people, rounds, 0.5, setup.gamma(), setup.alpha());
  Reach reach{power.critical, power.power, std::nullopt};
  if (setup.limitPm)
    reach.alike = stats::alikePowerOfRounds(stats::Method::triangle, people, rounds, *setup.limitPm / 1000.0, 0.0, setup.gamma(), setup.alpha()).power;
  return reach;
}

bool reachesFar(const Setup& setup, const Reach& reach) {
  const bool difference = setup.sought == Sought::alike || reach.half >= 0.8;
  const bool alike = setup.sought == Sought::difference || reach.alike.value_or(0.0) >= 0.8;
  return difference && alike;
}

std::vector<WayOut> waysOutOf(const Setup& setup) {
  const int people = setup.counting();
  if (people == 0) return {};
  const Reach now = reachOf(setup, people, setup.rounds);
  const bool far = reachesFar(setup, now), under = fits(setup, setup.cupMl, setup.rounds);
  if (far && under) return {};
  std::vector<WayOut> ways;
  const auto wanted = roundsThatReach(setup);
  const int rounds = wanted.value_or(setup.rounds);
  const Reach then = reachOf(setup, people, rounds);
  const bool roundsFit = fits(setup, setup.cupMl, rounds);

  if (!far && setup.sought != Sought::alike)
    if (WayOut out = named(setup); *out.chanceHalf > now.half) ways.push_back(out);
  if (!roundsFit)
    if (const auto ml = cupFor(setup, rounds)) {
      WayOut out = way(Way::pourLess, then);
      out.cupMl = ml;
      if (rounds != setup.rounds) out.rounds = rounds;
      out.grams = gramsOf(setup, *ml, rounds);
      ways.push_back(out);
    }
  if (!roundsFit) {
    WayOut out{};
    out.way = Way::spit;
    ways.push_back(out);
    if (fits(setup, setup.cupMl, 1)) {
      const double round = *gramsPerRound(setup, setup.cupMl);
      const int perEvening = static_cast<int>(std::floor(setup.ceilingGrams / round));
      WayOut spread = way(Way::anotherEvening, then);
      spread.evenings = (rounds + perEvening - 1) / perEvening;
      if (rounds != setup.rounds) spread.rounds = rounds;
      spread.grams = round * perEvening;
      if (*spread.evenings > 1) ways.push_back(spread);
    }
  }
  if (!far && setup.panel > 0)
    if (const auto more = peopleThatReach(setup)) {
      WayOut out = way(Way::morePeople, reachOf(setup, *more, setup.rounds));
      out.people = more;
      out.grams = gramsOf(setup, setup.cupMl, setup.rounds);
      if (under) ways.push_back(out);
    }
  if (!far && wanted && roundsFit) {
    WayOut out = way(Way::moreRounds, then);
    out.rounds = rounds;
    out.grams = gramsOf(setup, setup.cupMl, rounds);
    ways.push_back(out);
  }
  return ways;
}

}  // namespace oddglass::planning
