// Too early? Notes of a batch through the real window, from its first reading to a bottle that ran over.
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

ui::BeverageModel& drinkPage(test::Window& at) { return *at.app().findChild<ui::BeverageModel*>(); }
std::string early(test::Window& at) { return drinkPage(at).property("earlyHeadline").toString().toStdString(); }
std::string wrongField(test::Window& at) { return drinkPage(at).property("wrongField").toString().toStdString(); }
std::string newestNote(test::Window& at) { return drinkPage(at).notes()->at<ui::NoteRow>(0).says.toStdString(); }

void startNote(test::Window& at, NoteKind kind, const char* day) {
  at.click("noteKind" + std::to_string(static_cast<int>(kind)));
  at.type("noteDay", day);
}

void reading(test::Window& at, const char* day, const char* gravity) {
  startNote(at, NoteKind::reading, day);
  at.type("noteGravity", gravity);
  at.click("primaryButton");
}

void batchOfRecipe(test::Window& at) {
  at.click("navPeople");
  test::addPerson(at, "Wenna", true);
  test::addDrink(at, "Heather mead", true, "bottled in May");
  at.click("beverageEdit");
  at.type("recipe", "Hedge mead");
  at.type("og", "1.050");
  at.type("fg", "1.006");
  at.click("primaryButton");
}

}  // namespace

TEST_CASE("a batch's readings, what is seen in the bottle and what is done against a fault are noted, and too early? follows them") {
  const bool byKeyboard = GENERATE(false, true);
  test::Window at;
  batchOfRecipe(at);
  if (byKeyboard) at.useKeyboardAlone();
  CHECK(drinkPage(at).property("recipe").toString() == QStringLiteral("Hedge mead"));
  CHECK(early(at) == "Cannot be told: no gravity was read.");
  reading(at, "2026-05-01", "1.020");
  CHECK(early(at) == "Cannot be told yet. Read it again, on 2026-05-04 or later.");
  reading(at, "2026-05-03", "1.010");
  CHECK(early(at) == "Too early to bottle: it was still falling on 2026-05-03.");
  reading(at, "2026-05-08", "1.010");
  CHECK(early(at).starts_with("Steady for 5 days."));
  CHECK(test::isShown(at, "Down to the final gravity that you gave it"));

  startNote(at, NoteKind::haze, "2026-05-20");
  at.click("primaryButton");
  CHECK(wrongField(at) == "level");   // how much has to be said
  at.click("noteLevel2");
  startNote(at, NoteKind::sediment, "2026-05-20");
  CHECK(drinkPage(at).property("noteLevel").toInt() == -1);   // and of each thing by itself
  startNote(at, NoteKind::haze, "2026-05-20");
  at.click("noteLevel2");
  at.click("primaryButton");
  CHECK(newestNote(at) == "haze: hazy");
  startNote(at, NoteKind::racked, "2026-05-21");
  CHECK_FALSE(at.item("noteLevel0"));
  at.type("noteWord", "butter");
  at.click("primaryButton");
  CHECK(newestNote(at) == "racked against butter");

  startNote(at, NoteKind::gusher, "2026-06-15");
  CHECK_FALSE(at.item("noteWord"));
  at.click("primaryButton");
  CHECK(early(at) == "A bottle gushed. See to the others first.");
  CHECK(drinkPage(at).property("earlyUrgent").toBool());
  CHECK(test::isShown(at, "bottled in May: 6 bottles"));
  CHECK(test::isShown(at, "gloves and goggles"));
  at.click("beverageBeside");
  CHECK(at.page() == "SideBySide");
  CHECK(at.complaints() == "");
}

TEST_CASE("too early? fits in every look, and a bought drink is not asked") {
  const auto look = GENERATE(from_range(test::looks()));
  test::Window at;
  batchOfRecipe(at);
  reading(at, "2026-05-01", "1.020");
  reading(at, "2026-05-08", "1.010");
  startNote(at, NoteKind::gusher, "2026-06-15");
  at.click("primaryButton");
  test::wear(at, look);
  startNote(at, NoteKind::sediment, "2026-06-16");
  for (const char* part : {"earlyHeadline", "noteLevel0", "primaryButton"}) {
    at.scrollTo(at.item(part));
    at.nextFrame();
    at.shoot(std::string("too_early_") + part + '_' + look.name);
    CHECK(test::silent(at.window().contentItem()) == "");
    CHECK(test::nameless(at.window().contentItem()) == "");
    CHECK(test::cutOff(at) == "");
  }
  test::addDrink(at, "Bought mead", false, "vintage 2");
  CHECK(early(at).empty());
  CHECK(at.complaints() == "");
}
