#include "ui/filled_sheet.h"

#include <catch2/catch.hpp>

namespace oddglass::test {

void fillIn(Window& at, int row) {
  const std::string n = std::to_string(row);
  const QString form = sheetOf(at).questions()->at<ui::QuestionRow>(row).form;
  const auto now = [&] { return sheetOf(at).questions()->at<ui::QuestionRow>(row); };
  INFO("question " << n << ", " << form.toStdString());
  if (form == QStringLiteral("choice")) {
    at.click("choice" + n + "1");
    CHECK(now().current == 1);
  } else if (form == QStringLiteral("line")) {
    at.click("line" + n + "Line");
    CHECK(now().current == (now().low + now().high) / 2);
    at.click("line" + n + "More");
    at.click("line" + n + "Less");
    at.click("line" + n + "Less");
    CHECK(now().current == (now().low + now().high) / 2 - (now().high - now().low) / 100);
    CHECK_FALSE(now().readOut.isEmpty());
  } else if (form == QStringLiteral("ticks")) {
    // Of the cup on the right no word is ticked: none is an answer too.
    if (sheetOf(at).property("position").toString() == QStringLiteral("right")) return;
    at.click("touch" + n + "_0");
    at.click("touch" + n + "_1");
    CHECK(now().marks == QList<int>{1, 1});
    at.click("touch" + n + "_1");
    CHECK(now().marks == QList<int>{1, 0});
  } else if (form == QStringLiteral("worst")) {
    at.click("pass" + n);
    CHECK_FALSE(now().passed);
    CHECK_THAT(at.text("nudge" + n), Catch::StartsWith("Look once more"));
    at.click("pass" + n);
    CHECK(now().passed);
    CHECK(at.text("nudge" + n).empty());
    at.type("words" + n, "thin");
    CHECK(now().text == QStringLiteral("thin"));
    CHECK_FALSE(now().passed);
  } else if (form == QStringLiteral("words")) {
    at.type("words" + n, "more honey");
    CHECK(now().text == QStringLiteral("more honey"));
  } else if (form == QStringLiteral("rank")) {
    at.click("touch" + n + "_1");
    CHECK(now().marks == QList<int>{1, 2});
  } else if (form == QStringLiteral("points")) {
    for (const char* which : {"_0", "_0", "_0", "_1", "_1"}) at.click("pointMore" + n + which);
    at.click("pointLess" + n + "_1");
    CHECK(now().marks == QList<int>{3, 1});
    at.click("pointMore" + n + "_0");
    CHECK(now().marks == QList<int>{4, 1});
  } else {
    FAIL("no such form");
  }
}

void goOn(Window& at) {
  for (int row = 0; row < sheetOf(at).questions()->count(); ++row) fillIn(at, row);
  if (sheetOf(at).property("waits").toBool()) {
    const QString before = sheetOf(at).property("headline").toString();
    CHECK_THAT(sheetOf(at).property("goReason").toString().toStdString(), Catch::StartsWith("In "));
    at.click("primaryButton");
    CHECK(sheetOf(at).property("headline").toString() == before);
    letPauseGoBy(at);
  }
  at.click("primaryButton");
}

}  // namespace oddglass::test
