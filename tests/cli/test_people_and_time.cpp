#include "cli/ran.h"
#include "cli/reasons.h"
#include "stats/cases.h"

using oddglass::testing::number;
using oddglass::testing::Ran;
using oddglass::testing::requireReasons;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;
using Catch::Matchers::WithinAbs;

// panel, lean, label, expect, alike, order and trend through the program. Each case carries its own source.

namespace {

/// A table with a taster in each row and a sample in each column, as CSV: taster, sample, score.
std::string scoresOf(const Json& tastersBySamples) {
  std::string csv = "taster,sample,score\n";
  for (std::size_t t = 0; t < tastersBySamples.size(); ++t)
    for (std::size_t s = 0; s < tastersBySamples[t].size(); ++s) csv += "T" + std::to_string(10 + t) + ",S" + std::to_string(10 + s) + ',' + number(tastersBySamples[t][s]) + '\n';
  return csv;
}

Json turned(const Json& table) {
  Json other = Json::array();
  for (std::size_t c = 0; c < table.at(0).size(); ++c) {
    other.push_back(Json::array());
    for (const auto& row : table) other.back().push_back(row[c]);
  }
  return other;
}

/// Own and reference of each taster.
std::string pairsOf(const std::vector<std::string>& tasters, const Json& own, const Json& reference) {
  std::string csv = "taster;sample;score\n";
  for (std::size_t t = 0; t < tasters.size(); ++t) csv += tasters[t] + ";batch;" + number(own[t]) + '\n' + tasters[t] + ";reference;" + number(reference[t]) + '\n';
  return csv;
}

std::vector<std::string> people(std::size_t count) {
  std::vector<std::string> names;
  for (std::size_t i = 0; i < count; ++i) names.push_back("p" + std::to_string(100 + i));
  return names;
}

/// Every number and null that is expected stands in the answer.
void requireLike(const oddglass::cli::Json& got, const Json& expected, double tolerance) {
  for (const auto& [key, value] : expected.items()) {
    INFO(key << " of " << got.dump());
    REQUIRE(got.contains(key));
    if (value.is_null()) CHECK(got.at(key).is_null());
    else if (value.is_number()) CHECK_THAT(got.at(key).get<double>(), WithinAbs(value.get<double>(), tolerance));
    else if (value.is_object()) requireLike(got.at(key), value, tolerance);
    else CHECK(Json(got.at(key)) == value);
  }
}

const Json& caseOf(const Json& family, const std::string& id) {
  for (const auto& each : family)
    if (each["id"] == id) return each;
  FAIL("no case " << id);
  return family;
}

const char* scoreColumns = " --response score --sample sample --taster taster";

}  // namespace

TEST_CASE("panel measures, through the program") {
  Terminal run;
  const Json agreement = checks::family("agreement"), mine = checks::family("people_and_time");
  const Json& icc = caseOf(agreement, "icc_shrout_fleiss");
  auto got = run.json("panel " + run.write("icc.csv", scoresOf(turned(icc["inputs"]["data_subjects_x_judges"]))) + scoreColumns);
  const Json& out = icc["expected"];
  requireLike(got, {{"icc2_1", {{"estimate", out["ICC21"]}, {"low", out["ICC21_CI95"][0]}, {"high", out["ICC21_CI95"][1]}}}, {"icc2_k", {{"estimate", out["ICC2k"]}}}, {"cronbach_alpha", out["ICC3k"]}}, 1e-6);
  CHECK(got.at("tasters").size() == 4);
  requireReasons(got);
  for (const char* id : {"cronbach_sf", "cronbach_wine"}) {
    const Json& each = caseOf(agreement, id);
    got = run.json("panel " + run.write("alpha.csv", scoresOf(turned(each["inputs"]["data"]))) + scoreColumns);
    CHECK_THAT(got.at("cronbach_alpha").get<double>(), WithinAbs(each["expected"]["alpha_raw"].get<double>(), 1e-9));
  }
  for (const char* id : {"kendallW_nag", "kendallW_small", "kendallW_perfect", "kendallW_ties"}) {
    INFO(id);
    const Json& each = caseOf(agreement, id);
    got = run.json("panel " + run.write("w.csv", scoresOf(each["inputs"]["judges_x_objects"])) + scoreColumns);
    CHECK_THAT(got.at("kendall_w").get<double>(), WithinAbs(each["expected"]["W_tie_corrected"].get<double>(), 1e-8));
  }
  const Json& level = caseOf(mine, "level_shrunk");
  got = run.json("panel " + run.write("level.csv", scoresOf(level["inputs"]["scores_taster_x_sample"])) + scoreColumns);
  for (std::size_t t = 0; t < 5; ++t) {
    const auto& taster = got.at("tasters")[t];
    CHECK_THAT(taster.at("level").get<double>(), WithinAbs(level["expected"]["raw"][t].get<double>(), 1e-9));
    CHECK_THAT(taster.at("shrunk").at("level").get<double>(), WithinAbs(level["expected"]["level"][t].get<double>(), 1e-5));
    for (const char* key : {"spread", "repeat_sd", "discrimination_F", "p_value", "agreement"}) CHECK(taster.contains(key));
    CHECK(taster.at("repeat_sd").is_null());
  }
  requireReasons(got);
  got = run.json("panel " + run.write("holes.csv", "taster,sample,score\na,x,1\na,y,2\nb,x,3\n") + scoreColumns);
  CHECK(got.at("icc2_1").at("estimate").is_null());
  CHECK(got.at("kendall_w").is_null());
  requireReasons(got);
}

