#pragma once

#include "cli/desk.h"

#include <string>
#include <vector>

namespace oddglass::cli {

/// Does what the arguments (without the program's name) ask for and returns the exit status: 0 done, 1 what was asked for does not hold,
/// 2 bad input. Answers go to `out`; what is wrong goes to `err` in one line that names the argument, and with --json also to `out`.
int run(const std::vector<std::string>& arguments, Surroundings& around);

/// Where the demo may lie when the program stands in this folder: the source tree around a build, or a share folder beside it.
std::vector<std::filesystem::path> demoFoldersNear(const std::filesystem::path& programFolder);

}  // namespace oddglass::cli
