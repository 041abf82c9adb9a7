#pragma once

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <cstdint>
#include <string>
#include <vector>

/// Other people's statistics in the same run: R (base, lme4, lmerTest, ordinal, multcomp) and Python (NumPy, SciPy).
namespace beside {

using Json = nlohmann::json;

/// True when the program is installed with the packages named. Where the environment says ODDGLASS_COMPARE=always, a missing one fails the test.
bool hasR(const std::string& packages = "");
bool hasPython();

/// Runs a script that prints one JSON value and gives it back. R scripts may use `out(x)`, which prints a list or vector of numbers as JSON with
/// 17 digits (nested named lists become objects; NA and what is not finite become null); Python scripts use json.dumps.
/// A script that fails, fails the test with what it said.
Json inR(const std::string& script);
Json inPython(const std::string& script);

/// A number that R may have given as a list of one.
inline double numberIn(const Json& value) { return (value.is_array() ? value.at(0) : value).get<double>(); }
inline double numberIn(const Json& list, std::size_t i) { return list.at(i).get<double>(); }

/// Levels of a factor as numbers.
inline std::vector<double> doubles(const std::vector<int>& values) { return {values.begin(), values.end()}; }

/// Numbers as R and Python read them: c(1, 2), [1, 2], with 17 digits.
std::string forR(const std::vector<double>& values);
std::string forPython(const std::vector<double>& values);

/// Rows of one length as a matrix of R.
template <class Rows>
std::string matrixForR(const Rows& rows) {
  std::vector<double> all;
  for (const auto& row : rows) all.insert(all.end(), row.begin(), row.end());
  return "matrix(" + forR(all) + ", nrow = " + std::to_string(rows.size()) + ", byrow = TRUE)";
}

/// A small generator for test data: the same numbers on every machine (splitmix64, public domain; Steele, Lea and Flood 2014).
class Seeded {
 public:
  explicit Seeded(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next();
  double uniform();   ///< [0, 1), 53 bits
  double normal();    ///< standard normal, by Box and Muller
  int below(int n);

 private:
  std::uint64_t state_;
};

}  // namespace beside
