#include "domain/day.h"

#include "domain/text.h"

#include <charconv>
#include <chrono>

namespace oddglass {
namespace {

using std::chrono::sys_days;

std::optional<sys_days> dayFrom(std::string_view text) {
  if (!isDay(text)) return std::nullopt;
  const auto part = [&](std::size_t at, std::size_t length) {
    int value = 0;
    std::from_chars(text.data() + at, text.data() + at + length, value);
    return value;
  };
  return sys_days(std::chrono::year(part(0, 4)) / part(5, 2) / part(8, 2));
}

std::string padded(int value, std::size_t width) {
  std::string text = std::to_string(value);
  if (text.size() < width) text.insert(0, width - text.size(), '0');
  return text;
}

std::string textOf(sys_days day) {
  const std::chrono::year_month_day date(day);
  return padded(static_cast<int>(date.year()), 4) + '-' + padded(static_cast<int>(static_cast<unsigned>(date.month())), 2) + '-' +
         padded(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

}  // namespace

std::optional<int> daysBetween(std::string_view from, std::string_view to) {
  const auto first = dayFrom(from), second = dayFrom(to);
  if (!first || !second) return std::nullopt;
  return static_cast<int>((*second - *first).count());
}

std::optional<std::string> dayAfter(std::string_view day, int days) {
  const auto from = dayFrom(day);
  if (!from) return std::nullopt;
  const std::string text = textOf(*from + std::chrono::days(days));
  return isDay(text) ? std::optional(text) : std::nullopt;
}

std::string dayOf(Millis at) {
  return textOf(std::chrono::floor<std::chrono::days>(std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(at))));
}

}  // namespace oddglass
