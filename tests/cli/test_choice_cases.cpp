#include "cli/ran.h"
#include "stats/cases.h"

#include <cmath>
#include <map>
#include <set>

using oddglass::testing::number;
using oddglass::testing::requireRefused;
using oddglass::testing::Terminal;
using checks::Json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Signal tests, sequential plans, votes and designs through the program. Each case of tests/data/checks carries its own source.

namespace {

using Printed = oddglass::cli::Json;

std::string listed(const Json& values) {
  std::string text;
  for (const Json& each : values) text += (text.empty() ? "" : ",") + std::to_string(each.get<int>());
  return text;
}

double at(const Printed& json, const std::string& path) { return json.at(Printed::json_pointer(path)).get<double>(); }

void requireKeys(const Printed& object, const std::set<std::string>& keys) {
  for (const auto& key : keys) {
    INFO(key << " in " << object);
    CHECK(object.contains(key));
  }
}

}  // namespace

TEST_CASE("yes-no cases, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& c : checks::family("same_different")) {
    INFO(c.at("id"));
    const Json &in = c.at("inputs"), &out = c.at("expected");
    const double within = c.at("tolerance").at("abs");
    if (in.contains("test")) {
      const int hits = in.at("A_called_A"), alarms = in.at("notA_called_A");
      const auto got = run.json("signal --method a-not-a --hits " + std::to_string(hits) + " --misses " + std::to_string(in.at("A_n").get<int>() - hits) + " --false-alarms " + std::to_string(alarms) +
                                " --correct-rejections " + std::to_string(in.at("notA_n").get<int>() - alarms));
      CHECK_THAT(at(got, "/d_prime"), WithinAbs(out.at("d_prime").get<double>(), within));
      CHECK_THAT(at(got, "/d_prime_se"), WithinAbs(out.at("se").get<double>(), within));
      CHECK_THAT(at(got, "/criterion"), WithinAbs(out.at("c").get<double>(), within));
      CHECK_THAT(at(got, "/p_value"), WithinAbs(out.at("fisher_p_greater").get<double>(), within));
    } else {
      // Rates of hundredths, as counts of a hundred.
      const bool isSame = in.contains("model");
      const int hits = static_cast<int>(std::lround(100 * in.at(isSame ? "p_different_given_different" : "H").get<double>()));
      const int alarms = static_cast<int>(std::lround(100 * in.at(isSame ? "p_different_given_same" : "F").get<double>()));
      const auto got = run.json(std::string("signal --method ") + (isSame ? "same-different" : "a-not-a") + " --hits " + std::to_string(hits) + " --misses " + std::to_string(100 - hits) +
                                " --false-alarms " + std::to_string(alarms) + " --correct-rejections " + std::to_string(100 - alarms));
      CHECK_THAT(at(got, "/d_prime"), WithinAbs(out.at("d_prime").get<double>(), within));
      if (isSame) CHECK_THAT(at(got, "/tau"), WithinAbs(out.at("tau").get<double>(), within));
      CHECK(got.contains("criterion") != isSame);
    }
    ++looked;
  }
  CHECK(looked == 7);
}

TEST_CASE("signal has its keys, null with a reason, and reads a table") {
  Terminal run;
  const auto none = run.json("signal --method same-different --hits 5 --misses 0 --false-alarms 1 --correct-rejections 4");
  requireKeys(none, {"d_prime", "d_prime_se", "d_prime_corrected", "tau", "p_value", "why"});
  CHECK(none.at("d_prime").is_null());
  CHECK(none.at("d_prime_corrected").is_number());
  CHECK(run.json("signal --method a-not-a --hits 0 --misses 0 --false-alarms 0 --correct-rejections 0").at("why").is_string());
  std::string table = "was,said\n";
  for (const auto& [row, times] : {std::pair("1,1\n", 18), std::pair("1,0\n", 6), std::pair("0,1\n", 9), std::pair("0,0\n", 15), std::pair("1,NA\n", 3)})
    for (int i = 0; i < times; ++i) table += row;
  CHECK(run.json("signal --method a-not-a --signal was --said said", {run.write("said.csv", table)}) ==
        run.json("signal --method a-not-a --hits 18 --misses 6 --false-alarms 9 --correct-rejections 15"));
  requireRefused(run, "signal --method triangle --hits 1 --misses 1 --false-alarms 1 --correct-rejections 1", "--method");
  requireRefused(run, "signal --method a-not-a --hits -1 --misses 1 --false-alarms 1 --correct-rejections 1", "--hits");
  requireRefused(run, "signal --method a-not-a --hits 1 --misses 1 --false-alarms 1", "--correct-rejections");
  requireRefused(run, "signal --method a-not-a --hits 10000000 --misses 10000000 --false-alarms 1 --correct-rejections 1", "--hits");
  requireRefused(run, "signal --method a-not-a --signal was --said said", "line 3", {run.write("bad.csv", "was,said\n1,1\n2,0\n")});
  requireRefused(run, "signal --method a-not-a --signal was", "--said", {run.write("bad.csv", "was,said\n1,1\n")});
  requireRefused(run, "signal --method a-not-a --signal was --said said --hits 3", "--hits", {run.write("bad.csv", "was,said\n1,1\n")});
}

