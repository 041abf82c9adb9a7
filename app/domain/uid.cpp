#include "domain/uid.h"

#include <algorithm>

namespace oddglass {

bool looksLikeUid(std::string_view text) {
  return text.size() == 32 && std::ranges::all_of(text, [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

}  // namespace oddglass
