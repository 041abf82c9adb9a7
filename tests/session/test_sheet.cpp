#include "domain/flight_form.h"
#include "session/holds.h"
#include "sheet_evening.h"
#include "tasting/typed.h"
#include "trouble.h"

#include <catch2/catch.hpp>

#include <set>

using namespace oddglass;
using testing::asked;
using testing::Said;
using testing::SheetEvening;
using testing::requireHolds;
using testing::troubleOf;

namespace {

std::vector<SheetItem> shortSheet() {
  SheetItem liking = asked(ItemKind::liking);
  liking.isMain = true;
  liking.limit = 1;
  return {asked(ItemKind::liking, "colour", Part::look, false), asked(ItemKind::line, "sweet"), liking, asked(ItemKind::worst),
          asked(ItemKind::rank, "", Part::last), asked(ItemKind::words, "", Part::last, false)};
}

// A batch (1) that is less sweet than the reference (2) and a little less liked; place 3 judges no colour.
Said plainly(int place, int, const SheetItem& item, Slot slot, int cup) {
  switch (item.kind) {
    case ItemKind::liking: return item.part == Part::look ? (place == 3 ? Said{} : Said{6}) : Said{slot == Slot{1} ? 5 : 7};
    case ItemKind::line: return {slot == Slot{1} ? 30 + place : 55 + place};
    case ItemKind::worst: return slot == Slot{1} ? Said{{}, "thin"} : Said{0};
    case ItemKind::rank: return {cup};
    case ItemKind::words: return place == 1 ? Said{{}, "a fine evening"} : Said{};
    default: return {};
  }
}

}  // namespace

TEST_CASE("an evening of score sheets goes from plan to an opened key that verifies") {
  SheetEvening evening(2, 1);
  session::saveDraft(*evening.store, evening.clock, evening.asSheet(shortSheet(), true));
  evening.sealAndSit();
  evening.answerAll(plainly);
  const RevealedSession revealed = evening.end();
  requireHolds(evening);

  CHECK(revealed.plan.lots[0].role == LotRole::compared);
  CHECK(revealed.plan.lots[1].role == LotRole::reference);
  REQUIRE(revealed.plan.sheet);
  CHECK(cupsInFlight(revealed.plan) == 3);
  REQUIRE(revealed.panel.size() == 12);
  REQUIRE(revealed.makers.size() == 2);
  for (const PanelFlight& flight : revealed.panel) {
    REQUIRE(flight.drawn.size() == 3);
    std::set<int> ranks;
    for (const SheetReply& reply : flight.replies) {
      const SheetItem& item = revealed.plan.items.at(static_cast<std::size_t>(reply.item.value - 1));
      REQUIRE(item.perCup == reply.cup.has_value());
      if (item.kind == ItemKind::rank) ranks.insert(*reply.value);
      if (item.kind == ItemKind::words) CHECK(reply.words == "a fine evening");
      if (!reply.cup) continue;
      const Slot slot = *flight.poured.at(static_cast<std::size_t>(reply.cup->value - 1));
      if (item.kind == ItemKind::line) CHECK(*reply.value == (slot == Slot{1} ? 30 : 55) + flight.place.value);
      if (item.kind == ItemKind::worst) CHECK((slot == Slot{1} ? reply.words == "thin" : reply.value == 0));
    }
    CHECK(ranks == std::set<int>{1, 2, 3});
    const auto colours = std::ranges::count(flight.replies, Item{1}, &SheetReply::item);
    CHECK(colours == (flight.place == Place{3} ? 0 : 3));
  }
}

TEST_CASE("before the reveal nothing of a sheet can be read, and a half-filled one is refused whole") {
  SheetEvening evening;
  session::saveDraft(*evening.store, evening.clock, evening.asSheet(shortSheet()));
  evening.sealAndSit();
  const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
  CHECK(flight.pauseSeconds == 30);
  for (const SheetItem& item : flight.items) {
    CHECK_FALSE(item.limit);
    CHECK_FALSE(item.isMain);
  }
  auto in = evening.filledIn(flight, plainly);
  const auto refused = [&](auto&& change) {
    auto wrong = in;
    change(wrong.replies);
    return troubleOf([&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, wrong); });
  };
  CHECK(refused([](auto& all) { all.erase(all.begin() + 2); }) == Trouble::answerMissing);
  CHECK(refused([](auto& all) { all[2].value = 101; }) == Trouble::answerOutOfRange);
  CHECK(refused([](auto& all) { all[2].code = {100}; }) == Trouble::codeNotHere);
  CHECK(refused([](auto& all) { std::ranges::find(all, Item{5}, &tasting::Reply::item)->value = 2; }) == Trouble::notARanking);
  tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in);
  CHECK(session::record(*evening.store, evening.session).handIns.empty());
}

TEST_CASE("a spilled cup's spare code is scored in its place") {
  SheetEvening evening;
  session::saveDraft(*evening.store, evening.clock, evening.asSheet(shortSheet()));
  evening.sealAndSit();
  const auto before = tasting::nextFlight(*evening.store, evening.session, {2}).value();
  tasting::spilled(*evening.store, evening.clock, evening.session, before.cups[0].code);
  evening.answerAll(plainly);
  const RevealedSession revealed = evening.end();
  requireHolds(evening);
  const auto flight = std::ranges::find(revealed.panel, Place{2}, &PanelFlight::place);
  REQUIRE(flight != revealed.panel.end());
  for (const SheetReply& reply : flight->replies)
    if (reply.item == Item{2}) CHECK(*reply.value == (flight->poured.at(static_cast<std::size_t>(reply.cup->value - 1)) == Slot{1} ? 30 : 55) + 2);
}

