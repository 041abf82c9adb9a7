#include "cli/ran.h"

#include <cmath>

using oddglass::cli::Json;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const std::string options = "count --method triangle --taster who --correct right";

std::string friends() {
  return "who,right,likes,sure\n"
         "Ann,1,first,3\n"
         "Bo,0,second,1\n"
         "Cy,1,first,2\n"
         "Dee,1,second,NA\n"
         "Eve,0,first,1\n"
         "Fay,1,first,3\n";
}

}  // namespace

TEST_CASE("a table of trials is pooled, and looked at by person, preference and sureness") {
  Terminal run;
  const std::string file = run.write("friends.csv", friends());
  const Json got = run.json(options + " --prefers likes --sure sure", {file});
  const Json pooled = run.json("count --method triangle --trials 6 --correct 4");
  for (const char* key : {"p_value", "critical", "pc", "pd", "d_prime", "posterior"}) CHECK(got.at(key) == pooled.at(key));
  CHECK(got.at("replicated").at("gamma").is_null());
  CHECK(got.at("replicated").at("why").is_string());
  CHECK_THAT(got.at("replicated").at("mu").get<double>(), WithinAbs(0.5, 1e-6));  // (4/6 - 1/3) / (2/3)
  REQUIRE(got.at("tasters").size() == 6);
  CHECK(got.at("tasters")[1].at("taster") == "Bo");
  CHECK(got.at("tasters")[0].at("correct") == 1);
  for (const Json& each : got.at("tasters")) {
    CHECK(each.at("low").get<double>() <= each.at("median").get<double>());
    CHECK(each.at("median").get<double>() <= each.at("high").get<double>());
  }
  const Json& preference = got.at("preference");
  CHECK(preference.at("correct") == 4);
  CHECK(preference.at("first") == 3);
  CHECK(preference.at("second") == 1);
  // Exact sign test by hand: 2 (1 + 4) / 2^4.
  CHECK_THAT(preference.at("p_value").get<double>(), WithinRel(10.0 / 16.0, 1e-12));
  // By hand: 1/2 + (3/4 - 1/2) (2/3) / (1/2) = 5/6.
  CHECK_THAT(preference.at("share").at("estimate").get<double>(), WithinRel(5.0 / 6.0, 1e-9));
  CHECK(got.at("sureness") == Json::parse(R"([{"class":1,"trials":2,"correct":0},{"class":2,"trials":1,"correct":1},{"class":3,"trials":2,"correct":2}])"));
}

TEST_CASE("the share among people who tell: its limits fall by half of chi-square from the top") {
  // Twenty tasters: 10 right and first, 4 right and second, 6 wrong. The likelihood is worked out here on a grid.
  Terminal run;
  std::string table = "who,right,likes\n";
  for (int i = 0; i < 20; ++i) table += std::to_string(i) + (i < 14 ? ",1," : ",0,") + (i < 10 ? "first" : "second") + '\n';
  const Json share = run.json(options + " --prefers likes", {run.write("twenty.csv", table)}).at("preference").at("share");
  const auto top = [](double theta) {
    double best = -1e9;
    for (int i = 1; i < 20000; ++i) {
      const double pd = i / 20000.0;
      best = std::max(best, 10 * std::log(pd * theta + (1 - pd) / 6) + 4 * std::log(pd * (1 - theta) + (1 - pd) / 6) + 6 * std::log((1 - pd) * 2 / 3));
    }
    return best;
  };
  const double theta = share.at("estimate").get<double>();
  CHECK_THAT(theta, WithinRel(0.5 + (10.0 / 14.0 - 0.5) * 0.7 / 0.55, 1e-12));
  const double half = 3.841458820694124 / 2;  // chi-square(1) at 0.95, from tables
  for (const char* end : {"low", "high"}) {
    const double at = share.at(end).get<double>();
    INFO(end << ' ' << at);
    if (at > 0.0 && at < 1.0) CHECK_THAT(top(theta) - top(at), WithinAbs(half, 1e-5));
    else CHECK(top(theta) - top(at) <= half + 1e-5);
  }
  CHECK(share.at("low").get<double>() < theta);
}

