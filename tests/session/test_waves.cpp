// A club: many places, served wave by wave, over two evenings.
#include "domain/evenings.h"
#include "evening.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace oddglass;
using testing::Evening;

TEST_CASE("rounds are spread over evenings as evenly as they go") {
  for (int evenings = 1; evenings <= 6; ++evenings)
    for (int rounds = evenings; rounds <= 20; ++rounds) {
      int all = 0;
      for (int evening = 1; evening <= evenings; ++evening) {
        const int here = roundsOn(evening, rounds, evenings);
        CHECK((here == rounds / evenings || here == rounds / evenings + 1));
        for (int i = 1; i <= here; ++i) CHECK(eveningOf({all + i}, rounds, evenings) == evening);
        all += here;
      }
      CHECK(all == rounds);
    }
  CHECK(waveOf({6}, 6) == 1);
  CHECK(waveOf({7}, 6) == 2);
  CHECK(waveOf({60}, 0) == 1);
}

TEST_CASE("sixty places in waves over two evenings: the pourer's sheet, the order at the table and the evening's end") {
  Evening evening(3, 0, 23);
  Draft draft = session::draft(*evening.store, evening.session);
  std::vector<TasterId> guests;
  for (int i = 1; i <= 36; ++i) guests.push_back(shelf::save(*evening.store, evening.chance, Taster{{}, "Guest " + std::to_string(i), "", false, false}));
  draft.tasters.insert(draft.tasters.end(), guests.begin(), guests.end());
  draft.wave = 8;
  draft.evenings = 2;
  shelf::move(*evening.store, evening.clock, evening.mine, StockChange::added, 12);
  shelf::move(*evening.store, evening.clock, evening.bought, StockChange::added, 12);
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();

  const session::PourSheet sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  const auto steps = session::pourSteps(sheet);
  REQUIRE(session::isInWaves(sheet));
  std::set<Code> codes;
  int round = 1, first = 1;
  for (const session::PourStep& step : steps) {
    // Never back: a later round, or in the same round a later wave.
    CHECK(std::pair(step.round.value, step.first.value) >= std::pair(round, first));
    round = step.round.value;
    first = step.first.value;
    CHECK(step.evening == (round <= 2 ? 1 : 2));
    CHECK(step.last.value == std::min(60, first + 7));
    for (const session::PourLine& line : step.lines) {
      CHECK(line.round == step.round);
      CHECK((line.place.value >= first && line.place.value <= step.last.value));
      CHECK(codes.insert(line.code).second);
    }
  }
  CHECK(codes.size() == 60u * 3 * 3);
  CHECK(std::ranges::count_if(steps, [](const auto& step) { return step.round == Round{1} && step.first == Place{57}; }) == 2);  // both drinks for the last four

  evening.sitAll();
  for (int place = 25; place <= 60; ++place) evening.sit(place, guests[static_cast<std::size_t>(place - 25)]);
  const auto board = [&] { return tasting::board(*evening.store, evening.session); };
  for (int place = 1; place <= 60; ++place) evening.answer(place, 1);
  CHECK(board().evening == 1);
  CHECK_FALSE(board().isBetweenEvenings);
  for (int place = 1; place <= 60; ++place) evening.answer(place, 1);
  CHECK(board().evening == 2);
  CHECK(board().isBetweenEvenings);
  CHECK_FALSE(board().everyoneHasLocked);
  evening.answer(7, 1);
  CHECK_FALSE(board().isBetweenEvenings);
}
