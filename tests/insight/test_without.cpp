#include "domain/trial.h"
#include "insight/beside.h"
#include "insight/findings.h"

#include "found.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::insight;
using found::countOf;
using found::says;
using found::twelveOf18;

TEST_CASE("told by look or fizz: with and without, the weaker is printed") {
  auto session = twelveOf18();
  int named = 0;
  for (auto& flight : session.panel) {
    const bool right = *isRight(session.plan, flight);
    flight.clue = right && named < 4 ? (named++ % 2 ? Clue::look : Clue::fizz) : Clue::taste;
    flight.sureness = right ? Sureness::sure : Sureness::guess;
  }
  const Findings f = findingsOf(session);
  CHECK(f.all.verdict == Verdict::shown);
  REQUIRE(f.withoutLookOrFizz.has_value());
  CHECK(f.withoutLookOrFizz->right == 8);
  CHECK(f.withoutLookOrFizz->trials == 14);
  CHECK(f.withoutLookOrFizz->needed == 9);  // ISO 4120: 9 of 14
  CHECK(f.verdict == Verdict::notShown);
  CHECK(f.weakenedBy == WeakenedBy::lookOrFizz);
  CHECK(f.printed().trials == 14);
  // 4 of 12 right is exactly a third.
  CHECK(f.mostlyByLookOrFizz);
  CHECK(f.rightByLookOrFizz == 4);
  CHECK(f.rightWithoutLookOrFizz == 8);
  CHECK(says(f, Caution::mostlyLookOrFizz));
  REQUIRE(f.clues.size() == 6);
  CHECK(f.clues[0].trials == 14);
  CHECK(f.clues[0].right == 8);
  CHECK(f.clues[3].right + f.clues[4].right == 4);
  REQUIRE(f.sureness.size() == 3);
  CHECK(f.sureness[0].trials == 6);
  CHECK(f.sureness[0].right == 0);
  CHECK(f.sureness[2].trials == 12);
  CHECK(f.sureness[2].right == 12);
}

TEST_CASE("where any means were settled before, look and fizz weaken nothing, and the reading without them stays") {
  auto session = twelveOf18();
  int named = 0;
  for (auto& flight : session.panel) {
    const bool right = *isRight(session.plan, flight);
    flight.clue = right && named < 4 ? (named++ % 2 ? Clue::look : Clue::fizz) : Clue::taste;
  }
  const auto read = [&](GiveAways found) {
    session.plan.giveAways = std::move(found);
    return findingsOf(session);
  };
  const Findings open = read({{GiveAway::fizz, WayOut::anyMeans}});
  CHECK(open.verdict == Verdict::shown);
  CHECK(open.weakenedBy == WeakenedBy::nothing);
  REQUIRE(open.withoutLookOrFizz.has_value());
  CHECK(open.withoutLookOrFizz->verdict == Verdict::notShown);  // ISO 4120: 9 of 14 are needed, 8 are there
  CHECK_FALSE(open.mostlyByLookOrFizz);
  CHECK(read({{GiveAway::colour, WayOut::ask}}).verdict == Verdict::shown);  // the look itself is what is asked
  for (const GiveAways& found : {GiveAways{}, GiveAways{{GiveAway::fizz, WayOut::mend}}, GiveAways{{GiveAway::hadBefore, WayOut::anyMeans}}}) {
    const Findings hidden = read(found);
    CHECK(hidden.verdict == Verdict::notShown);
    CHECK(hidden.weakenedBy == WeakenedBy::lookOrFizz);
  }
  // What was said aloud weakens all the same.
  session.said.push_back({Seq{100}, 0, {}, "butter"});
  CHECK(read({{GiveAway::fizz, WayOut::anyMeans}}).weakenedBy == WeakenedBy::said);
}

TEST_CASE("3 of 12 right by look: below a third, shown with and without") {
  auto session = twelveOf18();
  int named = 0;
  for (auto& flight : session.panel) flight.clue = *isRight(session.plan, flight) && named++ < 3 ? Clue::look : Clue::smell;
  const Findings f = findingsOf(session);
  CHECK_FALSE(f.mostlyByLookOrFizz);
  CHECK(f.withoutLookOrFizz->right == 9);
  CHECK(f.withoutLookOrFizz->trials == 15);
  CHECK(f.withoutLookOrFizz->needed == 9);
  CHECK(f.verdict == Verdict::shown);
  CHECK(f.weakenedBy == WeakenedBy::nothing);
  CHECK(&f.printed() == &f.all);
}

TEST_CASE("mostly by look: the threshold is a third of the right answers") {
  CHECK(mostlyByLookOrFizz(1, 3));
  CHECK_FALSE(mostlyByLookOrFizz(1, 4));
  CHECK_FALSE(mostlyByLookOrFizz(0, 0));
  CHECK_FALSE(mostlyByLookOrFizz(0, 5));
}

TEST_CASE("something was said: later locks of those who heard are left out") {
  auto session = twelveOf18();
  // Locks of round 3 are 301 to 306. Said after round 2 in everybody's hearing.
  session.said.push_back({Seq{250}, 0, {}, {}});
  Findings f = findingsOf(session);
  REQUIRE(f.withoutSaid.has_value());
  CHECK(f.withoutSaid->trials == 12);
  CHECK(f.withoutSaid->right == 12);
  CHECK(f.verdict == Verdict::shown);
  CHECK(countOf(f, DeviationKind::said) == 1);
  // Heard by places 1 and 2 alone.
  session.said[0].heardBy = {Place{1}, Place{2}};
  CHECK(findingsOf(session).withoutSaid->trials == 16);
  // Said when all had locked: nothing is left out.
  session.said[0].seq = Seq{400};
  CHECK_FALSE(findingsOf(session).withoutSaid.has_value());
  CHECK(countOf(findingsOf(session), DeviationKind::said) == 1);
  // Said before the first lock: nothing remains, and it is no verdict with its reason.
  session.said[0] = {Seq{50}, 0, {}, {}};
  f = findingsOf(session);
  CHECK(f.verdict == Verdict::none);
  CHECK(f.why == NoVerdict::tooFewWithout);
  CHECK(f.weakenedBy == WeakenedBy::said);
  CHECK(f.all.verdict == Verdict::shown);
}

TEST_CASE("said and seen together are looked at together") {
  auto session = table::panel({3, 3, 3, 3, 0, 0}, 3);  // 12 of 18
  session.said.push_back({Seq{250}, 0, {Place{1}}, {}});
  session.panel[3].clue = Clue::look;  // place 2, round 1
  const Findings f = findingsOf(session);
  REQUIRE(f.withoutEither.has_value());
  CHECK(f.withoutSaid->trials == 17);
  CHECK(f.withoutLookOrFizz->trials == 17);
  CHECK(f.withoutEither->trials == 16);
  CHECK(f.withoutEither->right == 10);
}
