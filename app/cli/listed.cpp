#include "cli/listed.h"

#include "domain/problem.h"

#include <algorithm>

namespace oddglass::cli {

std::vector<int> wholesIn(const Given& given, int low, int high) {
  const std::string& text = given.text();
  if (std::ranges::count(text, ',') >= 1'000'000) throw Problem(Trouble::outOfRange, given.name, {{"text", text.substr(0, 20)}, {"low", "1"}, {"high", "1000000"}});
  std::vector<int> all;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t end = std::min(text.find(',', from), text.size());
    all.push_back(Given{given.name, text.substr(from, end - from)}.whole(low, high));
    from = end + 1;
  }
  return all;
}

}  // namespace oddglass::cli
