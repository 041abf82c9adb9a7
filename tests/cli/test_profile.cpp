#include "cli/ran.h"
#include "cli/reasons.h"
#include "stats/cases.h"
#include "stats/open_table.h"

#include <cctype>
#include <cmath>

using oddglass::testing::number;
using oddglass::testing::Ran;
using oddglass::testing::requireReasons;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;
using Got = oddglass::cli::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// The profile through the program. Each case carries its own source.

namespace {

const std::string columns = "profile --descriptor word --response score --sample cup --taster who ";
const std::string head = "who,cup,word,score\n";

std::string line(const std::string& who, const std::string& cup, const std::string& word, double score) { return who + ',' + cup + ',' + word + ',' + number(score) + '\n'; }

double at(const Got& json, const std::string& path) { return json.at(Got::json_pointer(path)).get<double>(); }

void requireKeys(const Got& object, const std::vector<std::string>& wanted) {
  for (const auto& key : wanted) {
    INFO(key << " in " << object);
    CHECK(object.contains(key));
  }
}

/// Every key of the contract, and no null without a reason in the same object.
void requireWhole(const Got& json) {
  requireKeys(json, {"descriptors", "components", "rv"});
  for (const auto& each : json.at("descriptors")) {
    requireKeys(each, {"descriptor", "F", "df1", "df2", "p_value", "p_holm", "p_bh", "differences"});
    for (const auto& one : each.at("differences")) requireKeys(one, {"sample", "difference", "low", "high", "p_value", "p_adjusted", "p_limit", "p_limit_adjusted", "verdict"});
  }
  requireKeys(json.at("components"), {"variance", "samples", "descriptors", "ellipses"});
  for (const auto& each : json.at("components").at("ellipses")) requireKeys(each, {"sample", "center", "semi_axes", "angle"});
  for (const auto& each : json.at("rv")) requireKeys(each, {"taster", "rv", "p_value"});
  // What is missing in one descriptor must be explained there, not for the whole.
  REQUIRE_FALSE(json.contains("why"));
  requireReasons(json);
}

const Json& caseOf(const Json& family, const std::string& id) {
  for (const Json& each : family)
    if (each.at("id") == id) return each;
  FAIL("no case " << id);
  return family;
}

}  // namespace

TEST_CASE("profile: published verdicts, through the program") {
  Terminal run;
  const Json all = checks::family("profile");
  const Json& each = caseOf(all, "profile_verdicts");
  std::string table = head;
  for (const auto& [word, differences] : each.at("inputs").at("differences_from_reference_by_taster").items())
    for (std::size_t t = 0; t < differences.size(); ++t)
      table += line('t' + std::to_string(t), "house", word, 5.0) + line('t' + std::to_string(t), "batch", word, 5.0 + differences[t].get<double>());
  const std::string file = run.write("verdicts.csv", table);
  const Got got = run.json(columns + "--reference house --limit 1 --adjust bh", {file});
  requireWhole(got);
  for (const Json& wanted : each.at("expected").at("descriptors")) {
    INFO(wanted.at("descriptor"));
    for (const auto& found : got.at("descriptors")) {
      if (found.at("descriptor") != wanted.at("descriptor")) continue;
      const Got& one = found.at("differences").at(0);
      CHECK(one.at("sample") == "batch");
      for (const auto& [ours, theirs] : {std::pair{"difference", "difference"}, {"low", "low"}, {"high", "high"}, {"p_value", "p_value"}, {"p_adjusted", "p_bh"}, {"p_limit", "p_limit"}, {"p_limit_adjusted", "p_limit_bh"}})
        CHECK_THAT(one.at(ours).get<double>(), WithinAbs(wanted.at(theirs).get<double>(), 1e-9));
      CHECK(one.at("verdict") == wanted.at("verdict"));
    }
  }
  CHECK(got.at("descriptors").size() == 4);
  // In words too, and without a limit nothing is within it.
  CHECK(run(columns + "--reference house --limit 1", {file}).out.find("within the limit") != std::string::npos);
  const nlohmann::json noLimit = run.json(columns + "--reference house", {file});
  for (const auto& found : noLimit.at("descriptors")) CHECK(found.at("differences").at(0).at("verdict") != "within the limit");
}

