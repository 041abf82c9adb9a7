#include "stats/drivers/drivers.h"

#include "stats/check.h"
#include "stats/error.h"
#include "stats/multiple/adjust.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace oddglass::stats {
namespace {

constexpr int fewestTasters = 5, fewestSamples = 4;
constexpr double largest = 1e100, rounding = 1e-12;

/// Sums of one taster about that taster's own means.
struct Sums {
  double xy = 0.0, xx = 0.0;
  int answers = 0;
};

void requireDriverRows(const std::vector<WordAndLiking>& rows) {
  std::set<std::pair<int, int>> once;
  for (const WordAndLiking& row : rows) {
    if (row.taster < 0 || row.sample < 0) throw BadInput("words", "a label must not be negative");
    if (!once.emplace(row.taster, row.sample).second) throw BadInput("words", "a taster and sample stand twice");
    if (!(std::fabs(row.word) <= largest)) throw BadInput("word", "must be a number up to 1e100");
    if (!(std::fabs(row.liking) <= largest)) throw BadInput("liking", "must be a number up to 1e100");
  }
}

Sums sumsOf(const std::vector<WordAndLiking>& rows) {
  const double n = static_cast<double>(rows.size());
  double x = 0.0, y = 0.0, size = 0.0;
  for (const WordAndLiking& row : rows) {
    x += row.word / n;
    y += row.liking / n;
    size = std::max(size, std::fabs(row.word));
  }
  Sums sums;
  sums.answers = static_cast<int>(rows.size());
  for (const WordAndLiking& row : rows) {
    const double apart = std::fabs(row.word - x) <= rounding * size ? 0.0 : row.word - x;
    sums.xy += apart * (row.liking - y);
    sums.xx += apart * apart;
  }
  return sums;
}

/// The slope with the jackknife's error; nothing where the word does not vary once some taster is left out.
Estimated slopeOf(const std::vector<Sums>& tasters, double level) {
  Sums all;
  for (const Sums& each : tasters) {
    all.xy += each.xy;
    all.xx += each.xx;
  }
  std::vector<double> without;
  for (const Sums& each : tasters) {
    const double left = all.xx - each.xx;
    if (!(left > rounding * all.xx)) return nothing(Reason::noSpread);
    without.push_back((all.xy - each.xy) / left);
  }
  const double n = static_cast<double>(tasters.size());
  const auto [mean, sd] = meanAndSpread(without);
  return byStudent(all.xy / all.xx, (n - 1.0) / std::sqrt(n) * *sd, n - 1.0, level);
}

Driver driverOf(const std::vector<WordAndLiking>& rows, double level) {
  std::map<int, std::vector<WordAndLiking>> byTaster;
  for (const WordAndLiking& row : rows) byTaster[row.taster].push_back(row);
  Driver driver;
  std::set<int> samples;
  std::vector<Sums> tasters;
  double xx = 0.0, freedom = 0.0;
  for (const auto& [taster, own] : byTaster) {
    if (own.size() < 2) continue;
    tasters.push_back(sumsOf(own));
    xx += tasters.back().xx;
    freedom += static_cast<double>(own.size() - 1);
    for (const WordAndLiking& row : own) samples.insert(row.sample);
  }
  driver.tasters = static_cast<int>(tasters.size());
  driver.samples = static_cast<int>(samples.size());
  if (freedom > 0.0) driver.spread = std::sqrt(xx / freedom);
  if (driver.tasters < fewestTasters) driver.slope = nothing(Reason::fewTasters);
  else if (driver.samples < fewestSamples) driver.slope = nothing(Reason::fewSamples);
  else driver.slope = slopeOf(tasters, level);
  return driver;
}

// In units of each word's spread, so that words on different scales may be put together.
void shrink(std::vector<Driver>& drivers) {
  double beyond = 0.0;
  int count = 0;
  for (const Driver& driver : drivers) {
    if (!driver.slope.se) continue;
    const double own = *driver.slope.estimate * *driver.spread, error = *driver.slope.se * *driver.spread;
    beyond += own * own - error * error;
    ++count;
  }
  if (count == 0) return;
  const double between = std::max(0.0, beyond / count);
  for (Driver& driver : drivers) {
    if (!driver.slope.se) continue;
    const double error = *driver.slope.se * *driver.spread;
    driver.shrunk = *driver.slope.estimate * between / (between + error * error);
  }
}

void adjustSlopes(std::vector<Driver>& drivers) {
  std::vector<double> p;
  for (const Driver& driver : drivers)
    if (driver.slope.pValue) p.push_back(*driver.slope.pValue);
  if (p.empty()) return;
  const std::vector<double> adjusted = adjustBenjaminiHochberg(p);
  std::size_t at = 0;
  for (Driver& driver : drivers)
    if (driver.slope.pValue) driver.pAdjusted = adjusted[at++];
}

}  // namespace

std::vector<Driver> driversOf(const std::vector<std::vector<WordAndLiking>>& words, double level) {
  requireOpenShare("level", level);
  std::vector<Driver> drivers;
  for (const std::vector<WordAndLiking>& rows : words) {
    requireDriverRows(rows);
    drivers.push_back(driverOf(rows, level));
  }
  shrink(drivers);
  adjustSlopes(drivers);
  return drivers;
}

}  // namespace oddglass::stats
