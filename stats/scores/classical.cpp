#include "stats/estimated.h"
#include "stats/scores/comparisons.h"
#include "stats/scores/fits.h"

#include <cmath>
#include <numbers>

namespace oddglass::stats {
namespace {

using std::numbers::pi;

/// A mean square that estimates a sum of variances, and its degrees of freedom.
struct Stratum {
  double square, df;
};

/// -2 log restricted likelihood at its least. The strata's expected squares cannot fall from the residual to the tasters; where the mean squares do, neighbours
/// are pooled, which is the restricted maximum. Source: Thompson 1962, Ann Math Stat 33:273. Empty without a spread.
std::optional<double> criterionOf(const BalancedTable& table, const std::vector<Stratum>& upwards) {
  std::vector<Stratum> pooled;
  for (Stratum next : upwards) {
    while (!pooled.empty() && pooled.back().square >= next.square) {
      const Stratum last = pooled.back();
      pooled.pop_back();
      next = {(last.square * last.df + next.square * next.df) / (last.df + next.df), last.df + next.df};
    }
    pooled.push_back(next);
  }
  double sum = table.samples * std::log(static_cast<double>(table.tasters) * table.rounds);
  for (const Stratum& each : pooled) {
    if (!(each.square > 0.0)) return std::nullopt;
    sum += each.df * (std::log(2.0 * pi * each.square) + 1.0);
  }
  return sum;
}

/// The means alone, and why there is no more.
SampleScores meansAlone(SampleScores scores, const BalancedTable& table, const ScoreQuestion& question, Reason why) {
  scores.why = why;
  for (auto& each : scores.variances)
    if (!each.variance) each.why = each.why.value_or(why);
  for (int s = 0; s < table.samples; ++s) scores.means.push_back({s, table.means[static_cast<std::size_t>(s)], {}, {}, {}, {}});
  const auto difference = [&](int a, int b) { return SampleDifference{a, b, table.means[static_cast<std::size_t>(a)] - table.means[static_cast<std::size_t>(b)], {}, {}, {}, {}, {}}; };
  for (int a = 0; question.withPairs && a < table.samples; ++a)
    for (int b = a + 1; b < table.samples; ++b) scores.pairs.push_back(difference(a, b));
  for (int s = 0; question.reference && s < table.samples; ++s)
    if (s != *question.reference) scores.fromReference.push_back(difference(s, *question.reference));
  return scores;
}

}  // namespace

SampleScores classicalScores(const BalancedTable& table, const ScoreQuestion& question) {
  SampleScores scores;
  const bool hasRounds = table.rounds > 1;
  scores.random = {"taster"};
  if (hasRounds) scores.random.push_back("taster:sample");
  scores.variances = {{"taster", {}, {}}, {"taster:sample", {}, {}}, {"residual", {}, {}}};
  if (!hasRounds) scores.variances[1].why = Reason::noRepeats;
  if (table.tasters < 2) return meansAlone(std::move(scores), table, question, Reason::oneTaster);

  const double s = table.samples, t = table.tasters, r = table.rounds;
  const Stratum tasters{table.ofTasters / table.dfTasters(), table.dfTasters()}, interaction{table.ofInteraction / table.dfInteraction(), table.dfInteraction()};
  std::vector<Stratum> strata{interaction, tasters};
  scores.variances[0].variance = (tasters.square - interaction.square) / (s * r);
  if (hasRounds) {
    const Stratum residual{table.ofResidual / table.dfResidual(), table.dfResidual()};
    scores.variances[1].variance = (interaction.square - residual.square) / r;
    scores.variances[2].variance = residual.square;
    strata.insert(strata.begin(), residual);
  } else {
    scores.variances[2].variance = interaction.square;
    scores.notes.push_back({ScoreNote::Kind::againstResidual, "taster:sample"});
  }
  for (const auto& each : scores.variances) {
    if (each.variance && *each.variance <= 0.0) scores.isSingular = true;
    if (each.variance && *each.variance < 0.0) scores.notes.push_back({ScoreNote::Kind::belowZero, each.term});
  }
  scores.remlCriterion = criterionOf(table, strata);
  if (!(interaction.square > 0.0)) return meansAlone(std::move(scores), table, question, Reason::noSpread);

  const double F = table.ofSamples / table.dfSamples() / interaction.square;
  scores.test = ScoreTest{F, table.dfSamples(), interaction.df, fisherTail(F, table.dfSamples(), interaction.df)};
  const double both = tasters.square + (s - 1.0) * interaction.square;
  const double df = both * both / (tasters.square * tasters.square / tasters.df + std::pow((s - 1.0) * interaction.square, 2) / interaction.df);
  const double se = std::sqrt(2.0 * interaction.square / (t * r));
  SampleScores filled = meansAlone(std::move(scores), table, question, Reason::noSpread);
  filled.why.reset();
  for (SampleMean& mean : filled.means) {
    mean.se = std::sqrt(both / (s * t * r));
    mean.df = df;
    addInterval(mean, question.level);
  }
  // The critical values are the same for all: found once.
  SampleDifference tukey{0, 0, 0.0, se, interaction.df, {}, {}, {}}, dunnett = tukey;
  const std::vector<double> loads = equalLoads(table.samples - 1);
  if (question.withPairs) addTukey(tukey, table.samples, question.level);
  if (question.reference) addDunnett(dunnett, loads, question.level);
  const auto fill = [&](SampleDifference& each, const SampleDifference& zero) {
    each.se = se;
    each.df = interaction.df;
    if (!zero.high) return;
    each.low = *each.difference + *zero.low;
    each.high = *each.difference + *zero.high;
  };
  for (SampleDifference& each : filled.pairs) {
    fill(each, tukey);
    each.pValue = tukeyP(std::abs(*each.difference) / se, table.samples, interaction.df);
  }
  for (SampleDifference& each : filled.fromReference) {
    fill(each, dunnett);
    each.pValue = dunnettAbove(std::abs(*each.difference) / se, {loads, interaction.df, true});
  }
  return filled;
}

}  // namespace oddglass::stats
