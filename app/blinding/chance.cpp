#include "blinding/chance.h"

#include "domain/problem.h"

#include <sodium.h>

namespace oddglass::blinding {

SystemChance::SystemChance() {
  if (sodium_init() < 0) throw Problem(Trouble::storeFailed, "chance", {{"text", "the system gives no random numbers"}});
}

void SystemChance::fill(std::span<std::uint8_t> bytes) { randombytes_buf(bytes.data(), bytes.size()); }

}  // namespace oddglass::blinding
