#include "stats/panel/panel.h"

#include "stats/cases.h"
#include "stats/error.h"

#include <limits>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;

namespace {

/// Samples in rows and tasters in columns, as the cases give them.
Eigen::MatrixXd tableOf(const checks::Json& data) {
  Eigen::MatrixXd table(data.size(), data.at(0).size());
  for (std::size_t r = 0; r < data.size(); ++r)
    for (std::size_t c = 0; c < data[r].size(); ++c) table(static_cast<Eigen::Index>(r), static_cast<Eigen::Index>(c)) = data[r][c].get<double>();
  return table;
}

}  // namespace

// Sources beside each case in agreement.json. Left out: Krippendorff's alpha and the kappas, which are for categories and not offered.
TEST_CASE("agreement of a panel: published tables") {
  int looked = 0;
  for (const auto& c : checks::family("agreement")) {
    const std::string id = c["id"];
    INFO(id);
    const auto& out = c["expected"];
    const double tolerance = c["tolerance"]["abs"];
    if (id == "icc_shrout_fleiss") {
      const TwoWay squares = twoWay(tableOf(c["inputs"]["data_subjects_x_judges"]));
      const Reliability found = reliability(squares, 0.95);
      CHECK_THAT(squares.sample, WithinAbs(out["BMS"].get<double>(), tolerance));
      CHECK_THAT(squares.taster, WithinAbs(out["JMS"].get<double>(), tolerance));
      CHECK_THAT(squares.residual, WithinAbs(out["EMS"].get<double>(), tolerance));
      CHECK_THAT(squares.sample / squares.residual, WithinAbs(out["F_BMS_EMS"].get<double>(), 1e-5));
      CHECK_THAT(found.single.estimate.value(), WithinAbs(out["ICC21"].get<double>(), tolerance));
      CHECK_THAT(found.single.low.value(), WithinAbs(out["ICC21_CI95"][0].get<double>(), tolerance));
      CHECK_THAT(found.single.high.value(), WithinAbs(out["ICC21_CI95"][1].get<double>(), tolerance));
      CHECK_THAT(found.ofPanel.estimate.value(), WithinAbs(out["ICC2k"].get<double>(), tolerance));
      // The limits of ICC(2,k) stand in the case's "verified_by".
      CHECK_THAT(found.ofPanel.low.value(), WithinAbs(0.0711368161025035, tolerance));
      CHECK_THAT(found.ofPanel.high.value(), WithinAbs(0.927232040167722, tolerance));
      CHECK_THAT(found.alpha.value(), WithinAbs(out["ICC3k"].get<double>(), tolerance));
      CHECK_FALSE(found.why);
      // ICC(1,1), ICC(1,k) and ICC(3,1) answer questions that are not asked here: other tasters for each sample, and these tasters only.
      checks::requireAllSeen(out, {"ICC21", "ICC2k", "ICC3k", "BMS", "JMS", "EMS", "F_BMS_EMS", "ICC21_CI95", "ICC11", "ICC31", "ICC1k", "WMS", "ICC31_CI95"});
      ++looked;
    } else if (id.starts_with("cronbach")) {
      CHECK_THAT(reliability(twoWay(tableOf(c["inputs"]["data"])), 0.95).alpha.value(), WithinAbs(out["alpha_raw"].get<double>(), tolerance));
      checks::requireAllSeen(out, {"alpha_raw", "alpha_std"});  // the standardised alpha is not offered
      ++looked;
    } else if (id.starts_with("kendallW")) {
      const Concordance found = concordance(tableOf(c["inputs"]["judges_x_objects"]).transpose());
      CHECK_THAT(found.w.value(), WithinAbs(out["W_tie_corrected"].get<double>(), 1e-8));
      // Chi-square and its p are Friedman's, with the tests of ranks; the uncorrected W and the mean Spearman are not offered.
      checks::requireAllSeen(out, {"W_tie_corrected", "W_uncorrected", "chi2", "p", "mean_spearman"});
      ++looked;
    } else {
      REQUIRE((id.starts_with("krippendorff") || id.starts_with("gwet")));
    }
  }
  CHECK(looked == 7);
}

TEST_CASE("agreement may be below zero and is not clipped") {
  // Two tasters who rank three samples the opposite way: MSs = 0, MSt = 0, MSe = 1; ICC(2,1) = -1 / (1 - 2 / 3) = -3 by the formula of Shrout and Fleiss.
  Eigen::MatrixXd table(3, 2);
  table << 1, 3, 2, 2, 3, 1;
  const Reliability found = reliability(twoWay(table), 0.95);
  CHECK_THAT(found.single.estimate.value(), WithinAbs(-3.0, 1e-12));
  CHECK(found.single.low.value() < 0.0);
  // The denominator of ICC(2,k), MSs + (MSt - MSe) / n, is -1/3: there is no such number.
  CHECK_FALSE(found.ofPanel.estimate);
  CHECK_FALSE(found.alpha);
  CHECK(found.why == Reason::noSpread);
}

TEST_CASE("agreement without spread is not a number") {
  const Reliability flat = reliability(twoWay(Eigen::MatrixXd::Constant(4, 3, 5.1)), 0.95);
  CHECK_FALSE(flat.single.estimate);
  CHECK_FALSE(flat.ofPanel.estimate);
  CHECK_FALSE(flat.alpha);
  CHECK(flat.why == Reason::noSpread);
  CHECK_FALSE(concordance(Eigen::MatrixXd::Constant(4, 3, 5.1)).w);
  CHECK(concordance(Eigen::MatrixXd::Constant(4, 3, 5.1)).why == Reason::allTied);
  Eigen::MatrixXd same(3, 3);
  same << 1, 1, 1, 2, 2, 2, 4, 4, 4;
  const Reliability perfect = reliability(twoWay(same), 0.95);
  CHECK(perfect.single.estimate == 1.0);
  CHECK_FALSE(perfect.single.low);
  CHECK(perfect.why == Reason::noSpread);
}

TEST_CASE("agreement of impossible tables is refused by name") {
  const auto refused = [](const Eigen::MatrixXd& table, const char* argument) {
    try {
      twoWay(table);
      FAIL("not refused");
    } catch (const BadInput& bad) {
      CHECK(bad.argument() == argument);
    }
  };
  refused(Eigen::MatrixXd::Zero(1, 3), "sample");
  refused(Eigen::MatrixXd::Zero(3, 1), "taster");
  Eigen::MatrixXd table = Eigen::MatrixXd::Ones(3, 3);
  table(1, 1) = std::numeric_limits<double>::infinity();
  refused(table, "response");
  CHECK_THROWS_AS(reliability(twoWay(Eigen::MatrixXd::Random(3, 3)), 1.0), BadInput);
}
