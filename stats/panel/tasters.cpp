#include "stats/panel/tasters.h"

#include "stats/estimated.h"
#include "stats/panel/cells.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

struct Table {
  std::vector<Cell> cells;
  std::vector<std::pair<std::size_t, std::size_t>> of;  ///< for each taster the range of their cells
  double scale = 0.0;                                   ///< the largest score
};

Table tableOf(const ScoreRows& rows) {
  Table table;
  table.cells = cellsOf(rows.response, rows.taster, rows.sample);
  table.of.resize(static_cast<std::size_t>(rows.taster.levels));
  for (std::size_t i = 0; i < table.cells.size(); ++i) {
    auto& range = table.of[static_cast<std::size_t>(table.cells[i].row)];
    if (range.second == 0) range.first = i;
    range.second = i + 1;
  }
  for (double value : rows.response) table.scale = std::max(table.scale, std::fabs(value));
  return table;
}

void note(TasterMeasures& taster, Reason why) {
  if (std::ranges::find(taster.why, why) == taster.why.end()) taster.why.push_back(why);
}

void addLevels(std::vector<TasterMeasures>& all, const Table& table, const std::optional<Additive>& fit, int sampleLevels) {
  const auto refuse = [&](Reason why) { for (auto& taster : all) note(taster, why); };
  int present = 0;
  for (const auto& range : table.of) present += range.second > range.first;
  if (!fit) return refuse(Reason::tooLarge);
  if (present < 2) return refuse(Reason::oneTaster);
  if (fit->parts > 1) return refuse(Reason::notConnected);
  double mean = 0.0, aloneSquares = 0.0;
  for (std::size_t t = 0; t < all.size(); ++t)
    if (fit->part[t] >= 0) mean += fit->row[t] / present;
  // What tasters explain beside the samples: the fit by samples alone leaves this much more.
  std::vector<double> sum(static_cast<std::size_t>(sampleLevels)), count(static_cast<std::size_t>(sampleLevels));
  for (const Cell& cell : table.cells) sum[static_cast<std::size_t>(cell.column)] += cell.mean, count[static_cast<std::size_t>(cell.column)] += 1.0;
  for (const Cell& cell : table.cells) {
    const double rest = cell.mean - sum[static_cast<std::size_t>(cell.column)] / count[static_cast<std::size_t>(cell.column)];
    aloneSquares += rest * rest;
  }
  const double nothing = 1e-24 * table.scale * table.scale * static_cast<double>(table.cells.size());
  const double betweenTasters = (aloneSquares - fit->residualSquares) / (present - 1.0);
  std::optional<double> factor;
  if (fit->residualDf > 0) factor = betweenTasters > nothing ? std::max(0.0, 1.0 - fit->residualSquares / fit->residualDf / betweenTasters) : 0.0;
  for (std::size_t t = 0; t < all.size(); ++t) {
    if (fit->part[t] < 0) continue;
    all[t].level = fit->row[t] - mean;
    if (factor) all[t].shrunkLevel = *factor > 0.0 ? *factor * *all[t].level : 0.0;
    else note(all[t], Reason::fewSamples);
  }
}

void addSpreads(std::vector<TasterMeasures>& all, const Table& table) {
  double squares = 0.0, degrees = 0.0;
  std::vector<double> df(all.size());
  for (std::size_t t = 0; t < all.size(); ++t) {
    std::vector<double> means;
    for (std::size_t i = table.of[t].first; i < table.of[t].second; ++i) means.push_back(table.cells[i].mean);
    if (means.size() < 2) {
      note(all[t], Reason::fewSamples);
      continue;
    }
    df[t] = static_cast<double>(means.size()) - 1.0;
    all[t].spread = meanAndSpread(means, table.scale).sd;
    squares += df[t] * *all[t].spread * *all[t].spread;
    degrees += df[t];
  }
  for (std::size_t t = 0; t < all.size(); ++t)
    if (all[t].spread) all[t].shrunkSpread = std::sqrt((4.0 * squares / degrees + df[t] * *all[t].spread * *all[t].spread) / (4.0 + df[t]));
}

