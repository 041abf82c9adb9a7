#pragma once

#include "stats/profile/profile_cells.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// How far one taster's samples lie to each other as they do for the others: 0 not at all, 1 just so, whatever the scale used and whatever the words are turned into.
/// Chance alone puts it far above 0 where samples are few, so it stands beside its mean and p under all orders of the samples.
/// Empty with `why`: oneTaster; fewSamples (fewer than 4 that this taster scored in all descriptors); noSpread (this taster, or the others, tell no samples
/// apart); or why the others have no means.
struct TasterRv {
  int taster = 0;
  int samples = 0, descriptors = 0;      ///< that were compared
  std::optional<double> rv;
  std::optional<double> expected;        ///< mean over all orders of the samples
  std::optional<double> pValue;          ///< share of the orders with an RV as high
  std::optional<double> error;           ///< Monte Carlo standard error of a drawn p; empty where all orders were counted
  std::optional<Reason> why;
};

/// Each taster's samples x descriptors table against the mean table of the others, both centred: tr(W V) / sqrt(tr(W W) tr(V V)), W and V being the products of a
/// table with its transpose. p is one-sided, over all orders of the samples up to 10 of them (10! is below 1e7), else over 100,000 drawn ones.
/// Tasters who scored nothing in a descriptor are compared without it; samples that a taster did not score in every descriptor are left out.
/// Source: Escoufier 1973, Biometrics 29:751; Robert and Escoufier 1976, Appl Stat 25:257; mean over orders tr(W) tr(V) / ((n - 1) sqrt(tr(W W) tr(V V))),
/// Kazi-Aoual, Hitier, Sabatier and Lebreton 1995, Comput Stat Data Anal 20:643.
std::vector<TasterRv> rvOf(const ProfileCells& cells);

}  // namespace oddglass::stats
