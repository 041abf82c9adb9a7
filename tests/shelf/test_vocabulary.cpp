#include "shelf/word_shop.h"

using namespace oddglass;
using namespace oddglass::shelf;
using testing::problemOf;
using testing::troubleOf;
using testing::WordShop;

namespace {

using Refusal = std::pair<Trouble, std::string>;

std::vector<WordChangeKind> kinds(const std::vector<WordChange>& changes) {
  std::vector<WordChangeKind> result;
  for (const WordChange& change : changes) result.push_back(change.kind);
  return result;
}

}  // namespace

TEST_CASE("an own word is kept as it was given, beside the program's list") {
  WordShop shop;
  CHECK(shop.all() == builtInWords());
  TastingWord given = WordShop::made(" Hedge row ", WordClass::floral, {Kind::mead, Kind::cider});
  given.leaning = Leaning::wanted;
  given.meaning = "hawthorn, nettle, a wet morning";
  const WordId id = addWord(shop.store, shop.clock, shop.chance, given);
  given.id = id;
  given.text = "Hedge row";
  given.own = true;
  CHECK(shop.word(id) == given);
  CHECK(shop.all().size() == builtInWords().size() + 1);
  given.text = "Hedge";
  given.drinks = {Kind::other};
  given.meaning = "";
  changeWord(shop.store, shop.clock, given);
  CHECK(shop.word(id) == given);
  const auto changes = wordChanges(shop.store);
  REQUIRE(kinds(changes) == std::vector{WordChangeKind::added, WordChangeKind::renamed});
  CHECK(changes[1].text == "Hedge row");
  changeWord(shop.store, shop.clock, given);
  CHECK(wordChanges(shop.store).size() == 2);
}

TEST_CASE("every wrong field of a word is named, and nothing is kept of it") {
  WordShop shop;
  const WordId hedge = shop.add("Hedge");
  const auto refused = [&](const TastingWord& word) {
    const Problem problem = problemOf([&] {
      if (word.id.empty()) addWord(shop.store, shop.clock, shop.chance, word);
      else changeWord(shop.store, shop.clock, word);
    });
    CHECK(shop.all().size() == builtInWords().size() + 1);
    CHECK(shop.word(hedge).text == "Hedge");
    CHECK(wordChanges(shop.store).size() == 1);
    return Refusal{problem.trouble(), problem.argument()};
  };
  TastingWord longWinded = WordShop::made("x");
  longWinded.meaning = std::string(1001, 'm');
  CHECK(refused(WordShop::made("  ")) == Refusal{Trouble::empty, "word"});
  CHECK(refused(WordShop::made(std::string(61, 'a'))) == Refusal{Trouble::tooLong, "word"});
  CHECK(refused(WordShop::made("HEDGE")) == Refusal{Trouble::alreadyThere, "word"});
  CHECK(refused(WordShop::made("Butter")) == Refusal{Trouble::alreadyThere, "word"});
  CHECK(refused(WordShop::made("butterscotch")) == Refusal{Trouble::alreadyThere, "word"});
  CHECK(refused(WordShop::made("hops", WordClass::hop, {})) == Refusal{Trouble::empty, "drinks"});
  CHECK(refused(longWinded) == Refusal{Trouble::tooLong, "meaning"});
  TastingWord other = shop.word(hedge);
  other.id = {"x"};
  CHECK(refused(other) == Refusal{Trouble::unknown, "word"});
  other.id = shop.id("butter");
  other.text = "bread and butter";
  CHECK(refused(other) == Refusal{Trouble::ofTheProgram, "word"});
  // Sixty letters are enough for a word, of whatever bytes.
  std::string accents;
  for (int i = 0; i < 60; ++i) accents += "\xC3\xA9";
  CHECK(shop.word(shop.add(accents)).text == accents);
}

TEST_CASE("a merge is undone, and each word stands for itself again") {
  WordShop shop;
  const WordId toffee = shop.add("toffee apple"), caramel = shop.id("caramel");
  mergeWord(shop.store, shop.clock, toffee, caramel);
  mergeWord(shop.store, shop.clock, toffee, caramel);
  CHECK(shop.word(toffee).sameAs == caramel);
  CHECK(shop.meant("toffee apple") == "caramel");
  CHECK(troubleOf([&] { shop.add("Toffee Apple"); }) == Trouble::alreadyThere);
  takeApart(shop.store, shop.clock, toffee);
  takeApart(shop.store, shop.clock, toffee);
  CHECK_FALSE(shop.word(toffee).sameAs);
  CHECK(shop.meant("toffee apple") == "toffee apple");
  const auto changes = wordChanges(shop.store);
  REQUIRE(kinds(changes) == std::vector{WordChangeKind::added, WordChangeKind::merged, WordChangeKind::takenApart});
  CHECK(changes[2].other == caramel);
  // A word of the program's list can be merged into an own one, and into another one after that.
  mergeWord(shop.store, shop.clock, caramel, toffee);
  CHECK(shop.meant("burnt sugar") == "toffee apple");
  mergeWord(shop.store, shop.clock, caramel, shop.id("burnt"));
  CHECK(shop.meant("burnt sugar") == "burnt");
}

