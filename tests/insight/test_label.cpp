// What knowing the labels does to a maker beside the others.
#include "insight/room.h"
#include "insight/sheet_table.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace oddglass;
using namespace oddglass::insight;
using Catch::Matchers::WithinAbs;
using testing::SheetTable;

namespace {

/// Own drink (lot 1) and reference (lot 2), blind and with the labels known.
struct Both {
  int own, reference;
  std::optional<std::pair<int, int>> open{};
};

/// The maker sits at place 9, friends from place 1 on.
OwnSession tasted(const std::vector<Both>& friends, const Both& maker, bool areKnown = true) {
  SheetTable table(2, {LotRole::compared, LotRole::reference});
  const Item liking = table.ask(ItemKind::liking);
  OwnSession own;
  const auto say = [&](int place, const Both& both) {
    table.say(place, liking, 1, both.own);
    table.say(place, liking, 2, both.reference);
    if (both.open) own.open[{place}] = {{Slot{1}, both.open->first}, {Slot{2}, both.open->second}};
  };
  for (std::size_t i = 0; i < friends.size(); ++i) {
    say(static_cast<int>(i) + 1, friends[i]);
    if (areKnown) own.known[{static_cast<int>(i) + 1}] = static_cast<int>(i) + 1;
  }
  say(9, maker);
  table.session.makers.emplace_back(RevealedFlight(table.session.panel.back()));
  table.session.panel.pop_back();
  own.seat = Place{9};
  own.own = {Slot{1}};
  own.session = table.session;
  return own;
}

Label labelOver(const std::vector<OwnSession>& sessions) { return roomOf({{}, true, sessions}).label; }

const std::vector<Both> threeFriends{{5, 5, std::pair{6, 5}}, {6, 5, std::pair{6, 5}}, {7, 5, std::pair{8, 4}}};

}  // namespace

// By hand: the friends move by 1, 0 and 2, the maker from 5 to 8: 3 - 1, spread 1, se sqrt(1 + 1/3) by Crawford and Howell 1998; Student's t with 2 df at 97.5 %: 4.302653.
TEST_CASE("a label effect over three tastings, worked by hand") {
  const OwnSession each = tasted(threeFriends, {8, 3, std::pair{9, 1}});
  const Label label = labelOver({each, each, each});
  CHECK_THAT(label.over.estimate.value(), WithinAbs(2.0, 1e-12));
  CHECK_THAT(label.over.low.value(), WithinAbs(2.0 - 4.302653 * std::sqrt(4.0 / 3.0), 1e-5));
  CHECK(label.over.df == 2.0);
  CHECK(label.together == 3);
  CHECK(label.verdict == LeanVerdict::notShown);
  REQUIRE(label.sessions.size() == 3);
  CHECK_THAT(label.sessions[0].own, WithinAbs(3.0, 1e-12));
  CHECK_THAT(label.sessions[0].others, WithinAbs(1.0, 1e-12));
  CHECK(label.sessions[0].friends == 3);
}

TEST_CASE("the headline needs three tastings; a clear effect is shown") {
  const OwnSession steady = tasted({{5, 5, std::pair{5, 5}}, {6, 5, std::pair{6, 5}}, {7, 5, std::pair{8, 5}}, {5, 5, std::pair{5, 5}}}, {5, 5, std::pair{9, 2}});
  CHECK(labelOver({steady, steady}).verdict == LeanVerdict::none);
  CHECK(labelOver({steady, steady}).why == NoLean::fewSessions);
  CHECK(labelOver({steady, steady, steady}).verdict == LeanVerdict::kinder);
}

TEST_CASE("who did not score again is left out of the label, and a lean stands without it") {
  const OwnSession partly = tasted({{5, 5, std::pair{6, 5}}, {6, 5}, {7, 5}}, {8, 3, std::pair{9, 1}});
  CHECK(labelOver({partly}).sessions.at(0).friends == 1);
  const OwnSession makerDidNot = tasted(threeFriends, {8, 3});
  CHECK(labelOver({makerDidNot}).sessions.empty());
  CHECK(roomOf({{}, true, {makerDidNot}}).lean.sessions.size() == 1);
  const OwnSession loose = tasted(threeFriends, {8, 3, std::pair{9, 1}}, false);
  CHECK(labelOver({loose, loose, loose}).why == NoLean::fewKnown);
  CHECK(labelOver({}).why == NoLean::fewSessions);
}