TEST_CASE("profile: published tests of samples and paired tests, through the program") {
  Terminal run;
  for (const Json& each : checks::family("anova")) {
    INFO(each.at("id"));
    const Json& scores = each.at("inputs").at("scores_product_x_assessor_x_rep");
    std::string table = "who;cup;word;round;score\n";
    for (std::size_t s = 0; s < scores.size(); ++s)
      for (std::size_t t = 0; t < scores[s].size(); ++t)
        for (std::size_t k = 0; k < scores[s][t].size(); ++k)
          table += 't' + std::to_string(t) + ";p" + std::to_string(s) + ";bitter;" + std::to_string(k + 1) + ';' + number(scores[s][t][k]) + '\n';
    const Got got = run.json(columns + "--round round", {run.write("anova.csv", table)});
    requireWhole(got);
    CHECK_THAT(at(got, "/descriptors/0/F"), WithinAbs(each.at("expected").at("F_product").get<double>(), 1e-6));
    CHECK_THAT(at(got, "/descriptors/0/p_value"), WithinAbs(each.at("expected").at("p_product").get<double>(), 1e-6));
    CHECK(at(got, "/descriptors/0/df2") == each.at("expected").at("df")[2]);
    CHECK(got.at("descriptors")[0].at("p_holm") == got.at("descriptors")[0].at("p_value"));
    CHECK(got.at("descriptors")[0].at("differences").empty());
  }
  for (const Json& each : checks::family("equivalence_tost")) {
    INFO(each.at("id"));
    const Json &in = each.at("inputs"), &out = each.at("expected");
    std::string table = head;
    for (std::size_t t = 0; t < in.at("batch").size(); ++t) table += line('t' + std::to_string(t), "batch", "malty", in.at("batch")[t]) + line('t' + std::to_string(t), "house", "malty", in.at("reference")[t]);
    const Got got = run.json(columns + "--reference house --limit " + number(in.at("margin")), {run.write("tost.csv", table)});
    const Got& one = got.at("descriptors")[0].at("differences")[0];
    for (const auto& [key, value] : {std::pair{"difference", out.at("mean_diff")}, {"p_value", out.at("p_diff_two_sided")}, {"p_limit", out.at("p_tost")}, {"limit_low", out.at("ci90")[0]}, {"limit_high", out.at("ci90")[1]}})
      CHECK_THAT(one.at(key).get<double>(), WithinAbs(value.get<double>(), 1e-9));
  }
}

