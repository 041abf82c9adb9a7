// Chances of every method beside brute force written here, and figures of the planning text.
#include "domain/flight_form.h"
#include "domain/names.h"
#include "planning/chances.h"
#include "planning/outlook.h"
#include "planning/stopping.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <functional>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

namespace {

Setup setupFor(Method method, int panel, int rounds = 1, std::size_t lots = 2) {
  Setup setup;
  setup.method = method;
  setup.panel = panel;
  setup.rounds = rounds;
  setup.lots.assign(lots, {500, 500, 99});
  return setup;
}

bool saysTooSmall(const Outlook& outlook, TooSmall rule) { return std::ranges::find(outlook.tooSmall, rule) != outlook.tooSmall.end(); }

double choose(int n, int k) { return std::exp(std::lgamma(n + 1.0) - std::lgamma(k + 1.0) - std::lgamma(n - k + 1.0)); }
double binomial(int k, int n, double p) { return choose(n, k) * std::pow(p, k) * std::pow(1 - p, n - k); }
double beta(double a, double b) { return std::exp(std::lgamma(a) + std::lgamma(b) - std::lgamma(a + b)); }
double phi(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }

/// One person's count: how many of `rounds` are known is beta-binomial (Skellam 1948), the others are guessed.
std::vector<double> person(int rounds, double guess, double mean, double gamma) {
  const double sum = 1 / gamma - 1, a = mean * sum, b = (1 - mean) * sum;
  std::vector<double> counts(static_cast<std::size_t>(rounds) + 1, 0.0);
  for (int known = 0; known <= rounds; ++known)
    for (int guessed = 0; guessed <= rounds - known; ++guessed)
      counts[static_cast<std::size_t>(known + guessed)] += choose(rounds, known) * beta(a + known, b + rounds - known) / beta(a, b) * binomial(guessed, rounds - known, guess);
  return counts;
}

/// Sum over all people's counts, each combination by itself.
double chanceFrom(const std::vector<std::vector<double>>& people, const std::function<double(int)>& shown, std::size_t at = 0, int sum = 0) {
  if (at == people.size()) return shown(sum);
  double chance = 0;
  for (std::size_t k = 0; k < people[at].size(); ++k) chance += people[at][k] * chanceFrom(people, shown, at + 1, sum + static_cast<int>(k));
  return chance;
}

int neededByCounting(int trials, double guess, double alpha) {
  for (int x = 0; x <= trials; ++x) {
    double tail = 0;
    for (int k = x; k <= trials; ++k) tail += binomial(k, trials, guess);
    if (tail <= alpha * (1 + 1e-9)) return x;
  }
  return -1;
}

double fisher(int hits, int signals, int alarms, int noises) {
  const int called = hits + alarms;
  double p = 0;
  for (int k = hits; k <= std::min(signals, called); ++k)
    if (called - k <= noises) p += choose(signals, k) * choose(noises, called - k) / choose(signals + noises, called);
  return p;
}

}  // namespace

// Guessing chances as in ISO 4120, ISO 10399, ISO 5495; by counting for the others.
TEST_CASE("needed numbers and chances of every forced choice, beside all counts of all people") {
  const std::vector<std::pair<Method, double>> methods{{Method::triangle, 1.0 / 3}, {Method::duoTrio, 0.5}, {Method::tetrad, 1.0 / 3},
                                                       {Method::twoOutOfFive, 0.1}, {Method::pair, 0.5},    {Method::threeAfc, 1.0 / 3}};
  for (const auto& [method, guess] : methods)
    for (const auto& [people, rounds] : {std::pair(5, 3), std::pair(6, 3), std::pair(4, 2)}) {
      INFO(nameOf(method) << ' ' << people << " x " << rounds);
      const Outlook outlook = outlookFor(setupFor(method, people, rounds));
      const int needed = neededByCounting(people * rounds, guess, 0.05);
      CHECK(outlook.needed == needed);
      CHECK(outlook.canShow);
      for (const Finding& finding : outlook.findings) {
        const std::vector<std::vector<double>> each(static_cast<std::size_t>(people), person(rounds, guess, finding.sharePm / 1000.0, 0.3));
        CHECK_THAT(finding.chance, WithinAbs(chanceFrom(each, [needed = needed](int right) { return right >= needed ? 1.0 : 0.0; }), 1e-10));
      }
    }
}