TEST_CASE("lean, through the program") {
  Terminal run;
  const Json mine = checks::family("people_and_time");
  const Json& one = caseOf(mine, "bias_one_session");
  const auto names = one["inputs"]["tasters"].get<std::vector<std::string>>();
  auto got = run.json("lean " + run.write("lean.csv", pairsOf(names, one["inputs"]["own"], one["inputs"]["reference"])) + scoreColumns + " --maker brewer --own batch --reference reference");
  requireLike(got.at("lean"), one["expected"], 1e-9);
  requireReasons(got);
  const Json& flat = caseOf(mine, "bias_no_spread");
  Json own = Json::array(), reference = Json::array();
  for (const auto& row : flat["inputs"]["differences_person_x_session"]) own.push_back(5.0 + row[0].get<double>()), reference.push_back(5.0);
  got = run.json("lean " + run.write("flat.csv", pairsOf(people(4), own, reference)) + scoreColumns + " --maker p100 --own batch --reference reference");
  requireLike(got.at("lean"), flat["expected"], 1e-12);
  // Two sessions: each for itself, and both together.
  got = run.json("lean " + run.write("two.csv", "taster,sample,score,night\nm,x,8,1\nm,y,5,1\na,x,6,1\na,y,6,1\nb,x,7,1\nb,y,6,1\nc,x,5,1\nc,y,6,1\nm,x,7,2\nm,y,6,2\na,x,6,2\na,y,5,2\nb,x,6,2\nb,y,6,2\n") +
                 scoreColumns + " --session night --maker m --own x --reference y");
  REQUIRE(got.at("per_session").size() == 2);
  CHECK(got.at("per_session")[0].at("session") == "1");
  CHECK_THAT(got.at("per_session")[0].at("estimate").get<double>(), WithinAbs(3.0, 1e-12));
  CHECK(got.at("per_session")[1].at("se").is_null());
  CHECK(got.at("lean").at("df") == 2.0);
  requireReasons(got);
}

TEST_CASE("label, through the program") {
  Terminal run;
  const auto got = run.json("label " + run.write("label.csv", "taster,sample,score,how\nm,x,6,blind\nm,y,5,blind\nm,x,9,open\nm,y,5,open\na,x,6,blind\na,y,6,blind\na,x,6,open\na,y,7,open\nb,x,5,blind\nb,y,6,blind\nb,x,6,open\n"
                                                                  "b,y,6,open\nc,x,7,blind\nc,y,5,blind\nc,x,7,open\nc,y,5,open\n") + scoreColumns + " --maker m --own x --reference y --condition how");
  // Open minus blind: m 4 - 1, friends -1 - 0, 0 + 1, 2 - 2.
  CHECK_THAT(got.at("label").at("estimate").get<double>(), WithinAbs(3.0, 1e-12));
  CHECK(got.at("label").at("df") == 2.0);
  CHECK(got.at("note").get<std::string>().find("cannot be told apart") != std::string::npos);
}

