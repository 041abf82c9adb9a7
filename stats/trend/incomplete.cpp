#include "stats/trend/incomplete.h"

#include "stats/mixed/reml.h"

#include <algorithm>

namespace oddglass::stats {
namespace {

/// Beyond this the fit would take minutes.
constexpr int mostLevels = 400;

/// The slope between two sessions, by the tasters who sat in both.
Estimated betweenTwo(const Visits& visits) {
  const std::vector<double> change = changes(visits, 0, 1);
  if (change.empty()) return nothing(Reason::notConnected);
  return alone(meanAndSpread(change).mean / (visits.age[1] - visits.age[0]), Reason::fewSessions);
}

}  // namespace

void fitIncomplete(const Visits& visits, double level, Estimated& slope, TimeVariance& variance) {
  const auto refuse = [&](Reason why) {
    slope = nothing(why);
    variance.why = why;
  };
  if (visits.sessions() < 2) return refuse(Reason::oneSession);
  if (visits.age.front() == visits.age.back()) return refuse(Reason::oneAge);
  if (std::min(visits.tasters, visits.sessions()) > mostLevels) return refuse(Reason::tooLarge);
  if (visits.sessions() < 3) {
    refuse(Reason::fewSessions);
    slope = betweenTwo(visits);
    return;
  }
  // Ages from -1 to 1, so that the fit does not depend on their unit.
  const double middle = (visits.age.front() + visits.age.back()) / 2.0, half = (visits.age.back() - visits.age.front()) / 2.0;
  std::vector<double> values, age;
  RandomTerm taster{"taster", {{}, visits.tasterLevels}}, session{"session", {{}, visits.sessions()}};
  for (const Cell& cell : visits.cells) {
    values.push_back(cell.mean);
    age.push_back((visits.age[static_cast<std::size_t>(cell.column)] - middle) / half);
    taster.factor.of.push_back(cell.row);
    session.factor.of.push_back(cell.column);
  }
  FixedEffects fixed(values.size());
  fixed.addIntercept();
  fixed.addNumber("age", age);
  const Reml reml = fitReml(fixed, {taster, session}, values);
  if (!reml.fit) return refuse(reml.why.value_or(Reason::noConvergence));
  const auto part = [&](std::size_t term) -> std::optional<double> {
    const TermVariance& found = reml.fit->terms[term];
    if (found.state == TermState::confounded) return std::nullopt;
    return std::max(0.0, found.variance);
  };
  variance.taster = part(0);
  variance.session = part(1);
  variance.residual = reml.fit->residual;
  variance.isAtZero = reml.fit->singular;
  if (!variance.taster || !variance.session) variance.why = Reason::emptyCell;
  Eigen::VectorXd weights = fixed.contrast();
  weights(1) = 1.0 / half;
  const auto found = contrast(*reml.fit, weights, level);
  if (!found) {
    slope = alone(reml.fit->fixed(1) / half, Reason::fewSessions);
    return;
  }
  slope = byStudent(found->estimate, found->se, found->df, level);
}

}  // namespace oddglass::stats