void addRepeats(TasterMeasures& taster, const Table& table, std::size_t t) {
  double within = 0.0, sum = 0.0, count = 0.0, between = 0.0;
  const auto [first, last] = table.of[t];
  const double samples = static_cast<double>(last - first);
  for (std::size_t i = first; i < last; ++i) within += table.cells[i].squares, sum += table.cells[i].mean * table.cells[i].count, count += table.cells[i].count;
  const double df = count - samples;
  if (df < 1.0) return note(taster, Reason::noRepeats);
  const double nothing = 1e-24 * table.scale * table.scale * count;
  if (within <= nothing) within = 0.0;
  taster.repeatSd = std::sqrt(within / df);
  if (samples < 2.0) return note(taster, Reason::fewSamples);
  if (within == 0.0) return note(taster, Reason::noSpread);
  for (std::size_t i = first; i < last; ++i) between += table.cells[i].count * (table.cells[i].mean - sum / count) * (table.cells[i].mean - sum / count);
  const double f = between / (samples - 1.0) / (within / df);
  if (!std::isfinite(f)) return note(taster, Reason::noSpread);
  taster.discriminationF = f;
  taster.discriminationP = fisherTail(f, samples - 1.0, df);
}

std::optional<double> correlation(const std::vector<double>& a, const std::vector<double>& b, double scale) {
  const auto [meanA, sdA] = meanAndSpread(a, scale);
  const auto [meanB, sdB] = meanAndSpread(b, scale);
  if (!(*sdA > 0.0) || !(*sdB > 0.0)) return std::nullopt;
  double together = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) together += (a[i] - meanA) / *sdA * ((b[i] - meanB) / *sdB);
  return std::clamp(together / (static_cast<double>(a.size()) - 1.0), -1.0, 1.0);
}

/// Draws the agreements towards their mean on Fisher's scale. `known` is the number of samples less three.
void shrinkAgreements(std::vector<TasterMeasures>& all, const std::vector<double>& known) {
  double weight = 0.0, weighted = 0.0, squaredWeights = 0.0, q = 0.0;
  int tasters = 0;
  const auto zOf = [](double r) { return std::atanh(std::clamp(r, -0.999, 0.999)); };
  for (std::size_t t = 0; t < all.size(); ++t)
    if (all[t].agreement) ++tasters, weight += known[t], squaredWeights += known[t] * known[t], weighted += known[t] * zOf(*all[t].agreement);
  if (tasters == 0) return;
  const double mean = weighted / weight;
  for (std::size_t t = 0; t < all.size(); ++t)
    if (all[t].agreement) q += known[t] * (zOf(*all[t].agreement) - mean) * (zOf(*all[t].agreement) - mean);
  const double spare = weight - squaredWeights / weight;
  const double between = tasters > 1 && spare > 0.0 ? std::max(0.0, (q - (tasters - 1.0)) / spare) : 0.0;
  for (std::size_t t = 0; t < all.size(); ++t)
    if (all[t].agreement) all[t].shrunkAgreement = std::tanh(mean + between / (between + 1.0 / known[t]) * (zOf(*all[t].agreement) - mean));
}

void addAgreements(std::vector<TasterMeasures>& all, const Table& table, const std::optional<Additive>& fit, int sampleLevels) {
  std::vector<double> sum(static_cast<std::size_t>(sampleLevels)), known(all.size());
  std::vector<int> count(static_cast<std::size_t>(sampleLevels));
  const auto levelled = [&](const Cell& cell) { return cell.mean - (fit ? fit->row[static_cast<std::size_t>(cell.row)] : 0.0); };
  for (const Cell& cell : table.cells) sum[static_cast<std::size_t>(cell.column)] += levelled(cell), ++count[static_cast<std::size_t>(cell.column)];
  for (std::size_t t = 0; t < all.size(); ++t) {
    std::vector<double> own, others;
    for (std::size_t i = table.of[t].first; i < table.of[t].second; ++i) {
      const auto sample = static_cast<std::size_t>(table.cells[i].column);
      if (count[sample] < 2) continue;
      own.push_back(levelled(table.cells[i]));
      others.push_back((sum[sample] - own.back()) / (count[sample] - 1.0));
    }
    if (own.size() < 4) {
      note(all[t], Reason::fewSamples);
      continue;
    }
    all[t].agreement = correlation(own, others, table.scale);
    if (!all[t].agreement) note(all[t], Reason::noSpread);
    known[t] = static_cast<double>(own.size()) - 3.0;
  }
  shrinkAgreements(all, known);
}

}  // namespace

std::vector<TasterMeasures> tasterMeasures(const ScoreRows& rows) {
  requireSound(rows);
  const Table table = tableOf(rows);
  const auto fit = additive(table.cells, rows.taster.levels, rows.sample.levels);
  std::vector<TasterMeasures> all(static_cast<std::size_t>(rows.taster.levels));
  addLevels(all, table, fit, rows.sample.levels);
  addSpreads(all, table);
  for (std::size_t t = 0; t < all.size(); ++t) addRepeats(all[t], table, t);
  addAgreements(all, table, fit, rows.sample.levels);
  return all;
}

}  // namespace oddglass::stats
