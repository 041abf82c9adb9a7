#include "cli/printer.h"

#include "domain/problem.h"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

extern char** environ;

namespace oddglass::cli {
namespace {

struct Ended {
  int status = -1;    ///< -1: by a signal
  std::string said;   ///< on its stderr
};

/// Starts a program with its stderr in a pipe, reads that to its end, and waits.
std::optional<Ended> ran(std::vector<std::string> line) {
  std::vector<char*> values;
  for (std::string& each : line) values.push_back(each.data());
  values.push_back(nullptr);
  int ends[2];
  if (::pipe2(ends, O_CLOEXEC) != 0) return std::nullopt;
  posix_spawn_file_actions_t actions;
  ::posix_spawn_file_actions_init(&actions);
  ::posix_spawn_file_actions_adddup2(&actions, ends[1], STDERR_FILENO);
  ::posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  pid_t process = -1;
  const int wrong = ::posix_spawn(&process, values.front(), &actions, nullptr, values.data(), environ);
  ::posix_spawn_file_actions_destroy(&actions);
  ::close(ends[1]);
  Ended ended;
  char buffer[4096];
  for (ssize_t got = 1; wrong == 0 && (got > 0 || (got < 0 && errno == EINTR));)
    if ((got = ::read(ends[0], buffer, sizeof buffer)) > 0 && ended.said.size() < 100'000) ended.said.append(buffer, static_cast<std::size_t>(got));
  ::close(ends[0]);
  if (wrong != 0) return std::nullopt;
  int status = 0;
  while (::waitpid(process, &status, 0) < 0 && errno == EINTR) {}
  ended.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  return ended;
}

/// The line "oddglass: ARGUMENT: sentence" among what it said.
Problem refusalIn(const std::string& said) {
  const std::string start = "oddglass: ";
  for (std::size_t at = 0; at < said.size();) {
    const std::size_t end = std::min(said.find('\n', at), said.size());
    const std::string line = said.substr(at, end - at);
    const std::size_t colon = line.find(": ", start.size());
    if (line.starts_with(start) && colon != std::string::npos) {
      const std::string argument = line.substr(start.size(), colon - start.size());
      return {Trouble::notPrinted, argument == "--which" ? "SESSION" : argument, {{"text", line.substr(colon + 2)}}};
    }
    at = end + 1;
  }
  return {Trouble::notPrinted, "--out", {{"text", "The program with windows ended before it was done."}}};
}

}  // namespace

void print(Desk& desk, const std::vector<std::pair<std::string, std::string>>& options) {
  std::error_code error;
  const std::filesystem::path program = std::filesystem::weakly_canonical(desk.printer(), error);
  const Problem missing(Trouble::programMissing, "--out", {{"file", program.string()}});
  if (!std::filesystem::is_regular_file(program, error) || ::access(program.c_str(), X_OK) != 0) throw missing;
  std::vector<std::string> line{program.string(), "--store=" + desk.storeFile().string()};
  for (const auto& [name, value] : options) line.push_back("--" + name + '=' + value);
  const std::optional<Ended> ended = ran(std::move(line));
  if (!ended) throw missing;
  if (ended->status != 0) throw refusalIn(ended->said);
}

}  // namespace oddglass::cli