TEST_CASE("expectations, through the program") {
  Terminal run;
  const Json mine = checks::family("people_and_time");
  const Json& each = caseOf(mine, "expectation_scores");
  std::string csv = "said\tcame\n";
  for (std::size_t i = 0; i < each["inputs"]["probability"].size(); ++i) csv += number(each["inputs"]["probability"][i]) + '\t' + each["inputs"]["came_true"][i].dump() + '\n';
  const auto got = run.json("expect " + run.write("expect.csv", csv) + " --probability said --came-true came");
  requireLike(got, each["expected"], 1e-10);
  CHECK(got.at("curve").is_null());
  requireReasons(got);
  requireRefused(run, "expect " + run.write("bad.csv", "said,came\n1,1\n") + " --probability said --came-true came", "line 2");
}

TEST_CASE("alikeness, through the program") {
  Terminal run;
  for (const auto& each : checks::family("equivalence_tost")) {
    INFO(each["id"]);
    const auto& in = each["inputs"];
    const auto got = run.json("alike " + run.write("alike.csv", pairsOf(people(in["batch"].size()), in["batch"], in["reference"])) + scoreColumns + " --batch batch --reference reference --limit " + number(in["margin"]));
    const auto& out = each["expected"];
    requireLike(got, {{"difference", out["mean_diff"]}, {"low", out["ci90"][0]}, {"high", out["ci90"][1]}, {"p_value", out["p_tost"]}}, 1e-9);
    CHECK(got.at("verdict") == (out["p_tost"].get<double>() <= 0.05 ? "alike" : "cannot tell"));
  }
  const Json mine = checks::family("people_and_time");
  for (const char* id : {"alike_shown", "alike_zero_spread_4"}) {
    INFO(id);
    const Json& each = caseOf(mine, id);
    Json own = each["inputs"]["differences_by_taster"], reference = Json::array();
    for (auto& value : own) value = 6.0 + value.get<double>(), reference.push_back(6.0);
    const auto got = run.json("alike " + run.write("alike.csv", pairsOf(people(own.size()), own, reference)) + scoreColumns + " --batch batch --reference reference --limit " + number(each["inputs"]["limit"]));
    requireLike(got, each["expected"], 1e-9);
    requireReasons(got);
  }
}

TEST_CASE("change over time, through the program") {
  Terminal run;
  const std::string columns = " --response score --age months --taster taster --session night";
  for (const auto& each : checks::family("trend")) {
    if (!each["id"].get<std::string>().starts_with("trend_small")) continue;
    INFO(each["id"]);
    std::string csv = "taster,night,months,score\n";
    for (std::size_t s = 0; s < each["inputs"]["months"].size(); ++s)
      for (const double level : {-1.0, 0.0, 1.0})
        csv += "t" + number(level) + ",n" + std::to_string(s) + ',' + number(each["inputs"]["months"][s]) + ',' + number(each["inputs"]["score"][s].get<double>() + level) + '\n';
    const auto got = run.json("trend " + run.write("trend.csv", csv) + columns);
    const auto& out = each["expected"];
    requireLike(got.at("slope"), {{"estimate", out["slope"]}, {"se", out["se_slope"]}, {"p_value", out["p_slope"]}, {"low", out["slope_ci95"][0]}, {"high", out["slope_ci95"][1]}}, 1e-9);
    CHECK(got.at("confounded") == true);
    CHECK(got.at("last_two_alike").at("p_value").is_null());
    requireReasons(got);
  }
  const Json mine = checks::family("people_and_time");
  const Json& peak = caseOf(mine, "trend_peak_closed");
  std::string csv = "taster,night,months,score\n";
  for (std::size_t s = 0; s < peak["inputs"]["ages"].size(); ++s)
    for (const char* taster : {"a", "b"}) csv += std::string(taster) + ",n" + std::to_string(s) + ',' + number(peak["inputs"]["ages"][s]) + ',' + number(peak["inputs"]["session_means"][s]) + '\n';
  auto got = run.json("trend " + run.write("peak.csv", csv) + columns + " --limit 1");
  const auto& out = peak["expected"];
  requireLike(got, {{"aicc", {{"linear", out["aicc_linear"]}, {"quadratic", out["aicc_quadratic"]}}}, {"shape", out["shape"]}, {"peak", out["peak"]}}, 1e-7);
  requireReasons(got);
  const Json& two = caseOf(mine, "last_two_with_control");
  csv = "taster,night,months,cup,score\n";
  for (std::size_t t = 0; t < 6; ++t)
    for (const char* when : {"previous", "last"})
      for (const char* cup : {"batch", "control"})
        csv += "t" + std::to_string(t) + ',' + when + ',' + (std::string(when) == "last" ? "6" : "3") + ',' + cup + ',' + number(two["inputs"][std::string(cup) + '_' + when][t]) + '\n';
  csv += "t0,last,6,another,9\n";
  got = run.json("trend " + run.write("two.csv", csv) + columns + " --sample cup --batch batch --control control --limit " + number(two["inputs"]["limit"]));
  requireLike(got.at("last_two_alike"), two["expected"], 1e-9);
  CHECK(got.at("confounded") == false);
  requireReasons(got);
  // Without the control no more is said than that the sittings were alike.
  got = run.json("trend " + run.write("two.csv", csv) + columns + " --sample cup --batch batch --limit 2");
  CHECK(got.at("confounded") == true);
  CHECK(got.at("last_two_alike").at("verdict") == "these two sittings were alike");
}

