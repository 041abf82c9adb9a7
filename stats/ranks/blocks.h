#pragma once

#include "stats/long_rows.h"

#include <vector>

namespace oddglass::stats {

/// The ranks one taster gave: which samples (ascending, from 0), and twice the midrank of each among them, so that ties stay whole numbers. 1 is least.
struct RankBlock {
  std::vector<int> samples;
  std::vector<int> doubled;
};

/// Ranks of all tasters who ranked two samples or more.
struct RankBlocks {
  int samples = 0;
  std::vector<RankBlock> blocks;
};

/// Midranks of values, from 1 for the least; ties share the mean of their ranks. Values are finite (BadInput otherwise).
std::vector<double> midranks(const std::vector<double>& values);

/// Ranks within each taster of whatever was given: ranks or scores. A taster with one sample is left out, for nothing was ranked.
/// Columns of one length, two samples or more, a taster and a sample together at most once; else BadInput.
RankBlocks rankBlocks(const std::vector<double>& values, const Factor& sample, const Factor& taster);

/// `tasters` blocks without ties, every sample in each: what tables of critical values are made for.
RankBlocks untiedBlocks(int samples, int tasters);

/// True when every taster ranked every sample.
bool isComplete(const RankBlocks& ranks);
/// True when no taster told any two samples apart (also without tasters).
bool isAllTied(const RankBlocks& ranks);

/// Twice the rank sum of each sample.
std::vector<int> doubledRankSums(const RankBlocks& ranks);

/// In how many ways these ranks can be dealt within the tasters: the product of k! over the tasters; infinity is possible.
double arrangements(const RankBlocks& ranks);

}  // namespace oddglass::stats
