#pragma once

#include <algorithm>
#include <filesystem>

/// How many evenings lie in the folder of the demo, with the nine sittings of its two years and the two on which hands hid the key.
inline std::size_t demoEvenings() {
  const std::filesystem::directory_iterator files(DEMO_SESSIONS);
  return 11 + static_cast<std::size_t>(std::count_if(begin(files), end(files), [](const auto& file) { return file.path().filename().string().starts_with("evening_"); }));
}
