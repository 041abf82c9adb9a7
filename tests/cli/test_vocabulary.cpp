#include "cli/ran.h"

#include <algorithm>

using namespace oddglass;
using testing::requireRefused;
using testing::Terminal;

namespace {

struct Cellar : Terminal {
  Cellar() {
    json("put", {write("words.json", R"({"format": "oddglass", "version": 1,
      "words": [{"id": "11111111111111111111111111111111", "word": "hedge after rain", "class": "floral", "drinks": ["mead"], "leaning": "wanted", "meaning": "wet leaves"},
                {"id": "22222222222222222222222222222222", "word": "old cupboard", "class": "cellar", "drinks": ["mead"], "leaning": "fault"}],
      "merged_words": [{"id": "22222222222222222222222222222222", "same_as": "11111111111111111111111111111111"}]})")});
  }
  std::vector<std::string> words(const std::string& options, const std::vector<std::string>& more = {}) {
    std::vector<std::string> texts;
    const auto listed = json("words " + options, more);
    for (const auto& word : listed.at("words")) texts.push_back(word.at("word"));
    return texts;
  }
};

}  // namespace

TEST_CASE("put takes own words and merges and counts them") {
  Terminal run;
  const auto counted = run.json("put", {run.write("one.json", R"({"format": "oddglass", "version": 1, "words": [{"id": "11111111111111111111111111111111",
      "word": "hedge", "class": "floral", "drinks": ["mead"], "leaning": "wanted"}]})")});
  CHECK(counted.at("words") == 1);
  CHECK(counted.at("merged_words") == 0);
}

TEST_CASE("words are listed with what often lies behind them, by name, class and drink") {
  Cellar run;
  const auto one = run.json("words --find TCA").at("words");
  REQUIRE(one.size() == 1);
  CHECK(one[0].at("word") == "damp cellar");
  CHECK(one[0].at("class") == "cellar");
  CHECK(one[0].at("own") == false);
  CHECK(one[0].at("same_as").is_null());
  CHECK(one[0].at("causes").get<std::string>().find("Cork") != std::string::npos);
  CHECK(one[0].at("source").get<std::string>().find("not a diagnosis") != std::string::npos);
  CHECK(run.words("--class floral").back() == "hedge after rain");
  CHECK(run.words("--find cupboard").empty());
  CHECK(run.words("--find cupboard --all") == std::vector<std::string>{"old cupboard"});
  CHECK(run.json("words --find cupboard --all").at("words")[0].at("same_as") == std::string(32, '1'));
  CHECK(run.json("words", {"--find", "hedge after"}).at("words")[0].at("meaning") == "wet leaves");
  const auto wine = run.words("--drink wine");
  CHECK(std::ranges::find(wine, "petrol") != wine.end());
  CHECK(std::ranges::find(wine, "skunk") == wine.end());
}

TEST_CASE("a single word is told to people with its caution") {
  Cellar run;
  const auto said = run("words --find gusher");
  CHECK(said.status == 0);
  CHECK(said.out.find("Feel and fizz") != std::string::npos);
  CHECK(said.out.find("goggles") != std::string::npos);
  CHECK(run("words --class floral").out.find("hedge after rain *") != std::string::npos);
}

TEST_CASE("a class or drink that there is none of is refused") {
  Cellar run;
  requireRefused(run, "words --class wheel", "--class");
  requireRefused(run, "words --drink milk", "--drink");
  Terminal empty;
  CHECK(empty("words").status == 2);
}
