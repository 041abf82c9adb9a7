#include "words/numbers.h"

#include "words/mark.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace oddglass::words {
namespace {

std::string grouped(const Voice& voice, std::string digits) {
  for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, voice.group);
  return digits;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

struct Often {
  double share;
  const char* words;
};

/// The shares that people say without thinking, least first.
const std::array<Often, 13>& sayable() {
  static const std::array<Often, 13> all{{
      {0.05, QT_TRANSLATE_NOOP("words", "once in 20")},
      {0.1, QT_TRANSLATE_NOOP("words", "once in 10")},
      {0.2, QT_TRANSLATE_NOOP("words", "2 times in 10")},
      {0.25, QT_TRANSLATE_NOOP("words", "once in four")},
      {1.0 / 3, QT_TRANSLATE_NOOP("words", "once in three")},
      {0.4, QT_TRANSLATE_NOOP("words", "4 times in 10")},
      {0.5, QT_TRANSLATE_NOOP("words", "half the time")},
      {0.6, QT_TRANSLATE_NOOP("words", "6 times in 10")},
      {2.0 / 3, QT_TRANSLATE_NOOP("words", "two times in three")},
      {0.75, QT_TRANSLATE_NOOP("words", "3 times in 4")},
      {0.8, QT_TRANSLATE_NOOP("words", "8 times in 10")},
      {0.9, QT_TRANSLATE_NOOP("words", "9 times in 10")},
      {0.95, QT_TRANSLATE_NOOP("words", "19 times in 20")},
  }};
  return all;
}

constexpr double beyond = 0.01;  // a sayable share may promise this much more than there is
constexpr double close = 0.025;  // one this close is called "about" the sayable one

}  // namespace

std::string whole(const Voice& voice, long long value) {
  std::string digits = std::to_string(value);
  const bool negative = digits[0] == '-';
  if (negative) digits.erase(0, 1);
  digits = grouped(voice, std::move(digits));
  return negative ? "−" + digits : digits;
}

std::string decimal(const Voice& voice, double value, int places) {
  std::array<char, 400> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::fabs(value), std::chars_format::fixed, std::clamp(places, 0, 9)).ptr;
  const std::string digits(buffer.data(), end);
  const bool negative = value < 0 && digits.find_first_not_of("0.") != std::string::npos;
  const std::size_t point = digits.find('.');
  std::string text = grouped(voice, digits.substr(0, point));
  if (point != std::string::npos) text += voice.decimal + digits.substr(point + 1);
  return negative ? "−" + text : text;
}

std::string strength(const Voice& voice, int hundredths) {
  const int places = hundredths % 100 == 0 ? 0 : hundredths % 10 == 0 ? 1 : 2;
  return say(voice, QT_TRANSLATE_NOOP("words", "{number} %"), {{"number", decimal(voice, hundredths / 100.0, places)}});
}

std::optional<double> readNumber(std::string_view text) {
  std::string plain(trimmed(text));
  std::replace(plain.begin(), plain.end(), ',', '.');
  if (constexpr std::string_view minus = "−"; plain.starts_with(minus)) plain.replace(0, minus.size(), "-");
  double value = 0;
  const char* end = plain.data() + plain.size();
  const auto [stop, error] = std::from_chars(plain.data(), end, value, std::chars_format::fixed);
  if (error != std::errc() || stop != end || !std::isfinite(value)) return std::nullopt;
  return value;
}

std::optional<long long> readWhole(std::string_view text) {
  text = trimmed(text);
  long long value = 0;
  const auto [stop, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || stop != text.data() + text.size()) return std::nullopt;
  return value;
}

std::string spelled(const Voice& voice, int count) {
  static constexpr std::array<const char*, 12> words{
      QT_TRANSLATE_NOOP("words", "one"), QT_TRANSLATE_NOOP("words", "two"), QT_TRANSLATE_NOOP("words", "three"),
      QT_TRANSLATE_NOOP("words", "four"), QT_TRANSLATE_NOOP("words", "five"), QT_TRANSLATE_NOOP("words", "six"),
      QT_TRANSLATE_NOOP("words", "seven"), QT_TRANSLATE_NOOP("words", "eight"), QT_TRANSLATE_NOOP("words", "nine"),
      QT_TRANSLATE_NOOP("words", "ten"), QT_TRANSLATE_NOOP("words", "eleven"), QT_TRANSLATE_NOOP("words", "twelve")};
  return count >= 1 && count <= 12 ? say(voice, words[static_cast<std::size_t>(count - 1)]) : whole(voice, count);
}

std::string timesIn(const Voice& voice, double probability) {
  if (probability > 0.99) return say(voice, QT_TRANSLATE_NOOP("words", "more than 99 times in 100"));
  if (probability < 0.001) return say(voice, QT_TRANSLATE_NOOP("words", "less than once in 1,000"));
  const bool fine = probability < 0.0095;
  const long long times = std::llround(probability * (fine ? 1000 : 100));
  return sayCount(voice, fine ? QT_TRANSLATE_NOOP("words", "about once in 1,000") : QT_TRANSLATE_NOOP("words", "about once in 100"),
                  fine ? QT_TRANSLATE_NOOP("words", "about {n} times in 1,000") : QT_TRANSLATE_NOOP("words", "about {n} times in 100"), times);
}

