#include "session/past.h"
#include "sheet_evening.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::asked;
using testing::Said;
using testing::SheetEvening;

namespace {

Said liked(int place, int, const SheetItem&, Slot slot, int) { return {4 + (place + slot.value) % 3}; }

/// A sheet by these people, poured, filled in and opened.
SessionId playedBy(SheetEvening& evening, Draft draft, const std::vector<TasterId>& people, bool reveals = true) {
  draft.id = evening.session = session::newDraft(*evening.store, evening.clock, evening.chance, "Another evening");
  draft.title = "Another evening";
  draft.tasters = people;
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.friends = {people.begin(), people.end() - 1};  // places 1 to friends and one more are gone through
  evening.seal();
  evening.sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  session::sayPoured(*evening.store, evening.clock, evening.session);
  int place = 0;
  for (const TasterId& each : people) evening.sit(++place, each);
  evening.answerAll(liked);
  if (reveals) evening.end();
  return evening.session;
}

std::vector<TasterId> first(const std::vector<TasterId>& people, std::size_t count) { return {people.begin(), people.begin() + static_cast<std::ptrdiff_t>(count)}; }

}  // namespace

TEST_CASE("past sheets are those that mostly the same people filled in, the newest first") {
  SheetEvening evening(1, 0, 8);
  const std::vector<TasterId> all = evening.friends;
  const Draft plan = evening.asSheet({asked(ItemKind::liking)});
  const SessionId six = playedBy(evening, plan, first(all, 6)), strangers = playedBy(evening, plan, {all[6], all[7], all[0]}), four = playedBy(evening, plan, first(all, 4));
  playedBy(evening, plan, first(all, 6), false);  // not opened yet
  const auto found = session::pastSheets(*evening.store, first(all, 6));
  REQUIRE(found.size() == 2);
  CHECK(found[0].id == four);
  CHECK(found[1].id == six);
  CHECK(session::pastSheets(*evening.store, first(all, 6), 1).size() == 1);
  CHECK(session::pastSheets(*evening.store, {}).empty());
  const auto theirs = session::pastSheets(*evening.store, {all[6], all[7], all[0]});
  REQUIRE(theirs.size() == 1);
  CHECK(theirs[0].id == strangers);
}
