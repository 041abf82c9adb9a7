// Times the planner's numbers beside R in the same run (time measured inside R), and a command's cold start beside sqlite3. Nothing passes or fails here.
#include "bench/timed.h"
#include "beside/other.h"
#include "stats/power_curve.h"
#include "stats/psychometric.h"
#include "stats/size.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <spawn.h>
#include <string>
#include <sys/wait.h>
#include <vector>

extern char** environ;

using namespace oddglass;
using testing::medianMs;

namespace {

void line(const char* what, double ms, const char* reference, double referenceMs) {
  std::printf("%-44s %9.4f ms   %-40s %9.4f ms   %6.1f times as fast\n", what, ms, reference, referenceMs, referenceMs / ms);
}

/// Runs a program without a shell, its output thrown away.
void start(const std::vector<std::string>& words) {
  std::vector<char*> arguments;
  for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, 1, "/dev/null", 1 /* O_WRONLY */, 0);
  pid_t child = 0;
  if (posix_spawnp(&child, arguments[0], &actions, nullptr, arguments.data(), environ) == 0) waitpid(child, nullptr, 0);
  posix_spawn_file_actions_destroy(&actions);
}

}  // namespace

TEST_CASE("figures") {
  const double pc = stats::rightAnswersOfShare(stats::Method::triangle, 0.0485);
  double sink = 0.0;
  const double curve = medianMs(51, [&] { sink += stats::powerCurve(stats::Method::triangle, pc, 0.05, 5000).back().power; });
  stats::Sizes sizes;
  const double size = medianMs(51, [&] { sizes = stats::sizeFor(stats::Method::triangle, pc, 0.9, 0.05); });
  REQUIRE(sizes.stable.has_value());
  std::printf("size search: first %d, stable %d, looked at up to %d trials; power at 5,000 trials %.6f\n", sizes.first->trials, sizes.stable->trials, sizes.stable->trials * 3 / 2, sink / 51);
  if (beside::hasR()) {
    const auto theirs = beside::inR("pc <- " + beside::forR({pc}) + R"(
time <- function(f) { t <- numeric(21); for (i in 1:21) { s <- Sys.time(); r <- f(); t[i] <- as.numeric(Sys.time() - s, units = 'secs') }; list(ms = 1000 * median(t), r = r) }
whole <- time(function() { n <- 1:5000; q <- qbinom(0.05, n, 1/3, lower.tail = FALSE) + 1; pbinom(q - 1, n, pc, lower.tail = FALSE) })
loop <- time(function() { p <- 0; for (n in 1:5000) { q <- qbinom(0.05, n, 1/3, lower.tail = FALSE) + 1; p[n] <- pbinom(q - 1, n, pc, lower.tail = FALSE) }; p })
out(list(whole = whole$ms, loop = loop$ms, power = whole$r[5000])))");
    const double whole = theirs.at("whole")[0], loop = theirs.at("loop")[0];
    std::printf("power at 5,000 trials in R %.6f\n", theirs.at("power")[0].get<double>());
    line("power curve, 1 to 5,000 trials", curve, "R, qbinom and pbinom over the vector", whole);
    line("power curve, 1 to 5,000 trials", curve, "R, trial number by trial number", loop);
    line("exact size search to 5,000 trials", size, "R, qbinom and pbinom over the vector", whole);
    line("exact size search to 5,000 trials", size, "R, trial number by trial number", loop);
  }
  const double command = medianMs(51, [] { start({ODDGLASS_CLI, "--json", "count", "--method", "triangle", "--trials", "18", "--correct", "12"}); });
  const double sqlite = medianMs(51, [] { start({"sqlite3", ":memory:", "select 1"}); });
  line("a command's cold start (count)", command, "sqlite3 :memory: 'select 1'", sqlite);
}
