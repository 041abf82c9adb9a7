#include "cli/score_options.h"

#include "domain/problem.h"

#include <algorithm>

namespace oddglass::cli {

ScoreColumns scoreColumns(Command& command, const std::set<std::string>& more) {
  ScoreColumns columns;
  columns.file = command.argument("FILE", "A CSV table, one answer a row");
  if (more.contains("--descriptor")) columns.descriptor = command.option("--descriptor", "D", "The column that names the descriptor");
  columns.response = command.option("--response", "R", "The column of scores");
  columns.sample = command.option("--sample", "S", "The column that names the sample");
  columns.taster = command.option("--taster", "T", "The column that names the taster");
  if (more.contains("--round")) columns.round = command.option("--round", "K", "The column of rounds");
  if (more.contains("--session")) columns.session = command.option("--session", "V", "The column that names the session");
  if (more.contains("--position")) columns.position = command.option("--position", "P", "The column of the place in the flight, from 1");
  return columns;
}

double limitOf(const Given& limit) {
  const double most = limit.number(0.0, 1e12);
  if (!(most > 0.0)) throw Problem(Trouble::outOfRange, limit.name, {{"text", limit.text()}, {"low", "just above 0"}, {"high", "1000000000000"}});
  return most;
}

double limitRisk(const Given& alpha) {
  const double risk = alpha.openShareOr(0.05);
  if (risk >= 0.5) throw Problem(Trouble::outOfRange, alpha.name, {{"text", alpha.text()}, {"low", "just above 0"}, {"high", "just below 0.5"}});
  return risk;
}

int labelIn(const std::vector<std::string>& names, const Given& wanted) { return static_cast<int>(std::ranges::find(names, wanted.oneOf(names)) - names.begin()); }

std::pair<int, int> twoSamples(const NamedScores& scores, const Given& one, const Given& other) {
  const int first = labelIn(scores.samples, one), second = labelIn(scores.samples, other);
  if (first == second) throw Problem(Trouble::notAChoice, other.name, {{"text", other.text()}, {"choices", "another sample than " + one.name}});
  return {first, second};
}

}  // namespace oddglass::cli
