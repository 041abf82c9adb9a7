#pragma once

#include "stats/long_rows.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// How one taster uses the scale and how well it hangs together. Nothing here is a mark, and discrimination is never ranked.
struct TasterMeasures {
  std::optional<double> level;       ///< mean minus the panel's mean, freed of missing cells; positive: scores higher
  std::optional<double> spread;      ///< standard deviation of the taster's sample means
  std::optional<double> repeatSd;    ///< pooled standard deviation of repeats of one sample
  std::optional<double> discriminationF;  ///< F of samples against repeats, this taster alone
  std::optional<double> discriminationP;
  std::optional<double> agreement;   ///< correlation of the taster's sample means with those of the others
  std::optional<double> shrunkLevel, shrunkSpread, shrunkAgreement;  ///< drawn towards the panel by how little is known
  std::vector<Reason> why;           ///< for what is empty, each once
};

/// All tasters by their number. Rounds and repeats are averaged first, but for the repeat sd and the discrimination, which need them.
/// - Shrunk level: level x (1 - MS_taster-by-sample / MS_taster), cut at 0. Source: best linear unbiased prediction in the additive model (Henderson 1975, Biometrics 31:423).
/// - Shrunk spread: the square root of (4 s0^2 + d s^2) / (4 + d), d the taster's samples less one and s0^2 the tasters' pooled variance. Source: Smyth 2004 with 4 prior df.
/// - Agreement needs 4 samples or more, and others who answered them. Shrunk: Fisher's z = atanh r with variance 1 / (samples - 3), drawn towards the weighted mean of all by
///   between / (between + variance), the variance between tasters by moments and cut at 0 (DerSimonian and Laird 1986, Control Clin Trials 7:177);
///   |r| is held at 0.999 for z, since a perfect correlation of few samples has no finite z (own rule).
/// BadInput as requireSound.
std::vector<TasterMeasures> tasterMeasures(const ScoreRows& rows);

}  // namespace oddglass::stats