TEST_CASE("nobody can tell: nothing is known of what those who tell prefer") {
  Terminal run;
  const Json got = run.json(options + " --prefers likes", {run.write("few.csv", "who,right,likes\na,1,first\nb,0,first\nc,0,first\n")});
  CHECK(got.at("preference").at("share").is_null());
  CHECK(got.at("preference").at("why").is_string());
}

TEST_CASE("a preference is one vote a person; even rounds are no vote") {
  Terminal run;
  std::string table = "who,likes\n";
  for (const char* who : {"a", "b", "c", "d", "e", "f"}) table += std::string(who) + ",first\n" + who + ",first\n" + who + ",second\n";
  table += "g,first\ng,second\n";
  const Json got = run.json("count --method preference --taster who --prefers likes", {run.write("votes.csv", table)});
  CHECK(got.at("trials") == 6);
  CHECK(got.at("correct") == 6);
  CHECK_THAT(got.at("p_value").get<double>(), WithinRel(2.0 / 64.0, 1e-12));
  for (const char* key : {"pd", "d_prime", "posterior", "replicated"}) CHECK(got.at(key).is_null());
  CHECK(got.at("tasters").size() == 7);
}

TEST_CASE("the same table however it is written") {
  Terminal run;
  const Json plain = run.json(options, {run.write("plain.csv", friends())});
  std::string semicolon = friends(), tab = friends(), windows;
  std::ranges::replace(semicolon, ',', ';');
  std::ranges::replace(tab, ',', '\t');
  for (char c : friends()) windows += c == '\n' ? "\r\n" : std::string(1, c);
  CHECK(run.json(options, {run.write("semicolon.csv", semicolon)}) == plain);
  CHECK(run.json(options, {run.write("tab.csv", tab)}) == plain);
  CHECK(run.json(options, {run.write("windows.csv", "\xef\xbb\xbf" + windows)}) == plain);
  CHECK(run.json(options, {run.write("quoted.csv", "\"who\",\"right\"\n\"Ann\",\"1\"\nBo,0\nCy,1\nDee,1\nEve,0\nFay,1\nGil,NA\nHan,.\nIda,\n")}) == plain);
}

TEST_CASE("more rounds than are worked out by people are pooled all the same, with the reason") {
  Terminal run;
  std::string table = "who,right\n";
  for (int i = 0; i < 300; ++i) table += (i % 3 ? "Ann," : "Bo,") + std::to_string(i % 2) + '\n';
  table += "Ann,1\n";
  for (int i = 0; i < 50; ++i) table += "Ann,0\n";
  const Json got = run.json(options, {run.write("many.csv", table)}), pooled = run.json("count --method triangle --trials 351 --correct 151");
  for (const char* key : {"p_value", "critical", "pc", "pd", "d_prime", "posterior"}) CHECK(got.at(key) == pooled.at(key));
  CHECK(got.at("replicated").at("mu").is_null());
  CHECK(got.at("replicated").at("why").is_string());
  REQUIRE(got.at("tasters").size() == 2);
  CHECK(got.at("tasters")[0].at("trials") == 251);
  CHECK(got.at("tasters")[0].at("median").is_null());
  CHECK(got.at("tasters")[0].at("why").is_string());
}

TEST_CASE("what is wrong in a table is named by line") {
  Terminal run;
  const auto refused = [&](const std::string& text, const std::string& named) { requireRefused(run, options, named, {run.write("bad.csv", text)}); };
  refused("who,right\na,1\nb,2\n", "line 3");
  refused("who,right\na,1\nb,yes\n", "line 3");
  refused("who,right\na,\"0,5\"\n", "line 2");
  refused("who,right\na,1\n,0\n", "line 3");
  refused("who,right\na,1,9\n", "line 2");
  refused("who,right,right\na,1,1\n", "right");
  refused("who,rihgt\na,1\n", "right");
  refused("", "line 1");
  requireRefused(run, options, "absent.csv", {(run.folder / "absent.csv").string()});
  requireRefused(run, options + " --prefers likes", "line 2", {run.write("bad.csv", "who,right,likes\na,1,both\n")});
  requireRefused(run, options + " --sure sure", "line 2", {run.write("bad.csv", "who,right,sure\na,1,4\n")});
}
