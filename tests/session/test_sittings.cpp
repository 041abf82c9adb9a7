#include "domain/same_setup.h"
#include "domain/text.h"
#include "session/about_lots.h"
#include "session/same_again.h"
#include "aging_evenings.h"
#include "cellar.h"

#include <algorithm>

using namespace oddglass;
using testing::AgingEvenings;
using testing::problemOf;

TEST_CASE("the first sitting of a series pours the batch beside its control, and asks what the series is about") {
  AgingEvenings evening;
  evening.planned(1);
  const Draft draft = session::draft(*evening.store, evening.session);
  CHECK(draft.lots == std::vector<LotId>{evening.mine, evening.twin});
  CHECK(draft.method == Method::sheet);
  CHECK(draft.question == Question::lacks);
  CHECK(draft.sheet.roles == std::vector<LotRole>{LotRole::compared, LotRole::reference});
  REQUIRE(draft.sheet.items.size() == 3);
  CHECK(draft.sheet.items[0].isMain);
  CHECK(draft.sheet.items[0].limit == 10);
  CHECK_FALSE(draft.sheet.items[2].isMain);
  CHECK(session::seriesOf(*evening.store, evening.session) == evening.series);
  CHECK(shelf::series(*evening.store, evening.series).sittings[0].session == evening.session);
  CHECK(problemOf([&] { session::planSitting(*evening.store, evening.clock, evening.chance, evening.series, 1); }).trouble() == Trouble::alreadyThere);
  CHECK(problemOf([&] { session::planSitting(*evening.store, evening.clock, evening.chance, evening.series, 9); }).argument() == "sitting");
  CHECK(problemOf([&] { session::planSitting(*evening.store, evening.clock, evening.chance, evening.series, 2); }).argument() == "sheet");
  CHECK(session::sessions(*evening.store).size() == 2);   // what was refused left nothing behind

  // A draft that is thrown away leaves its sitting free again.
  session::discardDraft(*evening.store, evening.session);
  CHECK_FALSE(shelf::series(*evening.store, evening.series).sittings[0].session);
}

TEST_CASE("a series with the longest title can be planned: its sitting's number has room") {
  AgingEvenings evening;
  Series series = shelf::series(*evening.store, evening.series);
  series.title.clear();
  for (int letter = 0; letter < 200; ++letter) series.title += "\xC3\xB6";
  shelf::save(*evening.store, evening.clock, evening.chance, series);
  evening.planned(1);
  const std::string title = session::draft(*evening.store, evening.session).title;
  CHECK(lettersIn(title) == 200);
  CHECK(title.ends_with("\xC3\xB6 1"));
}

TEST_CASE("a look that is over is closed while another one of its series is sealed") {
  AgingEvenings evening;
  const auto say = [](int, int, const SheetItem& item, Slot, int) -> testing::Said { return {item.kind == ItemKind::check ? 0 : 5}; };
  evening.hold(1, 1765200000000, say);   // 8 December 2025
  const SessionId first = evening.session;
  CHECK_FALSE(session::closedBy(*evening.store, first));
  evening.clock.set(1765200000000 + 78 * testing::dayLong);
  evening.planned(2);
  CHECK_FALSE(session::closedBy(*evening.store, first));   // a plan is no seal
  evening.sealAndSit();
  CHECK(session::closedBy(*evening.store, first) == evening.series);
  CHECK_FALSE(session::closedBy(*evening.store, evening.session));
  session::openOldPages(*evening.store, evening.clock, evening.series);
  CHECK(session::sittingsNow(*evening.store, evening.series)[1].timesSeen == 1);
  evening.answerAll(say);
  evening.end();
  CHECK_FALSE(session::closedBy(*evening.store, first));
}

TEST_CASE("the next sitting is the same table again, and what differs is marked") {
  AgingEvenings evening;
  const auto say = [](int, int, const SheetItem& item, Slot, int) -> testing::Said { return {item.kind == ItemKind::check ? 0 : 5}; };
  evening.hold(1, 1765200000000, say);   // 8 December 2025
  const RevealedSession first = session::revealed(*evening.store, evening.session);
  evening.clock.set(1765200000000 + 78 * testing::dayLong);
  evening.planned(2);
  Draft draft = session::draft(*evening.store, evening.session);
  CHECK(draft.lots == std::vector<LotId>{evening.mine, evening.twin});
  CHECK(draft.tasters.size() == 7);
  CHECK(draft.pourer == evening.pourer);
  CHECK(draft.cupMl == 15);
  CHECK(draft.promises.empty());
  REQUIRE(draft.sheet.items.size() == 3);
  CHECK(draft.sheet.items[0].limit == 10);
  evening.seal();
  CHECK(setupDifferences(first.plan, session::record(*evening.store, evening.session).plan).empty());

  const auto sealed = session::sittingsNow(*evening.store, evening.series);
  CHECK(session::nextSitting(sealed)->number == 2);
  session::abandon(*evening.store, evening.clock, evening.chance, evening.session, "somebody fell ill", true);
  const auto givenUp = session::sittingsNow(*evening.store, evening.series);
  CHECK_FALSE(session::isToCome(givenUp[0]));   // held
  CHECK_FALSE(session::isToCome(givenUp[1]));
  CHECK(session::nextSitting(givenUp)->number == 3);
  evening.planned(3);
  draft = session::draft(*evening.store, evening.session);
  draft.cupMl = 20;
  draft.sheet.cleanser = "bread";
  draft.sheet.items.pop_back();
  session::saveDraft(*evening.store, evening.clock, draft);
  evening.seal();
  using enum SetupPart;
  CHECK(setupDifferences(first.plan, session::record(*evening.store, evening.session).plan) == std::vector<SetupPart>{sheet, cupMl, cleanser});
}

