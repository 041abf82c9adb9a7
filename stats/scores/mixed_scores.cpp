#include "stats/mixed/reml.h"
#include "stats/multiple/spread.h"
#include "stats/scores/comparisons.h"
#include "stats/scores/fits.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace oddglass::stats {
namespace {

/// The fixed part, and where its columns are.
struct Model {
  FixedEffects fixed;
  Columns samples;
  std::vector<Columns> covariates;
  std::vector<RandomTerm> random;
};

Model modelOf(const ScoreRows& rows) {
  Model model{FixedEffects(rows.response.size()), {}, {}, {}};
  model.fixed.addIntercept();
  model.samples = model.fixed.addFactor("sample", rows.sample);
  const auto addCovariate = [&](const char* name, const std::optional<Factor>& factor) {
    if (!factor) return false;
    const Factor levels = occurring(*factor);
    if (levels.levels > 1) model.covariates.push_back(model.fixed.addFactor(name, levels));
    return levels.levels > 1;
  };
  addCovariate("position", rows.position);
  const bool hasSessions = addCovariate("session", rows.session);
  model.random = {{"taster", occurring(rows.taster)}, {"taster:sample", combined(rows.taster, rows.sample)}};
  if (hasSessions) model.random.push_back({"sample:session", combined(rows.sample, *rows.session)});
  return model;
}

void takeVariances(SampleScores& scores, const RemlFit& fit) {
  for (const TermVariance& term : fit.terms) {
    if (term.state == TermState::confounded) {
      scores.variances.push_back({term.name, {}, term.name == "taster:sample" ? Reason::noRepeats : Reason::confounded});
      scores.notes.push_back({ScoreNote::Kind::confounded, term.name});
      continue;
    }
    if (term.state == TermState::zero) scores.notes.push_back({ScoreNote::Kind::atZero, term.name});
    else scores.random.push_back(term.name);
    scores.variances.push_back({term.name, term.variance, {}});
  }
  scores.variances.push_back({"residual", fit.residual, {}});
  scores.remlCriterion = fit.criterion;
  scores.isSingular = fit.singular;
}

/// Weights of a sample's mean over the levels of the covariates, evenly.
Eigen::VectorXd weightsOf(const Model& model, int sample) {
  Eigen::VectorXd weights = model.fixed.contrast();
  weights(0) = 1.0;
  if (sample > 0) weights(model.samples.first + sample - 1) = 1.0;
  for (const Columns& each : model.covariates) weights.segment(each.first, each.count).setConstant(1.0 / (each.count + 1.0));
  return weights;
}

struct Compared {
  SampleDifference difference;
  bool isJudged = false;  ///< it has an error to be judged by
};

Compared compared(const RemlFit& fit, const Model& model, int a, int b, double level) {
  const Eigen::VectorXd weights = weightsOf(model, a) - weightsOf(model, b);
  Compared found{{a, b, weights.dot(fit.fixed), {}, {}, {}, {}, {}}};
  const auto student = contrast(fit, weights, level);
  if (!student || !(student->se > 0.0) || !(student->df >= fewestDf) || !std::isfinite(student->df)) return found;
  found.difference.se = student->se;
  found.difference.df = student->df;
  found.isJudged = true;
  return found;
}

std::vector<double> referenceLoads(const RemlFit& fit, const Model& model, int samples, int reference) {
  Eigen::MatrixXd weights(samples - 1, model.fixed.columns());
  for (int s = 0, row = 0; s < samples; ++s)
    if (s != reference) weights.row(row++) = (weightsOf(model, s) - weightsOf(model, reference)).transpose();
  const Eigen::MatrixXd covariance = weights * fit.covariance * weights.transpose();
  const Eigen::VectorXd scale = covariance.diagonal().cwiseSqrt().cwiseInverse();
  return loadsNear(scale.asDiagonal() * covariance * scale.asDiagonal());
}

SampleScores nothingButPlaces(SampleScores scores, const ScoreRows& rows, const ScoreQuestion& question) {
  const int samples = rows.sample.levels;
  for (int a = 0; a < samples; ++a) {
    scores.means.push_back({a, {}, {}, {}, {}, {}});
    for (int b = a + 1; question.withPairs && b < samples; ++b) scores.pairs.push_back({a, b, {}, {}, {}, {}, {}, {}});
    if (question.reference && a != *question.reference) scores.fromReference.push_back({a, *question.reference, {}, {}, {}, {}, {}, {}});
  }
  return scores;
}

}  // namespace

SampleScores mixedScores(const ScoreRows& rows, const ScoreQuestion& question) {
  SampleScores scores;
  scores.fit = ScoreFit::mixed;
  const auto without = [&](Reason why, const std::string& about = {}) {
    scores.why = why;
    scores.about = about;
    for (const char* term : {"taster", "taster:sample", "residual"}) scores.variances.push_back({term, {}, why});
    return nothingButPlaces(std::move(scores), rows, question);
  };
  if (std::set<int>(rows.taster.of.begin(), rows.taster.of.end()).size() < 2) return without(Reason::oneTaster);
  if (std::set<int>(rows.sample.of.begin(), rows.sample.of.end()).size() < static_cast<std::size_t>(rows.sample.levels)) return without(Reason::emptyCell);
  const Model model = modelOf(rows);
  const Reml reml = fitReml(model.fixed, model.random, rows.response);
  if (!reml.fit) return without(reml.why.value_or(Reason::noConvergence), reml.about);
  const RemlFit& fit = *reml.fit;
  takeVariances(scores, fit);

  const FTest test = fTest(fit, model.covariates.empty() ? model.fixed.sequential(model.samples) : model.fixed.allZero(model.samples));
  if (std::isfinite(test.F) && std::isfinite(test.df2) && std::isfinite(test.pValue) && test.df2 > 0.0) scores.test = ScoreTest{test.F, static_cast<double>(test.df1), test.df2, test.pValue};
  else scores.why = Reason::noConvergence;
  const int samples = rows.sample.levels;
  for (int s = 0; s < samples; ++s) {
    const Eigen::VectorXd weights = weightsOf(model, s);
    SampleMean mean{s, weights.dot(fit.fixed), {}, {}, {}, {}};
    if (const auto student = contrast(fit, weights, question.level)) {
      mean.se = student->se;
      mean.df = student->df;
      mean.low = student->low;
      mean.high = student->high;
    }
    if (!mean.se) scores.why = scores.why.value_or(Reason::noConvergence);
    scores.means.push_back(mean);
  }
  const auto add = [&](std::vector<SampleDifference>& list, int a, int b, const auto& judge) {
    Compared one = compared(fit, model, a, b, question.level);
    if (one.isJudged) judge(one.difference);
    else scores.why = scores.why.value_or(Reason::noConvergence);
    list.push_back(one.difference);
  };
  for (int a = 0; question.withPairs && a < samples; ++a)
    for (int b = a + 1; b < samples; ++b) add(scores.pairs, a, b, [&](SampleDifference& each) { addTukey(each, samples, question.level); });
  if (!question.reference) return scores;
  const std::vector<double> loads = referenceLoads(fit, model, samples, *question.reference);
  for (int s = 0; s < samples; ++s)
    if (s != *question.reference) add(scores.fromReference, s, *question.reference, [&](SampleDifference& each) { addDunnett(each, loads, question.level); });
  return scores;
}

}  // namespace oddglass::stats
