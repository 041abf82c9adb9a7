#include "cli/answer.h"

#include "domain/text.h"

#include <algorithm>
#include <charconv>

namespace oddglass::cli {
namespace {

/// Six digits are enough to read; --json has them all.
std::string digits(double value) {
  char text[40];
  const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::general, 6).ptr;
  return {text, end};
}

std::string cell(const Json& value) {
  if (value.is_null()) return "-";
  if (value.is_string()) return value.get<std::string>();
  if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
  if (value.is_number_float()) return digits(value.get<double>());
  if (!value.is_array() && !value.is_object()) return value.dump();
  std::string list;
  for (const auto& each : value) list += (list.empty() ? "" : ", ") + cell(each);
  return value.is_array() && list.empty() ? "-" : list;
}

std::string spoken(std::string name) {
  std::ranges::replace(name, '_', ' ');
  return name;
}

std::string filled(const std::string& text, std::size_t width) {
  const std::size_t letters = lettersIn(text);
  return text + std::string(width > letters ? width - letters : 0, ' ');
}

/// "0.5 (0.31 to 0.69)" for an estimate with its limits; empty for another object.
std::string estimateCell(const Json& object) {
  if (!object.contains("low") || !object.contains("high")) return {};
  for (const char* middle : {"estimate", "median", "mu"})
    if (object.contains(middle)) return cell(object[middle]) + " (" + cell(object["low"]) + " to " + cell(object["high"]) + ')';
  return {};
}

bool isGrid(const Json& value) { return value.is_array() && !value.empty() && value.front().is_array(); }

bool isTable(const Json& value) { return value.is_array() && !value.empty() && value.front().is_object(); }

std::string rowsOf(const Json& list, const std::string& indent) {
  std::vector<std::vector<std::string>> rows(1);
  for (const auto& [name, value] : list.front().items()) rows[0].push_back(spoken(name));
  for (const auto& each : list) {
    std::vector<std::string> row;
    for (const auto& [name, value] : each.items()) row.push_back(cell(value));
    rows.push_back(std::move(row));
  }
  std::vector<std::size_t> widths(rows[0].size());
  for (const auto& row : rows)
    for (std::size_t i = 0; i < std::min(row.size(), widths.size()); ++i) widths[i] = std::max(widths[i], lettersIn(row[i]));
  std::string text;
  for (const auto& row : rows) {
    std::string line = indent;
    for (std::size_t i = 0; i < row.size(); ++i) line += i + 1 < row.size() ? filled(row[i], widths[std::min(i, widths.size() - 1)] + 2) : row[i];
    text += line + '\n';
  }
  return text;
}

std::string linesOf(const Json& object, const std::string& indent) {
  std::size_t width = 0;
  for (const auto& [name, value] : object.items()) width = std::max(width, name.size() + 2);
  std::string text;
  for (const auto& [name, value] : object.items()) {
    const std::string head = indent + filled(spoken(name), width);
    if (isGrid(value)) {
      text += indent + spoken(name) + '\n';
      for (const auto& row : value) text += indent + "  " + cell(row) + '\n';
    } else if (isTable(value)) {
      text += indent + spoken(name) + '\n' + rowsOf(value, indent + "  ");
    } else if (value.is_object()) {
      const std::string estimate = estimateCell(value);
      Json rest = value;
      if (!estimate.empty())
        for (const char* told : {"estimate", "median", "mu", "low", "high"}) rest.erase(told);
      text += (estimate.empty() ? indent + spoken(name) : head + estimate) + '\n' + linesOf(rest, indent + "  ");
    } else {
      text += head + cell(value) + '\n';
    }
  }
  return text;
}

}  // namespace

std::string readable(const Json& object) { return linesOf(object, ""); }

}  // namespace oddglass::cli
