#include "stats/signal/r_index.h"

#include "stats/cases.h"
#include "stats/error.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

using Counts = std::vector<int>;

/// Twice the pairs in which the signal was rated above the noise, ties once; pair by pair.
long pairsAbove(const Counts& signal, const Counts& noise) {
  long twice = 0;
  for (std::size_t i = 0; i < signal.size(); ++i)
    for (std::size_t k = 0; k < noise.size(); ++k) twice += static_cast<long>(signal[i]) * noise[k] * (i < k ? 2 : i == k ? 1 : 0);
  return twice;
}

/// One-sided p by dealing the signals over the trials in every way.
double byDealing(const Counts& signal, const Counts& noise) {
  std::vector<int> classes;
  int signals = 0;
  for (std::size_t i = 0; i < signal.size(); ++i) {
    classes.insert(classes.end(), static_cast<std::size_t>(signal[i] + noise[i]), static_cast<int>(i));
    signals += signal[i];
  }
  const long seen = pairsAbove(signal, noise);
  long deals = 0, asLarge = 0;
  for (unsigned mask = 0; mask < 1u << classes.size(); ++mask) {
    if (__builtin_popcount(mask) != signals) continue;
    Counts s(signal.size()), n(signal.size());
    for (std::size_t t = 0; t < classes.size(); ++t) ++((mask >> t & 1u) ? s : n)[static_cast<std::size_t>(classes[t])];
    ++deals;
    asLarge += pairsAbove(s, n) >= seen;
  }
  return static_cast<double>(asLarge) / static_cast<double>(deals);
}

}  // namespace

// Source beside the case in r_index.json.
TEST_CASE("the R-index case") {
  const auto all = checks::family("r_index");
  REQUIRE(all.size() == 1);
  for (const auto& c : all) {
    const auto &in = c["inputs"], &out = c["expected"];
    const auto found = rIndexOf(in["signal_counts_sure_to_sure_not"], in["noise_counts_sure_to_sure_not"], 0.95);
    REQUIRE(found.has_value());
    CHECK(found->isExact);
    CHECK_THAT(found->rIndex, WithinAbs(out["r_index"].get<double>(), 1e-7));
    CHECK_THAT(found->pValue, WithinAbs(out["p_value"].get<double>(), 1e-7));
    CHECK_THAT(found->low, WithinAbs(out["low"].get<double>(), 1e-7));
    CHECK_THAT(found->high, WithinAbs(out["high"].get<double>(), 1e-7));
    checks::requireAllSeen(out, {"r_index", "p_value", "low", "high"});
  }
}

TEST_CASE("R and its p by every pair and every deal") {
  std::mt19937 chance(11);
  for (int i = 0; i < 60; ++i) {
    const std::size_t classes = 2 + static_cast<std::size_t>(i) % 5;
    Counts signal(classes), noise(classes);
    for (int k = 0; k < 2 + i % 6; ++k) ++signal[chance() % classes];
    for (int k = 0; k < 2 + i % 7; ++k) ++noise[chance() % classes];
    const auto found = rIndexOf(signal, noise, 0.9);
    REQUIRE(found.has_value());
    const auto count = [](const Counts& of) { int sum = 0; for (const int each : of) sum += each; return sum; };
    CHECK_THAT(found->rIndex, WithinAbs(static_cast<double>(pairsAbove(signal, noise)) / 2.0 / count(signal) / count(noise), 1e-14));
    CHECK_THAT(found->pValue, WithinRel(byDealing(signal, noise), 1e-10));
    CHECK(found->low <= found->rIndex);
    CHECK(found->rIndex <= found->high);
    // Seen from the other side R is its complement, and so are its limits.
    const auto mirrored = rIndexOf(noise, signal, 0.9);
    CHECK_THAT(mirrored->rIndex, WithinAbs(1.0 - found->rIndex, 1e-12));
    CHECK_THAT(mirrored->low, WithinAbs(1.0 - found->high, 1e-7));
  }
}

