// What goes on paper, from the pages that lead there: one PDF for the table, the key behind the pourer's hand-over, the report.
#include "ui/journey.h"

#include "session/look.h"
#include "store/store.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

bool isPdf(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  std::string start(5, ' ');
  in.read(start.data(), 5);
  return start == "%PDF-";
}

long openingsIn(const std::string& folder) {
  SystemClock clock;
  blinding::SystemChance chance;
  const auto store = store::Store::open(folder + "/cellar.oddglass", store::Access::read, clock, chance);
  return std::ranges::count(session::history(*store, session::sessions(*store).front().id), Event::pourSheetOpened, &session::HistoryLine::event);
}

std::string fileOf(test::Window& at) { return at.app().findChild<ui::PaperModel*>()->property("file").toString().toStdString(); }

}  // namespace

TEST_CASE("after the seal everything for the table is printed, and the measures of the labels are kept for the next time") {
  QTemporaryDir folder;
  {
    test::Window at(folder.path().toStdString());
    test::sealAnEvening(at, 1);
    at.click("sealPaper");
    REQUIRE(at.app().router()->page() == Page::Paper);
    at.click("paperSize1");
    at.click("labelColumnsMore");
    at.type("labelMargins", "12 8 12 wide");
    at.click("primaryButton");
    CHECK(at.app().findChild<ui::PaperModel*>()->wrongField() == "margins");
    at.type("labelMargins", "12 8 12 8,5");
    at.shoot("paper_labels");
    for (int kind = 0; kind < 5; ++kind) {
      INFO(kind);
      at.click("paperKind" + std::to_string(kind));
      at.click("primaryButton");
      CHECK(isPdf(fileOf(at)));
      CHECK_THAT(at.text("paperTold"), Catch::Contains(fileOf(at)));
    }
    at.shoot("paper_told");
    at.click("paperLeave");
    CHECK(at.app().router()->page() == Page::Places);
    CHECK(at.complaints() == "");
  }
  CHECK(openingsIn(folder.path().toStdString()) == 0);
  test::Window again(folder.path().toStdString());
  again.app().router()->go(Page::Paper);
  again.settle();
  const auto* paper = again.app().findChild<ui::PaperModel*>();
  CHECK(paper->size() == 1);
  CHECK(paper->property("columns").toString() == "4");
  CHECK(paper->property("margins").toString() == "12 8 12 8.5");
}

TEST_CASE("the pourer's paper is asked for twice, and every opening is on record") {
  QTemporaryDir folder;
  {
    test::Window at(folder.path().toStdString());
    test::sealAnEvening(at, 1);
    at.click("primaryButton");
    REQUIRE(at.app().router()->page() == Page::PourSheet);
    at.click("pourPaper");
    REQUIRE(at.app().router()->page() == Page::Paper);
    at.click("primaryButton");
    CHECK_FALSE(std::filesystem::exists(fileOf(at)));
    at.shoot("paper_hand_over");
    at.click("paperNo");
    CHECK_FALSE(std::filesystem::exists(fileOf(at)));
    at.click("primaryButton");
    at.click("paperYes");
    CHECK(isPdf(fileOf(at)));
    at.click("paperKind6");
    at.click("primaryButton");
    at.click("paperYes");
    CHECK(isPdf(fileOf(at)));
    at.click("paperLeave");
    // Whoever comes next does not find the pourer's paper chosen.
    at.click("placesPaper");
    CHECK(at.app().findChild<ui::PaperModel*>()->kind() == 0);
    CHECK(at.complaints() == "");
  }
  CHECK(openingsIn(folder.path().toStdString()) == 2);
}

TEST_CASE("paper is reached and printed by keyboard alone") {
  test::Window at;
  test::sealAnEvening(at, 1);
  at.useKeyboardAlone();
  at.click("sealPaper");
  at.click("paperKind1");
  at.click("primaryButton");
  CHECK(isPdf(fileOf(at)));
  CHECK(at.complaints() == "");
}

TEST_CASE("what came out is written as PDF") {
  test::Window at;
  at.click("primaryButton");
  for (int row = 0; at.item("session" + std::to_string(row)); ++row) {
    at.click("session" + std::to_string(row));
    if (at.app().router()->page() == Page::CameOut) break;
    at.app().router()->go(Page::Today);
    at.settle();
  }
  REQUIRE(at.app().router()->page() == Page::CameOut);
  const std::string file = at.folder() + "/out.pdf";
  at.type("reportFile", file);
  at.click("reportWrite");
  CHECK(isPdf(file));
  CHECK(at.complaints() == "");
}
