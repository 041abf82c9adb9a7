#include "exchange/take_in.h"
#include "refused.h"
#include "shelf/word_shop.h"
#include "told.h"

using namespace oddglass;
using namespace oddglass::exchange;
using canon::Json;

namespace {

Json wordsFile() {
  const std::string hay = shelf::resolve(builtInWords(), "hay")->id.text, skunk = shelf::resolve(builtInWords(), "skunk")->id.text;
  return {{"format", "oddglass"},
          {"version", 1},
          {"words", {{{"id", std::string(32, '1')}, {"word", "haystack"}, {"class", "grain"}, {"drinks", {"beer", "cider"}}, {"leaning", "either"}, {"meaning", "after rain"}},
                     {{"id", std::string(32, '2')}, {"word", "hedge"}, {"class", "floral"}, {"drinks", {"mead"}}, {"leaning", "wanted"}}}},
          {"merged_words", {{{"id", std::string(32, '1')}, {"same_as", hay}}}},
          {"retired_words", {{{"id", skunk}}, {{"id", std::string(32, '2')}}}}};
}

struct WordsDesk : Elsewhere {
  std::filesystem::path write(const Json& json) {
    const auto path = folder / "words.json";
    std::ofstream(path, std::ios::binary) << json.dump(1);
    return path;
  }
  Brought take(const Json& json) { return put(*store, clock, write(json)); }
  /// The refusal of a file in which one value is another; nothing of it may be kept.
  Problem refused(const char* list, int at, const char* key, Json value) {
    Json changed = wordsFile();
    changed[list][at][key] = std::move(value);
    const std::string before = all();
    const Problem problem = problemOf([&] { take(changed); });
    CHECK(all() == before);
    return problem;
  }
};

}  // namespace

TEST_CASE("own words, merges and retirements come with a file, once") {
  WordsDesk desk;
  const Brought brought = desk.take(wordsFile());
  CHECK(brought.words == 2);
  CHECK(brought.mergedWords == 1);
  CHECK(brought.retiredWords == 2);
  CHECK(brought.alreadyThere == 0);
  const auto list = shelf::vocabulary(*desk.store);
  CHECK(shelf::resolve(list, "Haystack")->text == "hay");
  const TastingWord* own = shelf::wordWith(list, {std::string(32, '1')});
  REQUIRE(own);
  CHECK(own->meaning == "after rain");
  CHECK(own->drinks == std::set{Kind::beer, Kind::cider});
  CHECK(shelf::resolve(list, "hedge")->retired);
  CHECK(shelf::resolve(list, "skunk")->retired);
  const std::string before = desk.all();
  CHECK(desk.take(wordsFile()).alreadyThere == 5);
  CHECK(desk.all() == before);
}

TEST_CASE("the vocabulary of a whole store goes to another one, words that are called alike too") {
  WordsDesk desk, other;
  Json file = wordsFile();
  // The second comes in merged into the first, although it stands before it in the list by name.
  file["words"].push_back({{"id", std::string(32, '3')}, {"word", "HEDGE"}, {"class", "other"}, {"drinks", {"mead"}}, {"leaning", "fault"}});
  desk.take(file);
  const auto whole = exportAllJson(*desk.store, desk.clock, desk.folder / "out");
  CHECK(importFile(*other.store, other.clock, other.chance, whole).words == 3);
  CHECK(other.all() == desk.all());
  CHECK(shelf::vocabulary(*other.store) == shelf::vocabulary(*desk.store));
}

TEST_CASE("one session goes out without the vocabulary") {
  Told told;
  shelf::addWord(*told.store, told.clock, told.chance, testing::WordShop::made("hedge"));
  CHECK_FALSE(told.json().contains("words"));
  CHECK(interchangeOfAll(*told.store, told.clock).at("words").size() == 1);
}

TEST_CASE("a wrong word in a file is named by its place, and nothing of the file is kept") {
  WordsDesk desk;
  CHECK(desk.refused("words", 0, "class", "wheel").argument() == "words/0/class");
  CHECK(desk.refused("words", 0, "leaning", "bad").argument() == "words/0/leaning");
  CHECK(desk.refused("words", 1, "drinks", Json::array()).argument() == "words/1/drinks");
  CHECK(desk.refused("words", 1, "drinks", {"milk"}).argument() == "words/1/drinks/0");
  CHECK(desk.refused("words", 1, "word", "").argument() == "words/1/word");
  CHECK(desk.refused("words", 1, "word", std::string(61, 'w')).argument() == "words/1/word");
  CHECK(desk.refused("words", 1, "word", "hay\x01stack").trouble() == Trouble::badFile);
  CHECK(desk.refused("words", 1, "meaning", std::string(1001, 'w')).argument() == "words/1/meaning");
  CHECK(desk.refused("words", 1, "id", std::string(32, '1')).trouble() == Trouble::alreadyThere);
  CHECK(desk.refused("words", 1, "id", "butter").argument() == "words/1/id");
  CHECK(desk.refused("words", 1, "colour", "red").argument() == "words/1/colour");
  CHECK(desk.refused("merged_words", 0, "same_as", std::string(32, '9')).trouble() == Trouble::brokenReference);
  CHECK(desk.refused("merged_words", 0, "same_as", std::string(32, '9')).argument() == "merged_words/0/same_as");
  CHECK(desk.refused("merged_words", 0, "id", std::string(32, '9')).argument() == "merged_words/0/id");
  CHECK(desk.refused("merged_words", 0, "same_as", std::string(32, '1')).argument() == "merged_words/0/same_as");
  CHECK(desk.refused("retired_words", 0, "id", std::string(32, '9')).argument() == "retired_words/0/id");
}
