#include "stats/trend/trend.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/visits_of.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Sources beside each case in trend.json. What a line says beyond the ages seen (pred_at and what follows) is not offered: nothing here looks ahead.
TEST_CASE("change with age: published cases") {
  int looked = 0;
  for (const auto& c : checks::family("trend")) {
    if (!c["id"].get<std::string>().starts_with("trend_small")) continue;
    INFO(c["id"]);
    // The session means are shared out over tasters whose levels differ and cancel.
    const auto mean = c["inputs"]["score"].get<std::vector<double>>();
    std::vector<std::vector<double>> scores(3, mean);
    for (double& score : scores[0]) score -= 1.0;
    for (double& score : scores[2]) score += 1.0;
    const Trend found = trend(visits::table(c["inputs"]["months"].get<std::vector<double>>(), scores), 0.95);
    const auto& out = c["expected"];
    CHECK(found.fit == TrendFit::sessionMeans);
    CHECK_THAT(found.slope.estimate.value(), WithinAbs(out["slope"].get<double>(), 1e-9));
    CHECK_THAT(found.slope.se.value(), WithinAbs(out["se_slope"].get<double>(), 1e-9));
    CHECK_THAT(found.slope.pValue.value(), WithinAbs(out["p_slope"].get<double>(), 1e-9));
    CHECK_THAT(found.slope.low.value(), WithinAbs(out["slope_ci95"][0].get<double>(), 1e-9));
    CHECK_THAT(found.slope.high.value(), WithinAbs(out["slope_ci95"][1].get<double>(), 1e-9));
    CHECK(*found.slope.df == static_cast<double>(mean.size()) - 2.0);
    // Nothing but the tasters' levels differs within a session: all the rest is the session's.
    CHECK_THAT(found.variance.session.value(), WithinAbs(out["residual_sd"].get<double>() * out["residual_sd"].get<double>(), 1e-9));
    CHECK_THAT(found.variance.taster.value(), WithinAbs(1.0, 1e-9));
    CHECK_THAT(found.variance.residual.value(), WithinAbs(0.0, 1e-9));
    CHECK(found.isConfounded);
    checks::requireAllSeen(out, {"slope", "se_slope", "p_slope", "slope_ci95", "residual_sd", "intercept", "se_intercept", "r2", "pred_at", "mean_ci95", "pred_pi95"});
    ++looked;
  }
  CHECK(looked == 3);
}

TEST_CASE("the last two sittings beside a control: published case") {
  int looked = 0;
  for (const auto& c : checks::family("people_and_time")) {
    if (c["id"] != "last_two_with_control") continue;
    TimeRows rows;
    rows.age = {3.0, 6.0};
    rows.taster.levels = 6;
    rows.session.levels = 2;
    for (const char* key : {"batch_previous", "batch_last", "control_previous", "control_last"})
      for (int t = 0; t < 6; ++t) {
        rows.response.push_back(c["inputs"][key][t]);
        rows.taster.of.push_back(t);
        rows.session.of.push_back(std::string(key).ends_with("last"));
        rows.isControl.push_back(std::string(key).starts_with("control"));
      }
    const auto& out = c["expected"];
    const Alike found = lastTwoAlike(rows, c["inputs"]["limit"], 0.05);
    CHECK_THAT(found.difference.value(), WithinAbs(out["difference"].get<double>(), 1e-9));
    CHECK_THAT(found.low.value(), WithinAbs(out["low"].get<double>(), 1e-9));
    CHECK_THAT(found.high.value(), WithinAbs(out["high"].get<double>(), 1e-9));
    CHECK_THAT(found.pValue.value(), WithinAbs(out["p_value"].get<double>(), 1e-9));
    CHECK(found.isAlike == (out["verdict"] == "alike"));
    checks::requireAllSeen(out, {"difference", "low", "high", "p_value", "verdict"});
    // The same six differences make the change since the first sitting; at two sittings there is a slope and no more.
    const Trend whole = trend(rows, 0.95);
    CHECK_THAT(whole.changeSinceFirst.estimate.value(), WithinAbs(out["difference"].get<double>(), 1e-9));
    CHECK(whole.satInBoth == 6);
    CHECK_FALSE(whole.isConfounded);
    CHECK_THAT(whole.slope.estimate.value(), WithinAbs(out["difference"].get<double>() / 3.0, 1e-9));
    CHECK_FALSE(whole.slope.se);
    CHECK(whole.slope.why == Reason::fewSessions);
    CHECK(whole.shape.why == Reason::fewSessions);
    CHECK_FALSE(whole.shape.chosen);
    ++looked;
  }
  CHECK(looked == 1);
}

