#include "stats/profile/rv.h"

#include "stats/profile/rearranged.h"

#include <cmath>
#include <map>

namespace oddglass::stats {
namespace {

constexpr int fewestSamples = 4;

/// A table of samples by descriptors with its columns centred; columns that are nothing but rounding are zero.
Eigen::MatrixXd columnCentred(const Eigen::MatrixXd& table) {
  Eigen::MatrixXd rest = table.rowwise() - table.colwise().mean();
  for (Eigen::Index d = 0; d < table.cols(); ++d)
    if (rest.col(d).cwiseAbs().maxCoeff() <= 1e-13 * table.col(d).cwiseAbs().maxCoeff()) rest.col(d).setZero();
  return rest;
}

/// A taster's table and the others' mean, on what both have.
struct Configurations {
  TasterRv found;
  Eigen::MatrixXd own, others;
};

class Tables {
 public:
  explicit Tables(const ProfileCells& cells) : cells_(cells) {
    for (const auto& each : cells.descriptors) {
      tables_.push_back(tasterTable(each, cells.tasters, cells.samples));
      isFull_.push_back(each.size() == static_cast<std::size_t>(cells.tasters) * static_cast<std::size_t>(cells.samples));
      sums_.push_back(tables_.back().mean.colwise().sum().transpose());
    }
  }

  Configurations of(int taster) const {
    Configurations both{{}, {}, {}};
    both.found.taster = taster;
    if (cells_.tasters < 2) {
      both.found.why = Reason::oneTaster;
      return both;
    }
    std::vector<std::size_t> kept;
    std::vector<Eigen::VectorXd> means;
    std::optional<Reason> why;
    for (std::size_t d = 0; d < tables_.size(); ++d) {
      if (!tables_[d].has.row(taster).any()) continue;
      PanelMeans others = isFull_[d] ? plain(d, taster) : panelMeans(cells_.descriptors[d], cells_.tasters, cells_.samples, taster);
      if (!others.samples) why = others.why;
      if (!others.samples) continue;
      kept.push_back(d);
      means.push_back(std::move(*others.samples));
    }
    std::vector<int> samples;
    for (int s = 0; !kept.empty() && s < cells_.samples; ++s)
      if (std::ranges::all_of(kept, [&](std::size_t d) { return tables_[d].has(taster, s); })) samples.push_back(s);
    both.found.samples = static_cast<int>(samples.size());
    both.found.descriptors = static_cast<int>(kept.size());
    if (both.found.samples < fewestSamples) both.found.why = kept.empty() && why ? *why : Reason::fewSamples;
    if (both.found.why) return both;
    both.own.resize(both.found.samples, both.found.descriptors);
    both.others = both.own;
    for (Eigen::Index d = 0; d < both.own.cols(); ++d)
      for (Eigen::Index s = 0; s < both.own.rows(); ++s) {
        const int sample = samples[static_cast<std::size_t>(s)];
        both.own(s, d) = tables_[kept[static_cast<std::size_t>(d)]].mean(taster, sample);
        both.others(s, d) = means[static_cast<std::size_t>(d)](sample);
      }
    return both;
  }

 private:
  /// The others' plain means where nothing is missing.
  PanelMeans plain(std::size_t d, int taster) const { return {(sums_[d] - tables_[d].mean.row(taster).transpose()) / (cells_.tasters - 1.0), {}, {}}; }

  const ProfileCells& cells_;
  std::vector<TasterTable> tables_;
  std::vector<char> isFull_;
  std::vector<Eigen::VectorXd> sums_;
};

}  // namespace

std::vector<TasterRv> rvOf(const ProfileCells& cells) {
  const Tables tables(cells);
  std::vector<TasterRv> found;
  std::map<int, std::vector<Likeness>> pairs;  // by the number of samples: those of one number share their orders
  std::map<int, std::vector<std::size_t>> whose;
  for (int taster = 0; taster < cells.tasters; ++taster) {
    const Configurations both = tables.of(taster);
    found.push_back(both.found);
    TasterRv& each = found.back();
    if (each.why) continue;
    const Eigen::MatrixXd own = columnCentred(both.own), others = columnCentred(both.others);
    Likeness likeness{own * own.transpose(), others * others.transpose()};
    const double size = likeness.one.norm() * likeness.other.norm();
    if (!(size > 0.0) || !std::isfinite(size)) {
      each.why = Reason::noSpread;
      continue;
    }
    each.rv = std::min(1.0, (likeness.one.array() * likeness.other.array()).sum() / size);
    each.expected = likeness.one.trace() * likeness.other.trace() / ((each.samples - 1.0) * size);
    pairs[each.samples].push_back(std::move(likeness));
    whose[each.samples].push_back(static_cast<std::size_t>(taster));
  }
  for (const auto& [samples, all] : pairs) {
    const std::vector<DrawnP> p = asLikeRearranged(all);
    for (std::size_t i = 0; i < p.size(); ++i) {
      TasterRv& each = found[whose[samples][i]];
      each.pValue = p[i].pValue;
      if (p[i].error > 0.0) each.error = p[i].error;
    }
  }
  return found;
}

}  // namespace oddglass::stats
