// Every way of asking, from the question to the opened key, without the mouse.
#include "ui/journey.h"

#include "evening.h"

#include <catch2/catch.hpp>

#include <vector>

using namespace oddglass;
using test::Window;
using Page = ui::Router::Page;

namespace {

struct AskedWay {
  const char* name;
  const char* prompt;                    ///< what the taster is asked
  std::vector<const char*> question;     ///< what is taken on the page of the question
  const char* method;                    ///< the words of its line; empty where the question's own way is taken
  std::vector<const char*> takes;        ///< what is taken on the next page
  std::vector<const char*> answer;       ///< what the taster takes before saying how sure they are
  bool asksHow = true;
  int flights = 1;
  bool namesThing = false;
};

const std::vector<AskedWay>& askedWays() {
  static const std::vector<AskedWay> all{
      {"duo_trio", "Which one is the same as the marked cup?", {}, "duo-trio", {"marked2"}, {"cup1"}},
      {"duo_trio_constant", "Which one is the same as the marked cup?", {}, "duo-trio", {"marked0"}, {"cup2"}},
      {"tetrad", "Which two go together?", {}, "tetrad", {}, {"cup0", "cup2"}},
      {"two_out_of_five", "Which two are the odd ones?", {}, "Two out of five", {}, {"cup1", "cup4"}},
      {"pair", "“sweet”: which one has more of it?", {"question1"}, "", {}, {"cup1"}, true, 1, true},
      {"three_afc", "“sweet”: which one has the most of it?", {"question1"}, "3-AFC", {}, {"cup2"}, true, 1, true},
      {"same_different", "Are these two the same?", {}, "Same-different", {}, {"same0"}},
      {"a_not_a", "Is the coded cup the same as the marked one?", {}, "A-not-A", {"marked1"}, {"same1"}},
      {"preference_or_none", "Which one do you like better?", {"question2"}, "", {}, {"cup0", "liking0"}, false},
      {"preference", "Which one do you like better?", {"question2", "mayHaveNone"}, "", {}, {"cup1"}, false},
      {"also_prefer", "Which one is the odd one?", {}, "A triangle", {"alsoPrefer"}, {"cup0", "liking1"}},
      {"sequential", "Which one is the odd one?", {}, "A triangle", {"roundsMore", "roundsMore", "stopsEarly"}, {"cup2"}},
      {"three_pairs", "Which two go together?", {"lot2", "threeWay2"}, "tetrad", {}, {"cup1", "cup3"}, true, 3},
  };
  return all;
}

/// Two friends, three drinks, and a plan of two of them that is not finished.
struct Begun : testing::Evening {
  Begun() : Evening(1, 0, 2) {
    Beverage other;
    other.name = "Linden mead";
    other.origin = Origin::reference;
    other.kind = Kind::mead;
    other.abvBp = 1100;
    other.abvFrom = AbvFrom::label;
    addLot(shelf::save(*store, chance, other), "vintage 1");
    Draft draft = session::draft(*store, session);
    draft.tasters = friends;
    draft.careSettled = false;
    session::saveDraft(*store, clock, draft);
    store.reset();
  }
};

void plan(Window& at, const AskedWay& way) {
  at.click("session0");
  REQUIRE(at.app().router()->page() == Page::Question);
  for (const char* each : way.question) at.click(each);
  if (way.namesThing) {
    at.type("attribute", "sweet");
    at.click("expected0");
  }
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Takes);
  if (*way.method) test::chooseMethod(at, way.method);
  for (const char* each : way.takes) at.click(each);
  at.click("primaryButton");
  at.click("primaryButton");
  at.click("careSettled");
  at.click("primaryButton");
  at.click("primaryButton");
  REQUIRE_FALSE(at.app().property("current").value<QObject*>()->property("sealMark").toString().isEmpty());
  for (int step = 0; step < 3; ++step) at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Places);
}

// What has the keyboard can be seen, in the part of the page that is not under the bar.
void requireInSight(Window& at) {
  at.nextFrame();
  QQuickItem* has = at.window().activeFocusItem();
  REQUIRE(has);
  CHECK(QRectF(0, 0, at.window().width(), at.window().height()).contains(has->mapRectToScene(QRectF(0, 0, has->width(), has->height())).center()));
}

void answer(Window& at, const AskedWay& way) {
  at.click("primaryButton");
  CHECK(at.text("headline") == way.prompt);
  for (const char* each : way.answer) at.click(each);
  at.click("sureness1");
  requireInSight(at);
  if (way.asksHow) at.click("clue0");
  requireInSight(at);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Locked);
}

}  // namespace

TEST_CASE("every way of asking goes from its question to the opened key by keyboard alone") {
  for (const AskedWay& way : askedWays()) {
    DYNAMIC_SECTION(way.name) {
      Begun begun;
      Window at(begun.folder.path().string(), begun.clock, begun.chance);
      at.useKeyboardAlone();
      at.window().resize(900, 600);
      plan(at, way);
      for (int place = 1; place <= 2; ++place) {
        test::sitDown(at, place);
        for (int flight = 1; flight <= way.flights; ++flight) {
          answer(at, way);
          at.click("primaryButton");
        }
        REQUIRE(at.app().router()->page() == Page::Places);
      }
      if (at.app().findChild<ui::BoardModel*>()->property("lookIsDue").toBool()) {
        at.click("primaryButton");
        CHECK_THAT(at.app().notice()->message().toStdString(), Catch::StartsWith("After round 1 it says: "));
        at.click("placesClose");
        at.click("closeYes");
      } else {
        at.click("primaryButton");
      }
      REQUIRE(at.app().router()->page() == Page::OpenKey);
      at.click("primaryButton");
      REQUIRE(at.app().router()->page() == Page::CameOut);
      CHECK_FALSE(at.text("headline").empty());
      CHECK(at.complaints() == "");
    }
  }
}