TEST_CASE("order effects, through the program") {
  Terminal run;
  std::string csv = "taster,sample,score,place,before,aroma\n";
  const int orders[4][4]{{0, 1, 3, 2}, {1, 2, 0, 3}, {2, 3, 1, 0}, {3, 0, 2, 1}};
  const char* names[]{"A", "B", "C", "D"};
  for (int t = 0; t < 8; ++t)
    for (int place = 0; place < 4; ++place) {
      const double score = 5 + orders[t % 4][place] + (place == 0) + 0.25 * ((t * 7 + place * 3) % 5);
      csv += "t" + std::to_string(t) + ',' + names[orders[t % 4][place]] + ',' + number(score) + ',' + std::to_string(place + 1) + ',' + (place ? names[orders[t % 4][place - 1]] : "") + ',' + number(score / 2 + (t * place) % 3) + '\n';
    }
  const std::string file = run.write("order.csv", csv);
  auto got = run.json("order " + file + scoreColumns + " --position place --previous before --beside aroma");
  CHECK_THAT(got.at("first_position").at("estimate").get<double>(), WithinAbs(1.0, 0.4));
  CHECK(got.at("first_position").at("df") == 20.0);
  CHECK(got.at("carry_over").at("df1") == 3.0);
  CHECK(got.at("carry_over").at("previous").size() == 4);
  CHECK(got.at("halo").at("df") == 20);
  requireReasons(got);
  got = run.json("order " + file + scoreColumns + " --position place");
  CHECK(got.at("carry_over").at("p_value").is_null());
  requireReasons(got);
  CHECK_FALSE(got.contains("halo"));
  requireRefused(run, "order " + run.write("bad.csv", "taster,sample,score,place,before\na,A,1,1,\na,B,2,2,Z\n") + scoreColumns + " --position place --previous before", "line 3");
}

