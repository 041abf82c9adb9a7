#include "domain/names.h"
#include "domain/vocabulary.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>

using namespace oddglass;

namespace {

const TastingWord& called(const std::string& text) {
  const auto found = std::ranges::find(builtInWords(), text, &TastingWord::text);
  REQUIRE(found != builtInWords().end());
  return *found;
}

}  // namespace

TEST_CASE("every word of the program's list has an id, a class, drinks, and a name that no other word has") {
  std::set<std::string> ids, names;
  for (const TastingWord& word : builtInWords()) {
    INFO(word.text);
    CHECK(looksLikeUid(word.id.text));
    CHECK(ids.insert(word.id.text).second);
    CHECK(word.wordClass != WordClass::other);
    CHECK_FALSE(word.drinks.empty());
    CHECK_FALSE(word.drinks.contains(Kind::other));
    CHECK_FALSE(word.own);
    CHECK(word.meaning.empty());
    CHECK(builtInWord(word.id) == &word);
    CHECK(names.insert(word.text).second);
    for (const std::string& name : word.alsoCalled) {
      INFO(name);
      CHECK(names.insert(name).second);
    }
    for (const std::string& name : names) CHECK((!name.empty() && name.size() <= 60));
  }
  CHECK(builtInWord({std::string(32, '0')}) == nullptr);
}

TEST_CASE("every class opens up into words, and they stand together") {
  std::map<WordClass, int> words;
  for (const TastingWord& word : builtInWords()) ++words[word.wordClass];
  for (const WordClass each : allOf<WordClass>()) {
    INFO(nameOf(each));
    if (each == WordClass::other) CHECK_FALSE(words.contains(each));
    else CHECK(words[each] >= 3);
  }
  CHECK(std::ranges::is_sorted(builtInWords(), {}, &TastingWord::wordClass));
}

// Reference substances of the joint beer terminology (Meilgaard, Dalgliesh, Clapperton, J. Inst. Brew. 85:38, 1979) and of the fault series of
// extension services, from memory.
TEST_CASE("compounds are the ones the trade names") {
  const std::vector<std::pair<std::string, std::string>> known{
      {"banana", "isoamyl acetate"},     {"butter", "diacetyl"},           {"green apple", "acetaldehyde"}, {"vinegar", "acetic acid"},
      {"sour milk", "lactic acid"},      {"nail varnish", "ethyl acetate"}, {"rotten egg", "hydrogen sulphide"}, {"clove", "4-vinylguaiacol"},
      {"barnyard", "4-ethylphenol"},     {"sick", "butyric acid"},         {"wet cardboard", "trans-2-nonenal"}, {"skunk", "3-methyl-2-butene-1-thiol"},
      {"cheese", "isovaleric acid"},     {"rose", "2-phenylethanol"},      {"vanilla", "vanillin"},         {"earthy", "geosmin"}};
  for (const auto& [word, compound] : known) {
    INFO(word);
    CHECK(called(word).compound == compound);
  }
  CHECK(called("damp cellar").compound.find("trichloroanisole") != std::string::npos);
  CHECK(called("cooked corn").compound.find("dimethyl sulphide") != std::string::npos);
}

// Stable gravity before bottling, smelling first, sulphite and asthma: the usual cautions of extension services and health bodies.
TEST_CASE("words behind which somebody can be hurt carry a caution") {
  for (const char* word : {"sweet", "cloying", "wort", "gushing", "prickly"}) CHECK(called(word).care == Care::pressure);
  for (const char* word : {"mould", "rotten fruit", "sick", "metal", "cleaning agent"}) CHECK(called(word).care == Care::doNotSwallow);
  CHECK(called("sulphite sting").care == Care::sulphite);
}

TEST_CASE("names are parted by semicolons, blanks left out") {
  CHECK(namesIn("stable; horse ;leather") == std::vector<std::string>{"stable", "horse", "leather"});
  CHECK(namesIn(" ; ;").empty());
  CHECK(namesIn("").empty());
}

TEST_CASE("classes, leanings and changes are found again by their names in files") {
  for (const WordClass each : allOf<WordClass>()) CHECK(named<WordClass>(nameOf(each)) == each);
  for (const Leaning each : allOf<Leaning>()) CHECK(named<Leaning>(nameOf(each)) == each);
  for (const WordChangeKind each : allOf<WordChangeKind>()) CHECK(named<WordChangeKind>(nameOf(each)) == each);
  CHECK_FALSE(named<WordClass>("nonsense"));
}
