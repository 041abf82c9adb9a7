#include "stats/profile/profile.h"

#include "stats/binomial.h"
#include "stats/check.h"
#include "stats/multiple/adjust.h"

#include <algorithm>
#include <cmath>

namespace oddglass::stats {
namespace {

std::optional<double> limitOf(const ProfileQuestion& question, int descriptor) {
  return question.limits.empty() ? question.limit : question.limits[static_cast<std::size_t>(descriptor)];
}

void requireQuestion(const ProfileRows& rows, const ProfileQuestion& question) {
  requireSound(rows);
  requireOpenShare("alpha", question.alpha);
  if (question.level) requireOpenShare("level", *question.level);
  if (question.reference && (*question.reference < 0 || *question.reference >= rows.scores.sample.levels)) throw BadInput("reference", "is none of the samples");
  if (!question.limits.empty() && static_cast<int>(question.limits.size()) != rows.descriptor.levels) throw BadInput("limits", "must be one for each descriptor");
  for (int descriptor = 0; descriptor < std::max(1, rows.descriptor.levels); ++descriptor) {
    const auto limit = limitOf(question, descriptor);
    if (!limit) continue;
    if (!(*limit > 0.0) || !std::isfinite(*limit)) throw BadInput("limit", "must be above 0");
    if (question.alpha >= 0.5) throw BadInput("alpha", "must lie below 0.5 for a limit");
  }
}

/// The F test of a descriptor, on what occurs in it.
DescriptorProfile tested(ScoreRows rows) {
  DescriptorProfile found;
  rows.sample = occurring(rows.sample);
  rows.taster = occurring(rows.taster);
  found.samples = rows.sample.levels;
  found.tasters = rows.taster.levels;
  if (rows.response.empty()) {
    found.why = Reason::fewAnswers;
  } else if (found.samples < 2) {
    found.why = Reason::fewSamples;
  } else {
    ScoreQuestion question;
    question.withPairs = false;
    SampleScores scores = scoresOf(rows, question);
    found.fit = scores.fit;
    found.test = scores.test;
    found.notes = std::move(scores.notes);
    found.about = std::move(scores.about);
    if (!found.test) found.why = scores.why.value_or(Reason::noSpread);
  }
  return found;
}

std::vector<double> adjusted(const std::vector<double>& p, ProfileAdjust by) {
  switch (by) {
    case ProfileAdjust::benjaminiHochberg: return adjustBenjaminiHochberg(p);
    case ProfileAdjust::holm: return adjustHolm(p);
    case ProfileAdjust::none: break;
  }
  return p;
}

/// Adjusts one p of each of these and puts it where it belongs; those without a p are left out.
template <class Each>
void adjustAll(const std::vector<Each*>& all, std::optional<double> Each::*p, std::optional<double> Each::*into, ProfileAdjust by) {
  std::vector<double> values;
  for (const Each* each : all)
    if (each->*p) values.push_back(*(each->*p));
  values = adjusted(values, by);
  auto next = values.begin();
  for (Each* each : all)
    if (each->*p) each->*into = *next++;
}

ProfileVerdict verdictOf(const ProfileDifference& found, double alpha) {
  if (found.pLimitAdjusted && atMost(*found.pLimitAdjusted, alpha)) return ProfileVerdict::within;
  if (found.pAdjusted && atMost(*found.pAdjusted, alpha)) return *found.difference < 0.0 ? ProfileVerdict::less : ProfileVerdict::more;
  return ProfileVerdict::cannotTell;
}

void adjustTests(std::vector<DescriptorProfile>& profile) {
  struct Tested {
    std::optional<double> p, holm, bh;
  };
  std::vector<Tested> tests;
  std::vector<Tested*> all;
  for (const DescriptorProfile& each : profile) tests.push_back({each.test ? std::optional(each.test->pValue) : std::nullopt, {}, {}});
  for (Tested& each : tests) all.push_back(&each);
  adjustAll(all, &Tested::p, &Tested::holm, ProfileAdjust::holm);
  adjustAll(all, &Tested::p, &Tested::bh, ProfileAdjust::benjaminiHochberg);
  for (std::size_t d = 0; d < profile.size(); ++d) {
    profile[d].pHolm = tests[d].holm;
    profile[d].pBenjaminiHochberg = tests[d].bh;
  }
}

}  // namespace

std::vector<DescriptorProfile> profileOf(const ProfileRows& rows, const ProfileQuestion& question) {
  requireQuestion(rows, question);
  std::vector<DescriptorProfile> profile;
  DunnettTables known;
  for (const ScoreRows& part : byDescriptor(rows)) {
    profile.push_back(tested(part));
    if (!question.reference) continue;
    const DifferenceQuestion asked{*question.reference, limitOf(question, static_cast<int>(profile.size()) - 1), question.alpha, question.level.value_or(1.0 - question.alpha)};
    profile.back().differences = differencesFromReference(cellsOf(part.response, part.taster, part.sample), part.taster.levels, part.sample.levels, asked, known);
  }
  adjustTests(profile);
  const std::size_t others = question.reference ? static_cast<std::size_t>(rows.scores.sample.levels - 1) : 0;
  for (std::size_t other = 0; other < others; ++other) {
    std::vector<ProfileDifference*> all;
    for (DescriptorProfile& each : profile) all.push_back(&each.differences[other]);
    adjustAll(all, &ProfileDifference::pValue, &ProfileDifference::pAdjusted, question.adjust);
    adjustAll(all, &ProfileDifference::pLimit, &ProfileDifference::pLimitAdjusted, question.adjust);
    for (ProfileDifference* each : all) each->verdict = verdictOf(*each, question.alpha);
  }
  return profile;
}

}  // namespace oddglass::stats
