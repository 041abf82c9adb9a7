#pragma once

#include "cli/desk.h"
#include "cli/long_table.h"

#include <set>
#include <string>
#include <utility>
#include <vector>

namespace oddglass::cli {

/// FILE, --response, --sample and --taster, and those of --descriptor, --round, --session and --position that are named.
ScoreColumns scoreColumns(Command& command, const std::set<std::string>& more);

/// --limit: a number above 0.
double limitOf(const Given& limit);
/// --alpha of a test against a limit: 0.05 unless given, below one half.
double limitRisk(const Given& alpha);
/// The numbers of two different samples. Problem notAChoice that names the option.
std::pair<int, int> twoSamples(const NamedScores& scores, const Given& one, const Given& other);
/// The number of a label among `names`. Problem notAChoice that names the option.
int labelIn(const std::vector<std::string>& names, const Given& wanted);

}  // namespace oddglass::cli
