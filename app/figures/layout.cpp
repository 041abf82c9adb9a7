#include "figures/layout.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace oddglass::figures {
namespace {

bool continues(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }

/// Bytes of the character that begins at `at`.
std::size_t characterAt(std::string_view text, std::size_t at) {
  std::size_t end = at + 1;
  while (end < text.size() && continues(text[end])) ++end;
  return end - at;
}

/// Share of the type size that one character may take. Bounds Inter and DejaVu Sans (measured), but for a few digraphs.
double widthOf(std::string_view character) {
  const auto first = static_cast<unsigned char>(character[0]);
  if (first >= 0x80) return 1.1;
  static constexpr std::string_view narrow = " .,:;'!|ijlft()[]/-";
  static constexpr std::string_view wide = "mwMW@%&";
  if (narrow.find(character[0]) != std::string_view::npos) return 0.47;
  if (wide.find(character[0]) != std::string_view::npos) return 1.01;
  if (first >= 'A' && first <= 'Z') return 0.8;
  if (first >= 'a' && first <= 'z') return 0.64;
  if (first >= '0' && first <= '9') return 0.65;
  return 0.85;
}

struct Taken {
  double from, to;
};

}  // namespace

double roomFor(std::string_view text, double size) {
  double sum = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t bytes = characterAt(text, at);
    sum += widthOf(text.substr(at, bytes));
    at += bytes;
  }
  return sum * size;
}

std::vector<std::string> wrapped(std::string_view text, double width, const Measure& measure) {
  std::vector<std::string> lines;
  std::string line;
  const auto fits = [&](const std::string& candidate) { return measure(candidate, smallType) <= width; };
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    std::string word(text.substr(at, end - at));
    at = std::min(end + 1, text.size());
    if (word.empty()) continue;
    const std::string joined = line.empty() ? word : line + ' ' + word;
    if (fits(joined)) {
      line = joined;
      continue;
    }
    if (!line.empty()) lines.push_back(line);
    line.clear();
    for (std::size_t i = 0; i < word.size();) {
      const std::size_t bytes = characterAt(word, i);
      const std::string next = line + word.substr(i, bytes);
      if (!line.empty() && !fits(next)) {
        lines.push_back(line);
        line = word.substr(i, bytes);
      } else {
        line = next;
      }
      i += bytes;
    }
  }
  if (!line.empty()) lines.push_back(line);
  return lines;
}

double addLines(Figure& figure, std::string_view text, double y, double width, Role role, const Measure& measure) {
  double baseline = y;
  bool first = true;
  for (const std::string& line : wrapped(text, width, measure)) {
    if (!first) baseline += lineHeight;
    first = false;
    figure.marks.push_back({Text{0, baseline, smallType, Anchor::start, line}, role, {}});
  }
  return baseline;
}

double addLabels(Figure& figure, const std::vector<Label>& labels, double y, double width, const Measure& measure) {
  constexpr double gap = 8;
  std::vector<std::vector<Taken>> rows;
  double lowest = y;
  for (const Label& label : labels) {
    const std::vector<std::string> lines = wrapped(label.text, width, measure);
    if (lines.empty()) continue;
    double widest = 0;
    for (const std::string& line : lines) widest = std::max(widest, measure(line, smallType));
    const double left = std::clamp(label.x - widest / 2, 0.0, std::max(0.0, width - widest));
    const auto isFree = [&](std::size_t row) {
      return row >= rows.size() || std::none_of(rows[row].begin(), rows[row].end(),
                                                [&](const Taken& t) { return left < t.to + gap && t.from < left + widest + gap; });
    };
    const auto fitsFrom = [&](std::size_t row) {
      for (std::size_t i = 0; i < lines.size(); ++i)
        if (!isFree(row + i)) return false;
      return true;
    };
    std::size_t row = 0;
    while (!fitsFrom(row)) ++row;
    for (std::size_t i = 0; i < lines.size(); ++i, ++row) {
      if (rows.size() <= row) rows.resize(row + 1);
      rows[row].push_back({left, left + widest});
      const double baseline = y + lineHeight * static_cast<double>(row);
      lowest = std::max(lowest, baseline);
      figure.marks.push_back({Text{left + widest / 2, baseline, smallType, Anchor::middle, lines[i]}, label.role, {}});
    }
  }
  return lowest;
}

double blockHeight(std::size_t lines) { return lines == 0 ? 0 : smallType + descent + lineHeight * static_cast<double>(lines - 1); }

void requireShare(const char* name, double value) {
  if (!(value >= 0 && value <= 1)) throw std::invalid_argument(std::string(name) + ": not between 0 and 1");
}

void requireWidth(double width) {
  if (!(width >= 120) || !std::isfinite(width)) throw std::invalid_argument("width: below 120 points");
}

}  // namespace oddglass::figures
