#pragma once

#include <optional>
#include <string>
#include <vector>

namespace oddglass::cli {

/// One option or argument as it was typed; nothing when it was not given. All of them are read here, so that what is wrong is named in one way.
struct Given {
  std::string name;  ///< "--trials", or "FILE" for an argument without a name
  std::optional<std::string> typed;

  bool isGiven() const { return typed.has_value(); }

  /// As typed; Problem empty when it was not given, or is empty.
  const std::string& text() const;
  /// A whole number. Problems: empty, notANumber, outOfRange.
  int whole(int low, int high) const;
  int wholeOr(int usual, int low, int high) const { return isGiven() ? whole(low, high) : usual; }
  /// A number with a point (or one comma) before the fraction. Problems: empty, notANumber (also for what is not finite), outOfRange.
  double number(double low, double high) const;
  double numberOr(double usual, double low, double high) const { return isGiven() ? number(low, high) : usual; }
  /// A number strictly between 0 and 1.
  double openShareOr(double usual) const;
  double openShare() const;
  /// One of these words. Problems: empty, notAChoice.
  const std::string& oneOf(const std::vector<std::string>& choices) const;
};

}  // namespace oddglass::cli