TEST_CASE("components of published tables, through the program") {
  Terminal run;
  const Json all = checks::family("profile");
  const auto tableOf = [](const std::string& name, const std::vector<std::string>& words) {
    const open_data::Table table(name);
    std::string text = head;
    for (const std::string& word : words) {
      const auto values = table.numbers(word);
      for (std::size_t s = 0; s < values.size(); ++s) text += line("one", "s" + std::to_string(1000 + s), word, values[s]);
    }
    return text;
  };
  const auto check = [&](const Got& got, const Json& wanted) {
    requireWhole(got);
    const Got& map = got.at("components");
    REQUIRE(map.at("variance").size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
      CHECK_THAT(map.at("variance")[i].get<double>(), WithinAbs(wanted.at("eigenvalues")[i].get<double>(), 1e-8));
      CHECK_THAT(std::sqrt(map.at("variance")[i].get<double>()), WithinAbs(wanted.at("sdev")[i].get<double>(), 1e-8));
      if (wanted.contains("explained_pct")) CHECK_THAT(100.0 * map.at("share")[i].get<double>(), WithinAbs(wanted.at("explained_pct")[i].get<double>(), 1e-8));
    }
  };
  const Got arrests = run.json(columns + "--scale", {run.write("arrests.csv", tableOf("usarrests", {"Murder", "Assault", "UrbanPop", "Rape"}))});
  const Json& wanted = caseOf(all, "pca_usarrests").at("expected");
  check(arrests, wanted);
  const std::vector<std::string> order{"Murder", "Assault", "UrbanPop", "Rape"};
  for (std::size_t d = 0; d < 4; ++d)
    for (const auto& each : arrests.at("components").at("descriptors"))
      if (each.at("descriptor") == order[d]) CHECK_THAT(each.at("loadings")[0].get<double>(), WithinAbs(wanted.at("abs_loadings_PC1")[d].get<double>(), 1e-8));
  CHECK(arrests.at("rv")[0].at("why").is_string());
  CHECK(arrests.at("descriptors")[0].at("F").is_null());
  check(run.json(columns, {run.write("iris.csv", tableOf("iris", {"Sepal.Length", "Sepal.Width", "Petal.Length", "Petal.Width"}))}), caseOf(all, "pca_iris_cov").at("expected"));
}

TEST_CASE("profile: tables that cannot be judged have their reasons") {
  Terminal run;
  // One taster; one descriptor; no variance; a descriptor all equal; an empty cell; a descriptor with one sample; nobody scored both.
  for (const char* rows : {"a,x,w,1\na,y,w,2\n", "a,x,w,1\na,y,w,2\nb,x,w,1\nb,y,w,3\nc,x,w,2\nc,y,w,2\n", "a,x,w,5\na,y,w,5\nb,x,w,5\nb,y,w,5\nc,x,w,5\nc,y,w,5\n",
                           "a,x,w,1\na,y,w,2\nb,x,w,1\nb,y,w,3\na,x,v,5\na,y,v,5\nb,x,v,5\nb,y,v,5\n", "a,x,w,1\na,y,w,2\nb,x,w,1\nb,y,w,3\na,x,v,5\na,y,v,\nb,x,v,5\nb,y,v,6\n",
                           "a,x,w,1\na,y,w,2\nb,x,w,1\nb,y,w,3\na,x,v,5\nb,x,v,6\n", "a,x,w,1\nb,y,w,2\nc,x,w,1\nd,y,w,3\n"}) {
    INFO(rows);
    const std::string file = run.write("odd.csv", head + rows);
    for (const char* more : {"", "--reference x ", "--reference x --limit 1 --scale "}) {
      const Got got = run.json(columns + more, {file});
      requireWhole(got);
      for (const auto& each : got.at("descriptors"))
        for (const auto& one : each.at("differences"))
          if (one.at("p_value").is_null()) CHECK(one.at("verdict") == "cannot tell yet");
    }
    CHECK(run(columns + "--reference x --limit 1", {file}).status == 0);
  }
  // A steady zero is no proof: with the limit of a batch p would be 2^-n, here it is cannot tell yet.
  std::string steady = head;
  for (int t = 0; t < 8; ++t) steady += line('t' + std::to_string(t), "x", "w", 4 + t % 2) + line('t' + std::to_string(t), "y", "w", 4 + t % 2);
  const Got got = run.json(columns + "--reference x --limit 1", {run.write("steady.csv", steady)});
  CHECK(got.at("descriptors")[0].at("differences")[0].at("verdict") == "cannot tell yet");
  CHECK(got.at("descriptors")[0].at("differences")[0].at("p_limit").is_null());
  CHECK(got.at("descriptors")[0].at("differences")[0].at("why").is_string());
}