TEST_CASE("the R-index case, through the program, from counts and from tables") {
  Terminal run;
  for (const Json& c : checks::family("r_index")) {
    const Json &in = c.at("inputs"), &out = c.at("expected");
    const Json &signal = in.at("signal_counts_sure_to_sure_not"), &noise = in.at("noise_counts_sure_to_sure_not");
    const auto got = run.json("rindex --signal " + listed(signal) + " --noise " + listed(noise));
    for (const char* key : {"r_index", "low", "high", "p_value"}) CHECK_THAT(got.at(key).get<double>(), WithinAbs(out.at(key).get<double>(), 1e-7));
    std::string table = "was,class\n";
    for (std::size_t i = 0; i < signal.size(); ++i) {
      for (int k = 0; k < signal[i].get<int>(); ++k) table += "1," + std::to_string(i + 1) + '\n';
      for (int k = 0; k < noise[i].get<int>(); ++k) table += "0," + std::to_string(i + 1) + '\n';
    }
    CHECK(run.json("rindex --signal was --sure class", {run.write("class.csv", table)}) == got);
  }
  // Said and sureness: sure of the signal is above a guess, which is above a guess at the noise.
  const auto said = run.json("rindex --method a-not-a --signal was --said said --sure sure", {run.write("sure.csv", "was,said,sure\n1,1,3\n1,1,1\n0,0,1\n0,0,3\n0,1,NA\n")});
  CHECK(said.at("signal") == Printed::array({1, 0, 1, 0, 0, 0}));
  CHECK(said.at("noise") == Printed::array({0, 0, 0, 1, 0, 1}));
  CHECK(said.at("r_index") == 1.0);
  const auto nothing = run.json("rindex --signal 0,0 --noise 1,2");
  CHECK(nothing.at("r_index").is_null());
  CHECK(nothing.at("why").is_string());
  requireRefused(run, "rindex --signal 1,2 --noise 1", "--noise");
  requireRefused(run, "rindex --signal 1 --noise 1", "--signal");
  requireRefused(run, "rindex --signal 1,x --noise 1,2", "--signal");
  requireRefused(run, "rindex --signal 1,,2 --noise 1,2,3", "--signal");
  requireRefused(run, "rindex --signal 1,-2 --noise 1,2", "--signal");
  requireRefused(run, "rindex --signal 1,2 --noise 1,2 --level 1", "--level");
  requireRefused(run, "rindex --signal 1,2", "--noise");
}

