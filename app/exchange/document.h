#pragma once

#include "canon/canonical.h"

#include <filesystem>
#include <map>
#include <string>
#include <string_view>

namespace oddglass::exchange {

/// How much of a file is taken on. A bigger or deeper one is refused before anything is made of it.
struct Limits {
  std::size_t bytes = 64U << 20;
  int depth = 32;
};

/// A JSON file that passed the first look, with the lines on which its objects and lists begin.
struct Document {
  std::string file;                  ///< its name, for errors
  canon::Json json;
  std::map<std::string, int> lines;  ///< by path such as "sessions/0/log/3"; the deepest are left out

  /// The line on which the value at `path`, or the nearest value around it, begins.
  int lineOf(std::string path) const;
};

/// Reads a file. Refused with the file, the line and the path named: not there (storeMissing), too large (fileTooLarge), too
/// deep (fileTooDeep), a key that stands twice (keyTwice), a number with a fraction or beyond 64 bits (notWhole), text with
/// control or direction characters or blanks at an end, and anything that is no JSON in UTF-8 (badFile).
Document readDocument(const std::filesystem::path& file, const Limits& limits = {});

/// The same for text that is at hand.
Document parseDocument(std::string_view text, const std::string& file, const Limits& limits = {});

/// The bytes of a file, at most `limit`. Problem storeMissing, fileTooLarge or badFile.
std::string readBytes(const std::filesystem::path& file, std::size_t limit);

}  // namespace oddglass::exchange
