#include "cli/ran.h"
#include "cli/reasons.h"
#include "stats/cases.h"

#include <algorithm>
#include <cmath>
#include <random>

using oddglass::testing::requireReasons;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;
using Catch::Matchers::WithinAbs;

// Cases of tests/data/checks/cata.json and correspondence.json through the program. Left out: McNemar's mid-p, and Stuart's test of a scale with several
// categories, for no command shows them. Fisher's eyes and hair are left to tests/stats: thousands of people.

namespace {

using Printed = oddglass::cli::Json;
using Table = std::vector<std::vector<int>>;

const std::string columns = "checks --sample what --taster who --descriptor word --checked box";

/// Samples A, B, C ... in the columns, one taster a row.
std::string lines(const Table& table, const std::string& word) {
  std::string text;
  for (std::size_t row = 0; row < table.size(); ++row)
    for (std::size_t column = 0; column < table[row].size(); ++column)
      text += 't' + std::to_string(row) + ',' + static_cast<char>('A' + column) + ',' + word + ',' + std::to_string(table[row][column]) + '\n';
  return text;
}

std::string csv(const Table& table) { return "who,what,word,box\n" + lines(table, "malty"); }

double at(const Printed& json, const std::string& path) { return json.at(Printed::json_pointer(path)).get<double>(); }

}  // namespace

TEST_CASE("Cochran's Q and McNemar's p of the cases, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("cata")) {
    const Json &in = each.at("inputs"), &wanted = each.at("expected");
    INFO(each.at("id"));
    if (in.contains("table")) continue;
    const double within = each.at("tolerance").at("abs");
    Table table;
    if (in.contains("data")) {
      table = in.at("data").get<Table>();
    } else {
      table.resize(in.at("b").get<std::size_t>(), {1, 0});
      table.resize(table.size() + in.at("c").get<std::size_t>(), {0, 1});
      table.push_back({1, 1});
    }
    const Printed got = run.json(columns, {run.write("boxes.csv", csv(table))}).at("descriptors").at(0);
    CHECK(got.at("descriptor") == "malty");
    CHECK(got.at("df") == table[0].size() - 1);
    CHECK(at(got, "/shares/A") >= 0.0);
    const char *q = wanted.contains("Q") ? "Q" : "chi2", *exact = wanted.contains("p_exact") ? "p_exact" : "p_exact_permutation";
    CHECK_THAT(at(got, "/cochran_q"), WithinAbs(wanted.at(q).get<double>(), within));
    if (wanted.contains("p_chi2")) CHECK_THAT(at(got, "/p_value"), WithinAbs(wanted.at("p_chi2").get<double>(), within));
    if (wanted.contains(exact)) CHECK_THAT(at(got, "/p_exact"), WithinAbs(wanted.at(exact).get<double>(), within));
    if (wanted.contains("p_exact")) CHECK_THAT(at(got, "/pairs/0/p_mcnemar"), WithinAbs(wanted.at("p_exact").get<double>(), within));
    CHECK(got.at("p_holm") == got.at("p_exact"));
    CHECK(got.at("why").is_string());
    ++looked;
  }
  CHECK(looked == 11);
}