TEST_CASE("sessions go by age, whatever they are called; a control takes away what the day did") {
  // Sessions 0, 1, 2, 3 at ages 6, 0, 3, 9. The day adds something to every cup, and the batch gains 0.5 a month.
  const std::vector<double> age{6, 0, 3, 9}, day{1.0, -2.0, 0.7, 3.0};
  TimeRows rows;
  rows.age = age;
  rows.taster.levels = 3;
  rows.session.levels = 4;
  for (int s = 0; s < 4; ++s)
    for (int t = 0; t < 3; ++t)
      for (const bool control : {false, true}) {
        rows.response.push_back(4.0 + t + day[s] + (control ? 0.0 : 0.5 * age[s] + 0.1 * ((t + s) % 2)));
        rows.taster.of.push_back(t);
        rows.session.of.push_back(s);
        rows.isControl.push_back(control);
      }
  const Visits found = visitsOf(rows);
  CHECK(found.age == std::vector<double>{0, 3, 6, 9});
  CHECK(found.session == std::vector{1, 2, 0, 3});
  CHECK(found.isComplete());
  const Trend whole = trend(rows, 0.95);
  CHECK_THAT(whole.slope.estimate.value(), WithinAbs(0.5, 0.02));
  CHECK_THAT(whole.changeSinceFirst.estimate.value(), WithinAbs(4.5, 0.15));
  // A visit without the control is not a visit.
  rows.response.pop_back(), rows.taster.of.pop_back(), rows.session.of.pop_back(), rows.isControl.pop_back();
  CHECK(visitsOf(rows).cells.size() == 11);
}

TEST_CASE("what cannot be known of time is said") {
  const Trend one = trend(visits::table({3}, {{5}, {6}, {7}}), 0.95);
  CHECK(one.slope.why == Reason::oneSession);
  CHECK_FALSE(one.slope.estimate);
  CHECK(one.changeSinceFirst.why == Reason::oneSession);
  CHECK(lastTwoAlike(visits::table({3}, {{5}, {6}, {7}}), 1.0, 0.05).why == Reason::oneSession);
  const Trend sameAge = trend(visits::table({3, 3, 3, 3, 3}, {{5, 6, 5, 7, 6}, {6, 6, 7, 8, 6}}), 0.95);
  CHECK(sameAge.slope.why == Reason::oneAge);
  CHECK(sameAge.shape.why == Reason::oneAge);
  const Trend flat = trend(visits::table({1, 2, 3, 4, 5, 6}, {{5, 5, 5, 5, 5, 5}, {6, 6, 6, 6, 6, 6}}), 0.95);
  CHECK_THAT(flat.slope.estimate.value(), WithinAbs(0.0, 1e-12));
  CHECK_FALSE(flat.slope.se);
  CHECK(flat.slope.why == Reason::noSpread);
  CHECK(flat.shape.chosen == Shape::flat);
  CHECK(flat.changeSinceFirst.why == Reason::noSpread);
  const Trend alone = trend(visits::table({1, 2, 3, 4, 5}, {{5, 6, 5, 7, 7}}), 0.95);
  CHECK(alone.slope.se);
  CHECK(alone.variance.why == Reason::oneTaster);
  CHECK_FALSE(alone.variance.residual);
  CHECK(alone.changeSinceFirst.why == Reason::fewTasters);
}

TEST_CASE("a table of visits beyond any panel is not fitted for minutes") {
  TimeRows rows;
  rows.taster.levels = rows.session.levels = 2000;
  for (int i = 0; i < 2000; ++i) {
    rows.age.push_back(i);
    for (const int session : {i, (i * 7 + 3) % 2000}) {
      rows.response.push_back(i % 9);
      rows.taster.of.push_back(i);
      rows.session.of.push_back(session);
    }
  }
  const Trend found = trend(rows, 0.95);
  CHECK(found.slope.why == Reason::tooLarge);
  CHECK(found.shape.why == Reason::tooLarge);
}

TEST_CASE("time: impossible input is refused by name") {
  const auto refused = [](TimeRows rows, const char* argument) {
    try {
      trend(rows, 0.95);
      FAIL("not refused");
    } catch (const BadInput& bad) {
      CHECK(bad.argument() == argument);
    }
  };
  const TimeRows good = visits::table({1, 2, 3}, {{5, 6, 5}, {4, 4, 5}});
  TimeRows bad = good;
  bad.response[0] = NAN;
  refused(bad, "response");
  bad = good, bad.age[1] = INFINITY;
  refused(bad, "age");
  bad = good, bad.age.pop_back();
  refused(bad, "age");
  bad = good, bad.taster.of[0] = 7;
  refused(bad, "taster");
  bad = good, bad.session.of.pop_back();
  refused(bad, "session");
  bad = good, bad.isControl = {true};
  refused(bad, "control");
  refused(TimeRows{}, "response");
  CHECK_THROWS_AS(trend(good, 0.0), BadInput);
  CHECK_THROWS_AS(lastTwoAlike(good, 0.0, 0.05), BadInput);
}