std::string roughlyOften(const Voice& voice, double probability) {
  const Often* found = nullptr;
  for (const Often& each : sayable())
    if (each.share <= probability + beyond) found = &each;
  if (!found || probability < 0.05) return say(voice, QT_TRANSLATE_NOOP("words", "less than once in 20"));
  const Values words{{"often", say(voice, found->words)}};
  return probability > found->share + close ? say(voice, QT_TRANSLATE_NOOP("words", "more than {often}"), words)
                                           : say(voice, QT_TRANSLATE_NOOP("words", "about {often}"), words);
}

std::string roughlyMissed(const Voice& voice, double probability) {
  const double missed = 1 - probability;
  if (missed > 0.95) return say(voice, QT_TRANSLATE_NOOP("words", "more than 19 times in 20"));
  for (const Often& each : sayable()) {
    if (each.share < missed - beyond) continue;
    const Values words{{"often", say(voice, each.words)}};
    return each.share > missed + close ? say(voice, QT_TRANSLATE_NOOP("words", "less than {often}"), words)
                                      : say(voice, QT_TRANSLATE_NOOP("words", "about {often}"), words);
  }
  return say(voice, QT_TRANSLATE_NOOP("words", "more than 19 times in 20"));
}

std::string shareEnd(const Voice& voice, double share, End end) {
  if (share <= 0) return say(voice, QT_TRANSLATE_NOOP("words", "none"));
  if (share >= 1) return say(voice, QT_TRANSLATE_NOOP("words", "all"));
  const int tenths = static_cast<int>(end == End::low ? std::floor((share + 0.03) * 10) : std::ceil((share - 0.03) * 10));
  if (tenths <= 0) return say(voice, QT_TRANSLATE_NOOP("words", "hardly any"));
  if (tenths >= 10) return say(voice, QT_TRANSLATE_NOOP("words", "nearly all"));
  if (tenths == 5) return say(voice, QT_TRANSLATE_NOOP("words", "about half"));
  return say(voice, QT_TRANSLATE_NOOP("words", "about {n} in 10"), {{"n", whole(voice, tenths)}});
}

std::string shareRange(const Voice& voice, double low, double high) {
  return say(voice, QT_TRANSLATE_NOOP("words", "from {low} to {high}"),
             {{"low", shareEnd(voice, low, End::low)}, {"high", shareEnd(voice, high, End::high)}});
}

namespace {

struct Fraction {
  int count, of;
};
/// The share in the roundest terms that lose nothing.
Fraction fractionOf(int perMille) {
  for (const int of : {10, 4, 100})
    if (perMille * of % 1000 == 0) return {perMille * of / 1000, of};
  return {perMille, 1000};
}

}  // namespace

std::string shareLimit(const Voice& voice, int perMille) {
  if (perMille == 500) return say(voice, QT_TRANSLATE_NOOP("words", "half"));
  const Fraction share = fractionOf(perMille);
  return say(voice, QT_TRANSLATE_NOOP("words", "{n} in {of}"), {{"n", whole(voice, share.count)}, {"of", whole(voice, share.of)}});
}

std::string timesLimit(const Voice& voice, int perMille) {
  if (perMille == 500) return say(voice, QT_TRANSLATE_NOOP("words", "half the time"));
  const Fraction share = fractionOf(perMille);
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "once in {of}"), QT_TRANSLATE_NOOP("words", "{n} times in {of}"), share.count, {{"of", whole(voice, share.of)}});
}

std::string howOften(const Voice& voice, int times) {
  if (times == 2) return say(voice, QT_TRANSLATE_NOOP("words", "twice"));
  return say(voice, QT_TRANSLATE_NOOP("words", "{n} times"), {{"n", spelled(voice, times)}});
}

std::string risk(const Voice& voice, int perMille) {
  if (perMille % 10 == 0)
    return sayCount(voice, QT_TRANSLATE_NOOP("words", "once in 100"), QT_TRANSLATE_NOOP("words", "{n} times in 100"), perMille / 10);
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "once in 1,000"), QT_TRANSLATE_NOOP("words", "{n} times in 1,000"), perMille);
}

std::string people(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 person"), QT_TRANSLATE_NOOP("words", "{n} people"), count);
}
std::string tastings(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 tasting"), QT_TRANSLATE_NOOP("words", "{n} tastings"), count);
}
std::string rounds(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 round"), QT_TRANSLATE_NOOP("words", "{n} rounds"), count);
}
std::string cups(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 cup"), QT_TRANSLATE_NOOP("words", "{n} cups"), count);
}
std::string bottles(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 bottle"), QT_TRANSLATE_NOOP("words", "{n} bottles"), count);
}
std::string minutes(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 minute"), QT_TRANSLATE_NOOP("words", "{n} minutes"), count);
}
std::string places(const Voice& voice, int count) {
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "1 place"), QT_TRANSLATE_NOOP("words", "{n} places"), count);
}

}  // namespace oddglass::words