TEST_CASE("no merge leads in a ring, to nothing, or into a retired word") {
  WordShop shop;
  const WordId one = shop.add("one"), two = shop.add("two"), three = shop.add("three");
  mergeWord(shop.store, shop.clock, one, two);
  mergeWord(shop.store, shop.clock, two, three);
  const auto refused = [&](const WordId& word, const WordId& into) {
    const Problem problem = problemOf([&] { mergeWord(shop.store, shop.clock, word, into); });
    CHECK(wordChanges(shop.store).size() == 6);
    return Refusal{problem.trouble(), problem.argument()};
  };
  retireWord(shop.store, shop.clock, shop.id("butter"));
  CHECK(refused(three, one) == Refusal{Trouble::ringOfWords, "into"});
  CHECK(refused(three, three) == Refusal{Trouble::ringOfWords, "into"});
  CHECK(refused({"x"}, one) == Refusal{Trouble::unknown, "word"});
  CHECK(refused(one, {"x"}) == Refusal{Trouble::unknown, "into"});
  CHECK(refused(three, shop.id("butter")) == Refusal{Trouble::wordRetired, "into"});
  bringBackWord(shop.store, shop.clock, shop.id("butter"));
  mergeWord(shop.store, shop.clock, three, shop.id("butter"));
  CHECK(shop.meant("one") == "butter");
}

TEST_CASE("a word is retired and brought back once, whatever list it is of") {
  WordShop shop;
  const WordId own = shop.add("own");
  for (const WordId& id : {own, shop.id("skunk")}) {
    retireWord(shop.store, shop.clock, id);
    retireWord(shop.store, shop.clock, id);
    CHECK(shop.word(id).retired);
    bringBackWord(shop.store, shop.clock, id);
    bringBackWord(shop.store, shop.clock, id);
    CHECK_FALSE(shop.word(id).retired);
  }
  CHECK(wordChanges(shop.store).size() == 5);
  CHECK(troubleOf([&] { retireWord(shop.store, shop.clock, {"x"}); }) == Trouble::unknown);
  CHECK(troubleOf([&] { bringBackWord(shop.store, shop.clock, {"x"}); }) == Trouble::unknown);
  CHECK(troubleOf([&] { takeApart(shop.store, shop.clock, {"x"}); }) == Trouble::unknown);
}

TEST_CASE("changes are told from a moment on") {
  WordShop shop;
  shop.add("early");
  const Millis between = shop.clock.now();
  const WordId late = shop.add("late");
  const auto since = wordChanges(shop.store, between);
  REQUIRE(since.size() == 1);
  CHECK(since[0].word == late);
  CHECK(since[0].text == "late");
  CHECK(wordChanges(shop.store).size() == 2);
  CHECK(wordChanges(shop.store, since[0].at).size() == 1);
  CHECK(wordChanges(shop.store, since[0].at + 1).empty());
}

TEST_CASE("words from elsewhere keep their ids, and one that is called alike comes in merged") {
  WordShop shop;
  TastingWord theirs = WordShop::made("hedge");
  theirs.id = {std::string(32, '1')};
  theirs.own = true;
  CHECK(bring(shop.store, shop.clock, theirs));
  CHECK_FALSE(bring(shop.store, shop.clock, theirs));
  CHECK(shop.word(theirs.id) == theirs);
  TastingWord alike = WordShop::made("HEDGE");
  alike.id = {std::string(32, '2')};
  CHECK(bring(shop.store, shop.clock, alike));
  CHECK(shop.word(alike.id).sameAs == theirs.id);
  CHECK(shop.id("hedge") == theirs.id);
  // While both are called hedge they cannot come apart; under a name of its own the second one can.
  CHECK(troubleOf([&] { takeApart(shop.store, shop.clock, alike.id); }) == Trouble::alreadyThere);
  alike.text = "privet";
  changeWord(shop.store, shop.clock, alike);
  takeApart(shop.store, shop.clock, alike.id);
  CHECK(shop.meant("privet") == "privet");
  // What comes under the id of one of the program's words stays away.
  TastingWord posing = WordShop::made("posing");
  posing.id = shop.id("butter");
  CHECK_FALSE(bring(shop.store, shop.clock, posing));
  CHECK(shop.word(posing.id).text == "butter");
  CHECK(problemOf([&] { bring(shop.store, shop.clock, WordShop::made("no id")); }).argument() == "id");
}

TEST_CASE("merges and retirements from elsewhere give way to what is here") {
  WordShop shop;
  const WordId one = shop.add("one"), two = shop.add("two");
  mergeWord(shop.store, shop.clock, one, two);
  CHECK_FALSE(bringMerge(shop.store, shop.clock, one, shop.id("butter")));
  CHECK_FALSE(bringMerge(shop.store, shop.clock, two, one));
  CHECK(bringMerge(shop.store, shop.clock, two, shop.id("butter")));
  CHECK(shop.meant("one") == "butter");
  CHECK(problemOf([&] { bringMerge(shop.store, shop.clock, {"x"}, one); }).argument() == "id");
  CHECK(problemOf([&] { bringMerge(shop.store, shop.clock, shop.id("skunk"), {"x"}); }).argument() == "same_as");
  CHECK(bringRetired(shop.store, shop.clock, one));
  CHECK_FALSE(bringRetired(shop.store, shop.clock, one));
  CHECK(problemOf([&] { bringRetired(shop.store, shop.clock, {"x"}); }).argument() == "id");
}
