#include "cli/profile_map.h"

#include "cli/why.h"

namespace oddglass::cli {
namespace {

using stats::ProfileComponents;
using stats::SampleEllipse;
using stats::TasterRv;

template <class Row>
Json listed(const Row& row) {
  Json list = Json::array();
  for (Eigen::Index i = 0; i < row.size(); ++i) list.push_back(numberOrNull(row(i)));
  return list;
}

Json pointOrNull(const std::optional<Eigen::Vector2d>& point) { return point ? listed(*point) : Json(); }

std::string whyNoMap(const SampleEllipse& found) {
  if (found.why == stats::Reason::noSpread) return "there is no second axis, or the tasters' points lie on a line";
  return why(*found.why);
}

Json ellipseJson(const SampleEllipse& found, const std::string& sample) {
  Json json{{"sample", sample}, {"center", pointOrNull(found.center)}, {"semi_axes", pointOrNull(found.semiAxes)}, {"angle", numberOrNull(found.angle)}, {"tasters", found.points.size()}};
  if (!found.why) return json;
  json["why"] = whyNoMap(found);
  json["points"] = Json::array();
  for (const Eigen::Vector2d& point : found.points) json["points"].push_back(listed(point));
  return json;
}

}  // namespace

Json componentsJson(const ProfileComponents& found, const NamedScores& names, bool isScaled) {
  Json json{{"of", isScaled ? "correlation" : "covariance"}, {"variance", found.variances}, {"share", found.shares}, {"samples", Json::array()}, {"descriptors", Json::array()}, {"ellipses", Json::array()}};
  if (found.why) json["why"] = why(*found.why);
  for (Eigen::Index s = 0; s < found.samples.rows(); ++s) json["samples"].push_back({{"sample", names.samples[static_cast<std::size_t>(s)]}, {"scores", listed(found.samples.row(s))}});
  for (std::size_t d = 0; d < found.leftOut.size(); ++d) {
    Json row{{"descriptor", names.descriptors.names[d]}, {"loadings", nullptr}};
    if (found.leftOut[d]) row["why"] = why(*found.leftOut[d]);
    else if (!found.why) row["loadings"] = listed(found.descriptors.row(static_cast<Eigen::Index>(d)));
    json["descriptors"].push_back(std::move(row));
  }
  for (const SampleEllipse& each : found.ellipses) json["ellipses"].push_back(ellipseJson(each, names.samples[static_cast<std::size_t>(each.sample)]));
  return json;
}

Json rvJson(const std::vector<TasterRv>& found, const NamedScores& names) {
  Json all = Json::array();
  for (const TasterRv& each : found) {
    Json json{{"taster", names.tasters[static_cast<std::size_t>(each.taster)]}, {"rv", numberOrNull(each.rv)}, {"p_value", numberOrNull(each.pValue)}, {"permutation_mean", numberOrNull(each.expected)}};
    if (each.error) json["permutation_error"] = numberOrNull(each.error);
    json["samples"] = each.samples;
    json["descriptors"] = each.descriptors;
    if (each.why) json["why"] = why(*each.why);
    all.push_back(std::move(json));
  }
  return all;
}

Json resampledJson(const stats::ResampledProfile& found, const NamedScores& names) {
  Json json{{"means", Json::array()}};
  for (const stats::ResampledMean& each : found.means)
    json["means"].push_back({{"descriptor", names.descriptors.names[static_cast<std::size_t>(each.descriptor)]}, {"sample", names.samples[static_cast<std::size_t>(each.sample)]},
                             {"mean", numberOrNull(each.mean)}, {"low", numberOrNull(each.low)}, {"high", numberOrNull(each.high)}});
  if (found.why) json["why"] = *found.why == stats::Reason::fewTasters ? "under 20 tasters such an interval covers less than it says" : why(*found.why);
  return json;
}

}  // namespace oddglass::cli