TEST_CASE("all signals above all noises, all tied, and none at all") {
  const auto best = rIndexOf({4, 0}, {0, 4}, 0.95);
  CHECK(best->rIndex == 1.0);
  CHECK(best->high == 1.0);
  CHECK(best->low > 0.3);
  CHECK_THAT(best->pValue, WithinRel(1.0 / 70.0, 1e-12));  // one deal of C(8, 4)
  const auto worst = rIndexOf({0, 4}, {4, 0}, 0.95);
  CHECK(worst->low == 0.0);
  CHECK_THAT(worst->high, WithinAbs(1.0 - best->low, 1e-7));
  CHECK_THAT(worst->pValue, WithinRel(1.0, 1e-12));
  const auto tied = rIndexOf({0, 5, 0}, {0, 3, 0}, 0.95);
  CHECK(tied->rIndex == 0.5);
  CHECK(tied->pValue == 1.0);
  CHECK_FALSE(rIndexOf({0, 0}, {1, 2}, 0.95).has_value());
  CHECK_FALSE(rIndexOf({3, 1}, {0, 0}, 0.95).has_value());
}

// Large counts: the normal distribution has to lie near what dealing at random gives.
TEST_CASE("beyond counting the normal distribution is named, and lies near the exact p") {
  const auto large = rIndexOf({300, 250, 200, 150}, {250, 240, 220, 190}, 0.95);
  REQUIRE(large.has_value());
  CHECK_FALSE(large->isExact);
  std::mt19937_64 chance(5);
  std::vector<int> classes;
  const Counts together{550, 490, 420, 340};
  for (std::size_t i = 0; i < together.size(); ++i) classes.insert(classes.end(), static_cast<std::size_t>(together[i]), static_cast<int>(i));
  const long seen = pairsAbove({300, 250, 200, 150}, {250, 240, 220, 190});
  int asLarge = 0;
  const int deals = 4000;
  for (int deal = 0; deal < deals; ++deal) {
    std::shuffle(classes.begin(), classes.end(), chance);
    Counts s(4), n(4);
    for (std::size_t t = 0; t < classes.size(); ++t) ++(t < 900 ? s : n)[static_cast<std::size_t>(classes[t])];
    asLarge += pairsAbove(s, n) >= seen;
  }
  CHECK_THAT(large->pValue, WithinAbs(static_cast<double>(asLarge) / deals, 0.006));
}

// Coverage simulated: four classes of two normal distributions, 12 signals and 12 noises; stated as 96 to 97 in 100.
TEST_CASE("the interval of R holds the true R about 96 times in 100") {
  std::mt19937_64 chance(99);
  std::normal_distribution<double> normal;
  const double cuts[]{1.0, 0.4, -0.2}, d = 0.8;
  const auto classOf = [&](double x) { return x > cuts[0] ? 0 : x > cuts[1] ? 1 : x > cuts[2] ? 2 : 3; };
  const auto above = [](double z) { return 0.5 * std::erfc(z / std::sqrt(2.0)); };
  double s[4], n[4];
  for (int i = 0; i < 4; ++i) {
    const double top = i == 0 ? 40.0 : cuts[i - 1], bottom = i == 3 ? -40.0 : cuts[i];
    s[i] = above(bottom - d) - above(top - d);
    n[i] = above(bottom) - above(top);
  }
  double truth = 0.0;
  for (int i = 0; i < 4; ++i)
    for (int k = 0; k < 4; ++k) truth += s[i] * n[k] * (i < k ? 1.0 : i == k ? 0.5 : 0.0);
  int held = 0;
  const int panels = 4000;
  for (int panel = 0; panel < panels; ++panel) {
    Counts signal(4), noise(4);
    for (int i = 0; i < 12; ++i) {
      ++signal[static_cast<std::size_t>(classOf(normal(chance) + d))];
      ++noise[static_cast<std::size_t>(classOf(normal(chance)))];
    }
    const auto found = rIndexOf(signal, noise, 0.95);
    held += found->low <= truth && truth <= found->high;
  }
  CHECK_THAT(static_cast<double>(held) / panels, WithinAbs(0.965, 0.02));
}

TEST_CASE("impossible ratings are refused by name") {
  CHECK_THROWS_AS(rIndexOf({1}, {2}, 0.95), BadInput);
  CHECK_THROWS_AS(rIndexOf({}, {}, 0.95), BadInput);
  CHECK_THROWS_AS(rIndexOf({1, 2, 3}, {1, 2}, 0.95), BadInput);
  CHECK_THROWS_AS(rIndexOf({1, -2}, {1, 2}, 0.95), BadInput);
  CHECK_THROWS_AS(rIndexOf({10'000'000, 1}, {1, 2}, 0.95), BadInput);
  CHECK_THROWS_AS(rIndexOf(Counts(101, 1), Counts(101, 1), 0.95), BadInput);
  for (const double level : {0.0, 1.0, std::numeric_limits<double>::quiet_NaN()}) CHECK_THROWS_AS(rIndexOf({1, 2}, {1, 2}, level), BadInput);
}