TEST_CASE("practice: a triangle under 3 trials, a one-sided pair under 5, a preference under 6 people") {
  CHECK(saysTooSmall(outlookFor(setupFor(Method::triangle, 2)), TooSmall::practice));
  CHECK_FALSE(saysTooSmall(outlookFor(setupFor(Method::triangle, 3)), TooSmall::practice));
  CHECK(saysTooSmall(outlookFor(setupFor(Method::pair, 4)), TooSmall::practice));
  CHECK_FALSE(saysTooSmall(outlookFor(setupFor(Method::pair, 5)), TooSmall::practice));  // 5 of 5 is 1/32
  CHECK(saysTooSmall(outlookFor(setupFor(Method::preference, 5)), TooSmall::practice));  // 5 to 0 is 1/16
  CHECK_FALSE(saysTooSmall(outlookFor(setupFor(Method::preference, 6)), TooSmall::practice));
  CHECK(saysTooSmall(outlookFor(setupFor(Method::aNotA, 5)), TooSmall::practice));       // 2 and 3: one table of ten
  CHECK_FALSE(saysTooSmall(outlookFor(setupFor(Method::aNotA, 6)), TooSmall::practice)); // 3 and 3: one table of twenty
}

TEST_CASE("a preference is one vote a person, however many rounds") {
  for (const int rounds : {1, 3}) {
    const Outlook six = outlookFor(setupFor(Method::preference, 6, rounds));
    CHECK(six.needed == 6);  // "only 6 to 0 could have shown one"
    CHECK(six.trials == 6);
    CHECK_THAT(six.alphaActual, WithinAbs(2.0 / 64, 1e-12));
    REQUIRE(six.findings.size() == 2);
    CHECK(six.findings[0].sharePm == 750);
    CHECK_THAT(six.findings[0].chance, WithinAbs(std::pow(0.75, 6), 1e-12));
    CHECK_THAT(six.findings[1].chance, WithinAbs(std::pow(0.9, 6), 1e-12));
    CHECK(saysTooSmall(six, TooSmall::halfMissed));
  }
  // 12 people: 10 to 2 has a two-sided p of 2 (66 + 12 + 1) / 4096 = 0.0386, 9 to 3 of 0.146.
  const Outlook twelve = outlookFor(setupFor(Method::preference, 12));
  CHECK(twelve.needed == 10);
  CHECK_THAT(twelve.findings[0].chance, WithinAbs(binomial(10, 12, 0.75) + binomial(11, 12, 0.75) + binomial(12, 12, 0.75), 1e-12));
  for (const planning::WayOut& way : twelve.waysOut) CHECK(way.way == Way::morePeople);
  Setup alone = setupFor(Method::preference, 0, 8);
  alone.makers = 1;
  CHECK_FALSE(outlookFor(alone).canShow);
}

TEST_CASE("three comparisons by Holm: six people need 6 of 6, then 5 of 6") {
  const Outlook outlook = outlookFor(setupFor(Method::triangle, 6, 1, 3));
  CHECK(outlook.comparisons == 3);
  CHECK(outlook.neededInTurn == std::vector<std::optional<int>>{6, 5, 5});
  // 6 of 6 is 1/729; any of three independent ones.
  CHECK_THAT(outlook.alphaActual, WithinAbs(1 - std::pow(1 - 1.0 / 729, 3), 1e-12));
  CHECK_THAT(outlook.half().chance, WithinAbs(std::pow(2.0 / 3, 6), 1e-12));
  REQUIRE_FALSE(outlook.waysOut.empty());
  CHECK(outlook.waysOut.front().way == Way::oneTarget);
  CHECK(outlook.waysOut.front().needed == 5);
}

TEST_CASE("alike in three comparisons: each of Holm's steps by counting") {
  for (const int people : {12, 18, 30}) {
    Setup setup = setupFor(Method::triangle, people, 1, 3);
    setup.sought = Sought::alike;
    setup.limitPm = 300;
    const Outlook outlook = outlookFor(setup);
    REQUIRE(outlook.alike);
    REQUIRE(outlook.alike->largestInTurn.size() == 3);
    const double able = 1.0 / 3 + 0.3 * 2 / 3;
    for (int step = 0; step < 3; ++step) {
      int largest = -1;
      double tail = 0;
      for (int k = 0; k <= people && (tail += binomial(k, people, able)) <= 0.05 / (3 - step) * (1 + 1e-9); ++k) largest = k;
      CHECK(outlook.alike->largestInTurn[static_cast<std::size_t>(step)].value_or(-1) == largest);
    }
    double chance = 0;
    for (int k = 0; k <= outlook.alike->largest.value_or(-1); ++k) chance += binomial(k, people, 1.0 / 3);
    CHECK_THAT(outlook.alike->chance, WithinAbs(chance, 1e-12));
  }
}

