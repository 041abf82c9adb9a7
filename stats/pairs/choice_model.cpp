#include "stats/pairs/choice_model.h"

#include <array>
#include <cmath>

namespace oddglass::stats {
namespace {

constexpr double farOff = 30.0;

/// Where the estimates stand, and how the score of an outcome is made of them: a few entries that are not zero.
class Layout {
 public:
  Layout(int samples, const ChoiceTerms& terms)
      : worths_(terms.hasWorths ? samples - 1 : 0), nu_(terms.hasTies ? worths_ : -1), order_(terms.hasOrder ? worths_ + terms.hasTies : -1), size_(worths_ + terms.hasTies + terms.hasOrder) {}

  struct Entry {
    int at;
    double by;
  };
  using Score = std::vector<Entry>;

  int size() const { return size_; }
  bool hasTies() const { return nu_ >= 0; }
  std::array<Score, 3> scores(const PairCount& pair) const {
    std::array<Score, 3> all;
    add(all[0], pair.left, 1.0);
    add(all[1], pair.right, 1.0);
    add(all[2], pair.left, 0.5);
    add(all[2], pair.right, 0.5);
    if (nu_ >= 0) all[2].push_back({nu_, 1.0});
    if (order_ >= 0) {
      all[0].push_back({order_, 0.5});
      all[1].push_back({order_, -0.5});
    }
    return all;
  }

 private:
  void add(Score& score, int sample, double by) const {
    if (sample < worths_) score.push_back({sample, by});
  }

  int worths_, nu_, order_, size_;
};

struct Slope {
  double logLikelihood = 0.0;
  Eigen::VectorXd gradient;
  Eigen::MatrixXd information;
};

Slope slopeAt(const Eigen::VectorXd& at, const std::vector<PairCount>& counts, const Layout& layout, bool isWhole) {
  Slope slope{0.0, Eigen::VectorXd::Zero(layout.size()), Eigen::MatrixXd::Zero(isWhole ? layout.size() : 0, isWhole ? layout.size() : 0)};
  for (const PairCount& pair : counts) {
    const auto scores = layout.scores(pair);
    const std::array<double, 3> seen{pair.leftWins, pair.rightWins, pair.ties};
    const std::size_t outcomes = layout.hasTies() ? 3 : 2;
    std::array<double, 3> value{}, chance{};
    for (std::size_t o = 0; o < outcomes; ++o)
      for (const auto& [where, by] : scores[o]) value[o] += by * at(where);
    double most = value[0], sum = 0.0, all = 0.0;
    for (std::size_t o = 1; o < outcomes; ++o) most = std::max(most, value[o]);
    for (std::size_t o = 0; o < outcomes; ++o) sum += chance[o] = std::exp(value[o] - most);
    for (std::size_t o = 0; o < outcomes; ++o) {
      chance[o] /= sum;
      all += seen[o];
      if (seen[o] > 0.0) slope.logLikelihood += seen[o] * (value[o] - most - std::log(sum));
    }
    if (!isWhole) continue;
    Layout::Score mean;
    for (std::size_t o = 0; o < outcomes; ++o)
      for (const auto& [where, by] : scores[o]) {
        slope.gradient(where) += (seen[o] - all * chance[o]) * by;
        mean.push_back({where, chance[o] * by});
        for (const auto& [other, with] : scores[o]) slope.information(where, other) += all * chance[o] * by * with;
      }
    for (const auto& [where, by] : mean)
      for (const auto& [other, with] : mean) slope.information(where, other) -= all * by * with;
  }
  return slope;
}

}  // namespace

std::optional<ChoiceFit> fitChoices(const std::vector<PairCount>& counts, int samples, const ChoiceTerms& terms) {
  const Layout layout(samples, terms);
  Eigen::VectorXd at = Eigen::VectorXd::Zero(layout.size());
  Slope here = slopeAt(at, counts, layout, true);
  if (layout.size() == 0) return ChoiceFit{at, here.information, here.logLikelihood};
  for (int step = 0; step < 200; ++step) {
    const Eigen::LLT<Eigen::MatrixXd> root(here.information);
    if (root.info() != Eigen::Success) return std::nullopt;
    const Eigen::VectorXd move = root.solve(here.gradient);
    if (here.gradient.dot(move) < 1e-20 * (1.0 + std::abs(here.logLikelihood)) || move.cwiseAbs().maxCoeff() < 1e-13)
      return ChoiceFit{at, root.solve(Eigen::MatrixXd::Identity(layout.size(), layout.size())), here.logLikelihood};
    double share = 1.0;
    while (share > 1e-10 && slopeAt(at + share * move, counts, layout, false).logLikelihood < here.logLikelihood - 1e-12 * std::abs(here.logLikelihood)) share /= 2.0;
    at += share * move;
    if (!(at.cwiseAbs().maxCoeff() < farOff)) return std::nullopt;
    here = slopeAt(at, counts, layout, true);
  }
  return std::nullopt;
}

}  // namespace oddglass::stats
