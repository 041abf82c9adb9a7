// Cards, an open round and a known difference through the real window.
#include "known_evenings.h"
#include "own_evenings.h"
#include "session/card.h"
#include "session/open_round.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using Page = ui::Router::Page;

namespace {

std::string propertyOf(QObject& model, const char* property) { return model.property(property).toString().toStdString(); }
int linesOf(QObject& model, const char* property) { return static_cast<int>(model.property(property).toStringList().size()); }

/// Three opened score sheets in a store that is closed again.
struct Sheets : testing::OwnEvenings {
  explicit Sheets(int count = 3) {
    for (int evening = 0; evening < count; ++evening) tell([evening](int place) { return std::pair{4 + (place + evening) % 5, 4 + (2 * place + evening) % 3}; });
    store.reset();
  }
  std::string where() const { return folder.path().string(); }
};

void fits(test::Window& at, const test::Look& look, const std::string& shot) {
  at.nextFrame();
  at.shoot(shot + "_" + look.name);
  CHECK(test::silent(at.window().contentItem()) == "");
  CHECK(test::nameless(at.window().contentItem()) == "");
  CHECK(test::cutOff(at) == "");
}

}  // namespace

TEST_CASE("a card is asked for, handed over, read, and let be seen; before that nothing of it is anywhere in the window") {
  const bool byKeyboard = GENERATE(false, true);
  Sheets told;
  test::Window at(told.where(), told.clock, told.chance);
  if (byKeyboard) at.useKeyboardAlone();
  auto& people = *at.app().findChild<ui::PeopleModel*>();
  auto& card = *at.app().findChild<ui::CardModel*>();
  at.click("navPeople");
  at.click("person0");
  CHECK(propertyOf(people, "cardLine").find("has no card") != std::string::npos);
  at.click("cardShow");
  CHECK(propertyOf(people, "cardLine").find("It is shown to them first") != std::string::npos);
  CHECK_FALSE(at.item("cardRead"));
  at.click("cardShow");
  REQUIRE(at.page() == "Card");
  CHECK(at.text("headline") == "This is for Friend A. Others look away.");
  CHECK(linesOf(card, "scores") == 0);
  CHECK_FALSE(test::isShown(at, "for the same cups"));
  at.click("primaryButton");
  CHECK(linesOf(card, "scores") > 3);
  CHECK(test::isShown(at, "for the same cups"));
  at.click("cardLet");
  REQUIRE(at.page() == "People");
  CHECK(linesOf(card, "scores") == 0);
  CHECK(propertyOf(card, "headline").empty());
  if (!at.item("cardRead")) at.click("person0");
  at.click("cardRead");
  CHECK(linesOf(people, "cardLines") > 3);
  at.click("cardBack");
  CHECK_FALSE(at.item("cardRead"));
  CHECK(linesOf(people, "cardLines") == 0);
  CHECK(at.complaints() == "");
}

TEST_CASE("after the reveal people score once more with the labels known, place by place, and it stands on the brewer's own page") {
  Sheets told;
  test::Window at(told.where(), told.clock, told.chance);
  at.click("session0");
  REQUIRE(at.page() == "CameOut");
  at.click("cameOutOpenRound");
  REQUIRE(at.page() == "OpenRound");
  auto& open = *at.app().findChild<ui::OpenRoundModel*>();
  CHECK(open.places()->count() == 5);
  for (const int place : {0, 4}) {
    at.click("openPlace" + std::to_string(place));
    CHECK(test::isShown(at, "Others look away"));
    CHECK(propertyOf(open, "reason") == "Each of the drinks needs an answer first.");
    at.click("openLot0_8");
    at.click("openLot1_2");
    CHECK(propertyOf(open, "reason").empty());
    at.click("primaryButton");
    CHECK(open.places()->at<ui::OpenPlaceRow>(place).done);
    CHECK_FALSE(at.item("openLot0_8"));
  }
  at.click("primaryButton");
  REQUIRE(at.page() == "CameOut");
  at.click("navRoom");
  CHECK(test::isShown(at, "Too little known: it takes three tastings with an open round, so far 1."));
  CHECK(at.complaints() == "");
}

