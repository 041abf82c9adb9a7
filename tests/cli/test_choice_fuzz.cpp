#include "cli/ran.h"
#include "cli/reasons.h"

#include <random>

using oddglass::cli::Json;
using oddglass::testing::requireReasons;
using oddglass::testing::Ran;
using oddglass::testing::Terminal;

namespace {

struct Entry {
  const char* command;
  std::vector<const char*> options;
};

const std::vector<Entry> entries{
    {"count", {"--method", "--trials", "--correct", "--limit-pd", "--alpha", "--level", "--no-preference"}},
    {"power", {"--method", "--trials", "--pd", "--d-prime", "--rounds", "--gamma", "--limit-pd", "--share", "--no-preference", "--criterion", "--tau", "--alpha"}},
    {"size", {"--method", "--power", "--pd", "--d-prime", "--share", "--criterion", "--tau", "--alpha"}},
    {"link", {"--method", "--d-prime", "--pc"}},
    {"sequential", {"--method", "--pd", "--d-prime", "--beta", "--alpha", "--answers", "--truncate", "--every"}},
    {"signal", {"--method", "--hits", "--misses", "--false-alarms", "--correct-rejections"}},
    {"rindex", {"--signal", "--noise", "--level"}},
    {"design", {"--kind", "--samples", "--tasters", "--seed", "--reference", "--target"}},
    {"proportion", {"--trials", "--successes", "--level"}},
    {"critical", {"--of", "--trials", "--groups", "--treatments", "--df", "--sides", "--samples", "--tasters", "--alpha"}},
    {"tail", {"--of", "--groups", "--treatments", "--df", "--sides", "--value"}},
    {"adjust", {"--p"}},
    {"pour", {"--volume", "--abv", "--cups", "--country"}},
    {"gravity", {"--og", "--fg", "--unit"}},
};

const std::vector<const char*> methods{"triangle", "duo-trio", "tetrad", "two-out-of-five", "pair", "three-afc", "preference", "a-not-a", "same-different", "williams", "studentized-range", "dunnett", "friedman", "page", "cube", ""};
const std::vector<const char*> numbers{"0", "1", "2", "3", "6", "12", "24", "500", "0.5", "0.05", "0.3", "0.999999", "1e-12", "-1", "1.5", "nan", "inf", "-inf", "1e308", "99999999999", "", "x", "0,5", "1,0,1", "3,2,1", "0,0", "1,,2"};

}  // namespace

TEST_CASE("whatever is typed, a command answers in one object with reasons, or refuses in one line") {
  Terminal run;
  std::mt19937 chance(1);
  const auto one = [&](const auto& list) { return list[chance() % list.size()]; };
  int done = 0, refused = 0;
  for (int i = 0; i < 4000; ++i) {
    const Entry& entry = entries[static_cast<std::size_t>(i) % entries.size()];
    std::vector<std::string> words{"--json", entry.command};
    for (const char* option : entry.options) {
      const std::string name = option;
      const bool isWord = name == "--method" || name == "--kind" || name == "--of";
      if (chance() % 4 == 0 && !isWord) continue;
      words.push_back(name);
      words.push_back(isWord ? one(methods) : one(numbers));
    }
    if (std::string(entry.command) == "power" && chance() % 4 == 0) words.push_back("--similarity");
    std::string typed;
    for (const std::string& word : words) typed += word + ' ';
    const Ran ran = run.exactly(words);
    INFO(typed << '\n' << ran.out << ran.err);
    REQUIRE((ran.status == 0 || ran.status == 2));
    REQUIRE(ran.linesOfError() == (ran.status == 0 ? 0 : 1));
    REQUIRE(Json::accept(ran.out));
    const Json json = Json::parse(ran.out);
    if (ran.status == 2) CHECK(json.at("error").at("argument").is_string());
    else requireReasons(json, false, {"similarity"});
    ++(ran.status == 0 ? done : refused);
  }
  CHECK(done > 50);
  CHECK(refused > 1000);
}
