#include "blinding/seal_mark.h"

#include <string_view>

namespace oddglass::blinding {

std::string sealMark(const canon::Digest& commitment) {
  constexpr std::string_view consonants = "bdfghklmnprstvwz", vowels = "aiou";
  const unsigned bits = commitment[0] << 16 | commitment[1] << 8 | commitment[2];
  std::string mark;
  for (int syllable = 0; syllable < 4; ++syllable) {
    const unsigned six = bits >> (18 - 6 * syllable) & 63U;
    if (syllable == 2) mark += ' ';
    mark += consonants[six >> 2];
    mark += vowels[six & 3U];
  }
  return mark + ' ' + static_cast<char>('0' + commitment[3] % 10);
}

}  // namespace oddglass::blinding
