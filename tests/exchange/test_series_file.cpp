#include "../aging_evenings.h"
#include "exchange/take_in.h"
#include "exchange/write_out.h"
#include "refused.h"
#include "session/ending.h"
#include "shelf/series.h"

#include <fstream>

using namespace oddglass;
using namespace oddglass::exchange;
using testing::AgingEvenings;

namespace {

struct OtherStore : testing::Cellar {
  std::unique_ptr<store::Store> store = open();
};

/// A series of four: the first sitting held, its pages opened while the second was sealed, the third a draft.
struct SeriesToTell : AgingEvenings {
  SeriesToTell() {
    const auto say = [](int, int, const SheetItem& item, Slot, int) -> testing::Said { return {item.kind == ItemKind::check ? 0 : 5}; };
    hold(1, 1765200000000, say);
    clock.set(1765200000000 + 78 * testing::dayLong);
    planned(2);
    sealAndSit();
    session::openOldPages(*store, clock, series);
    answerAll(say);
    end();
    planned(3);
  }
  std::filesystem::path told(const canon::Json& json) const {
    const auto file = folder / "told.json";
    std::ofstream(file) << json.dump(1);
    return file;
  }
  std::filesystem::path told() { return told(interchangeOfAll(*store, clock)); }
};

}  // namespace

TEST_CASE("a series goes whole to another store, with its sittings and what was opened early") {
  SeriesToTell here;
  OtherStore there;
  const Brought brought = importFile(*there.store, there.clock, there.chance, here.told());
  CHECK(brought.series == 1);
  CHECK(brought.sessions.size() == 2);
  Series expected = shelf::series(*here.store, here.series);
  REQUIRE(expected.sittings[2].session);
  expected.sittings[2].session.reset();   // a plan that is not sealed stays where it is made
  CHECK(shelf::series(*there.store, here.series) == expected);
  const auto seen = shelf::seenOf(*there.store, here.series);
  REQUIRE(seen.size() == 1);
  CHECK(seen[0].session == *expected.sittings[1].session);
  CHECK(session::sittingsNow(*there.store, here.series)[1].timesSeen == 1);

  const Brought again = importFile(*there.store, there.clock, there.chance, here.told([&] {
    auto json = interchangeOfAll(*here.store, here.clock);
    json["sessions"] = canon::Json::array();
    return json;
  }()));
  CHECK(again.series == 0);
  CHECK(shelf::allSeries(*there.store).size() == 1);
}

TEST_CASE("a series that cannot have come about is refused where it stands, and nothing of the file is kept") {
  SeriesToTell here;
  const auto wrong = [&](auto&& change) {
    canon::Json json = interchangeOfAll(*here.store, here.clock);
    change(json["series"][0], json);
    OtherStore there;
    const Problem problem = problemOf([&] { importFile(*there.store, there.clock, there.chance, here.told(json)); });
    CHECK(shelf::allSeries(*there.store, true).empty());
    CHECK(session::sessions(*there.store).empty());
    CHECK(problem.argument().starts_with("series/0"));
    return problem.trouble();
  };
  CHECK(wrong([](auto& series, auto&) { series["main"]["sitting"] = 5; }) == Trouble::outOfRange);
  CHECK(wrong([](auto& series, auto&) { series["batch"] = std::string(32, '0'); }) == Trouble::brokenReference);
  CHECK(wrong([](auto& series, auto&) { series["control"] = "reference"; }) == Trouble::notAChoice);
  CHECK(wrong([](auto& series, auto&) { series["control"] = "none"; }) == Trouble::empty);
  CHECK(wrong([](auto& series, auto&) { series["sittings"][1]["session"] = series["sittings"][0]["session"]; }) == Trouble::alreadyThere);
  CHECK(wrong([](auto& series, auto&) { series["sittings"][0]["due_on"] = "2025-13-01"; }) == Trouble::notADay);
  CHECK(wrong([](auto& series, auto&) { series["begun_on"] = "2026-11-30"; }) == Trouble::outOfRange);
  CHECK(wrong([](auto& series, auto&) { series["ready"] = true; }) == Trouble::badFile);
  // The batch of another drink: the sittings did not pour it.
  CHECK(wrong([](auto& series, auto& file) {
          for (const auto& lot : file["lots"])
            if (lot["id"] != series["batch"] && lot["id"] != series["control_lot"]) {
              series["batch"] = lot["id"];
              series["control"] = "none";
              series["control_lot"] = nullptr;
              break;
            }
        }) == Trouble::notAChoice);
}
