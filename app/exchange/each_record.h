#pragma once

#include "exchange/node.h"

#include <set>
#include <string>

namespace oddglass::exchange {

/// Calls `work` for each record that `read` makes of the entries of a list. What is refused is named with its place in the file, and an id must
/// not stand twice.
template <class Read, class Work>
void eachRecord(const Node& file, const char* key, Read&& read, Work&& work) {
  std::set<std::string> ids;
  for (const Node& node : file.maybeList(key)) {
    const auto record = read(node);
    if (!ids.insert(record.id.text).second) node.at("id").refuse(Trouble::alreadyThere, {{"text", record.id.text}});
    try {
      work(record);
    } catch (const Problem& problem) {
      if (problem.values().contains("line")) throw;
      const auto missing = problem.trouble() == Trouble::unknown ? Trouble::brokenReference : problem.trouble();
      auto values = problem.values();
      values.emplace("text", problem.argument());
      const auto part = node.maybe(problem.argument().c_str());
      (part ? *part : node).refuse(missing, values);
    }
  }
}

}  // namespace oddglass::exchange
