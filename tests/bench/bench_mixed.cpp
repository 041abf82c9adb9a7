// Times statistics beside R in the same run and prints the ratio. Nothing passes or fails here.
#include "bench/timed.h"
#include "beside/other.h"
#include "stats/mixed/reml.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <functional>
#include <unistd.h>

using namespace oddglass::stats;
using oddglass::testing::medianMs;

namespace {

struct Sheets {
  std::vector<double> score;
  Factor taster, sample, session;
};

/// Tasters crossed with samples, each combination in sessions at random, a tenth of the answers missing.
Sheets sheets(int tasters, int samples, int sessions, int rounds) {
  beside::Seeded chance(7);
  const auto draws = [&](int count, double spread) {
    std::vector<double> all;
    for (int i = 0; i < count; ++i) all.push_back(spread * chance.normal());
    return all;
  };
  const std::vector<double> level = draws(tasters, 1.0), day = draws(sessions, 0.5), pair = draws(tasters * samples, 0.6);
  Sheets all{{}, {{}, tasters}, {{}, samples}, {{}, sessions}};
  for (int t = 0; t < tasters; ++t)
    for (int s = 0; s < samples; ++s)
      for (int r = 0; r < rounds; ++r) {
        if (chance.uniform() < 0.1) continue;
        const int v = chance.below(sessions);
        all.score.push_back(5.0 + 0.3 * s + level[static_cast<std::size_t>(t)] + day[static_cast<std::size_t>(v)] + pair[static_cast<std::size_t>(t * samples + s)] + chance.normal());
        all.taster.of.push_back(t);
        all.sample.of.push_back(s);
        all.session.of.push_back(v);
      }
  return all;
}

void compare(const Sheets& data, int runs) {
  const auto file = std::filesystem::temp_directory_path() / ("oddglass-bench-" + std::to_string(getpid()) + ".csv");
  std::ofstream out(file);
  out.precision(17);
  out << "y,t,s,v\n";
  for (std::size_t i = 0; i < data.score.size(); ++i) out << data.score[i] << ',' << data.taster.of[i] << ',' << data.sample.of[i] << ',' << data.session.of[i] << '\n';
  out.close();
  double criterion = 0.0;
  const double ours = medianMs(runs, [&] {
    FixedEffects fixed(data.score.size());
    fixed.addIntercept();
    const Columns samples = fixed.addFactor("sample", data.sample);
    const Reml made = fitReml(fixed, {{"t", data.taster}, {"t:s", combined(data.taster, data.sample)}, {"v", data.session}}, data.score);
    fTest(*made.fit, fixed.allZero(samples));
    criterion = made.fit->criterion;
  });
  const auto theirs = beside::inR("suppressMessages({library(lme4); library(lmerTest)}); d <- read.csv('" + file.string() + R"('); d$s <- factor(d$s)
invisible(lme4::lmer(y ~ s + (1 | t), d[1:500, ]))
f <- y ~ s + (1 | t) + (1 | t:s) + (1 | v)
runs <- if (nrow(d) > 10000) 1 else 5
one <- median(sapply(1:runs, function(i) system.time(m <<- lme4::lmer(f, d))[["elapsed"]]))
two <- median(sapply(1:runs, function(i) system.time(anova(lmerTest::lmer(f, d)))[["elapsed"]]))
out(list(fit = 1000 * one, test = 1000 * two, criterion = REMLcrit(m))))");
  std::filesystem::remove(file);
  std::printf("REML with F test, %6zu rows: %9.1f ms   lme4, fit alone %9.1f ms, %5.1f times   lmerTest with F %9.1f ms, %5.1f times   criteria apart %.1e\n", data.score.size(), ours,
              theirs.at("fit")[0].get<double>(), theirs.at("fit")[0].get<double>() / ours, theirs.at("test")[0].get<double>(), theirs.at("test")[0].get<double>() / ours,
              criterion - theirs.at("criterion")[0].get<double>());
}

}  // namespace

TEST_CASE("REML beside lme4") {
  if (!beside::hasR("lme4 lmerTest")) return;
  compare(sheets(12, 8, 6, 14), 21);
  compare(sheets(1000, 10, 50, 11), 3);
}
