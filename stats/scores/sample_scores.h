#pragma once

#include "stats/long_rows.h"
#include "stats/reason.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::stats {

/// What is asked of scores. level in (0, 1); `reference` is the number of a sample. Without `withPairs` the list of pairs stays empty: it takes most of the time.
struct ScoreQuestion {
  double level = 0.95;
  std::optional<int> reference;
  bool withPairs = true;
};

/// How the samples were judged.
enum class ScoreFit {
  classical,  ///< the table of sums of squares, for balanced data
  mixed,      ///< REML with Satterthwaite's degrees of freedom
};

/// Something the reader has to know about the fit. `term` names what it is about.
struct ScoreNote {
  enum class Kind {
    againstResidual,  ///< nobody scored a sample twice: samples are judged against the residual
    belowZero,        ///< this variance is estimated below zero; the test stays as it is
    atZero,           ///< this variance is estimated at zero and left the model
    confounded,       ///< these data cannot tell this term from others: it was left out
  };
  Kind kind;
  std::string term;
};

/// A variance of the model: "taster", "taster:sample", "sample:session" or "residual". Classical estimates may be below zero.
struct ScoreVariance {
  std::string term;
  std::optional<double> variance;
  std::optional<Reason> why;
};

/// F test that all samples have one mean.
struct ScoreTest {
  double F, df1, df2, pValue;
};

/// A sample's mean over tasters (and over the levels of the covariates, evenly), with an interval of its own by Student's t.
struct SampleMean {
  int sample = 0;
  std::optional<double> mean, se, df, low, high;
};

/// Mean of `a` minus mean of `b`. The interval and p hold for all comparisons of the list together.
struct SampleDifference {
  int a = 0, b = 0;
  std::optional<double> difference, se, df, low, high, pValue;
};

/// What the scores say of the samples. Where something is empty, `why` says so (and `about` what is in the way).
struct SampleScores {
  ScoreFit fit = ScoreFit::classical;
  std::vector<std::string> random;      ///< random terms of the model
  std::vector<ScoreVariance> variances; ///< of those terms, and the residual
  std::optional<double> remlCriterion;  ///< -2 log restricted likelihood in lme4's constant, treatment contrasts
  bool isSingular = false;              ///< some variance is estimated at zero or below
  std::optional<ScoreTest> test;
  std::vector<ScoreNote> notes;
  std::vector<SampleMean> means;              ///< one for each sample
  std::vector<SampleDifference> pairs;        ///< every pair (0, 1), (0, 2) ..., by Tukey-Kramer; empty where none was asked for
  std::vector<SampleDifference> fromReference;///< every other sample minus the reference, by Dunnett; empty without a reference
  std::optional<Reason> why;
  std::string about;
};

/// Balanced data (every taster scored every sample equally often, one position and session) are judged by the classical table: sample, fixed,
/// against taster x sample, random, also where the variance of taster x sample is estimated below zero; without repeats against the residual.
/// All others by REML: sample, position and session fixed, taster and taster x sample random, and sample x session where there are
/// several sessions, since a session's cups of one sample share their bottle. Needs two tasters.
/// BadInput: what `requireSound` refuses, more than 200 samples, a score beyond 1e100, a level outside (0, 1), a reference that is no sample.
/// Source: Scheffe 1959 (mixed model); Satterthwaite 1946, Biometrics Bull. 2:110; Kramer 1956, Biometrics 12:307; Dunnett 1955, JASA 50:1096.
SampleScores scoresOf(const ScoreRows& rows, const ScoreQuestion& question = {});

}  // namespace oddglass::stats
