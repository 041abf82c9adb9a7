// Give-aways: nine checks between what it takes and care, and what they do to the plan.
#include "evening.h"
#include "ui/fits.h"
#include "ui/journey.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using test::Window;

namespace {

std::string reason(Window& at) { return at.app().findChild<ui::DraftModel*>()->giveAways()->property("notYet").toString().toStdString(); }

}  // namespace

TEST_CASE("what gives the drinks away is settled before the seal, and fixes what is asked") {
  testing::Evening evening;
  const SessionId session = evening.session;
  Draft before = session::draft(*evening.store, session);
  before.giveAways.reset();
  session::saveDraft(*evening.store, evening.clock, before);
  evening.store.reset();
  {
    Window at(evening.folder.path().string(), evening.clock, evening.chance);
    at.click("primaryButton");
    at.click("primaryButton");
    at.type("vessel", "dark cups");
    at.type("servedAt", "warm");
    CHECK(test::isShown(at, "“warm” is not a number"));
    at.type("servedAt", "12");
    at.click("mouthful1");
    at.shoot("takes_served");
    at.click("primaryButton");
    REQUIRE(at.page() == "GiveAways");
    at.app().router()->goToStep(4);
    at.settle();
    CHECK(test::isShown(at, "Nobody has looked yet"));
    at.click("sealGiveAways");
    at.shoot("give_aways_alike");
    at.click("check0");
    CHECK(reason(at) == "Colour: choose a way out first.");
    at.click("primaryButton");
    REQUIRE(at.page() == "GiveAways");
    at.click("wayOut00");
    at.click("check3");
    at.click("wayOut32");  // fizz, by any means
    at.click("check8");
    CHECK(at.item("leaveOut"));
    CHECK_FALSE(at.item("wayOut81"));
    at.click("wayOut80");
    CHECK(reason(at).empty());
    for (const test::Look& look : {test::Look{"give_aways_dark", 900, 600, 100, ui::Preferences::Light::Dark}, test::Look{"give_aways_light", 1280, 800, 100, ui::Preferences::Light::Bright}}) {
      test::wear(at, look);
      at.shoot(look.name);
      CHECK(test::silent(at.window().contentItem()) == "");
      CHECK(test::cutOff(at) == "");
    }
    // Asked instead, the question becomes another one; fizz then loses its own.
    at.click("check1");
    at.click("wayOut11");
    CHECK(test::isShown(at, "“hazy”: which of them may have more of it?"));
    at.click("askedLot1");
    at.click("primaryButton");
    REQUIRE(at.page() == "Care");
    at.click("primaryButton");
    REQUIRE(at.page() == "Seal");
    CHECK(test::isShown(at, "Different, and gone on with by any means"));
    at.shoot("give_aways_seal");
    at.click("primaryButton");
    CHECK(at.complaints() == "");
  }
  const auto store = store::Store::open(evening.folder / "cellar.oddglass", store::Access::write, evening.clock, evening.chance);
  const Plan plan = session::record(*store, session).plan;
  CHECK(plan.question == Question::more);
  CHECK(plan.attribute == "hazy");
  CHECK(plan.serving == Serving{"dark cups", 12, Mouthful::spatOut});
  CHECK(plan.expected == Slot{2});
  CHECK(plan.giveAways == GiveAways{{GiveAway::colour, WayOut::mend}, {GiveAway::haze, WayOut::ask}, {GiveAway::fizz, WayOut::anyMeans}, {GiveAway::hadBefore, WayOut::anyMeans}});
}