// Criterion 0, tau 1 (the planned ones); the table's sum over both binomials and Fisher's tail are written here.
TEST_CASE("same-different and A-not-A: Fisher's exact test over all tables") {
  for (const Method method : {Method::aNotA, Method::sameDifferent}) {
    const Setup setup = setupFor(method, 13);
    const double d = dPrimeOfShare(method, 500);
    // Half of people in a triangle: 2/3 right; d' 2.32 in tables of the triangle (Ennis 1993 gives .67 at 2.33 or so): from memory, so loosely.
    CHECK_THAT(d, WithinAbs(2.3, 0.1));
    const double root = std::sqrt(2.0);
    const double hit = method == Method::aNotA ? phi(d / 2) : phi((d - 1) / root) + phi((-d - 1) / root);
    const double alarm = method == Method::aNotA ? phi(-d / 2) : 2 * phi(-1 / root);
    double power = 0, actual = 0;
    for (int hits = 0; hits <= 6; ++hits)
      for (int alarms = 0; alarms <= 7; ++alarms)
        if (fisher(hits, 6, alarms, 7) <= 0.05 * (1 + 1e-9)) {
          power += binomial(hits, 6, hit) * binomial(alarms, 7, alarm);
          actual += binomial(hits, 6, alarm) * binomial(alarms, 7, alarm);
        }
    const planning::Chance chance = chanceOf(setup, sizeOf(setup), {d});
    CHECK_THAT(chance.independent, WithinAbs(power, 1e-9));
    CHECK_THAT(chance.chance, WithinAbs(power, 1e-9));  // one answer a person: nobody comes back
    CHECK(alphaActual(setup, sizeOf(setup)) <= 0.05);
    if (method == Method::sameDifferent) CHECK_THAT(alphaActual(setup, sizeOf(setup)), WithinAbs(actual, 1e-9));
    CHECK_FALSE(outlookFor(setup).needed);
  }
  // Four answers a person, two of them signals: 4 people, all their counts one by one.
  const Setup four = setupFor(Method::aNotA, 4, 4);
  const double hit = phi(1.0), alarm = phi(-1.0);
  const std::vector<std::vector<double>> each(4, person(2, alarm, (hit - alarm) / (1 - alarm), 0.3));
  double power = 0;
  for (int alarms = 0; alarms <= 8; ++alarms)
    power += binomial(alarms, 8, alarm) * chanceFrom(each, [&](int hits) { return fisher(hits, 8, alarms, 8) <= 0.05 * (1 + 1e-9) ? 1.0 : 0.0; });
  CHECK_THAT(chanceOf(four, sizeOf(four), {2.0}).chance, WithinAbs(power, 1e-9));
  CHECK(chanceOf(four, sizeOf(four), {2.0}).independent > power);
}

