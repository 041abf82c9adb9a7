#include "canon/canonical.h"

#include <stdexcept>

namespace oddglass::canon {
namespace {

void refuseFractions(const Json& value) {
  if (value.is_number_float()) throw std::invalid_argument("hashed text holds whole numbers only");
  if (value.is_structured())
    for (const auto& each : value) refuseFractions(each);
}

}  // namespace

std::string canonical(const Json& value) {
  refuseFractions(value);
  try {
    return value.dump(-1, ' ', false, Json::error_handler_t::strict);
  } catch (const Json::exception& error) {
    throw std::invalid_argument(error.what());
  }
}

}  // namespace oddglass::canon