TEST_CASE("profile: intervals over resampled panels, through the program") {
  Terminal run;
  std::string table = head;
  for (int t = 0; t < 20; ++t)
    for (int s = 0; s < 2; ++s) table += line("t" + std::to_string(t), s ? "x" : "y", "w", (t * 7 + s * 3) % 9);
  const std::string twenty = run.write("twenty.csv", table), nineteen = run.write("nineteen.csv", table.substr(0, table.find("t19,")));
  const Got got = run.json(columns + "--resamples 500", {twenty});
  requireWhole(got);
  REQUIRE(got.at("resampled").at("means").size() == 2);
  for (const auto& each : got.at("resampled").at("means")) CHECK((each.at("low") < each.at("mean") && each.at("mean") < each.at("high")));
  CHECK(run.json(columns + "--resamples 500", {nineteen}).at("resampled").at("why").is_string());
  CHECK_FALSE(run.json(columns, {twenty}).contains("resampled"));
  requireRefused(run, columns + "--resamples 99", "--resamples", {twenty});
}

TEST_CASE("profile: bad input is named") {
  Terminal run;
  const std::string file = run.write("s.csv", head + "a,x,w,1\na,y,w,2\nb,x,w,1\nb,y,w,3\n");
  requireRefused(run, columns + "--reference z", "--reference", {file});
  requireRefused(run, columns + "--limit 1", "--reference", {file});
  requireRefused(run, columns + "--reference x --limit 0", "--limit", {file});
  requireRefused(run, columns + "--reference x --limit 1 --alpha 0.5", "--alpha", {file});
  requireRefused(run, columns + "--adjust bonferroni", "--adjust", {file});
  requireRefused(run, columns + "--level 1", "--level", {file});
  requireRefused(run, columns + "--round day", "day", {file});
  requireRefused(run, "profile --response score --sample cup --taster who", "--descriptor", {file});
  requireRefused(run, columns, "FILE");
  requireRefused(run, columns, "line 3", {run.write("t.csv", head + "a,x,w,1\na,y,w,two\n")});
  requireRefused(run, columns, "line 2", {run.write("u.csv", head + "a,x,,1\na,y,w,2\n")});
  requireRefused(run, columns, "cup", {run.write("one.csv", head + "a,x,w,1\nb,x,w,2\n")});
}

TEST_CASE("profile: broken tables never break the program") {
  Terminal run;
  std::string good = head;
  for (int t = 0; t < 5; ++t)
    for (int s = 0; s < 4; ++s)
      for (const char* word : {"v", "w"}) good += line(std::string(1, static_cast<char>('a' + t)), std::string(1, static_cast<char>('w' + s)), word, (t * 3 + s * 5 + word[0]) % 9);
  std::uint64_t state = 78;
  const auto next = [&](std::size_t n) { return static_cast<std::size_t>((state = state * 6364136223846793005ULL + 1442695040888963407ULL) >> 33) % n; };
  int answers = 0;
  for (int round = 0; round < 200; ++round) {
    std::string text = good;
    for (std::size_t hits = 1 + next(6); hits > 0; --hits) {
      const std::size_t place = next(text.size()), end = text.find('\n', place);
      // Most often an answer is missing; the rest is damage.
      switch (next(12)) {
        case 0: text[place] = ",;\"\n\t.0-eNaA\xff"[next(14)]; break;
        case 1: text.erase(place, 1 + next(30)); break;
        case 2: text.insert(place, text.substr(next(text.size()), next(20))); break;
        case 3: text.insert(place, std::string(1, "\0\"\r,1"[next(5)])); break;
        default:
          if (end != std::string::npos && end > 0 && std::isdigit(static_cast<unsigned char>(text[end - 1]))) text.erase(end - 1, 1);
      }
    }
    const Ran ran = run("--json " + columns + "--reference w --limit 1 " + (round % 2 ? "--scale " : "") + run.write("broken.csv", text));
    INFO(text << '\n' << ran.out << ran.err);
    REQUIRE((ran.status == 0 || ran.status == 2));
    if (ran.status == 0) requireWhole(ran.json()), ++answers;
    else REQUIRE(ran.json().contains("error"));
  }
  CHECK(answers > 20);
}