// Wald 1945: the ratio is looked at after whole rounds; every row of answers is tried.
TEST_CASE("a plan with looks ends as all rows of answers say") {
  Setup setup = setupFor(Method::triangle, 4, 3);
  setup.stopping = Stopping{500, 200};
  const double p0 = 1.0 / 3, p1 = 2.0 / 3, upper = std::log(0.8 / 0.05), lower = std::log(0.2 / 0.95);
  for (const double share : {0.0, 0.5, 1.0}) {
    const double p = p0 + share * (1 - p0);
    SequentialEnd brute{0, 0, 0, 0};
    for (int row = 0; row < 1 << 12; ++row) {
      double chance = 1, ratio = 0;
      int n = 0, ended = 0;
      while (n < 12 && ended == 0) {
        const bool right = (row >> n) & 1;
        chance *= right ? p : 1 - p;
        ratio += right ? std::log(p1 / p0) : std::log((1 - p1) / (1 - p0));
        ++n;
        if (n % 4 == 0) ended = ratio >= upper ? 1 : ratio <= lower ? -1 : 0;
      }
      chance /= std::pow(2.0, 12 - n);  // the answers after the end are any
      (ended > 0 ? brute.difference : ended < 0 ? brute.none : brute.undecided) += chance;
      brute.expectedTrials += chance * n;
    }
    const SequentialEnd end = sequentialEnd(setup, sizeOf(setup), share);
    CHECK_THAT(end.difference, WithinAbs(brute.difference, 1e-12));
    CHECK_THAT(end.none, WithinAbs(brute.none, 1e-12));
    CHECK_THAT(end.undecided, WithinAbs(brute.undecided, 1e-12));
    CHECK_THAT(end.expectedTrials, WithinAbs(brute.expectedTrials, 1e-9));
  }
  const Outlook outlook = outlookFor(setup);
  REQUIRE(outlook.sequential);
  CHECK(outlook.sequential->every == 4);
  CHECK(outlook.sequential->last == 12);
  CHECK_FALSE(outlook.needed);
  CHECK(outlook.canShow);
  CHECK(sequentialAfter(Method::triangle, *setup.stopping, 50, 4, 4) == Sequential::difference);
  CHECK(sequentialAfter(Method::triangle, *setup.stopping, 50, 4, 0) == Sequential::none);
  CHECK(sequentialAfter(Method::triangle, *setup.stopping, 50, 4, 2) == Sequential::goOn);
  setup.stopping->sharePm = 1000;
  CHECK(outlookFor(setup).canShow);
}

// d' = 1: triangle .4180, tetrad .4938, pair .7602, 3-AFC .6337, duo-trio .5825, two-out-of-five .21284 (published psychometric functions).
TEST_CASE("methods are compared through d', not through shares") {
  const std::vector<std::tuple<Method, double, double>> known{{Method::triangle, 0.4180, 1.0 / 3}, {Method::tetrad, 0.4938, 1.0 / 3}, {Method::pair, 0.7602, 0.5},
                                                              {Method::threeAfc, 0.6337, 1.0 / 3}, {Method::duoTrio, 0.5825, 0.5},    {Method::twoOutOfFive, 0.21284, 0.1}};
  for (const auto& [method, right, guess] : known) {
    INFO(nameOf(method));
    CHECK_THAT(differenceOfDPrime(method, 1.0).value().size, WithinAbs((right - guess) / (1 - guess), 2e-4));
  }
  CHECK(differenceOfDPrime(Method::aNotA, 1.5)->size == 1.5);
  CHECK_FALSE(differenceOfDPrime(Method::preference, 1.0));
}

TEST_CASE("ways out come in their order, stay under the ceiling and find more, for every method") {
  for (const Method method : comparingMethods())
    for (const int panel : {3, 6, 10})
      for (const int rounds : {1, 3})
        for (const int cupMl : {15, 40}) {
          Setup setup = setupFor(method, panel, rounds);
          setup.cupMl = cupMl;
          setup.lots.assign(2, {1200, 750, 99});
          const Outlook outlook = outlookFor(setup);
          INFO(nameOf(method) << ' ' << panel << " x " << rounds << ", " << cupMl << " mL");
          CHECK(std::ranges::is_sorted(outlook.waysOut, {}, &planning::WayOut::way));
          for (const planning::WayOut& way : outlook.waysOut) {
            if (way.grams) CHECK(*way.grams <= setup.ceilingGrams + 1e-9);
            if (way.way == Way::nameTheThing || way.way == Way::fourCups) CHECK(*way.chanceHalf > outlook.half().chance);
            if (way.way == Way::morePeople || way.way == Way::moreRounds) CHECK(*way.chanceHalf >= 0.8);
            if (way.way == Way::fourCups) CHECK(formOf(method).cups < 4);
            CHECK((way.way != Way::nameTheThing || !namesAThing(method)));
          }
        }
}

TEST_CASE("what lingers, and spirits, are not offered four cups") {
  Setup setup = setupFor(Method::triangle, 6);
  const auto offersFour = [&] { return std::ranges::any_of(outlookFor(setup).waysOut, [](const planning::WayOut& way) { return way.way == Way::fourCups; }); };
  CHECK(offersFour());
  setup.lingers = true;
  CHECK_FALSE(offersFour());
  setup.lingers = false;
  setup.cupMl = 5;
  setup.lots.assign(2, {4000, 700, 99});
  CHECK_FALSE(offersFour());
}
