#pragma once

#include "domain/chance.h"

#include <filesystem>
#include <random>
#include <string>

namespace oddglass::testing {

/// A clock that stands still until it is moved; every look moves it by one second.
class FixedClock : public Clock {
 public:
  explicit FixedClock(Millis start = 1764000000000) : now_(start) {}
  Millis now() override { return now_ += 1000; }
  void set(Millis now) { now_ = now; }

 private:
  Millis now_;
};

/// Chance that is the same in every run.
class FixedChance : public Chance {
 public:
  explicit FixedChance(unsigned seed = 1) : engine_(seed) {}
  void fill(std::span<std::uint8_t> bytes) override {
    for (auto& byte : bytes) byte = static_cast<std::uint8_t>(engine_());
  }

 private:
  std::mt19937 engine_;
};

/// A folder of its own, gone with everything in it at the end.
class Folder {
 public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "oddglass-XXXXXX").string();
    path_ = ::mkdtemp(name.data());
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::filesystem::path operator/(const std::string& name) const { return path_ / name; }
  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

}  // namespace oddglass::testing