TEST_CASE("sequential cases, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& c : checks::family("sequential")) {
    const Json &in = c.at("inputs"), &out = c.at("expected");
    INFO(c.at("id"));
    const double within = c.at("tolerance").at("abs");
    if (in.contains("method")) {
      const auto got = run.json("sequential --method pair --pd " + number(in.at("pd")) + " --alpha " + number(in.at("alpha")) + " --beta " + number(in.at("beta")) + " --answers " + listed(in.at("answers")));
      for (const char* key : {"slope", "accept_intercept", "reject_intercept"}) CHECK_THAT(got.at(key).get<double>(), WithinAbs(out.at(key).get<double>(), within));
      CHECK(got.at("decision") == out.at("decision").get<std::string>());
      CHECK(got.at("after") == out.at("after").get<int>());
      ++looked;
      continue;
    }
    // Plans from guessing in a triangle or a pair; the others start from another chance, which no method has.
    const double p0 = in.at("p0"), p1 = in.at("p1");
    const std::string method = std::abs(p0 - 1.0 / 3) < 1e-12 ? "triangle" : p0 == 0.5 ? "pair" : "";
    if (method.empty()) continue;
    const std::string plan = "sequential --method " + method + " --pd " + number((p1 - p0) / (1 - p0)) + " --alpha " + number(in.at("alpha")) + " --beta " + number(in.at("beta"));
    if (in.contains("true_p")) {
      if (in.at("true_p") != p1) continue;
      const auto got = run.json(plan + " --truncate " + std::to_string(in.at("truncate_at").get<int>()));
      CHECK_THAT(at(got, "/exact/p1/difference"), WithinAbs(out.at("P_reject").get<double>(), within));
      CHECK_THAT(at(got, "/exact/p1/none"), WithinAbs(out.at("P_accept").get<double>(), within));
      CHECK_THAT(at(got, "/exact/p1/undecided"), WithinAbs(out.at("P_undecided").get<double>(), within));
      CHECK_THAT(at(got, "/exact/p1/expected_trials"), WithinAbs(out.at("mean_n_with_truncation").get<double>(), within));
    } else {
      const auto got = run.json(plan + " --answers 1,0,1,1,0,1,1,1,0,1,1,0,1,1,1,1,0,1,1,1,1,0,1,1,0,1,1,1,0,1,1,0,1,1,1,1,0,1,1,1");
      CHECK_THAT(at(got, "/slope"), WithinAbs(out.at("slope").get<double>(), within));
      CHECK_THAT(at(got, "/accept_intercept"), WithinAbs(-out.at("h0").get<double>(), within));
      CHECK_THAT(at(got, "/reject_intercept"), WithinAbs(out.at("h1").get<double>(), within));
      CHECK_THAT(at(got, "/expected_trials/none"), WithinAbs(out.at("ASN_p0").get<double>(), within));
      CHECK_THAT(at(got, "/expected_trials/p1"), WithinAbs(out.at("ASN_p1").get<double>(), within));
      CHECK((got.at("decision") == "difference") == (out.at("pattern_10110111011011110111x2")[0] == "reject_H0"));
      CHECK(got.at("after") == out.at("pattern_10110111011011110111x2")[1].get<int>());
    }
    ++looked;
  }
  CHECK(looked == 6);
}

TEST_CASE("sequential plans: looks after whole rounds, an end, and what is refused") {
  Terminal run;
  const std::string plan = "sequential --method triangle --pd 0.5 --beta 0.1";
  requireKeys(run.json(plan), {"slope", "accept_intercept", "reject_intercept", "expected_trials", "decision", "after", "exact"});
  CHECK(run.json(plan).at("decision") == "go on");
  // Guessing 1/3 against 2/3: each right answer doubles the odds, and 18 = 0.9/0.05 are asked for (Wald 1947): four are too few, five enough.
  CHECK(run.json(plan + " --answers 1,1,1,1").at("decision") == "go on");
  CHECK(run.json(plan + " --answers 1,1,1,1,1").at("decision") == "difference");
  const auto sixes = run.json(plan + " --every 6 --answers 1,1,1,1,1,1,1,1,1,1,1,1");
  CHECK(sixes.at("decision") == "difference");
  CHECK(sixes.at("after").get<int>() % 6 == 0);
  CHECK(run.json(plan + " --answers 0,1 --truncate 2").at("decision") == "undecided");
  CHECK(run.json(plan + " --answers 0,0,0,0,0,0,0,0,0,0").at("decision") == "none");
  // An evening without an end: no exact figures, and the reason.
  const auto endless = run.json("sequential --method triangle --pd 0.00001 --beta 0.1");
  CHECK(endless.at("exact").at("none").is_null());
  CHECK(endless.at("why").is_string());
  requireRefused(run, "sequential --method preference --pd 0.5 --beta 0.1", "--method");
  requireRefused(run, "sequential --method triangle --pd 0 --beta 0.1", "--pd");
  requireRefused(run, "sequential --method triangle --pd 1 --beta 0.1", "--pd");
  requireRefused(run, "sequential --method triangle --pd 0.5", "--beta");
  requireRefused(run, "sequential --method triangle --pd 0.5 --beta 0.6 --alpha 0.4", "--beta");
  requireRefused(run, plan + " --answers 1,2", "--answers");
  requireRefused(run, plan + " --truncate 0", "--truncate");
}

