#pragma once

#include <filesystem>
#include <string_view>

namespace oddglass::exchange {

/// Writes a file so that it is there whole or not at all; its folder is made when it is missing. Problem storeReadOnly or diskFull ("out").
void writeWhole(const std::filesystem::path& file, std::string_view text);

}  // namespace oddglass::exchange
