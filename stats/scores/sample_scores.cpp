#include "stats/scores/sample_scores.h"

#include "stats/check.h"
#include "stats/scores/fits.h"

#include <cmath>

namespace oddglass::stats {
namespace {

bool varies(const std::optional<Factor>& factor) {
  if (!factor) return false;
  for (int level : factor->of)
    if (level != factor->of.front()) return true;
  return false;
}

}  // namespace

SampleScores scoresOf(const ScoreRows& rows, const ScoreQuestion& question) {
  requireSound(rows);
  requireOpenShare("level", question.level);
  if (question.reference && (*question.reference < 0 || *question.reference >= rows.sample.levels)) throw BadInput("reference", "is none of the samples");
  for (double value : rows.response)
    if (std::abs(value) > 1e100) throw BadInput("response", "must not be above 1e100");
  if (rows.sample.levels > 200) throw BadInput("sample", "must not be more than 200");
  if (!varies(rows.position) && !varies(rows.session)) {
    if (const auto table = balancedTable(rows)) return classicalScores(*table, question);
  }
  return mixedScores(rows, question);
}

}  // namespace oddglass::stats
