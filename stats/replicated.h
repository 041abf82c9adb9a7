#pragma once

#include "stats/binomial.h"
#include "stats/reason.h"

#include <optional>
#include <vector>

namespace oddglass::stats {

/// One person's trials of one method: `correct` of `trials` rounds right.
struct PersonCount {
  int correct;
  int trials;
};

/// The chance-corrected beta-binomial. A person is right with probability guess + (1 - guess) pi; pi differs between people as
/// a Beta with mean mu and spread gamma = 1 / (a + b + 1): gamma 0 is everybody alike, gamma 1 some always and the rest never.
/// guess 0 gives the plain beta-binomial. Sources: Skellam 1948; Ennis and Bi 1998, J Sens Stud 13:389; Brockhoff 2003,
/// Food Qual Pref 14:405.

/// P(exactly k right), k = 0 ... trials, for one person. mu, gamma in [0, 1], guess in [0, 1), 0 <= trials <= 1000.
std::vector<double> personCounts(int trials, double guess, double mu, double gamma);

/// The same for the sum over `people` who each taste `rounds` times. people >= 0, rounds >= 0, people x rounds <= 20,000.
std::vector<double> panelCounts(int people, int rounds, double guess, double mu, double gamma);

/// The same for people with unlike numbers of rounds, one entry a person, in all at most 20,000 trials.
std::vector<double> tableCounts(const std::vector<int>& rounds, double guess, double mu, double gamma);

/// Log-likelihood of the people's counts, with the binomial coefficients; empty where they are impossible.
std::optional<double> replicatedLogLikelihood(const std::vector<PersonCount>& people, double guess, double mu, double gamma);

/// Fit by greatest likelihood and the test of overdispersion: twice the gain over gamma = 0, p half of chi-square(1), exactly
/// 1 when there is no gain. With everybody tasting once gamma, ratio and p are empty (why = oneRound).
struct ReplicatedFit {
  double mu;
  std::optional<double> gamma;
  double logLikelihood;
  std::optional<double> likelihoodRatio;
  std::optional<double> pValue;
  std::optional<Reason> why;
};

/// Empty without any trial. People without trials are left out.
std::optional<ReplicatedFit> fitReplicated(const std::vector<PersonCount>& people, double guess);

/// What is known of the share mu after the answers, mu and gamma uniform on [0, 1] beforehand, on a grid.
struct SharePosteriorOfPeople {
  double median;
  double low;   ///< equal tails at the level asked for
  double high;
};

/// Equal-tailed interval of mu with the person as the unit. Empty without any trial. level in (0, 1).
/// Source: Bayes' rule by quadrature over the grid. Counted coverage of 95 % for six people and three rounds: 96 to 99 % up to
/// mu 0.8, down to 93 % at mu 0.9 with gamma 0.1.
std::optional<SharePosteriorOfPeople> shareOfPeople(const std::vector<PersonCount>& people, double guess, double level);

/// Each person's own pi, in the order given, integrated over the same grid (so that no width collapses at gamma 0).
/// Empty vector without any trial.
std::vector<SharePosteriorOfPeople> eachPerson(const std::vector<PersonCount>& people, double guess, double level);

}  // namespace oddglass::stats
