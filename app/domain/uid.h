#pragma once

#include <compare>
#include <string>
#include <string_view>

namespace oddglass {

/// True for 32 lower-case hex digits.
bool looksLikeUid(std::string_view text);

/// Names one record in every store: 128 random bits as 32 hex digits. Empty means "not made yet".
template <class Tag>
struct Uid {
  std::string text;
  bool empty() const { return text.empty(); }
  auto operator<=>(const Uid&) const = default;
};

using BeverageId = Uid<struct BeverageTag>;
using LotId = Uid<struct LotTag>;
using TasterId = Uid<struct TasterTag>;
using SessionId = Uid<struct SessionTag>;
using NoteId = Uid<struct NoteTag>;
using WordId = Uid<struct WordTag>;

}  // namespace oddglass
