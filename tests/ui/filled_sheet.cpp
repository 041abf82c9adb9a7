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
    QList<int> marks(now().marks.size(), 0);
    marks[0] = 1;
    at.click("touch" + n + "_0");
    for (int tap = 0; tap < 2 && marks.size() > 1; ++tap) {
      at.click("touch" + n + "_1");
      marks[1] = 1 - tap;
      CHECK(now().marks == marks);
    }
    CHECK(now().marks == marks);
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
    // From the most to the least; the last cup needs no tap.
    QList<int> ranks;
    for (int cup = 0; cup < now().options.size(); ++cup) ranks << cup + 1;
    for (int cup = static_cast<int>(ranks.size()) - 1; cup > 0; --cup) at.click("touch" + n + "_" + std::to_string(cup));
    CHECK(now().marks == ranks);
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
