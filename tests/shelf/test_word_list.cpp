#include "shelf/word_shop.h"

using namespace oddglass;
using namespace oddglass::shelf;
using testing::WordShop;

TEST_CASE("a typed word is found without case, in one Unicode form, and by its other names") {
  WordShop shop;
  CHECK(shop.meant("butter") == "butter");
  CHECK(shop.meant("  Diacetyl ") == "butter");
  CHECK(shop.meant("TCA") == "damp cellar");
  CHECK(shop.meant("dms") == "cooked corn");
  CHECK(shop.meant("buttery nonsense").empty());
  CHECK(shop.meant("").empty());
  CHECK(shop.meant(" ").empty());
  CHECK(shop.meant("\xFF").empty());
  shop.add("Cr\xC3\xA8me");
  // Unicode annex 15: e with a combining grave accent composes to U+00E8.
  CHECK(shop.meant("CRE\xCC\x80ME") == "Cr\xC3\xA8me");
}

TEST_CASE("a merged word leads to the one it counts as, through every merge on the way") {
  WordShop shop;
  const WordId hay = shop.add("barn floor"), stack = shop.add("haystack");
  mergeWord(shop.store, shop.clock, stack, hay);
  mergeWord(shop.store, shop.clock, hay, shop.id("hay"));
  CHECK(shop.meant("Haystack") == "hay");
  const WordList list = shop.all();
  CHECK(standsFor(list, stack)->text == "hay");
  CHECK(standsFor(list, {std::string(32, '0')}) == nullptr);
  CHECK(mergedInto(list, shop.id("hay")).size() == 2);
  CHECK(mergedInto(list, hay).empty());
  takeApart(shop.store, shop.clock, hay);
  CHECK(shop.meant("Haystack") == "barn floor");
  CHECK(mergedInto(shop.all(), hay).size() == 1);
}

TEST_CASE("a ring in a list from elsewhere is followed no longer than the list") {
  WordList ring(2);
  ring[0].id = {"a"};
  ring[0].sameAs = WordId{"b"};
  ring[1].id = {"b"};
  ring[1].sameAs = WordId{"a"};
  CHECK(standsFor(ring, {"a"}) != nullptr);
  ring[1].sameAs = WordId{"c"};
  CHECK(standsFor(ring, {"a"})->id == WordId{"b"});
}

TEST_CASE("words are listed by part of a name, class and drink; merged and retired ones only on request") {
  WordShop shop;
  const WordList list = shop.all();
  const auto texts = [&](const WordsWanted& wanted) {
    std::vector<std::string> result;
    for (const TastingWord& word : wordsOf(shop.all(), wanted)) result.push_back(word.text);
    return result;
  };
  CHECK(wordsOf(list).size() == builtInWords().size());
  CHECK(texts({.text = "TRICHLORO"}) == std::vector<std::string>{"damp cellar"});
  CHECK(texts({.text = "leather"}) == std::vector<std::string>{"barnyard"});
  CHECK(texts({.text = "%"}).empty());
  for (const TastingWord& word : wordsOf(list, {.wordClass = WordClass::sulphur})) CHECK(word.wordClass == WordClass::sulphur);
  for (const TastingWord& word : wordsOf(list, {.drink = Kind::cider})) CHECK(word.drinks.contains(Kind::cider));
  CHECK(texts({.text = "skunk", .drink = Kind::mead}).empty());

  const WordId own = addWord(shop.store, shop.clock, shop.chance, WordShop::made("Apple skin", WordClass::fruity, {Kind::cider}));
  addWord(shop.store, shop.clock, shop.chance, WordShop::made("aged rind", WordClass::fruity, {Kind::cider}));
  const auto fruit = texts({.wordClass = WordClass::fruity});
  REQUIRE(fruit.size() == 10);
  CHECK(fruit[0] == "banana");
  CHECK(fruit[8] == "aged rind");
  CHECK(fruit[9] == "Apple skin");
  retireWord(shop.store, shop.clock, own);
  mergeWord(shop.store, shop.clock, shop.id("aged rind"), shop.id("dried fruit"));
  CHECK(texts({.wordClass = WordClass::fruity}).size() == 8);
  CHECK(texts({.text = "apple skin", .withRetired = true}).size() == 1);
  CHECK(texts({.text = "aged rind", .withMerged = true}).size() == 1);
}
