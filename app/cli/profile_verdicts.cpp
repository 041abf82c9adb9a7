#include "cli/profile_verdicts.h"

#include "cli/why.h"

namespace oddglass::cli {
namespace {

using stats::DescriptorProfile;
using stats::ProfileDifference;
using stats::ProfileQuestion;
using stats::ProfileVerdict;

std::string nameOf(ProfileVerdict verdict) {
  switch (verdict) {
    case ProfileVerdict::within: return "within the limit";
    case ProfileVerdict::less: return "less";
    case ProfileVerdict::more: return "more";
    case ProfileVerdict::cannotTell: return "cannot tell yet";
  }
  return {};
}

/// Why something is null here; empty where nothing is.
std::string whyNoVerdict(const ProfileDifference& found, const ProfileQuestion& question) {
  if (found.why) return why(*found.why);
  if (!found.low) return why(stats::Reason::noSpread);
  return question.limit ? std::string() : "no limit was given";
}

Json differenceJson(const ProfileDifference& found, const NamedScores& names, const ProfileQuestion& question) {
  Json json{{"sample", names.samples[static_cast<std::size_t>(found.sample)]},
            {"difference", numberOrNull(found.difference)},
            {"low", numberOrNull(found.low)},
            {"high", numberOrNull(found.high)},
            {"p_value", numberOrNull(found.pValue)},
            {"p_adjusted", numberOrNull(found.pAdjusted)},
            {"p_limit", numberOrNull(found.pLimit)},
            {"p_limit_adjusted", numberOrNull(found.pLimitAdjusted)},
            {"verdict", nameOf(found.verdict)},
            {"tasters", found.tasters},
            {"se", numberOrNull(found.se)},
            {"df", numberOrNull(found.df)},
            {"limit_low", numberOrNull(found.limitLow)},
            {"limit_high", numberOrNull(found.limitHigh)}};
  const std::string reason = whyNoVerdict(found, question);
  if (!reason.empty()) json["why"] = reason;
  return json;
}

}  // namespace

Json descriptorsJson(const std::vector<DescriptorProfile>& profile, const NamedScores& names, const ProfileQuestion& question) {
  Json all = Json::array();
  for (std::size_t d = 0; d < profile.size(); ++d) {
    const DescriptorProfile& found = profile[d];
    Json json{{"descriptor", names.descriptors.names[d]}, {"F", nullptr}, {"df1", nullptr}, {"df2", nullptr}, {"p_value", nullptr}, {"p_holm", nullptr}, {"p_bh", nullptr}};
    if (found.test)
      json = {{"descriptor", names.descriptors.names[d]}, {"F", numberOrNull(found.test->F)}, {"df1", numberOrNull(found.test->df1)}, {"df2", numberOrNull(found.test->df2)},
              {"p_value", numberOrNull(found.test->pValue)}, {"p_holm", numberOrNull(found.pHolm)}, {"p_bh", numberOrNull(found.pBenjaminiHochberg)}};
    json["fit"] = found.fit == stats::ScoreFit::classical ? "anova" : "reml";
    json["tasters"] = found.tasters;
    json["samples"] = found.samples;
    if (const std::string notes = notesOf(found.notes); !notes.empty()) json["note"] = notes;
    if (found.why) json["why"] = found.about.empty() ? why(*found.why) : why(*found.why) + ": " + found.about;
    json["differences"] = Json::array();
    for (const ProfileDifference& each : found.differences) json["differences"].push_back(differenceJson(each, names, question));
    all.push_back(std::move(json));
  }
  return all;
}

}  // namespace oddglass::cli