TEST_CASE("designs: every order as often as any other, the same for the same seed") {
  Terminal run;
  const std::map<std::string, std::pair<std::size_t, std::size_t>> kinds{{"triangle", {6, 3}}, {"duo-trio", {4, 3}}, {"tetrad", {6, 4}}, {"two-out-of-five", {20, 5}}, {"pair", {2, 2}},
                                                                        {"three-afc", {3, 3}}, {"same-different", {4, 2}}, {"a-not-a", {2, 1}}, {"preference", {2, 2}}};
  for (const auto& [kind, shape] : kinds) {
    INFO(kind);
    const auto got = run.json("design --kind " + kind + " --tasters " + std::to_string(2 * shape.first) + " --seed apple");
    std::map<Printed, int> times;
    for (const auto& order : got.at("orders")) {
      CHECK(order.size() == shape.second);
      ++times[order];
    }
    CHECK(times.size() == shape.first);
    for (const auto& [order, count] : times) CHECK(count == 2);
    requireKeys(got.at("balance"), {"position", "carryover", "pairs"});
    CHECK(run.json("design --kind " + kind + " --seed apple") == run.json("design --kind " + kind + " --seed apple"));
  }
  CHECK(run.json("design --kind two-out-of-five --seed a").at("orders") != run.json("design --kind two-out-of-five --seed b").at("orders"));
  const auto always = run.json("design --kind duo-trio --reference 2 --tasters 8 --seed 1");
  for (const auto& order : always.at("orders")) CHECK(order[0] == 2);
  // Without a seed one is drawn and told; it gives the same orders again.
  const auto drawn = run.json("design --kind tetrad --tasters 12");
  CHECK(run.json("design --kind tetrad --tasters 12 --seed " + drawn.at("seed").get<std::string>()) == drawn);
}

TEST_CASE("Williams designs of the cases, through the program") {
  Terminal run;
  int looked = 0;
  for (const Json& c : checks::family("designs")) {
    if (!c.at("inputs").contains("t")) continue;
    INFO(c.at("id"));
    const Json& out = c.at("expected");
    const std::size_t samples = c.at("inputs").at("t");
    const auto got = run.json("design --kind williams --samples " + std::to_string(samples) + " --tasters " + std::to_string(out.at("n_sequences_minimum").get<int>()) + " --seed 7");
    const auto& balance = got.at("balance");
    for (std::size_t a = 0; a < samples; ++a)
      for (std::size_t b = 0; b < samples; ++b) {
        CHECK(balance.at("position")[a][b] == out.at("position_count").get<int>());
        CHECK(balance.at("carryover")[a][b] == (a == b ? out.at("self_carryover") : out.at("carryover_count")).get<int>());
      }
    for (const auto& order : got.at("orders")) CHECK(std::set<int>(order.begin(), order.end()).size() == samples);
    ++looked;
  }
  CHECK(looked == 4);
  requireRefused(run, "design --kind williams --seed 1", "--samples");
  requireRefused(run, "design --kind williams --samples 1 --seed 1", "--samples");
  requireRefused(run, "design --kind triangle --samples 3 --seed 1", "--samples");
  requireRefused(run, "design --kind triangle --tasters 0 --seed 1", "--tasters");
  requireRefused(run, "design --kind triangle --size 2 --seed 1", "--size");
  requireRefused(run, "design --kind cube --seed 1", "--kind");
  requireRefused(run, "design --kind duo-trio --reference 3 --seed 1", "--reference");
}

