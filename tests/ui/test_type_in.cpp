// Filled paper sheets typed in: by keyboard alone, twice, by whoever may.
#include "ui/fits.h"
#include "ui/journey.h"

#include <QRegularExpression>
#include <catch2/catch.hpp>

#include <fstream>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

/// Types one line and Enter; the field keeps the keyboard.
void typeLine(test::Window& at, const std::string& text) {
  at.type("typedLine", text);
  at.key(Qt::Key_Return);
  at.settle();
}

}  // namespace

TEST_CASE("a filled sheet is typed in twice and locked") {
  test::Window at;
  test::sealAnEvening(at, 1);
  at.click("sealPlaces");
  for (int place = 1; place <= 2; ++place) {
    test::sitDown(at, place);
    at.app().router()->go(Page::Places);
    at.settle();
  }
  at.click("placesTypeIn");
  REQUIRE(at.app().router()->page() == Page::TypeIn);
  const auto* model = at.app().findChild<ui::TypingModel*>();
  const QStringList typists = model->property("typists").toStringList();
  // The maker, the pourer and whoever sits with cups before them may not.
  CHECK_FALSE(typists.contains(QStringLiteral("Ada")));
  CHECK_THAT(model->property("notThese").toString().toStdString(), Catch::Contains("Ada"));
  at.click("typist" + std::to_string(typists.size() - 1));
  at.click("typedPlace0");
  at.shoot("type_in");
  const auto code = [&] {
    const QString hint = model->property("lead").toString();
    return hint.mid(hint.indexOf(QRegularExpression(QStringLiteral("[0-9]{3}"))), 3).toStdString();
  }();
  typeLine(at, "12");
  CHECK(model->wrongField() == "value");
  for (const std::string& line : {code, std::string("2"), std::string("1"), std::string("waxy")}) typeLine(at, line);
  typeLine(at, code);
  typeLine(at, "3");
  CHECK_FALSE(model->property("note").toString().isEmpty());
  at.shoot("type_in_slip");
  typeLine(at, "2");
  typeLine(at, "2");
  typeLine(at, "1");
  REQUIRE(model->isDone());
  at.shoot("type_in_done");
  at.click("primaryButton");
  CHECK_THAT(at.text("typeInTold"), Catch::Contains("Place 1"));
  // Nothing is guessed: what cannot be read is kept as it was written, and the round is set aside.
  at.click("typedPlace0");
  at.type("typedLine", "4?2");
  at.shoot("type_in_misread");
  at.click("cannotRead");
  CHECK_THAT(at.text("typeInTold"), Catch::Contains("Place 2 is set aside"));
  at.click("typeInLeave");
  CHECK(at.text("headline") != "");
  CHECK_FALSE(model->isTyping());
  CHECK(at.complaints() == "");
}

TEST_CASE("answers from a table of any form are told column by column and locked together") {
  test::Window at;
  test::sealAnEvening(at, 1);
  at.click("sealPlaces");
  for (const int place : {1, 2}) {
    test::sitDown(at, place);
    at.app().router()->go(Page::Places);
    at.settle();
  }
  at.click("placesTypeIn");
  const auto* model = at.app().findChild<ui::TypingModel*>();
  const auto& form = *at.app().findChild<ui::FormModel*>();
  CHECK(at.item("formFile") == nullptr);   // whoever types is asked first
  at.click("typist" + std::to_string(model->property("typists").toStringList().size() - 1));
  const std::string file = at.folder() + "/form.csv";
  std::ofstream(file) << "When,place,Which one?,Sure?,clue\n18:01,1,2,3,1\n18:02,2,1,nonsense,1\n";
  at.type("formFile", at.folder() + "/none.csv");
  at.click("formOpen");
  CHECK_FALSE(form.isRead());
  at.type("formFile", file);
  at.click("formOpen");
  REQUIRE(form.isRead());
  at.shoot("form_columns");
  at.click("formColumn2");
  at.click("formMeaning5");
  at.click("formColumn3");
  at.click("formMeaning6");
  at.shoot("form_meaning");
  CHECK(test::cutOff(at) == "");
  at.click("primaryButton");
  CHECK_THAT(at.app().notice()->message().toStdString(), Catch::Contains("line 3") && Catch::Contains("nonsense"));
  CHECK(form.isRead());
  std::ofstream(file) << "When,place,Which one?,Sure?,clue\n18:01,1,2,3,1\n18:02,2,1,guess,1\n";
  at.click("primaryButton");
  CHECK_FALSE(form.isRead());
  CHECK_THAT(at.text("typeInTold"), Catch::Contains("2"));
  CHECK(at.complaints() == "");
}
