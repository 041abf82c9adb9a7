#include "canon/folded.h"

#include <utf8proc.h>

#include <cstdlib>
#include <memory>

namespace oddglass::canon {

std::string folded(std::string_view name) {
  utf8proc_uint8_t* raw = nullptr;
  const auto options = static_cast<utf8proc_option_t>(UTF8PROC_STABLE | UTF8PROC_COMPOSE | UTF8PROC_CASEFOLD);
  const auto length = utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(name.data()), static_cast<utf8proc_ssize_t>(name.size()), &raw, options);
  const std::unique_ptr<utf8proc_uint8_t, decltype(&std::free)> owned(raw, &std::free);
  // Bytes that are no UTF-8 never enter the store; a search text may hold them, and then it is compared as it is.
  if (length < 0) return std::string(name);
  return {reinterpret_cast<const char*>(raw), static_cast<std::size_t>(length)};
}

}  // namespace oddglass::canon
