#include "cli/counted.h"

#include "cli/why.h"
#include "stats/posterior.h"
#include "stats/similarity.h"
#include "stats/votes/no_preference.h"

namespace oddglass::cli {
namespace {

Json dPrimeJson(const stats::DPrimeEstimate& found) {
  Json json{{"estimate", numberOrNull(found.estimate)}, {"low", numberOrNull(found.low)}, {"high", numberOrNull(found.high)},
            {"exact_low", numberOrNull(found.exactLow)}, {"exact_high", numberOrNull(found.exactHigh)}};
  if (found.why) json["why"] = why(*found.why);
  return json;
}

Json posteriorJson(int correct, int trials, double guess, double level) {
  const auto posterior = stats::SharePosterior::of(correct, trials, guess);
  const auto factor = stats::bayesFactorDifference(correct, trials, guess);
  const double tail = (1.0 - level) / 2.0;
  Json json{{"median", posterior ? numberOrNull(posterior->quantile(0.5)) : Json()},
            {"low", posterior ? numberOrNull(posterior->quantile(tail)) : Json()},
            {"high", posterior ? numberOrNull(posterior->quantile(1.0 - tail)) : Json()},
            {"bayes_factor_difference", numberOrNull(factor)}};
  const bool isAbove = correct > guess * trials;
  if (!posterior || !factor) json["why"] = isAbove ? "so far above guessing that it is larger than any number" : why(stats::Reason::tooFarBelow);
  return json;
}

Json similarityJson(int correct, int trials, double guess, double alpha, double limit) {
  const auto largest = stats::largestAlike(trials, guess, limit, alpha);
  Json json{{"limit_pd", limit}, {"p_value", numberOrNull(stats::alikePValue(correct, trials, guess, limit))}, {"largest_correct", numberOrNull(largest)}};
  if (!largest) json["why"] = why(stats::Reason::neverAlike);
  return json;
}

Json votesJson(const stats::VoteTest& test) {
  Json json{{"first", test.first}, {"second", test.second}, {"p_value", numberOrNull(test.pValue)}, {"critical", numberOrNull(test.critical)}};
  if (!test.critical) json["why"] = "no count reaches this risk";
  return json;
}

/// The reason beside the nulls of the outermost keys.
std::optional<std::string> whyOf(const stats::Counted& counted, bool isPreference) {
  if (counted.why) return why(*counted.why);
  if (!counted.critical) return "no count reaches this risk";
  if (isPreference || counted.dPrime.standardError) return std::nullopt;
  return counted.dPrime.why ? why(*counted.dPrime.why) : "at or below guessing d' has no standard error";
}

}  // namespace

Json estimateJson(const stats::Estimate& estimate) {
  return {{"estimate", numberOrNull(estimate.estimate)}, {"low", numberOrNull(estimate.low)}, {"high", numberOrNull(estimate.high)}};
}

Json noPreferenceJson(int first, int second, int none, double alpha) {
  const stats::NoPreference found = stats::noPreference(first, second, none, alpha);
  return {{"people", none}, {"share", numberOrNull(found.shareOfNone)}, {"without", votesJson(found.without)}, {"split_evenly", votesJson(found.splitEvenly)},
          {"split_as_voted", votesJson(found.splitAsVoted)}, {"changes", found.changes}};
}

Json countedJson(stats::Method method, int correct, int trials, double alpha, double level, std::optional<double> limit) {
  const stats::Counted counted = stats::count(method, correct, trials, alpha, level);
  const bool isPreference = method == stats::Method::preference, isEmpty = trials == 0;
  const double guess = stats::guessing(method);
  Json json;
  json["trials"] = trials;
  json["correct"] = correct;
  json["p_value"] = numberOrNull(counted.pValue);
  json["critical"] = numberOrNull(counted.critical);
  json["pc"] = isEmpty ? Json() : estimateJson(counted.pc);
  json["pd"] = isPreference || isEmpty ? Json() : estimateJson(counted.pd);
  json["d_prime"] = isPreference || isEmpty ? Json() : dPrimeJson(counted.dPrime);
  json["d_prime_se"] = numberOrNull(counted.dPrime.standardError);
  json["posterior"] = isPreference ? Json() : posteriorJson(correct, trials, guess, level);
  json["similarity"] = limit && !isPreference ? similarityJson(correct, trials, guess, alpha, *limit) : Json();
  if (const auto reason = whyOf(counted, isPreference)) json["why"] = *reason;
  return json;
}

}  // namespace oddglass::cli
