#pragma once

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <string>
#include <sys/resource.h>
#include <unistd.h>

namespace oddglass::testing {

inline std::string bytesOfFile(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

inline void writeFile(const std::filesystem::path& file, const std::string& bytes) {
  std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
}

/// Every file below a folder with its bytes: what a refused command must leave as it was.
inline std::map<std::string, std::string> everythingIn(const std::filesystem::path& folder) {
  std::map<std::string, std::string> all;
  for (const auto& each : std::filesystem::recursive_directory_iterator(folder))
    all[each.path().string()] = each.is_regular_file() ? bytesOfFile(each.path()) : "a folder";
  return all;
}

/// While it lives no file can grow beyond `bytes`, which is how a full disk looks to this process.
class SmallDisk {
 public:
  explicit SmallDisk(rlim_t bytes) {
    former_ = std::signal(SIGXFSZ, SIG_IGN);
    ::getrlimit(RLIMIT_FSIZE, &limit_);
    const rlimit small{bytes, limit_.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &small);
  }
  ~SmallDisk() {
    ::setrlimit(RLIMIT_FSIZE, &limit_);
    std::signal(SIGXFSZ, former_);
  }
  SmallDisk(const SmallDisk&) = delete;
  SmallDisk& operator=(const SmallDisk&) = delete;

 private:
  rlimit limit_{};
  void (*former_)(int) = nullptr;
};

/// While it lives the process has no more rights than anybody: root's own would write what is read-only.
class Nobody {
 public:
  Nobody() : root_(::geteuid() == 0) {
    if (root_) isDone_ = ::seteuid(65534) == 0;
  }
  ~Nobody() {
    if (root_ && ::seteuid(0) != 0) std::terminate();
  }
  Nobody(const Nobody&) = delete;
  Nobody& operator=(const Nobody&) = delete;
  bool isDone() const { return isDone_; }

 private:
  bool root_;
  bool isDone_ = true;
};

}  // namespace oddglass::testing