TEST_CASE("a distance is asked beside a marked cup, which is not scored") {
  SheetEvening evening;
  Draft draft = evening.asSheet({asked(ItemKind::distance)}, true);
  draft.marked = Slot{2};
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.sealAndSit();
  const auto flight = tasting::nextFlight(*evening.store, evening.session, {1}).value();
  REQUIRE(flight.cups.size() == 4);
  CHECK(flight.cups[0].isMarked);
  CHECK(evening.slotOf(flight.cups[0].code) == Slot{2});
  auto in = evening.filledIn(flight, [](int, int, const SheetItem&, Slot slot, int) { return Said{slot == Slot{2} ? 0 : 4}; });
  in.replies.push_back({{1}, 3, std::nullopt, flight.cups[0].code});
  CHECK(troubleOf([&] { tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in); }) == Trouble::codeNotHere);
  in.replies.pop_back();
  tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, in);
}

TEST_CASE("a score sheet that does not fit its plan is refused by name before the seal") {
  SheetEvening evening;
  const Draft good = evening.asSheet(shortSheet());
  const auto refused = [&](auto&& change) {
    Draft draft = good;
    change(draft);
    try {
      session::saveDraft(*evening.store, evening.clock, draft);
      evening.seal();
    } catch (const Problem& problem) {
      return problem;
    }
    return Problem(Trouble::storeFailed, "nothing was refused");
  };
  CHECK(refused([](Draft& draft) { draft.sheet.items.clear(); }).trouble() == Trouble::sheetEmpty);
  CHECK(refused([](Draft& draft) { draft.sheet.items.push_back(asked(ItemKind::distance)); }).trouble() == Trouble::sheetImpossible);
  CHECK(refused([](Draft& draft) { draft.sheet.roles = {LotRole::compared, LotRole::compared}; }).trouble() == Trouble::needsReference);
  CHECK(refused([](Draft& draft) { draft.sheet.roles = {LotRole::reference, LotRole::reference}; }).trouble() == Trouble::needsALot);
  CHECK(refused([](Draft& draft) { draft.marked = Slot{1}; }).argument() == "marked");
  CHECK(refused([](Draft& draft) { draft.alsoPrefer = true; }).argument() == "also_prefer");
  CHECK(refused([](Draft& draft) { draft.question = Question::differ; }).argument() == "method");
  CHECK(refused([](Draft& draft) { draft.method = Method::triangle; }).argument() == "method");
  CHECK(refused([](Draft& draft) { draft.evenings = 2; }).argument() == "evenings");
}

TEST_CASE("one drink alone may be scored, and what is held back fits what is poured") {
  SheetEvening evening;
  Draft draft = evening.asSheet({asked(ItemKind::liking), asked(ItemKind::behaviour)}, true);
  draft.question = Question::good;
  draft.lots = {evening.mine};
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.sealAndSit();
  evening.answerAll([](int place, int, const SheetItem& item, Slot, int) { return Said{item.kind == ItemKind::behaviour ? 2 : 4 + place % 3}; });
  const RevealedSession revealed = evening.end();
  requireHolds(evening);
  for (const PanelFlight& flight : revealed.panel) CHECK(flight.drawn == std::vector<Slot>{{1}, {1}});
}

TEST_CASE("what is typed and not handed in is kept through a crash, and gone with the hand-in, the stop and the close") {
  SheetEvening evening(1, 0, 3);
  session::saveDraft(*evening.store, evening.clock, evening.asSheet(shortSheet()));
  evening.sealAndSit();
  const auto flightOf = [&](int place) { return tasting::nextFlight(*evening.store, evening.session, {place}).value(); };
  const auto typed = [&](int place) { return tasting::typed(*evening.store, evening.session, {place}, {1}); };
  const auto keep = [&](int place) {
    auto half = evening.filledIn(flightOf(place), plainly).replies;
    half.resize(half.size() / 2);
    tasting::keepTyped(*evening.store, evening.clock, evening.session, {place}, {1}, half);
    return half;
  };
  const auto half = keep(1);
  evening.store.reset();
  evening.store = store::Store::open(evening.folder / "cellar.oddglass", store::Access::write, evening.clock, evening.chance);
  const auto found = typed(1);
  REQUIRE(found.size() == half.size());
  for (std::size_t i = 0; i < half.size(); ++i) {
    CHECK(found[i].item == half[i].item);
    CHECK(found[i].code == half[i].code);
    CHECK(found[i].value == half[i].value);
    CHECK(found[i].text == half[i].text);
  }
  // A cup that was spilled takes what was typed about it along.
  const Code first = flightOf(1).cups[0].code;
  tasting::spilled(*evening.store, evening.clock, evening.session, first);
  for (const tasting::Reply& reply : typed(1)) CHECK(reply.code != first);

  tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, evening.filledIn(flightOf(1), plainly));
  CHECK(typed(1).empty());
  CHECK(troubleOf([&] { tasting::keepTyped(*evening.store, evening.clock, evening.session, {1}, {1}, {}); }) == Trouble::notThisRound);
  keep(2);
  tasting::stopHere(*evening.store, evening.clock, evening.session, {2});
  CHECK(typed(2).empty());
  keep(3);
  session::close(*evening.store, evening.clock, evening.session);
  CHECK(typed(3).empty());
}
