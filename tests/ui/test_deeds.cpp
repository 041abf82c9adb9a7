// What is seldom done and must not go wrong: a wrong pour, forgetting a person, going back to a backup.
#include "ui/journey.h"

#include "session/look.h"
#include "store/store.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

// What the store says once the window is gone.
template <class Look>
auto afterwards(const std::string& folder, Look&& look) {
  SystemClock clock;
  blinding::SystemChance chance;
  const auto store = store::Store::open(folder + "/cellar.oddglass", store::Access::read, clock, chance);
  return look(*store);
}

std::string codeAt(test::Window& at, int row) { return at.app().findChild<ui::PourModel*>()->cups()->at<ui::PourRow>(row).code.toStdString(); }

}  // namespace

TEST_CASE("the pourer says what really went into a cup, and that they are not sure of another") {
  QTemporaryDir folder;
  {
    test::Window at(folder.path().toStdString());
    test::sealAnEvening(at, 1);
    at.click("primaryButton");
    at.click("primaryButton");
    const std::string code = codeAt(at, 0), other = codeAt(at, 1);
    at.click("tick" + code);
    at.click("wrong" + code);
    at.click("really1");
    CHECK(at.app().findChild<ui::PourModel*>()->cups()->at<ui::PourRow>(0).ticked);
    CHECK_FALSE(at.app().findChild<ui::PourModel*>()->cups()->at<ui::PourRow>(0).note.isEmpty());
    at.click("wrong" + other);
    at.click("notSure");
    CHECK(at.complaints() == "");
  }
  const auto lines = afterwards(folder.path().toStdString(), [](store::Store& store) { return session::history(store, session::sessions(store).front().id); });
  CHECK(std::ranges::count(lines, Event::asPoured, &session::HistoryLine::event) == 2);
  CHECK(std::ranges::count(lines, Event::voided, &session::HistoryLine::event) == 1);
}

TEST_CASE("a person is forgotten after two questions") {
  test::Window at;
  at.click("navPeople");
  test::addPerson(at, "Quill");
  at.click("person0");
  at.click("eraseEverythingOpen");
  at.click("eraseEverythingNext");
  at.click("eraseEverythingDeed");
  CHECK(at.app().findChild<ui::PeopleModel*>()->people()->count() == 0);
  CHECK(at.app().findChild<ui::PeopleModel*>()->property("erasedLine").toString().startsWith(QStringLiteral("Forgotten: it is gone from this file.")));
  CHECK_FALSE(at.item("undoYes"));  // nor does taking back bring anybody back
  test::addPerson(at, "Rowan");
  at.click("undoYes");
  CHECK_FALSE(at.item("undoYes"));
  CHECK_FALSE(at.item("person0"));
  CHECK(at.complaints() == "");
}

TEST_CASE("a backup is made, put in place again, and says what it keeps") {
  test::Window at;
  at.click("navKeeping");
  at.click("primaryButton");
  auto* keeping = at.app().findChild<ui::KeepingModel*>();
  REQUIRE(keeping->backups()->count() == 1);
  const std::string copy = keeping->backups()->at<ui::BackupRow>(0).file.toStdString();
  at.click("navPeople");
  test::addPerson(at, "Quill");
  at.click("navKeeping");
  at.type("restoreFrom", copy);
  at.click("restoreOpen");
  at.click("restoreNext");
  at.click("restoreDeed");
  CHECK_FALSE(keeping->property("told").toString().isEmpty());
  at.click("navPeople");
  CHECK(at.app().findChild<ui::PeopleModel*>()->people()->count() == 0);
  CHECK(at.complaints() == "");
}
