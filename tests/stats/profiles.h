#pragma once

#include "stats/profile/profile_rows.h"
#include "stats/rows.h"
#include "stats/simulated.h"

#include <algorithm>
#include <vector>

/// Long rows of descriptive profiles for tests.
namespace profiles {

using oddglass::stats::ProfileRows;

/// Adds one answer; the factors grow as needed.
inline void add(ProfileRows& rows, int descriptor, int taster, int sample, double response) {
  rows::add(rows.scores, taster, sample, response);
  rows.descriptor.of.push_back(descriptor);
  rows.descriptor.levels = std::max(rows.descriptor.levels, descriptor + 1);
}

/// Sample 0 is the reference at 5, sample 1 lies so far from it: one row of differences for each descriptor, one difference a taster.
inline ProfileRows ofDifferences(const std::vector<std::vector<double>>& differences) {
  ProfileRows rows;
  for (std::size_t d = 0; d < differences.size(); ++d)
    for (std::size_t t = 0; t < differences[d].size(); ++t) {
      add(rows, static_cast<int>(d), static_cast<int>(t), 0, 5.0);
      add(rows, static_cast<int>(d), static_cast<int>(t), 1, 5.0 + differences[d][t]);
    }
  return rows;
}

/// How a drawn panel is made: normal levels of tasters, differences between samples (`gap` times their number and the descriptor's), what a taster finds
/// beside it, and errors of repeats.
struct Drawn {
  int tasters = 8, samples = 4, descriptors = 5, rounds = 1;
  double gap = 0.0, sdTaster = 1.0, sdInteraction = 1.0, sdRepeat = 1.0, missing = 0.0;
};

inline ProfileRows drawn(simulated::Chance& chance, const Drawn& plan) {
  ProfileRows rows;
  for (int d = 0; d < plan.descriptors; ++d)
    for (int t = 0; t < plan.tasters; ++t) {
      const double level = 5.0 + chance.normal(plan.sdTaster);
      for (int s = 0; s < plan.samples; ++s) {
        const double found = level + plan.gap * ((s * (d + 2)) % 7) + chance.normal(plan.sdInteraction);
        for (int r = 0; r < plan.rounds; ++r) {
          const double response = found + chance.normal(plan.sdRepeat);
          if (chance.uniform() >= plan.missing) add(rows, d, t, s, response);
        }
      }
    }
  rows.scores.taster.levels = plan.tasters;
  rows.scores.sample.levels = plan.samples;
  rows.descriptor.levels = plan.descriptors;
  return rows;
}

}  // namespace profiles