TEST_CASE("preference after a forced choice, the case as a table") {
  Terminal run;
  for (const Json& c : checks::family("preference")) {
    const Json &in = c.at("inputs"), &out = c.at("expected");
    std::string table = "who,right,likes\n";
    int who = 0;
    const auto add = [&](int times, const std::string& row) {
      for (int i = 0; i < times; ++i) table += std::to_string(++who) + ',' + row + '\n';
    };
    add(in.at("correct_prefer_first"), "1,first");
    add(in.at("correct_prefer_second"), "1,second");
    add(in.at("trials").get<int>() - in.at("correct").get<int>(), "0,first");
    const auto got = run.json("count --method " + in.at("method").get<std::string>() + " --taster who --correct right --prefers likes", {run.write("likes.csv", table)});
    CHECK_THAT(at(got, "/preference/p_value"), WithinRel(out.at("p_value").get<double>(), 1e-9));
    for (const char* key : {"estimate", "low", "high"}) CHECK_THAT(got.at("preference").at("share").at(key).get<double>(), WithinAbs(out.at("share_first").at(key).get<double>(), 1e-5));
    CHECK_THAT(at(got, "/pd/estimate"), WithinAbs(out.at("pd").get<double>(), 1e-9));
  }
}

TEST_CASE("no preference: left out, and shown beside") {
  Terminal run;
  const auto counts = run.json("count --method preference --trials 10 --correct 9 --no-preference 6");
  CHECK_THAT(at(counts, "/p_value"), WithinRel(22.0 / 1024.0, 1e-12));  // by hand, 9 to 1
  CHECK(counts.at("no_preference").at("people") == 6);
  CHECK(counts.at("no_preference").at("split_evenly").at("first") == 12);
  CHECK(counts.at("no_preference").at("changes") == true);
  std::string table = "who,likes\n";
  for (int i = 0; i < 16; ++i) table += std::to_string(i) + (i < 9 ? ",first\n" : i < 10 ? ",second\n" : ",none\n");
  const auto file = run.json("count --method preference --taster who --prefers likes", {run.write("votes.csv", table)});
  CHECK(file.at("no_preference") == counts.at("no_preference"));
  CHECK(file.at("p_value") == counts.at("p_value"));
  // Somebody who once had none and once the first votes for the first; one without any preference in all rounds has no vote.
  const auto rounds = run.json("count --method preference --taster who --prefers likes", {run.write("rounds.csv", "who,likes\na,first\na,none\nb,none\nb,none\nc,first\nc,second\n")});
  CHECK(rounds.at("trials") == 1);
  CHECK(rounds.at("correct") == 1);
  CHECK(rounds.at("no_preference").at("people") == 1);
  CHECK(rounds.at("even") == 1);
  requireRefused(run, "count --method preference --taster who --prefers likes", "line 2", {run.write("bad.csv", "who,likes\na,both\n")});
}

TEST_CASE("plans of a preference and of signal tests") {
  Terminal run;
  // By hand: all six of six must agree; 0.8^6 + 0.2^6.
  const auto six = run.json("power --method preference --trials 6 --share 0.8");
  CHECK(six.at("critical") == 6);
  CHECK_THAT(at(six, "/power"), WithinRel(std::pow(0.8, 6) + std::pow(0.2, 6), 1e-12));
  CHECK(run.json("power --method preference --trials 5 --share 1").at("why").is_string());
  CHECK(at(run.json("power --method preference --trials 20 --share 0.8 --no-preference 0.3"), "/power") < at(run.json("power --method preference --trials 20 --share 0.8"), "/power"));
  const auto size = run.json("size --method preference --power 0.8 --share 0.75");
  CHECK(at(run.json("power --method preference --share 0.75 --trials " + std::to_string(size.at("stable").at("trials").get<int>())), "/power") >= 0.8);
  for (const char* method : {"a-not-a", "same-different"}) {
    const auto needed = run.json(std::string("size --power 0.8 --d-prime 2 --method ") + method);
    INFO(method << ' ' << needed);
    const int trials = needed.at("first").at("trials");
    CHECK(at(run.json(std::string("power --d-prime 2 --method ") + method + " --trials " + std::to_string(trials)), "/power") >= 0.8);
    CHECK(at(run.json(std::string("power --d-prime 2 --method ") + method + " --trials " + std::to_string(trials - 2)), "/power") < 0.8);
    const auto power = run.json(std::string("power --d-prime 2 --trials 24 --method ") + method);
    requireKeys(power, {"critical", "alpha_actual", "power", "why"});
    CHECK(at(power, "/alpha_actual") <= 0.05);
  }
  CHECK(at(run.json("power --method same-different --d-prime 2 --trials 24 --tau 3"), "/power") < at(run.json("power --method same-different --d-prime 2 --trials 24 --tau 1.5"), "/power"));
}
