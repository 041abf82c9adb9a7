// The page about the brewer: what it says, and what it must never say.
#include "words/denials.h"
#include "words/expectation.h"
#include "words/room.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::words;
using insight::Lean;
using insight::LeanVerdict;
using insight::NoLean;

namespace {

stats::Estimated between(double low, double estimate, double high) {
  stats::Estimated found;
  found.estimate = estimate;
  found.low = low;
  found.high = high;
  return found;
}

OwnTastings tastings(std::size_t count) {
  OwnTastings own{{}, true, {}};
  for (std::size_t i = 0; i < count; ++i) {
    OwnSession one;
    one.session.title = "Heather again";
    one.session.revealedAt = static_cast<Millis>(1'780'000'000'000 + 86'400'000 * static_cast<Millis>(i));
    one.session.plan.lots.resize(2);
    one.session.plan.lots[0].slot = {1};
    one.session.plan.lots[0].beverageName = "Heather mead";
    one.session.plan.lots[1].slot = {2};
    one.session.plan.lots[1].beverageName = "Bought mead";
    one.own = {Slot{1}};
    own.sessions.push_back(std::move(one));
  }
  return own;
}

insight::RoomFindings found(LeanVerdict verdict, stats::Estimated over, std::size_t sessions = 4, std::optional<NoLean> why = std::nullopt) {
  insight::RoomFindings room;
  for (std::size_t at = 0; at < sessions; ++at) room.lean.sessions.push_back({at, 6, over});
  room.lean.over = over;
  room.lean.friends = 6;
  room.lean.together = static_cast<int>(sessions);
  room.lean.verdict = verdict;
  room.lean.why = why;
  return room;
}

RoomPage page(const insight::RoomFindings& findings) { return roomPage(Voice{}, tastings(findings.lean.sessions.size()), findings); }

}  // namespace

TEST_CASE("the headline says which way, how far, how sure and over how many") {
  const RoomPage kinder = page(found(LeanVerdict::kinder, between(0.3, 1.4, 2.5)));
  CHECK(kinder.headline == "You were kinder to your own than the room was, by 1.4 points (0.3 to 2.5), over 4 tastings.");
  CHECK(kinder.shape == Shape::disc);
  const RoomPage harder = page(found(LeanVerdict::harder, between(-2.5, -1.4, -0.3)));
  CHECK(harder.headline == "You were harder on your own than the room was, by 1.4 points (0.3 to 2.5), over 4 tastings.");
  const RoomPage neither = page(found(LeanVerdict::notShown, between(-0.7, 0.4, 1.6)));
  CHECK(neither.headline == "No lean shown; anything from 0.7 harder to 1.6 kinder fits.");
  CHECK(neither.shape == Shape::ring);
}

TEST_CASE("too little known says what is needed") {
  const RoomPage none = page(found(LeanVerdict::none, {}, 0, NoLean::fewSessions));
  CHECK(none.headline == "Too little known yet.");
  CHECK(none.lead == "Needs three opened tastings of your own. So far 0.");
  CHECK_FALSE(none.picture);
  CHECK(none.shape == Shape::dash);
  insight::RoomFindings few = found(LeanVerdict::none, between(0, 0, 0), 3, NoLean::fewFriends);
  few.lean.over = {};
  few.lean.over.estimate = 1.2;
  few.lean.friends = 2;
  CHECK(page(few).lead == "Beside 2 other people: 1.2 kinder than they were, and no range. Three others are needed.");
  few.lean.over.estimate = -0.02;
  few.lean.friends = 1;
  CHECK(page(few).lead == "Beside one other person: neither kinder nor harder than they were, and no range. Three others are needed.");
}

TEST_CASE("no headline of this page blames, praises or claims") {
  for (const LeanVerdict verdict : {LeanVerdict::kinder, LeanVerdict::harder, LeanVerdict::notShown, LeanVerdict::none})
    for (const bool weaker : {false, true})
      for (const NoLean why : {NoLean::fewSessions, NoLean::fewKnown, NoLean::fewFriends, NoLean::noSpread}) {
        insight::RoomFindings room = found(verdict, between(0.3, 1.4, 2.5), 3, verdict == LeanVerdict::none ? std::optional(why) : std::nullopt);
        room.lean.weaker = weaker;
        const RoomPage said = page(room);
        CHECK(forbiddenWordIn(said.headline) == "");
        CHECK_FALSE(said.lead.empty());
        for (const std::string& line : {said.headline, said.lead}) CHECK(line.find("bias") == std::string::npos);
      }
}