TEST_CASE("people and time: bad input is refused by name") {
  Terminal run;
  const std::string two = run.write("two.csv", "taster,sample,score,months,night\na,x,1,0,n\na,y,2,0,n\nb,x,3,0,n\nb,y,5,0,n\n");
  requireRefused(run, std::string("panel") + scoreColumns, "FILE");
  requireRefused(run, "panel " + two + " --response score --sample sample", "--taster");
  requireRefused(run, "panel " + two + " --response none --sample sample --taster taster", "none");
  requireRefused(run, "panel " + two + scoreColumns + " --level 1", "--level");
  requireRefused(run, "panel " + run.write("one.csv", "taster,sample,score\na,x,1\nb,x,2\n") + scoreColumns, "sample");
  requireRefused(run, "panel " + run.write("comma.csv", "taster;sample;score\na;x;1,5\nb;y;2\n") + scoreColumns, "line 2");
  requireRefused(run, "lean " + two + scoreColumns + " --maker z --own x --reference y", "--maker");
  requireRefused(run, "lean " + two + scoreColumns + " --maker a --own z --reference y", "--own");
  requireRefused(run, "lean " + two + scoreColumns + " --maker a --own x --reference x", "--reference");
  requireRefused(run, "label " + two + scoreColumns + " --maker a --own x --reference y --condition night", "line 2");
  requireRefused(run, "alike " + two + scoreColumns + " --batch x --reference y --limit 0", "--limit");
  requireRefused(run, "alike " + two + scoreColumns + " --batch x --reference y", "--limit");
  requireRefused(run, "alike " + two + scoreColumns + " --batch x --reference y --limit 1 --alpha 0.5", "--alpha");
  requireRefused(run, "trend " + two + " --response score --age months --taster taster", "--session");
  requireRefused(run, "trend " + two + " --response score --age months --taster taster --session night --batch x", "--sample");
  requireRefused(run, "trend " + two + " --response score --age months --taster taster --session night --sample sample", "--batch");
  requireRefused(run, "trend " + two + " --response score --age months --taster taster --session night --sample sample --batch x --control x", "--control");
  requireRefused(run, "trend " + run.write("ages.csv", "taster,score,months,night\na,1,0,n\nb,2,1,n\n") + " --response score --age months --taster taster --session night", "line 3");
  requireRefused(run, "order " + two + scoreColumns + " --position months", "line 2");
  requireRefused(run, "order " + two + scoreColumns, "--position");
}

TEST_CASE("people and time: broken tables never break the program") {
  Terminal run;
  const std::string good = "taster,sample,score,night,months,place,how,p,o\na,x,5,n1,1,1,open,0.5,1\na,y,6,n1,1,2,blind,0.7,0\nb,x,4,n2,3,2,blind,0.2,1\nb,y,7,n2,3,1,open,0.9,0\nc,x,5,n3,4,1,blind,0.6,1\nc,y,5,n3,4,2,open,0.4,0\n";
  const std::string commands[]{"panel", "lean --maker a --own x --reference y --session night", "label --maker a --own x --reference y --condition how", "alike --batch x --reference y --limit 1",
                               "order --position place --previous sample"};
  std::uint64_t state = 77;
  const auto next = [&](std::size_t n) { return static_cast<std::size_t>((state = state * 6364136223846793005ULL + 1442695040888963407ULL) >> 33) % n; };
  for (int round = 0; round < 150; ++round) {
    std::string text = good;
    for (std::size_t hits = 1 + next(4); hits > 0; --hits) {
      const std::size_t at = next(text.size());
      switch (next(4)) {
        case 0: text[at] = ",;\"\n\t.0-eNaA\xff"[next(14)]; break;
        case 1: text.erase(at, 1 + next(8)); break;
        case 2: text.insert(at, text.substr(next(text.size()), next(20))); break;
        default: text.insert(at, std::string(1, "\0\"\r,1"[next(5)])); break;
      }
    }
    const std::string file = run.write("broken.csv", text);
    for (const std::string& command : commands) {
      const std::size_t blank = command.find(' ');
      const std::string words = command.substr(0, blank) + ' ' + file + (blank == std::string::npos ? "" : command.substr(blank)) + scoreColumns;
      const Ran ran = run("--json " + words);
      INFO(words << '\n' << text << '\n' << ran.out << ran.err);
      REQUIRE((ran.status == 0 || ran.status == 2));
      if (ran.status == 0) requireReasons(ran.json(), false);
      else REQUIRE(ran.json().contains("error"));
    }
    for (const std::string& words : {"trend " + file + " --response score --age months --taster taster --session night --limit 1", "expect " + file + " --probability p --came-true o"}) {
      const Ran ran = run("--json " + words);
      INFO(words << '\n' << text << '\n' << ran.out << ran.err);
      REQUIRE((ran.status == 0 || ran.status == 2));
      if (ran.status == 0) requireReasons(ran.json(), false);
      else REQUIRE(ran.json().contains("error"));
    }
  }
}
