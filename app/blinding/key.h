#pragma once

#include "blinding/box.h"
#include "blinding/stream.h"
#include "domain/chance.h"
#include "domain/logged.h"
#include "domain/numbers.h"

#include <array>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace oddglass::blinding {

using Salt = std::array<std::uint8_t, 32>;

/// Which code holds which lot, and what it was drawn from. Exists in the open only while a session is being sealed and
/// after its key was opened.
struct KeyContents {
  Seed seed{};
  Salt salt{};
  std::string generator = "chacha20/1";
  std::vector<std::pair<Code, Slot>> lines;  ///< rising by code; spare codes stand for the same lot as their cup; none where hands hide the key
  std::string custody = "drawn";  ///< or the routine in whose hands the key lies
  bool operator==(const KeyContents&) const = default;
};

/// A key that nobody can read without an entry in the log: it can be moved, stored and opened, nothing else.
/// The box is closed with a secret that is kept beside it: closed against a glance, not against a locksmith.
class SealedKey {
 public:
  SealedKey(SealedKey&&) noexcept = default;
  SealedKey& operator=(SealedKey&&) noexcept = default;
  SealedKey(const SealedKey&) = delete;
  SealedKey& operator=(const SealedKey&) = delete;

  /// What the store keeps. Neither tells anything without the other.
  const Bytes& box() const { return box_; }
  const Secret& secret() const { return secret_; }

  /// A key as the store kept it. Nothing is opened or checked here.
  static SealedKey fromBox(Bytes box, const Secret& secret);

 private:
  friend SealedKey seal(KeyContents&& contents, Chance& chance);
  SealedKey(Bytes box, const Secret& secret) : box_(std::move(box)), secret_(secret) {}

  Bytes box_;  ///< a nonce of 24 bytes, then XSalsa20-Poly1305 of the contents (libsodium secretbox)
  Secret secret_;
};

/// An open key. There is no way to one but `open`.
class OpenedKey {
 public:
  const KeyContents& contents() const { return contents_; }

  /// The lot behind a code. Problem(unknown, "code") when the key has no such code.
  Slot slotOf(Code code) const;

 private:
  friend OpenedKey open(SealedKey&& key, const Logged& entry);
  explicit OpenedKey(KeyContents contents) : contents_(std::move(contents)) {}

  KeyContents contents_;
};

/// Closes a key. `contents` are wiped; the lines are sorted by code.
SealedKey seal(KeyContents&& contents, Chance& chance);

/// Opens a key for an entry of the log: the pour sheet was opened, the session was revealed, or its seal was broken.
/// Problem(stillSealed, "key") for any other entry; Problem(storeDamaged, "key") when the box was altered.
OpenedKey open(SealedKey&& key, const Logged& entry);

}  // namespace oddglass::blinding