TEST_CASE("the picture holds each tasting in a sentence, the newest thirty of many") {
  const RoomPage said = page(found(LeanVerdict::kinder, between(0.3, 1.4, 2.5)));
  REQUIRE(said.picture);
  CHECK(said.picture->rows.size() == 4);
  CHECK(said.picture->reach == 3);
  CHECK(said.picture->rows[0].isKinder);
  CHECK(said.picture->rows[0].word == "1.4 kinder");
  CHECK(said.picture->rows[0].count == "6 people");
  CHECK(said.picture->rows[0].readOut.find("Heather mead: 1.4 kinder than the mean of 6 people; anything from 0.3 kinder to 2.5 kinder fits.") != std::string::npos);
  CHECK(page(found(LeanVerdict::kinder, between(0.3, 1.4, 2.5), 31)).picture->rows.size() == 30);
}

TEST_CASE("what was expected stands beside what came") {
  insight::RoomFindings room = found(LeanVerdict::kinder, between(0.3, 1.4, 2.5));
  CHECK(page(room).expected.rows.empty());
  CHECK(page(room).expected.lines.at(0).starts_with("Nothing written so far."));
  room.expectations = {{0, 70, true}, {1, 60, false}, {2, 90, std::nullopt}};
  room.settled = 2;
  RoomPage said = page(room);
  CHECK(said.expected.lines.at(0) == "Too little known yet: 2 of the three outcomes that this needs.");
  REQUIRE(said.expected.rows.size() == 3);
  CHECK(said.expected.rows[0][1] == "90 in 100 that they are told apart");
  CHECK(said.expected.rows[0][2] == "no verdict came of it");
  CHECK(said.expected.rows[2][2] == "it came so");
  room.settled = 5;
  room.calibration.emplace();
  room.calibration->brier = 0.31;
  room.calibration->expectedHits = 4.2;
  room.calibration->hits = 2;
  room.calibration->pValue = 0.04;
  said = page(room);
  CHECK(said.expected.lines.at(0) == "Of 5 outcomes 2 came as you had in mind; your numbers add up to 4.2.");
  CHECK(said.expected.lines.at(1).starts_with("You expected more than came."));
  CHECK(said.expected.lines.at(2).find("0.31") != std::string::npos);
  CHECK_FALSE(said.curve);
}

TEST_CASE("what is asked before the seal follows the method") {
  const auto asked = [](Method method, std::size_t lots = 2) {
    ExpectationFacts facts{method, std::vector<PlannedLot>(lots), std::nullopt, {}};
    return expectationAsked(Voice{}, facts);
  };
  CHECK(asked(Method::triangle) == "How likely is it, do you think, that they are told apart?");
  CHECK(asked(Method::tetrad, 3) == "How likely is it, do you think, that two of the three are told apart?");
  CHECK(asked(Method::pair) == "How likely is it, do you think, that it is shown to be more so?");
  CHECK(asked(Method::preference) == "How likely is it, do you think, that a preference is shown?");
  CHECK(asked(Method::sheet).empty());
  Plan plan = tastings(1).sessions[0].session.plan;
  plan.method = Method::sheet;
  plan.lots[1].role = LotRole::reference;
  SheetItem liking;
  liking.kind = ItemKind::liking;
  plan.items = {liking};
  CHECK(expectationLine(Voice{}, expectationFacts(plan), 70) == "Written beforehand: 70 in 100 that the panel's mean puts Heather mead above Bought mead (liking).");
}

TEST_CASE("what the labels did is said with a range from three tastings on, and always that it came after") {
  const OwnTastings three = tastings(3);
  insight::Label label;
  CHECK(labelSection(Voice{}, three, label).lines.at(0).starts_with("No open round so far."));
  label.sessions = {{0, 4, 3.0, 0.5, {}}, {1, 1, -1.2, 0.0, {}}};
  label.why = insight::NoLean::fewSessions;
  OutSection section = labelSection(Voice{}, three, label);
  CHECK(section.lines.at(0) == "Too little known: it takes three tastings with an open round, so far 2.");
  CHECK(section.lines.at(1).find("cannot be told apart") != std::string::npos);
  REQUIRE(section.rows.size() == 2);
  CHECK(section.rows[0][1] == "You moved by 1.2 points away from your own");
  CHECK(section.rows[0][2] == "the others (1 person) moved not at all");
  label.why.reset();
  label.verdict = insight::LeanVerdict::kinder;
  label.friends = 4;
  label.together = 3;
  label.over.estimate = 2.5;
  label.over.low = 0.7;
  label.over.high = 4.3;
  CHECK(labelSection(Voice{}, three, label).lines.at(0) == "Knowing the labels moved you further towards your own than it moved the others, by 2.5 points (0.7 to 4.3), over 3 tastings and 4 people.");
  label.verdict = insight::LeanVerdict::notShown;
  label.over.low = -1.0;
  CHECK(labelSection(Voice{}, three, label).lines.at(0).find("you may have moved by 1.0 points away from your own, by 4.3 points towards your own, or anything between.") != std::string::npos);
}
