#include "beside/other.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <numbers>
#include <sstream>
#include <unistd.h>

namespace beside {
namespace {

/// What a command printed, and whether it ended well.
std::pair<std::string, bool> ran(const std::string& command) {
  std::string text;
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  if (!pipe) return {"no pipe", false};
  std::array<char, 4096> piece{};
  while (const std::size_t got = fread(piece.data(), 1, piece.size(), pipe)) text.append(piece.data(), got);
  return {text, pclose(pipe) == 0};
}

bool isThere(const std::string& command, const std::string& what) {
  static std::map<std::string, bool> known;
  const bool there = known.contains(command) ? known[command] : (known[command] = ran(command).second);
  const char* always = std::getenv("ODDGLASS_COMPARE");
  if (!there && always && std::string(always) == "always") FAIL(what << " is missing, and this run has to compare with it");
  if (!there) WARN(what << " is not installed: nothing was compared with it");
  return there;
}

Json answerOf(const std::string& program, const std::string& script, const std::string& ending) {
  static int count = 0;
  const auto file = std::filesystem::temp_directory_path() / ("oddglass-beside-" + std::to_string(getpid()) + '-' + std::to_string(++count) + ending);
  std::ofstream(file) << script;
  const auto [text, ended] = ran(program + " '" + file.string() + "'");
  std::filesystem::remove(file);
  INFO(text);
  REQUIRE(ended);
  // Packages may greet first: the value is the last line.
  std::istringstream lines(text);
  std::string last;
  for (std::string line; std::getline(lines, line);)
    if (!line.empty()) last = line;
  REQUIRE(Json::accept(last));
  return Json::parse(last);
}

std::string listed(const std::vector<double>& values, const char* open, const char* close) {
  std::ostringstream text;
  text.precision(17);
  text << open;
  for (std::size_t i = 0; i < values.size(); ++i) text << (i ? "," : "") << values[i];
  text << close;
  return text.str();
}

/// The system's own Python has the system's packages; another one may stand before it on the path.
std::string python() { return std::filesystem::exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3"; }

constexpr const char* startOfR = R"(
options(warn = -1)
out <- function(x) {
  one <- function(v) if (is.logical(v)) tolower(as.character(v)) else if (is.character(v)) encodeString(v, quote = '"') else ifelse(is.finite(v), formatC(v, digits = 17, format = "g", width = 1), "null")
  json <- function(v) {
    if (is.list(v)) {
      if (!is.null(names(v))) paste0("{", paste(sprintf('"%s":%s', names(v), sapply(v, json)), collapse = ","), "}")
      else paste0("[", paste(sapply(v, json), collapse = ","), "]")
    } else if (is.matrix(v)) paste0("[", paste(apply(v, 1, function(r) json(as.vector(r))), collapse = ","), "]")
    else paste0("[", paste(one(as.vector(v)), collapse = ","), "]")
  }
  cat("\n", json(x), "\n", sep = "")
}
)";

}  // namespace

bool hasR(const std::string& packages) {
  std::istringstream names(packages);
  std::string all = "invisible(TRUE)";
  for (std::string name; names >> name;) all += "; stopifnot(requireNamespace(\"" + name + "\", quietly = TRUE))";
  return isThere("Rscript --vanilla -e '" + all + "'", packages.empty() ? "R" : "R with " + packages);
}

bool hasPython() { return isThere(python() + " -c 'import scipy, numpy'", "Python with SciPy"); }

Json inR(const std::string& script) { return answerOf("Rscript --vanilla", startOfR + script, ".R"); }
Json inPython(const std::string& script) { return answerOf(python(), script, ".py"); }

std::string forR(const std::vector<double>& values) { return listed(values, "c(", ")"); }
std::string forPython(const std::vector<double>& values) { return listed(values, "[", "]"); }

std::uint64_t Seeded::next() {
  std::uint64_t z = (state_ += 0x9e3779b97f4a7c15ULL);
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
  return z ^ (z >> 31);
}

double Seeded::uniform() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }

double Seeded::normal() {
  const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
  return radius * std::cos(2.0 * std::numbers::pi * uniform());
}

int Seeded::below(int n) { return static_cast<int>(uniform() * n); }

}  // namespace beside
