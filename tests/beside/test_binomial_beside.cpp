#include "beside/other.h"
#include "stats/binomial.h"
#include "stats/choice.h"

using Catch::Matchers::WithinRel;

// R's binom.test and SciPy's binomtest in the same run.

TEST_CASE("exact p and interval of a count beside R") {
  if (!beside::hasR()) return;
  const auto theirs = beside::inR("t <- binom.test(12, 18, 1/3, alternative = 'greater'); i <- binom.test(12, 18)$conf.int; out(list(p = t$p.value, i = c(i[1], i[2])))");
  CHECK_THAT(oddglass::stats::pValue(oddglass::stats::Method::triangle, 12, 18), WithinRel(theirs.at("p").at(0).get<double>(), 1e-12));
  const auto ours = oddglass::stats::clopperPearson(12, 18, 0.95);
  CHECK_THAT(ours.low, WithinRel(theirs.at("i").at(0).get<double>(), 1e-9));
  CHECK_THAT(ours.high, WithinRel(theirs.at("i").at(1).get<double>(), 1e-9));
}

TEST_CASE("exact p of a count beside SciPy") {
  if (!beside::hasPython()) return;
  const auto theirs = beside::inPython("import json, scipy.stats as s\nprint(json.dumps(s.binomtest(9, 12, 0.5, alternative='greater').pvalue))");
  CHECK_THAT(oddglass::stats::pValue(oddglass::stats::Method::duoTrio, 9, 12), WithinRel(theirs.get<double>(), 1e-12));
}
