#include "blinding/commitment.h"

#include "domain/by_hand.h"
#include "domain/names.h"

#include <sodium.h>

#include <algorithm>

namespace oddglass::blinding {

canon::Digest planHash(const canon::Json& plan) { return canon::sha256({canon::bytesOf(canon::canonical(plan))}); }

std::string custodyOf(Routine routine) { return isDrawn(routine) ? "drawn" : std::string(nameOf(routine)); }

canon::Digest commitment(const KeyContents& key, const canon::Digest& plan) {
  auto sorted = key.lines;
  std::ranges::sort(sorted);
  canon::Json lines = canon::Json::array();
  for (const auto& [code, slot] : sorted) lines.push_back({code.value, slot.value});
  const canon::Json body{{"custody", key.custody}, {"generator", key.generator}, {"lines", lines}, {"plan", canon::hex(plan)}, {"seed", canon::hex(key.seed)}};
  return canon::sha256({canon::bytesOf("oddglass seal 1\n"), key.salt, canon::bytesOf(canon::canonical(body))});
}

bool commitmentHolds(const canon::Digest& committed, const KeyContents& key, const canon::Digest& plan) {
  return sodium_memcmp(committed.data(), commitment(key, plan).data(), committed.size()) == 0;
}

}  // namespace oddglass::blinding
