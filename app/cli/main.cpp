#include "blinding/chance.h"
#include "cli/run.h"

#include <iostream>

int main(int count, char** values) {
  oddglass::SystemClock clock;
  oddglass::blinding::SystemChance chance;
  std::error_code error;
  const auto program = std::filesystem::read_symlink("/proc/self/exe", error);
  oddglass::cli::Surroundings around{clock, chance, std::cout, std::cerr, {}, oddglass::cli::demoFoldersNear(program.parent_path()), program.parent_path() / "oddglass"};
  return oddglass::cli::run(std::vector<std::string>(values + (count > 0 ? 1 : 0), values + count), around);
}
