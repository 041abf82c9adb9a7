#include "cli/given.h"

#include "domain/problem.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <type_traits>

namespace oddglass::cli {
namespace {

std::string shown(double value) {
  char text[400];
  return {text, std::to_chars(text, text + sizeof text, value, std::chars_format::fixed).ptr};
}

template <class Value>
Value readAll(const Given& given) {
  std::string text = given.text();
  // A comma before the fraction is what many people type.
  if (std::is_floating_point_v<Value> && std::ranges::count(text, ',') == 1 && text.find('.') == std::string::npos) std::ranges::replace(text, ',', '.');
  const std::size_t sign = text.size() > 1 && text[0] == '+' && text[1] != '-' ? 1 : 0;
  Value value{};
  const auto [end, error] = std::from_chars(text.data() + sign, text.data() + text.size(), value);
  if (error == std::errc::result_out_of_range && end == text.data() + text.size()) throw Problem(Trouble::outOfRange, given.name, {{"text", text}});
  if (error != std::errc{} || end != text.data() + text.size()) throw Problem(Trouble::notANumber, given.name, {{"text", text}});
  return value;
}

[[noreturn]] void outside(const Given& given, const std::string& low, const std::string& high) {
  throw Problem(Trouble::outOfRange, given.name, {{"text", given.text()}, {"low", low}, {"high", high}});
}

}  // namespace

const std::string& Given::text() const {
  if (!typed || typed->empty()) throw Problem(Trouble::empty, name);
  return *typed;
}

int Given::whole(int low, int high) const {
  const auto value = readAll<long long>(*this);
  if (value < low || value > high) outside(*this, std::to_string(low), std::to_string(high));
  return static_cast<int>(value);
}

double Given::number(double low, double high) const {
  const double value = readAll<double>(*this);
  if (!std::isfinite(value)) throw Problem(Trouble::notANumber, name, {{"text", text()}});
  if (value < low || value > high) outside(*this, shown(low), shown(high));
  return value;
}

double Given::openShare() const {
  const double value = number(0.0, 1.0);
  if (value <= 0.0 || value >= 1.0) outside(*this, "just above 0", "just below 1");
  return value;
}

double Given::openShareOr(double usual) const { return isGiven() ? openShare() : usual; }

const std::string& Given::oneOf(const std::vector<std::string>& choices) const {
  if (std::ranges::find(choices, text()) != choices.end()) return *typed;
  std::string all;
  for (const auto& each : choices) {
    // Labels of a table may be many.
    if (all.size() + each.size() > 1000) {
      all += " ...";
      break;
    }
    all += (all.empty() ? "" : ", ") + each;
  }
  throw Problem(Trouble::notAChoice, name, {{"text", *typed}, {"choices", all}});
}

}  // namespace oddglass::cli
