// Writes the files of demo_sessions anew: make_demo FOLDER
#include "demo/demo_files.h"
#include "domain/problem.h"

#include <filesystem>
#include <fstream>
#include <iostream>

int main(int count, char** words) {
  if (count != 2 || !std::filesystem::is_directory(words[1])) {
    std::cerr << "make_demo FOLDER\n";
    return 2;
  }
  try {
    for (const auto& [name, text] : demoFiles()) {
      std::ofstream(std::filesystem::path(words[1]) / name, std::ios::binary | std::ios::trunc) << text;
      std::cout << name << ' ' << text.size() << '\n';
    }
  } catch (const std::exception& error) {
    std::cerr << error.what() << '\n';
    return 1;
  }
}
