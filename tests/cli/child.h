#pragma once

#include <catch2/catch.hpp>

#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <poll.h>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace oddglass::testing {

/// The real program as a process of its own; what it prints comes through a pipe.
class Child {
 public:
  explicit Child(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), ODDGLASS_CLI);
    std::vector<char*> values;
    for (std::string& each : arguments) values.push_back(each.data());
    values.push_back(nullptr);
    int ends[2];
    REQUIRE(::pipe2(ends, O_CLOEXEC) == 0);
    process_ = ::fork();
    REQUIRE(process_ >= 0);
    if (process_ == 0) {
      ::dup2(ends[1], STDOUT_FILENO);
      const int nowhere = ::open("/dev/null", O_WRONLY);
      ::dup2(nowhere, STDERR_FILENO);
      ::execv(ODDGLASS_CLI, values.data());
      ::_exit(127);
    }
    ::close(ends[1]);
    from_ = ends[0];
  }
  ~Child() {
    if (process_ > 0) killNow();
    ::close(from_);
  }
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;

  /// True when something was printed, or the process ended, within this time.
  bool speaksWithin(std::chrono::microseconds time) const {
    pollfd look{from_, POLLIN, 0};
    const timespec most{time.count() / 1000000, (time.count() % 1000000) * 1000};
    return ::ppoll(&look, 1, &most, nullptr) > 0;
  }

  void killNow() {
    ::kill(process_, SIGKILL);
    end();
  }

  /// Waits for the end; the exit status, or -1 after a signal.
  int end() {
    char buffer[4096];
    for (ssize_t got; (got = ::read(from_, buffer, sizeof buffer)) > 0;) out.append(buffer, static_cast<std::size_t>(got));
    int status = 0;
    ::waitpid(process_, &status, 0);
    process_ = -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  }

  std::string out;

 private:
  pid_t process_ = -1;
  int from_ = -1;
};

}  // namespace oddglass::testing
