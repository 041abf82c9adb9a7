#include "beside/other.h"
#include "stats/drivers/drivers.h"

using namespace oddglass::stats;
using beside::Json;
using Catch::Matchers::WithinRel;

// Slopes of liking within tasters beside R's lm with a level for each taster, fitted again without each of them, and p.adjust; on seeded random panels with holes.

namespace {

std::vector<WordAndLiking> drivenPanelOf(beside::Seeded& chance, int tasters, int samples, double slope, double missing) {
  std::vector<double> at;
  for (int s = 0; s < samples; ++s) at.push_back(50.0 + 15.0 * chance.normal());
  std::vector<WordAndLiking> rows;
  for (int t = 0; t < tasters; ++t) {
    const double own = chance.normal(), level = 10.0 * chance.normal();
    for (int s = 0; s < samples; ++s) {
      const double word = at[static_cast<std::size_t>(s)] + level + 8.0 * chance.normal();
      if (chance.uniform() >= missing) rows.push_back({t, s, word, 5.0 + own + slope * word + chance.normal()});
    }
  }
  return rows;
}

std::string asFrame(const std::vector<WordAndLiking>& rows) {
  std::vector<double> t, x, y;
  for (const WordAndLiking& row : rows) t.push_back(row.taster), x.push_back(row.word), y.push_back(row.liking);
  return "data.frame(t = " + beside::forR(t) + ", x = " + beside::forR(x) + ", y = " + beside::forR(y) + ")";
}

}  // namespace

TEST_CASE("slopes of liking within tasters beside lm") {
  if (!beside::hasR()) return;
  for (std::uint64_t seed : {11u, 12u, 13u}) {
    INFO("seed " << seed);
    beside::Seeded chance(seed);
    std::vector<std::vector<WordAndLiking>> words;
    std::string frames;
    for (double slope : {0.0, 0.03, -0.06}) {
      words.push_back(drivenPanelOf(chance, 7, 6, slope, 0.15));
      frames += (frames.empty() ? "" : ", ") + asFrame(words.back());
    }
    const auto ours = driversOf(words, 0.9);
    const Json theirs = beside::inR("all <- list(" + frames + ")\n" + R"R(
b <- function(d) unname(coef(lm(y ~ factor(t) + x, d))["x"])
one <- function(d) {
  k <- sort(unique(d$t)); n <- length(k); e <- b(d); j <- sapply(k, function(i) b(d[d$t != i, ])); s <- sqrt((n - 1) / n * sum((j - mean(j))^2)); q <- qt(0.95, n - 1)
  c(e, s, e - q * s, e + q * s, 2 * pt(-abs(e / s), n - 1), sqrt(sum(residuals(lm(x ~ factor(t), d))^2) / (nrow(d) - n)))
}
m <- sapply(all, one)
out(list(slope = m[1, ], se = m[2, ], low = m[3, ], high = m[4, ], p = m[5, ], spread = m[6, ], pa = p.adjust(m[5, ], "BH"))))R");
    for (std::size_t i = 0; i < ours.size(); ++i) {
      const auto is = [&](const std::optional<double>& value, const char* key) { CHECK_THAT(value.value(), WithinRel(beside::numberIn(theirs.at(key), i), 1e-7)); };
      is(ours[i].slope.estimate, "slope");
      is(ours[i].slope.se, "se");
      is(ours[i].slope.low, "low");
      is(ours[i].slope.high, "high");
      is(ours[i].slope.pValue, "p");
      is(ours[i].spread, "spread");
      is(ours[i].pAdjusted, "pa");
    }
  }
}
