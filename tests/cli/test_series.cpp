#include "cli/night.h"

using namespace oddglass::testing;
using oddglass::cli::Json;
using Catch::Matchers::Contains;

namespace {

/// A mead with its cold twin, tasted by commands alone.
struct AgingNights : Night {
  std::string series;

  void begin(const std::string& more = "--set-aside 5 --main 3 --word honey --limit 10 --ages 14,91,183") {
    json("put", {write("shelf.json", shelf())});
    const Json begun = json("begin-series --begun-on 2025-11-01 " + more, {"--title", "Heather mead over time", "--lot", "Heather mead"});
    series = begun.at("id").get<std::string>();
  }
};

}  // namespace

TEST_CASE("a series is begun, listed, and its coming sittings go into a calendar") {
  AgingNights run;
  run.begin();
  const Json all = run.json("series");
  REQUIRE(all.at("series").size() == 1);
  const Json series = all.at("series")[0];
  CHECK(series.at("title") == "Heather mead over time");
  CHECK(series.at("control") == "twin");
  CHECK(series.at("main") == Json({{"sitting", 3}, {"word", "honey"}, {"limit", 10}}));
  REQUIRE(series.at("sittings").size() == 3);
  CHECK(series.at("sittings")[0].at("due_on") == "2025-11-15");
  CHECK(series.at("sittings")[1].at("due_on") == "2026-01-31");
  CHECK(series.at("sittings")[2].at("due_on") == "2026-05-03");

  const std::string file = (run.folder / "looks.ics").string();
  CHECK(run.json("calendar " + run.series.substr(0, 6) + " --out", {file}).at("events") == 3);
  std::ifstream in(file, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  CHECK_THAT(text.str(), Contains("DTSTART;VALUE=DATE:20260131\r\n"));
  CHECK_THAT(text.str(), Contains("SUMMARY:Heather mead over time: look 2\r\n"));

  const Json over = run.json("over-time " + run.series);
  CHECK(over.at("sittings").empty());
  CHECK(over.at("main").at("verdict") == "not held");
  const std::string report = (run.folder / "series.json").string();
  CHECK(run.json("report " + run.series.substr(0, 6) + " --out", {report}).at("id") == run.series);
  CHECK(Json::parse(std::ifstream(report)).at("sittings").size() == 3);
  const Ran nothing = run("report ffff --out", {report});
  CHECK(nothing.status == 2);
  CHECK_THAT(nothing.err, Contains("SESSION"));
  const Ran said = run("over-time " + run.series);
  CHECK_THAT(said.out, Contains("Nothing has been tasted in this series yet."));
}

TEST_CASE("a sitting is planned with its sheet, and the old pages are closed while it is sealed") {
  AgingNights run;
  run.begin();
  CHECK(run("sitting " + run.series + " 1").status == 2);
  CHECK(run("sitting " + run.series + " 9 --sheet mead").status == 2);
  CHECK(run("sitting " + run.series + " 1 --sheet porter").status == 2);
  run.id = run.json("sitting " + run.series + " 1 --sheet mead").at("id").get<std::string>();
  CHECK(run.json("series").at("series")[0].at("sittings")[0].at("session") == run.id);
  CHECK(run("sitting " + run.series + " 1 --sheet mead").status == 2);
  CHECK(run.json("over-time " + run.series).at("main").at("verdict") == "not held");
}

TEST_CASE("the same table again is a new plan of the same drinks and people") {
  Night run;
  run.plan();
  run.seal();
  const Json again = run.json("again " + run.id);
  CHECK(again.at("id") != run.id);
  CHECK(again.at("title") == "Heather against bought");
  CHECK(run.json("list").at("sessions").size() == 2);
  CHECK(run("again " + again.at("id").get<std::string>()).status == 2);   // a plan that is not sealed yet is no table
}

TEST_CASE("what a series takes, before a bottle is put aside") {
  Terminal run;
  const Json plan = run.json("aging --bottles 12 --people 8");
  CHECK(plan.at("bottles_needed") == 14);
  CHECK(plan.at("enough") == false);
  CHECK(plan.at("cheaper").at("bottles_needed") == 12);
  CHECK(plan.at("smallest_change").get<double>() > 0);
  CHECK(run.json("aging --bottles 12 --people 2").at("smallest_change").is_null());
  CHECK(run.json("aging --bottles 6 --control none --ages 14,91,365 --reserve 1").at("enough") == true);
  for (const char* bad : {"aging --ages 14,14", "aging --ages x", "aging --control warm", "aging --each 0", "aging --reserve 99"}) {
    const Ran ran = run(bad);
    INFO(bad);
    CHECK(ran.status == 2);
    CHECK(ran.linesOfError() == 1);
  }
}

TEST_CASE("a series that cannot be is refused, and nothing is kept") {
  AgingNights run;
  run.json("put", {run.write("shelf.json", Night::shelf())});
  const auto refused = [&](const std::string& words, const char* lot = "Heather mead") {
    const Ran ran = run("begin-series --begun-on 2025-11-01 " + words, {"--title", "t", "--lot", lot});
    CHECK(ran.linesOfError() == 1);
    return ran.status == 2;
  };
  CHECK(refused("--set-aside 13"));
  CHECK(refused("--control twin"));
  CHECK(refused("--control none", "Nowhere ale"));
  CHECK(refused("--control none --ages 14"));
  CHECK(refused("--control none --main 9"));
  CHECK(refused("--set-aside 5 --main 9"));
  CHECK(run("begin-series --control none", {"--title", "t", "--lot", "Heather mead"}).status == 2);   // the lot has no day of bottling
  CHECK(run.json("series").at("series").empty());
  CHECK(run("over-time 1234").status == 2);
  CHECK(run("calendar 1234 --out x.ics").status == 2);
}
