// Times a descriptive profile beside one frame of a screen and beside NumPy in the same run, and prints the ratios. Nothing passes or fails here.
#include "bench/timed.h"
#include "beside/other.h"
#include "stats/profile/components.h"
#include "stats/profile/profile.h"
#include "stats/profile/resampled.h"
#include "stats/profile/rv.h"
#include "stats/profiles.h"

#include <cstdio>
#include <string>

using namespace oddglass::stats;
using oddglass::testing::medianMs;

namespace {

void line(const std::string& what, double ms, const char* limit, double limitMs) { std::printf("%-46s %9.2f ms   %-24s %7.1f ms   %5.2f of it\n", what.c_str(), ms, limit, limitMs, ms / limitMs); }

void session(int tasters, int samples, int descriptors, double limitMs) {
  simulated::Chance chance(7);
  const ProfileRows rows = profiles::drawn(chance, {tasters, samples, descriptors, 1, 0.3});
  ProfileQuestion question;
  question.reference = 0;
  question.limit = 1.0;
  const ProfileCells cells = profileCells(rows);
  double sink = 0.0;
  const auto verdicts = [&] { sink += *profileOf(rows, question)[0].pHolm; };
  const auto map = [&] { sink += componentsOf(profileCells(rows)).variances[0]; };
  const auto agreement = [&] { sink += *rvOf(cells)[0].pValue; };
  const std::string size = std::to_string(tasters) + " x " + std::to_string(samples) + " x " + std::to_string(descriptors);
  const int runs = tasters > 20 ? 15 : 51;
  line(size + ": verdicts", medianMs(runs, verdicts), "all in", limitMs);
  line(size + ": components with ellipses", medianMs(runs, map), "all in", limitMs);
  line(size + ": RV of every taster with p", medianMs(runs, agreement), "all in", limitMs);
  line(size + ": all in", medianMs(runs, [&] {
         verdicts();
         map();
         agreement();
       }), "all in", limitMs);
  REQUIRE(sink > 0.0);
}

}  // namespace

TEST_CASE("a session's profile") {
  session(12, 8, 20, 16.0);
  session(60, 12, 40, 200.0);
}

TEST_CASE("10,000 resamples of a profile beside NumPy") {
  simulated::Chance chance(8);
  const ProfileRows rows = profiles::drawn(chance, {12, 8, 20, 1, 0.3});
  const ProfileCells cells = profileCells(rows);
  double sink = 0.0;
  const double ours = medianMs(21, [&] { sink += (*resampledMeans(cells, 10'000).means)(0, 0); });
  REQUIRE(sink > 0.0);
  if (!beside::hasPython()) return;
  const auto theirs = beside::inPython("import json, time, numpy as np\nx = np.array(" + beside::forPython(rows.scores.response) + R"P().reshape(20, 12, 8).transpose(1, 0, 2).reshape(12, 160).copy()
rng = np.random.default_rng(1)
def gathered():
    return x[rng.integers(0, 12, (10000, 12))].mean(axis=1)
def weighed():
    return rng.multinomial(12, np.full(12, 1 / 12), 10000) / 12 @ x
def ms(f):
    t = []
    for i in range(9):
        s = time.perf_counter(); f(); t.append(1000 * (time.perf_counter() - s))
    return float(np.median(t))
print(json.dumps({'gathered': ms(gathered), 'weighed': ms(weighed)})))P");
  for (const auto& [name, key] : {std::pair{"rows gathered and averaged", "gathered"}, {"counts times rows", "weighed"}}) {
    const double ms = theirs.at(key).get<double>();
    std::printf("10,000 resamples, 12 x 8 x 20: %8.2f ms   NumPy, %-28s %9.2f ms   %5.1f times as fast\n", ours, name, ms, ms / ours);
  }
}