TEST_CASE("old pages of a series stay closed while a sitting is sealed, and opening them is on record") {
  AgingEvenings evening;
  const auto say = [](int, int, const SheetItem& item, Slot, int) -> testing::Said { return {item.kind == ItemKind::check ? 0 : 5}; };
  CHECK_FALSE(session::sealedSitting(*evening.store, evening.series));
  session::openOldPages(*evening.store, evening.clock, evening.series);
  evening.hold(1, 1765200000000, say);
  CHECK_FALSE(session::sealedSitting(*evening.store, evening.series));
  evening.planned(2);
  CHECK_FALSE(session::sealedSitting(*evening.store, evening.series));   // a plan may still be changed
  evening.seal();
  CHECK(session::sealedSitting(*evening.store, evening.series) == evening.session);
  session::openOldPages(*evening.store, evening.clock, evening.series);
  session::openOldPages(*evening.store, evening.clock, evening.series);
  const auto now = session::sittingsNow(*evening.store, evening.series);
  REQUIRE(now.size() == 4);
  CHECK(now[0].timesSeen == 0);
  CHECK(now[0].state == State::revealed);
  CHECK(now[0].heldOn == "2025-12-08");
  CHECK(now[1].timesSeen == 2);
  CHECK(now[1].heldOn.empty());
  CHECK_FALSE(now[2].session);
}

TEST_CASE("the panel's answers about a series' lots are read, and nobody else's") {
  AgingEvenings evening;
  // The maker gives 90 throughout; friends give the batch 10 times their place, the twin 5.
  const auto say = [](int place, int, const SheetItem& item, Slot slot, int) -> testing::Said {
    if (item.kind == ItemKind::check) return {place == 2 && slot == Slot{1} ? 1 : 0};
    if (place == 7) return {item.kind == ItemKind::line ? 90 : 9};
    return {item.kind == ItemKind::line ? (slot == Slot{1} ? 10 * place : 5) : 4 + place % 3};
  };
  evening.hold(1, 1765200000000, say);
  evening.hold(2, 1765200000000 + 78 * testing::dayLong, say);
  const AboutLots about = session::aboutLots(*evening.store, {evening.mine, evening.twin});
  REQUIRE(about.sessions.size() == 2);
  CHECK(about.sessions[0].heldOn == "2025-12-08");
  CHECK(about.sessions[1].heldOn == "2026-02-24");
  CHECK(about.people == 6);                                     // the same six at both, without the maker
  REQUIRE(about.questions.size() == 3);
  CHECK(about.answers.size() == 2 * 6 * 2 * 3);
  CHECK(session::aboutLots(*evening.store, shelf::series(*evening.store, evening.series)).answers.size() == about.answers.size());
  for (const LotAnswer& each : about.answers) {
    const LotQuestion& question = about.questions[static_cast<std::size_t>(each.question)];
    if (question.kind == ItemKind::line) CHECK((each.lot == 0 ? each.value % 10 == 0 && each.value <= 60 : each.value == 5));
  }
  const auto vinegar = std::ranges::find(about.questions, std::string("vinegar"), &LotQuestion::word);
  REQUIRE(vinegar != about.questions.end());
  int mentions = 0;
  for (const LotAnswer& each : about.answers)
    if (each.question == vinegar - about.questions.begin()) mentions += each.value;
  CHECK(mentions == 2);
  CHECK(session::aboutLots(*evening.store, {evening.bought}).sessions.empty());
}

TEST_CASE("flights set aside, cups the pourer was not sure of and forgotten people are no part of it") {
  AgingEvenings evening;
  evening.clock.set(1765200000000);
  evening.planned(1);
  evening.sealAndSit();
  evening.answerAll([](int, int, const SheetItem& item, Slot, int) -> testing::Said { return {item.kind == ItemKind::check ? 0 : 5}; });
  tasting::setAside(*evening.store, evening.clock, evening.chance, evening.session, {1}, {1}, VoidReason::mixedUp);
  evening.end();
  const AboutLots about = session::aboutLots(*evening.store, {evening.mine, evening.twin});
  CHECK(about.people == 5);
  CHECK(about.answers.size() == 5 * 2 * 3);
}
