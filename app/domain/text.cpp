#include "domain/text.h"

#include <charconv>
#include <chrono>
#include <cstdint>

namespace oddglass {
namespace {

struct Letter {
  std::uint32_t value;
  std::size_t bytes;
};

// One character from the front of the text; U+FFFD and one byte where the bytes are no UTF-8.
Letter firstLetter(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(text[i]); };
  const std::uint8_t lead = byte(0);
  if (lead < 0x80) return {lead, 1};
  const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC2 || lead > 0xF4 || text.size() < length) return {0xFFFD, 1};
  std::uint32_t value = lead & (0x7Fu >> length);
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0) != 0x80) return {0xFFFD, 1};
    value = value << 6 | (byte(i) & 0x3Fu);
  }
  static constexpr std::uint32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
  if (value < least[length] || value > 0x10FFFF || (value >= 0xD800 && value <= 0xDFFF)) return {0xFFFD, 1};
  return {value, length};
}

bool isDropped(std::uint32_t letter) {
  return letter < 0x20 || (letter >= 0x7F && letter <= 0x9F) || (letter >= 0x200B && letter <= 0x200F) ||
         (letter >= 0x202A && letter <= 0x202E) || (letter >= 0x2060 && letter <= 0x206F) || letter == 0xFEFF || letter == 0x061C;
}

}  // namespace

std::string cleaned(std::string_view text) {
  std::string result;
  while (!text.empty()) {
    const Letter letter = firstLetter(text);
    if (letter.value == '\n' || letter.value == '\r' || letter.value == '\t' || letter.value == 0x2028 || letter.value == 0x2029)
      result += ' ';
    else if (letter.value == 0xFFFD && letter.bytes == 1)
      result += "\xEF\xBF\xBD";
    else if (!isDropped(letter.value))
      result += text.substr(0, letter.bytes);
    text.remove_prefix(letter.bytes);
  }
  const auto first = result.find_first_not_of(' ');
  if (first == std::string::npos) return {};
  return result.substr(first, result.find_last_not_of(' ') - first + 1);
}

std::size_t lettersIn(std::string_view text) {
  std::size_t count = 0;
  for (char c : text) count += (static_cast<std::uint8_t>(c) & 0xC0) != 0x80;
  return count;
}

bool isDay(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  int parts[3] = {};
  const std::size_t from[] = {0, 5, 8}, to[] = {4, 7, 10};
  for (int i = 0; i < 3; ++i) {
    const char* begin = text.data() + from[i];
    const char* end = text.data() + to[i];
    if (*begin < '0' || *begin > '9') return false;
    if (auto r = std::from_chars(begin, end, parts[i]); r.ec != std::errc() || r.ptr != end) return false;
  }
  using namespace std::chrono;
  return year_month_day(year(parts[0]), month(static_cast<unsigned>(parts[1])), day(static_cast<unsigned>(parts[2]))).ok();
}

}  // namespace oddglass
