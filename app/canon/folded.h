#pragma once

#include <string>
#include <string_view>

namespace oddglass::canon {

/// A name as names are compared: without case, in one Unicode form (full case folding, then NFC; Unicode 3.13 and annex 15).
std::string folded(std::string_view name);

}  // namespace oddglass::canon
