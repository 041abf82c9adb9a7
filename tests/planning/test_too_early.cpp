#include "cellar.h"
#include "planning/too_early.h"

#include <algorithm>

using namespace oddglass;
using namespace oddglass::planning;
using Catch::Matchers::WithinAbs;

namespace {

Note read(const std::string& day, int gravity) {
  Note note;
  note.kind = NoteKind::reading;
  note.doneOn = day;
  note.gravity = gravity;
  return note;
}

Note seen(NoteKind kind, const std::string& day, int level) {
  Note note;
  note.kind = kind;
  note.doneOn = day;
  note.level = level;
  return note;
}

TooEarly at(std::vector<Note> notes, const std::string& today = "2026-06-30") { return tooEarly(Beverage(), {}, notes, today); }

}  // namespace

// Several days of a stable gravity before bottling, read to 0.001: common practice.
TEST_CASE("a gravity is steady only over days enough, and one that falls is told from one that was read too soon") {
  CHECK(at({}).gravity == GravityWatch::none);
  CHECK(at({read("2026-05-01", 10100)}).gravity == GravityWatch::one);
  CHECK(at({read("2026-05-01", 10100)}).nextDay == "2026-05-04");
  CHECK(at({read("2026-05-01", 10100), read("2026-05-03", 10100)}).gravity == GravityWatch::tooClose);
  CHECK(at({read("2026-05-01", 10100), read("2026-05-03", 10080)}).gravity == GravityWatch::falling);
  CHECK(at({read("2026-05-01", 10080), read("2026-05-03", 10100)}).gravity == GravityWatch::rising);
  const TooEarly steady = at({read("2026-05-01", 10100), read("2026-05-04", 10090)});
  CHECK(steady.gravity == GravityWatch::steady);
  CHECK(steady.days == 3);
  CHECK(steady.nextDay.empty());
  // By steps that are each too small to be read: over all of them it fell.
  CHECK(at({read("2026-05-01", 10120), read("2026-05-02", 10113), read("2026-05-03", 10106), read("2026-05-04", 10100)}).gravity == GravityWatch::falling);
  // What fell long ago and has stood still since is steady; what will be read tomorrow is not known.
  CHECK(at({read("2026-04-01", 10500), read("2026-05-01", 10100), read("2026-05-08", 10100)}).gravity == GravityWatch::steady);
  CHECK(at({read("2026-05-01", 10100), read("2026-07-01", 10000)}).gravity == GravityWatch::one);
  Note wrong = read("2026-05-04", 10000);
  wrong.withdrawn = true;
  CHECK(at({read("2026-05-01", 10100), wrong}).gravity == GravityWatch::one);
}

// Most of a beer's fermentation is over within days (common practice): two readings weeks apart say that it fermented, not that it still does.
TEST_CASE("a fall over a long time says only that it fell in between") {
  const TooEarly fell = at({read("2026-03-22", 10500), read("2026-05-01", 10100)});
  CHECK(fell.gravity == GravityWatch::fell);
  CHECK(fell.days == 40);
  CHECK(fell.nextDay == "2026-05-04");
  CHECK(at({read("2026-04-28", 10120), read("2026-05-01", 10100)}).gravity == GravityWatch::falling);
  CHECK(at({read("2026-04-27", 10120), read("2026-05-01", 10100)}).gravity == GravityWatch::fell);
  // A second reading a day later that shows no fall: too close to be called steady, and nothing else.
  const TooEarly close = at({read("2026-03-22", 10500), read("2026-04-30", 10100), read("2026-05-01", 10095)});
  CHECK(close.gravity == GravityWatch::tooClose);
  CHECK(close.sinceDay == "2026-04-30");
  CHECK(close.days == 1);
  // What was read higher at last contradicts whatever was read before, however long ago.
  CHECK(at({read("2026-03-22", 10080), read("2026-05-01", 10100)}).gravity == GravityWatch::rising);
}

TEST_CASE("the order of notes does not matter") {
  std::vector<Note> notes{read("2026-05-01", 10120), read("2026-05-02", 10113), read("2026-05-06", 10110), seen(NoteKind::haze, "2026-05-01", 3), seen(NoteKind::haze, "2026-06-01", 1)};
  const TooEarly one = at(notes);
  std::ranges::reverse(notes);
  const TooEarly other = at(notes);
  CHECK(one.gravity == GravityWatch::steady);
  CHECK(other.gravity == one.gravity);
  CHECK(other.days == one.days);
  REQUIRE(other.watched.size() == 1);
  CHECK(other.watched[0].level == 1);
  CHECK(other.watched[0].levelBefore == 3);
}

// 1.050 is 12.39 and 1.010 is 2.56 degrees Plato (ASBC table 1, from memory); Balling: 0.1808 x 12.39 + 0.8192 x 2.56 = 4.34 % of 1010 g.
TEST_CASE("what is left is worked out by Balling, and the gas of a fall from it") {
  Beverage drink;
  drink.originalGravity = 10500;
  drink.finalGravity = 10060;
  const TooEarly early = tooEarly(drink, {}, {read("2026-05-01", 10100)}, "2026-06-30");
  REQUIRE(early.extractLeft);
  CHECK_THAT(*early.extractLeft, WithinAbs(43.8, 0.2));
  CHECK(early.fallLeft == 40);
  REQUIRE(early.volumesLeft);
  CHECK_THAT(*early.volumesLeft, WithinAbs(2.2, 1e-9));
  // Balling's own figures, without the rounding up: 2.6 g/L of extract for 0.001, 0.8114 of that in truth, 0.9565 g of gas from 2.0665 g; 1.977 g/L of gas at 0 C.
  const double byBalling = 2.6 * 0.8114 * 0.9565 / 2.0665 / 1.977;
  CHECK(volumesEach > byBalling);
  CHECK(volumesEach < 1.15 * byBalling);
  CHECK_FALSE(at({read("2026-05-01", 10100)}).extractLeft);
  drink.finalGravity = 10100;
  CHECK_FALSE(tooEarly(drink, {}, {read("2026-05-01", 10100)}, "2026-06-30").fallLeft);
}

TEST_CASE("time in the bottle counts from the first bottling, and the last gusher is named") {
  Lot lot;
  lot.packagedOn = "2026-05-20";
  Note bottled;
  bottled.kind = NoteKind::bottled;
  bottled.doneOn = "2026-05-10";
  Note gushed = bottled;
  gushed.kind = NoteKind::gusher;
  gushed.doneOn = "2026-06-20";
  const TooEarly early = tooEarly(Beverage(), {lot}, {bottled, gushed}, "2026-06-30");
  CHECK(early.bottledOn == "2026-05-10");
  CHECK(early.daysInBottle == 51);
  CHECK(early.gushedOn == "2026-06-20");
  CHECK_FALSE(tooEarly(Beverage(), {lot}, {}, "2026-05-01").daysInBottle);
}
