#pragma once

#include <string>
#include <vector>

/// Lines as one text, each with its end.
inline std::string joined(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += line + '\n';
  return all;
}
