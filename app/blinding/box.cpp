#include "blinding/box.h"

#include <sodium.h>

namespace oddglass::blinding {
namespace {
constexpr std::size_t nonceBytes = crypto_secretbox_NONCEBYTES, macBytes = crypto_secretbox_MACBYTES;
}

Bytes closeBox(std::string_view plain, const Secret& secret, Chance& chance) {
  const auto nonce = chance.bytes<nonceBytes>();
  Bytes box(nonce.begin(), nonce.end());
  box.resize(nonceBytes + macBytes + plain.size());
  crypto_secretbox_easy(box.data() + nonceBytes, reinterpret_cast<const unsigned char*>(plain.data()), plain.size(), nonce.data(), secret.data());
  return box;
}

std::optional<std::string> openBox(const Bytes& box, const Secret& secret) {
  if (box.size() < nonceBytes + macBytes) return std::nullopt;
  std::string plain(box.size() - nonceBytes - macBytes, '\0');
  if (crypto_secretbox_open_easy(reinterpret_cast<unsigned char*>(plain.data()), box.data() + nonceBytes, box.size() - nonceBytes, box.data(),
                                 secret.data()) != 0)
    return std::nullopt;
  return plain;
}

}  // namespace oddglass::blinding
