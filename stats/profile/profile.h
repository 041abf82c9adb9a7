#pragma once

#include "stats/profile/differences.h"
#include "stats/profile/profile_rows.h"
#include "stats/scores/sample_scores.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::stats {

/// How p values are adjusted for the number of descriptors.
enum class ProfileAdjust { benjaminiHochberg, holm, none };

/// What is asked of a profile. Without a reference there are no differences; without a limit none is ever within it.
/// alpha in (0, 1), below one half with a limit; level in (0, 1), 1 - alpha when empty; limits above 0, in points of the scale.
struct ProfileQuestion {
  std::optional<int> reference;
  std::optional<double> limit;
  std::vector<std::optional<double>> limits;  ///< one for each descriptor, in place of `limit`; empty: `limit` for all
  ProfileAdjust adjust = ProfileAdjust::benjaminiHochberg;
  double alpha = 0.05;
  std::optional<double> level;
};

/// What one descriptor says of the samples.
struct DescriptorProfile {
  int tasters = 0, samples = 0;      ///< how many have an answer here
  ScoreFit fit = ScoreFit::classical;
  std::optional<ScoreTest> test;     ///< that all samples which were scored have one mean
  std::optional<double> pHolm, pBenjaminiHochberg;  ///< of the test, adjusted over the descriptors that have one
  std::vector<ScoreNote> notes;
  std::optional<Reason> why;         ///< set where there is no test
  std::string about;
  std::vector<ProfileDifference> differences;  ///< every other sample from the reference
};

/// A descriptive profile, descriptor by descriptor. The test is that of `scoresOf`: the classical table where every taster scored every sample equally
/// often, REML where not, on the samples and tasters that occur in the descriptor. The differences are those of `differencesFromReference`.
/// p of the difference and p of the limit are adjusted over the descriptors, each by itself and for each sample by itself; descriptors without a p do not count.
/// Verdict, in this order: adjusted p of the limit at most alpha, within; adjusted p of the difference at most alpha, less or more; else cannot tell yet.
/// BadInput: what `requireSound` refuses; "reference", "limit", "alpha", "level" out of range.
/// Source: Benjamini and Hochberg 1995; Holm 1979; that a limit is looked at first, and that it is never kept without a test, is the project's own plan.
std::vector<DescriptorProfile> profileOf(const ProfileRows& rows, const ProfileQuestion& question = {});

}  // namespace oddglass::stats