TEST_CASE("the map of the cases, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& each : checks::family("correspondence")) {
    const auto counts = each.at("inputs").at("table").get<Table>();
    int most = 0;
    for (const auto& row : counts) most = std::max(most, *std::ranges::max_element(row));
    if (most > 100) continue;
    INFO(each.at("id"));
    // As many tasters as the largest count; the first of them checked the box.
    std::string text = "who,what,word,box\n";
    for (std::size_t i = 0; i < counts.size(); ++i)
      for (std::size_t j = 0; j < counts[i].size(); ++j)
        for (int taster = 0; taster < most; ++taster) text += std::to_string(taster) + ",s" + std::to_string(i) + ",w" + std::to_string(j) + ',' + (taster < counts[i][j] ? "1\n" : "0\n");
    const Printed map = run.json(columns, {run.write("boxes.csv", text)}).at("map");
    const Json& wanted = each.at("expected");
    const Json& singular = wanted.at("singular_values");
    REQUIRE(map.at("inertia").size() == singular.size());
    for (std::size_t i = 0; i < singular.size(); ++i) CHECK_THAT(std::sqrt(map.at("inertia")[i].get<double>()), WithinAbs(singular[i].get<double>(), 1e-8));
    REQUIRE(map.at("samples").size() == counts.size());
    if (wanted.contains("abs_row_std_coord_dim1"))
      for (std::size_t i = 0; i < counts.size(); ++i)
        CHECK_THAT(std::abs(map.at("samples")[i].at("coordinates")[0].get<double>()) / singular[0].get<double>(), WithinAbs(wanted.at("abs_row_std_coord_dim1")[i].get<double>(), 1e-7));
    double farthest = 0.0;
    for (const Printed& word : map.at("descriptors"))
      if (std::abs(word.at("coordinates")[0].get<double>()) > std::abs(farthest)) farthest = word.at("coordinates")[0];
    CHECK(farthest > 0.0);
    ++looked;
  }
  CHECK(looked == 2);
}

TEST_CASE("checks: several descriptors, missing boxes, words nobody used, a table for people") {
  Terminal run;
  const Table malty{{1, 0, 0}, {1, 0, 1}, {1, 1, 0}, {1, 0, 0}, {1, 0, 0}}, sharp{{0, 0, 1}, {0, 1, 1}, {0, 0, 1}, {0, 0, 0}, {1, 0, 1}}, none{{0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}};
  const std::string file = run.write("boxes.csv", "who,what,word,box\n" + lines(malty, "malty") + lines(sharp, "sharp") + lines(none, "smoky") + "t9,A,malty,1\nt9,B,malty,NA\nt9,C,malty,0\n");
  const Printed got = run.json(columns, {file});
  requireReasons(got);
  REQUIRE(got.at("descriptors").size() == 3);
  const Printed &first = got.at("descriptors")[0], &second = got.at("descriptors")[1], &last = got.at("descriptors")[2];
  CHECK(first.at("tasters") == 5);
  CHECK(first.at("left_out") == 1);
  CHECK(first.at("note").is_string());
  CHECK_FALSE(second.contains("note"));
  CHECK(got.at("left_out") == 1);
  CHECK(at(first, "/shares/A") == 1.0);
  const double p = at(first, "/p_exact"), q = at(second, "/p_exact");
  CHECK_THAT(at(first, "/p_holm"), WithinAbs(p <= q ? 2 * p : std::max(p, 2 * q), 1e-12));
  CHECK(last.at("cochran_q").is_null());
  CHECK(last.at("p_holm").is_null());
  CHECK(last.at("why") == "everybody checked it for all samples or for none");
  CHECK(got.at("map").at("never_checked") == Printed::array({"smoky"}));
  CHECK(got.at("map").at("descriptors").size() == 2);
  CHECK(got.at("map").at("samples").size() == 3);
  CHECK(got.at("map").at("inertia").size() == 1);
  CHECK(got.at("map").at("note").is_string());
  const auto plain = run(columns, {file});
  CHECK(plain.status == 0);
  CHECK(plain.out.find("smoky") != std::string::npos);
  // One taster; one descriptor; everybody of one mind.
  const Printed one = run.json(columns, {run.write("one.csv", csv({{1, 0, 0}}))});
  CHECK(one.at("descriptors")[0].at("why") == "one taster says nothing about people");
  CHECK(one.at("map").at("total_inertia").is_null());
  CHECK(one.at("map").at("why").is_string());
  CHECK(one.at("map").at("samples_without_checks") == Printed::array({"B", "C"}));
  const Printed same = run.json(columns, {run.write("same.csv", "who,what,word,box\n" + lines({{1, 1}, {1, 1}}, "malty") + lines({{1, 1}, {0, 0}}, "sharp"))});
  CHECK(same.at("map").at("why") == "the samples were described alike");
  const Printed apart = run.json(columns, {run.write("apart.csv", "who,what,word,box\na,A,malty,1\nb,B,malty,1\n")}).at("descriptors")[0];
  CHECK(apart.at("why") == "nobody answered for every sample");
  CHECK(apart.at("pairs")[0].at("p_mcnemar").is_null());
  CHECK(apart.at("pairs")[0].at("why") == "nobody answered for both");
}