TEST_CASE("what one knows is there is asked as a question, sealed with its word, and said on the page of care") {
  testing::Evening evening;
  const SessionId session = evening.session;
  evening.store.reset();
  {
    test::Window at(evening.folder.path().string(), evening.clock, evening.chance);
    at.click("primaryButton");
    REQUIRE(at.page() == "Question");
    auto& draft = *at.app().findChild<ui::DraftModel*>();
    at.click("question5");
    CHECK(propertyOf(draft, "notYet") == "Say what there is to notice.");
    at.type("attribute", "butter");
    at.type("dose", "half a drop a litre");
    for (int step = 0; step < 3; ++step) at.click("primaryButton");
    REQUIRE(at.page() == "Care");
    CHECK(test::isShown(at, "What was added is an ingredient"));
    at.click("primaryButton");
    REQUIRE(at.page() == "Seal");
    CHECK(propertyOf(draft, "sealQuestion") == "Can anyone notice “butter” in Heather mead, bottled in March, beside Bought mead, vintage 2?");
    at.click("primaryButton");
    REQUIRE(propertyOf(draft, "sealMark").size() > 8);
    CHECK(at.complaints() == "");
  }
  const auto store = store::Store::open(evening.folder / "cellar.oddglass", store::Access::write, evening.clock, evening.chance);
  const Plan plan = session::record(*store, session).plan;
  CHECK(plan.question == Question::notice);
  CHECK(plan.method == Method::pair);
  CHECK(plan.attribute == "butter");
  CHECK(plan.dose == "half a drop a litre");
}

TEST_CASE("the open round and what the labels did fit in every look") {
  const auto look = GENERATE(from_range(test::looks()));
  Sheets told;
  test::Window at(told.where(), told.clock, told.chance);
  test::wear(at, look);
  at.click("session0");
  at.click("cameOutOpenRound");
  fits(at, look, "open_round");
  at.click("openPlace4");
  fits(at, look, "open_round_asked");
  CHECK(at.item("headline")->mapToScene({}).y() >= 0);   // "Others look away" is what is read first
  at.click("openLot0_8");
  at.click("openLot1_2");
  at.scrollTo(at.item("primaryButton"));
  fits(at, look, "open_round_chosen");
  at.click("primaryButton");
  at.click("openPlace0");
  at.click("openLot0_4");
  at.click("openLot1_4");
  at.click("primaryButton");
  fits(at, look, "open_round_kept");
  CHECK(at.item("headline")->mapToScene({}).y() >= 0);
  at.click("primaryButton");
  at.click("navRoom");
  at.scrollTo(at.item("labelPart"));
  fits(at, look, "room_label");
  CHECK(at.complaints() == "");
}

TEST_CASE("cards and what people notice fit in every look") {
  const auto look = GENERATE(from_range(test::looks()));
  testing::KnownEvenings told;
  Taster longest{{}, "Aurelia Featherstonehaugh-Cholmondeley of the long hill", "fox", false, false};
  longest.id = told.friends[0];
  shelf::save(*told.store, told.chance, longest);
  for (int evening = 0; evening < 3; ++evening) told.tell(testing::KnownEvenings::right({{2, 1}, {5, evening + 1}}));
  session::askForCard(*told.store, told.clock, told.friends[0]);
  const std::string where = told.folder.path().string();
  told.store.reset();
  test::Window at(where, told.clock, told.chance);
  test::wear(at, look);
  at.click("navPeople");
  fits(at, look, "people_known");
  at.click("person0");
  fits(at, look, "people_card");
  at.scrollTo(at.item("primaryButton"));
  fits(at, look, "people_card_end");
  at.click("cardShow");
  fits(at, look, "card_hand_over");
  at.click("primaryButton");
  fits(at, look, "card");
  at.scrollTo(at.item("primaryButton"));
  fits(at, look, "card_end");
  at.click("primaryButton");
  CHECK(at.complaints() == "");
}
