#include "by_hand.h"
#include "evening.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

#include <iterator>
#include <set>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

/// A brewer alone with two drinks; two rounds of a triangle, sealed.
void sealAlone(test::Window& at) {
  at.click("navPeople");
  test::addPerson(at, "Ada", true);
  test::addDrink(at, "Heather mead", true, "bottled in March");
  test::addDrink(at, "Bought mead", false, "vintage 2024");
  at.click("navToday");
  at.click(at.item("todayStart") ? "todayStart" : "primaryButton");
  at.click("lot0");
  at.click("lot1");
  at.click("taster0");
  at.click("routine3");
  CHECK_FALSE(at.item("pourer0"));
  at.shoot("alone_question");
  at.type("title", "By myself");
  at.type("guestTitle", "Three cups");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Takes);
  test::chooseMethod(at, "A triangle");
  at.click("roundsMore");
  at.type("cupMl", "15");
  CHECK(test::isShown(at, "8 cups"));
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::GiveAways);
  at.click("primaryButton");
  at.click("careSettled");
  at.click("primaryButton");
  at.shoot("alone_seal");
  at.click("primaryButton");
}

void looked(test::Window& at, const std::string& name) {
  at.shoot(name);
  INFO(name);
  CHECK(test::silent(at.window().contentItem()) == "");
  CHECK(test::cutOff(at) == "");
}

/// The steps of a round, to the places.
int throughTheSteps(test::Window& at) {
  int steps = 0;
  while (at.app().router()->page() == Page::Alone && steps < 20) {
    looked(at, "alone_step_" + std::to_string(++steps));
    at.click("primaryButton");
  }
  return steps;
}

}  // namespace

TEST_CASE("a solo evening by mouse: the steps, two rounds, the cups turned over, the verdict") {
  test::Window at;
  at.window().resize(900, 600);
  sealAlone(at);
  REQUIRE(at.text("primaryButton") == "To the steps");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Alone);
  CHECK(throughTheSteps(at) == 6);
  REQUIRE(at.app().router()->page() == Page::Places);
  test::sitDown(at, 1);
  test::taste(at, 0);
  CHECK(at.text("primaryButton") == "Turn the cups over");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::Alone);
  at.app().preferences()->setLight(ui::Preferences::Light::Dark);
  looked(at, "alone_turn_over_dark");
  // The cup that was chosen is the odd one; the one that was set aside holds the same.
  for (const char* answer : {"aloneAnswer0", "aloneAnswer1", "aloneAnswer1", "aloneAnswer0"}) at.click(answer);
  // A slip on the last cup is put right before it is kept.
  CHECK(at.text("headline") == "All of it is told. Keep it so?");
  at.click("aloneBack");
  at.click("aloneAnswer0");
  looked(at, "alone_told");
  at.click("primaryButton");
  // Read off: the next round begins with its steps.
  CHECK(at.text("headline").find("Take 4 cups") != std::string::npos);
  throughTheSteps(at);
  at.window().resize(1280, 800);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::HandOver);
  at.click("primaryButton");
  test::taste(at, 2);
  at.click("primaryButton");
  at.click("aloneAnswer0");
  at.click("aloneBack");
  at.click("aloneAnswer1");
  at.click("aloneAnswer0");
  looked(at, "alone_third_dark");
  // A slip that came off: the round is set aside, and said so.
  at.click("aloneAnswer2");
  at.click("aloneAnswer1");
  at.click("primaryButton");
  CHECK(at.app().notice()->message().contains(QStringLiteral("set aside")));
  at.app().preferences()->setLight(ui::Preferences::Light::Bright);
  looked(at, "alone_read");
  CHECK(at.text("primaryButton") == "To the places");
  at.click("primaryButton");
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::OpenKey);
  at.click("primaryButton");
  REQUIRE(at.app().router()->page() == Page::CameOut);
  looked(at, "alone_came_out");
  CHECK(test::isShown(at, "by whoever tasted"));
  CHECK(at.complaints() == "");
}

TEST_CASE("a couple: both persons' steps, two who taste, and two sheets that tell something only side by side") {
  testing::Evening evening;
  const SessionId session = evening.session;
  Draft draft = session::draft(*evening.store, session);
  draft.routine = Routine::couple;
  draft.pourer.reset();
  draft.pourerName.clear();
  draft.rounds = 1;
  draft.spares = 0;
  draft.tasters = {evening.friends[0], evening.friends[1]};
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();
  testing::Hands hands(*evening.store, session, 7);
  evening.store.reset();
  {
    test::Window at(evening.folder.path().string(), evening.clock, evening.chance);
    at.window().resize(900, 600);
    at.click("primaryButton");
    at.app().router()->go(Page::Alone);
    at.settle();
    int steps = 0, handed = 0;
    while (at.app().router()->page() == Page::Alone && steps < 20) {
      handed += at.text("primaryButton") == "Hand over to the other one" ? 1 : 0;
      looked(at, "couple_step_" + std::to_string(++steps));
      at.click("primaryButton");
    }
    CHECK(handed == 1);
    REQUIRE(at.app().router()->page() == Page::Places);
    for (int place = 1; place <= 2; ++place) {
      test::sitDown(at, place);
      test::taste(at, 0);
      at.click("primaryButton");
    }
    at.click("primaryButton");   // everybody has locked: the table is closed
    REQUIRE(at.app().router()->page() == Page::OpenKey);
    REQUIRE(at.text("primaryButton") == "Read the cups off");
    at.click("primaryButton");
    REQUIRE(at.app().router()->page() == Page::Alone);
    at.app().preferences()->setLight(ui::Preferences::Light::Dark);
    looked(at, "couple_first_sheet");
    for (int place = 1; place <= 2; ++place) {
      const auto sheets = hands.twoSheets(place, 1);
      for (const session::MarkedLot& line : sheets.first) at.click("aloneAnswer" + std::to_string(line.slot->value - 1));
      looked(at, "couple_second_sheet");
      std::set<std::string> left;
      for (const session::MarkedLot& line : sheets.first) left.insert(line.mark);
      for (const Cup& cup : hands.plan.cups) {
        if (cup.place != Place{place}) continue;
        const auto line = std::ranges::find(sheets.second, cup.code, &session::MarkedCode::code);
        REQUIRE(line != sheets.second.end());
        // Only marks that no cup got yet are offered.
        left.erase(line->mark);
        at.click("aloneAnswer" + std::to_string(std::distance(left.begin(), left.lower_bound(line->mark))));
      }
      at.click("primaryButton");
    }
    CHECK(at.text("headline") == "Everything is read off.");
    looked(at, "couple_read");
    at.click("primaryButton");
    REQUIRE(at.app().router()->page() == Page::OpenKey);
    at.click("primaryButton");
    REQUIRE(at.app().router()->page() == Page::CameOut);
    CHECK(test::isShown(at, "off two people's sheets"));
    CHECK(at.complaints() == "");
  }
  const auto store = store::Store::open(evening.folder / "cellar.oddglass", store::Access::write, evening.clock, evening.chance);
  CHECK(session::verify(*store, session).holds());
  for (const PanelFlight& flight : session::revealed(*store, session).panel) {
    CHECK_FALSE(flight.voided);
    for (const auto& line : hands.at(flight.place.value, 1).lines)
      if (line.code.value > 0) CHECK(std::ranges::find(flight.drawn, *line.slot) != flight.drawn.end());
  }
}