TEST_CASE("checks: impossible tables are refused by name and line") {
  Terminal run;
  const auto refused = [&](const std::string& text, const std::string& named) { requireRefused(run, columns, named, {run.write("bad.csv", text)}); };
  const std::string head = "who,what,word,box\na,A,malty,1\na,B,malty,0\n";
  refused(head + "b,A,malty,2\n", "line 4");
  refused(head + "b,A,malty,-1\n", "box");
  refused(head + "b,A,malty,0.5\n", "line 4");
  refused(head + "b,A,malty,yes\n", "box");
  refused(head + "a,B,malty,0\n", "a answered for B, malty before");
  refused(head + "a,B,malty,0\n", "line 4");
  refused(head + "b,A,,1\n", "word");
  refused(head + ",A,malty,1\n", "who");
  refused("who,what,word,box\na,A,malty,1\nb,A,malty,0\n", "what");
  refused("who,what,word,box\na,A,malty,\n", "box");
  refused("who,what,box\na,A,1\n", "word");
  const std::string file = run.write("fine.csv", head);
  requireRefused(run, "checks --sample what --taster who --checked box", "--descriptor", {file});
  requireRefused(run, columns, "FILE");
  std::string many = head;
  for (int i = 0; i < 60; ++i) many += "b,s" + std::to_string(i) + ",malty,1\n";
  refused(many, "--sample");
  many = head;
  for (int i = 0; i < 201; ++i) many += "b,A,w" + std::to_string(i) + ",1\n";
  refused(many, "--descriptor");
}

TEST_CASE("right and checks: whatever stands in a table is answered with reasons, or refused in one line") {
  Terminal run;
  std::mt19937 chance(41);
  int done = 0, refused = 0;
  for (int i = 0; i < 400; ++i) {
    // Small tables full of holes; now and then a cell that cannot be.
    const bool isChecks = i % 2 == 0;
    const unsigned tasters = 1 + static_cast<unsigned>(chance() % 6), samples = 1 + static_cast<unsigned>(chance() % 3), words = 1 + static_cast<unsigned>(chance() % 3);
    std::string text = "who,what,word,box,liked\n";
    for (unsigned t = 0; t < tasters; ++t)
      for (unsigned s = 0; s < samples; ++s)
        for (unsigned w = 0; w < (isChecks ? words : 1); ++w) {
          if (chance() % 6 == 0) continue;
          const std::string box = chance() % 8 == 0 ? "NA" : chance() % 300 == 0 ? "9" : std::to_string(isChecks ? chance() % 2 : 1 + chance() % 5);
          text += 't' + std::to_string(t) + ",s" + std::to_string(s) + ",w" + std::to_string(w) + ',' + box + ',' + std::to_string(1 + chance() % 9) + '\n';
        }
    const std::string file = run.write("holes.csv", text);
    const auto ran = run("--json " + (isChecks ? columns : "right --response box --liking liked --sample what --taster who"), {file});
    INFO(text << ran.out << ran.err);
    REQUIRE((ran.status == 0 || ran.status == 2));
    REQUIRE(ran.linesOfError() == (ran.status == 0 ? 0 : 1));
    if (ran.status == 0) requireReasons(ran.json());
    ++(ran.status == 0 ? done : refused);
  }
  CHECK(done > 100);
  CHECK(refused > 20);
}
