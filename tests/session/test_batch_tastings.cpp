#include "recipe_evenings.h"
#include "session/about_lots.h"
#include "session/sittings.h"
#include "shelf/batches.h"
#include "shelf/references.h"
#include "shelf/series.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using testing::RecipeEvenings;
using testing::asked;

namespace {

constexpr Millis december = 1765200000000;   // 8 December 2025

testing::Said fiveOfAll(int, int, const SheetItem&, Slot, int) { return {5}; }

}  // namespace

TEST_CASE("answers about batches come with whatever stood beside them, and only once the key is open") {
  RecipeEvenings evening;
  const std::vector<SheetItem> sheet{asked(ItemKind::line, "honey"), asked(ItemKind::liking)};
  evening.hold(december, {evening.lots[0], evening.bought}, sheet, [](int place, int, const SheetItem& item, Slot slot, int) -> testing::Said {
    return {item.kind == ItemKind::line ? 10 * slot.value + place : 5};
  });
  evening.plan(december + 86'400'000, {evening.lots[1], evening.bought}, sheet);
  evening.sealAndSit();
  evening.answerAll(fiveOfAll);

  const auto batches = shelf::batchesOf(*evening.store, "HEDGE mead");
  REQUIRE(batches.size() == 3);
  CHECK(batches[0].beverage.id == evening.batches[0]);
  BatchTastings tastings = session::batchTastings(*evening.store, batches);
  CHECK(tastings.batchOf == std::vector<int>{0, 1, 2, -1});
  CHECK(tastings.names[3] == "Bought mead, vintage 2");
  REQUIRE(tastings.about.sessions.size() == 1);
  CHECK(tastings.about.sessions[0].poured == std::vector<bool>{true, false, false, true});
  REQUIRE(tastings.about.answers.size() == 24);   // six friends, two cups, two questions; the maker's do not count
  const auto isHoney = [&](const LotAnswer& each) { return tastings.about.questions[static_cast<std::size_t>(each.question)].word == "honey"; };
  CHECK(std::ranges::all_of(tastings.about.answers, [&](const LotAnswer& each) { return !isHoney(each) || (each.lot == 0 ? each.value < 20 : each.value > 20); }));

  evening.end();
  tastings = session::batchTastings(*evening.store, batches);
  CHECK(tastings.about.sessions.size() == 2);
  CHECK(tastings.about.answers.size() == 48);
  CHECK(tastings.about.people == 6);
  CHECK(tastings.about.who == evening.friends);
}

TEST_CASE("a plan of lots takes the bought one as reference, and pages stay closed while a look at one of the lots is sealed") {
  RecipeEvenings evening;
  const SessionId id = session::planSheet(*evening.store, evening.clock, evening.chance, "links", {evening.lots[0], evening.bought}, {asked(ItemKind::liking)});
  const Draft draft = session::draft(*evening.store, id);
  CHECK(draft.question == Question::lacks);
  CHECK(draft.sheet.roles == std::vector<LotRole>{LotRole::compared, LotRole::reference});
  CHECK(session::draft(*evening.store, session::planSheet(*evening.store, evening.clock, evening.chance, "links", {evening.lots[0], evening.lots[1]}, {})).question == Question::good);

  const LotId older = evening.addLot(shelf::lot(*evening.store, evening.bought).beverage, "vintage 1");
  const Draft vintages = session::draft(*evening.store, session::planSheet(*evening.store, evening.clock, evening.chance, "vintages", {evening.bought, older}, {}));
  CHECK(vintages.sheet.roles == std::vector<LotRole>{LotRole::reference, LotRole::compared});

  Series series;
  series.title = "Hedge mead grows old";
  series.batch = evening.lots[0];
  series.control = ControlKind::reference;
  series.controlLot = evening.bought;
  series.begunOn = "2025-01-10";
  series.main = {2, "", std::nullopt};
  series.sittings = {{0, "2025-12-08", std::nullopt}, {0, "2026-12-08", std::nullopt}};
  const SeriesId aging = shelf::save(*evening.store, evening.clock, evening.chance, series);
  CHECK_FALSE(session::closedSeries(*evening.store, evening.lots));
  evening.clock.set(december);
  evening.session = session::planSitting(*evening.store, evening.clock, evening.chance, aging, 1, {asked(ItemKind::liking)});
  Draft look = session::draft(*evening.store, evening.session);
  look.tasters = evening.friends;
  look.pourer = evening.pourer;
  look.cupMl = 15;
  look.careSettled = true;
  look.giveAways.emplace();
  session::saveDraft(*evening.store, evening.clock, look);
  CHECK_FALSE(session::closedSeries(*evening.store, evening.lots));
  evening.seal();
  CHECK(session::closedSeries(*evening.store, evening.lots) == aging);
  CHECK(session::closedSeries(*evening.store, {evening.bought}) == aging);
  CHECK_FALSE(session::closedSeries(*evening.store, {evening.lots[1]}));
  session::openOldPages(*evening.store, evening.clock, aging);
  CHECK_FALSE(session::closedSeries(*evening.store, evening.lots));   // it stands written down beside the sitting
}

TEST_CASE("a reference knows every opened session that poured it, and what was said where two of its lots stood together") {
  RecipeEvenings evening;
  const BeverageId drink = shelf::lot(*evening.store, evening.bought).beverage;
  const LotId older = evening.addLot(drink, "vintage 1");
  const std::vector<SheetItem> sheet{asked(ItemKind::liking)};
  evening.hold(december, {evening.lots[0], evening.bought}, sheet, fiveOfAll);
  evening.hold(december + 86'400'000, {older, evening.bought}, sheet, fiveOfAll);
  evening.plan(december + 2 * 86'400'000, {older, evening.bought}, sheet);
  evening.sealAndSit();
  auto references = shelf::references(*evening.store);
  REQUIRE(references.size() == 1);
  session::readPoured(*evening.store, references[0]);
  CHECK(references[0].poured.size() == 3);   // the sealed one is not told
  CHECK(references[0].poured.front().heldOn == "2025-12-08");
  REQUIRE(references[0].together.sessions.size() == 1);
  CHECK(references[0].together.answers.size() == 14);   // the maker made none of these, so seven people count
}
