#pragma once

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <vector>

namespace oddglass::cli {

/// JSON with its keys in the order they were written.
using Json = nlohmann::ordered_json;

/// The program's exit status: done; what was asked for does not hold; bad input, and nothing was written.
enum class Status { done = 0, doesNotHold = 1, badInput = 2 };

/// What a command came to, once for programs and once for people.
struct Answer {
  Json json;                       ///< one object
  std::vector<std::string> lines;  ///< sentences for people; a table of `json` stands in where there are none
  Status status = Status::done;
};

/// Puts more sentences behind those that are there.
void addLines(std::vector<std::string>& lines, const std::vector<std::string>& more);

/// A number that JSON can hold: null for nothing and for what is not finite.
Json numberOrNull(double value);
Json numberOrNull(const std::optional<double>& value);
Json numberOrNull(const std::optional<int>& value);

/// The object as a table for people: names to the left, an estimate with its limits in one line, lists of objects with a header row.
std::string readable(const Json& object);

}  // namespace oddglass::cli
