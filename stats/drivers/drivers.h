#pragma once

#include "stats/estimated.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// What one taster said of one sample: how much of a word it has, and how well it is liked. One for each taster and sample; rounds are averaged before.
struct WordAndLiking {
  int taster = 0;
  int sample = 0;
  double word = 0.0;
  double liking = 0.0;
};

/// How liking goes with a word, for these samples.
struct Driver {
  int tasters = 0;               ///< who scored two samples or more
  int samples = 0;               ///< that these tasters scored
  Estimated slope;               ///< points of liking for one point more of the word; interval and p over tasters
  std::optional<double> spread;  ///< pooled standard deviation of the word within tasters, n - 1 for each of them
  std::optional<double> shrunk;  ///< the slope drawn in towards 0, by how much of all slopes is more than chance
  std::optional<double> pAdjusted;  ///< over the words that have one (Benjamini and Hochberg)
};

/// One driver for each list, in their order. Each taster's answers are taken about that taster's own means, so that generous tasters do not count as words that
/// please: slope = sum of x y / sum of x x over all tasters. Its error is the jackknife's, leaving out one taster at a time, with tasters - 1 degrees of freedom: tasters
/// are the unit, samples are these. Shrunk: in units of each word's spread the slopes are taken as drawn around 0 with variance t2 = mean(slope^2 - se^2), cut
/// at 0, and each is multiplied by t2 / (t2 + se^2).
/// No slope: fewTasters (under 5), fewSamples (under 4: any two things that differ go together there; own rule), noSpread (the word, or what is left without
/// one of the tasters, does not vary).
/// BadInput: "words" (a taster and sample twice, a negative label), "liking" or "word" not finite or beyond 1e100, "level" outside (0, 1).
/// Source: within-groups slope and errors by groups, Arellano 1987, Oxford Bull Econ Stat 49:431; jackknife over groups, Bell and McCaffrey 2002, Surv Methodol 28:169
/// (there CR3 is its close kin) and Tukey 1958; shrinking, Efron and Morris 1975, JASA 70:311, and Morris 1983, JASA 78:47.
std::vector<Driver> driversOf(const std::vector<std::vector<WordAndLiking>>& words, double level = 0.95);

}  // namespace oddglass::stats
