// The vocabulary through the real window: looking for a fault, an own word, a merge that is undone, a word retired.
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

ui::WordsModel& listOf(test::Window& at) { return *at.app().findChild<ui::WordsModel*>(); }
ui::WordModel& pageOf(test::Window& at) { return *at.app().findChild<ui::WordModel*>(); }

std::string says(const QObject& model, const char* property) { return model.property(property).toString().toStdString(); }

/// The line of the list with this name; -1 when it is not shown.
int lineOf(test::Window& at, const std::string& name) {
  for (int row = 0; row < listOf(at).lines()->count(); ++row)
    if (listOf(at).lines()->at<ui::WordLineRow>(row).name.toStdString() == name) return row;
  return -1;
}

void take(test::Window& at, const std::string& name) {
  INFO(name);
  const int row = lineOf(at, name);
  REQUIRE(row >= 0);
  at.click("wordLine" + std::to_string(row));
}

void addWord(test::Window& at, const std::string& name) {
  at.click("navWords");
  at.click("primaryButton");
  at.type("wordName", name);
  at.click("primaryButton");
}

void lookForAFault(test::Window& at) {
  at.click("navWords");
  REQUIRE(at.app().router()->page() == Page::Words);
  CHECK(lineOf(at, "mousy") == -1);
  take(at, "Gone off");
  CHECK(lineOf(at, "mousy") > lineOf(at, "Gone off"));
  take(at, "sick");
  REQUIRE(at.app().router()->page() == Page::Word);
  CHECK(at.text("headline") == "Sick");
  CHECK(at.text("wordCaution").find("do not swallow") != std::string::npos);
  CHECK(at.text("wordSource").find("not a diagnosis") != std::string::npos);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Words);
  take(at, "Gone off");
  CHECK(lineOf(at, "mousy") == -1);
}

void ownWordFromStartToEnd(test::Window& at) {
  addWord(at, "hedge row");
  CHECK(at.text("headline") == "hedge row");
  at.click("wordEdit");
  at.type("wordName", "hedge after rain");
  at.click("wordClass3");
  at.click("wordLeaning2");
  at.click("wordDrink0");
  at.type("wordMeaning", "wet leaves and elderflower");
  at.click("primaryButton");
  CHECK(at.text("headline") == "hedge after rain");
  CHECK(says(pageOf(at), "over") == "Flowers and honey");
  CHECK(pageOf(at).property("changes").toStringList().size() == 2);

  at.click("wordMerge");
  at.type("wordMergeFind", "hone");
  REQUIRE(pageOf(at).candidates()->count() == 1);
  at.click("wordCandidate0");
  CHECK(at.text("wordCountsAs").find("honey") != std::string::npos);
  at.click("wordOther");
  CHECK(at.text("headline") == "Honey");
  REQUIRE(pageOf(at).merged()->count() == 1);
  at.shoot("words_merged");
  at.click("wordTakeOut0");
  CHECK(pageOf(at).merged()->count() == 0);

  at.click("primaryButton");
  at.type("wordsFind", "AFTER RAIN");
  REQUIRE(listOf(at).lines()->count() == 2);
  CHECK(listOf(at).lines()->at<ui::WordLineRow>(1).mark == QStringLiteral("yours"));
  take(at, "hedge after rain");
  at.click("wordRetire");
  CHECK(pageOf(at).property("retired").toBool());
  at.click("primaryButton");
  CHECK(listOf(at).lines()->count() == 0);
  at.click("wordsRetired");
  REQUIRE(listOf(at).lines()->count() == 2);
  take(at, "hedge after rain");
  at.click("wordRetire");
  CHECK_FALSE(pageOf(at).property("retired").toBool());
}

}  // namespace

TEST_CASE("somebody hunts a fault, and adds, merges and retires a word of their own, by mouse") {
  test::Window at;
  lookForAFault(at);
  ownWordFromStartToEnd(at);
  CHECK(at.complaints() == "");
}

TEST_CASE("the same without a mouse") {
  test::Window at;
  at.useKeyboardAlone();
  lookForAFault(at);
  ownWordFromStartToEnd(at);
  CHECK(at.complaints() == "");
}

TEST_CASE("what was looked for in vain becomes the new word's name, and what is wrong with it stands beside it") {
  test::Window at;
  at.click("navWords");
  at.type("wordsFind", "wet dog");
  CHECK(listOf(at).lines()->count() == 0);
  at.shoot("words_nothing_found");
  at.click("primaryButton");
  CHECK(says(pageOf(at), "name") == "wet dog");
  at.type("wordName", "Butterscotch");
  at.click("primaryButton");
  CHECK(says(pageOf(at), "wrongField") == "word");
  for (int drink = 0; drink < 4; ++drink) at.click("wordDrink" + std::to_string(drink));
  at.type("wordName", "wet dog");
  at.click("primaryButton");
  CHECK(says(pageOf(at), "wrongField") == "drinks");
  at.shoot("word_form_wrong");
  at.click("wordLeave");
  CHECK(at.app().router()->page() == Page::Words);
  at.click("wordsDrink4");
  at.type("wordsFind", "skunk");
  CHECK(listOf(at).lines()->count() == 0);
  at.click("wordsDrink1");
  CHECK(listOf(at).lines()->count() == 2);
  CHECK(at.complaints() == "");
}

TEST_CASE("the words fit in every look, the longest ones too") {
  const auto look = GENERATE(from_range(test::looks()));
  test::Window at;
  test::wear(at, look);
  const auto shoot = [&](const char* what) {
    at.nextFrame();
    at.shoot("words_" + std::string(look.name) + '_' + what);
    CHECK(test::silent(at.window().contentItem()) == "");
    CHECK(test::nameless(at.window().contentItem()) == "");
    CHECK(test::cutOff(at) == "");
  };
  at.click("navWords");
  shoot("list");
  take(at, "Gone off");
  shoot("open");
  take(at, "sick");
  shoot("word");
  at.click("wordMerge");
  at.type("wordMergeFind", "s");
  shoot("merging");
  addWord(at, "Streuobstwiesenapfelschalenaufguss mit Donaudampfschiffkohle");
  shoot("long");
  at.click("wordEdit");
  shoot("form");
  at.click("navWords");
  take(at, "Anything else");
  shoot("own");
  CHECK(at.complaints() == "");
}
