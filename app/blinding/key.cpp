#include "blinding/key.h"

#include "canon/canonical.h"
#include "canon/digest.h"
#include "domain/problem.h"

#include <sodium.h>

#include <algorithm>

namespace oddglass::blinding {
namespace {

canon::Json written(const KeyContents& key) {
  canon::Json lines = canon::Json::array();
  for (const auto& [code, slot] : key.lines) lines.push_back({code.value, slot.value});
  return {{"seed", canon::hex(key.seed)}, {"salt", canon::hex(key.salt)}, {"generator", key.generator}, {"lines", lines}, {"custody", key.custody}};
}

KeyContents read(std::string_view text) {
  const auto json = canon::Json::parse(text);
  KeyContents key;
  key.seed = canon::fromHex<32>(json.at("seed").get<std::string>()).value();
  key.salt = canon::fromHex<32>(json.at("salt").get<std::string>()).value();
  key.generator = json.at("generator").get<std::string>();
  key.custody = json.value("custody", key.custody);
  for (const auto& line : json.at("lines")) key.lines.emplace_back(Code{line.at(0).get<int>()}, Slot{line.at(1).get<int>()});
  return key;
}

void wipe(KeyContents& key) {
  sodium_memzero(key.seed.data(), key.seed.size());
  sodium_memzero(key.salt.data(), key.salt.size());
  sodium_memzero(key.lines.data(), key.lines.size() * sizeof key.lines[0]);
  key.lines.clear();
}

}  // namespace

SealedKey SealedKey::fromBox(Bytes box, const Secret& secret) { return {std::move(box), secret}; }

Slot OpenedKey::slotOf(Code code) const {
  const auto line = std::ranges::find(contents_.lines, code, [](const auto& pair) { return pair.first; });
  if (line == contents_.lines.end()) throw Problem(Trouble::unknown, "code", {{"what", "code"}, {"text", std::to_string(code.value)}});
  return line->second;
}

SealedKey seal(KeyContents&& contents, Chance& chance) {
  std::ranges::sort(contents.lines);
  std::string plain = canon::canonical(written(contents));
  const Secret secret = chance.bytes<std::tuple_size_v<Secret>>();
  Bytes box = closeBox(plain, secret, chance);
  sodium_memzero(plain.data(), plain.size());
  wipe(contents);
  return {std::move(box), secret};
}

OpenedKey open(SealedKey&& key, const Logged& entry) {
  if (entry.event() != Event::pourSheetOpened && entry.event() != Event::looked && entry.event() != Event::revealed && entry.event() != Event::broken)
    throw Problem(Trouble::stillSealed, "key");
  const Problem damaged(Trouble::storeDamaged, "key");
  auto plain = openBox(key.box(), key.secret());
  if (!plain) throw damaged;
  try {
    OpenedKey opened(read(*plain));
    sodium_memzero(plain->data(), plain->size());
    return opened;
  } catch (const std::exception&) {
    throw damaged;
  }
}

}  // namespace oddglass::blinding
