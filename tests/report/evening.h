#pragma once

#include "insight/table.h"

#include <string>

namespace report_test {

using namespace oddglass;

/// An invented evening of four people and a maker, three rounds, with everything that a report may hold. `odd` marks every text.
inline RevealedSession evening(const std::string& odd = {}) {
  RevealedSession session = table::panel({3, 2, 1, 2}, 3);
  session.id = {"0123456789abcdef0123456789abcdef"};
  session.title = "Heather against bought" + odd;
  session.sealedAt = 1709251200000;    // 2024-03-01T00:00:00Z
  session.revealedAt = 1709262000000;  // three hours later
  session.sealMark = "kapo rilu 7";
  session.commitment = "978d238643285b017f7dc21e34b52760738d0102b58359efb385f8fb2999edc2";
  session.plan.makersPlanned = 1;
  session.plan.panelPlanned = 4;
  session.plan.sought = Sought::both;
  session.plan.limitPm = 300;
  PlannedLot own, bought;
  own.slot = Slot{1};
  own.beverageName = "Heather mead" + odd;
  own.lotName = "bottled in February" + odd;
  own.kind = Kind::mead;
  own.abvBp = 1250;
  own.packagedOn = "2024-02-01";
  own.storage = "cellar, 12 C" + odd;
  own.ingredients = {IngredientsKnown::known, {Allergen::sulphites}};
  bought = own;
  bought.slot = Slot{2};
  bought.origin = Origin::reference;
  bought.beverageName = "Bought mead" + odd;
  bought.lotName = "vintage 2022";
  bought.abvBp.reset();
  bought.packagedOn.clear();
  bought.ingredients = {};
  session.plan.lots = {own, bought};
  const char* names[] = {"Ida", "Bram", "Quell", "Dora"};
  for (std::size_t i = 0; i < 4; ++i) {
    session.people[i].shown = names[i] + odd;
    session.people[i].as = i == 2 ? ShownAs::loose : i == 1 ? ShownAs::nickname : ShownAs::signedName;
  }
  ShownPerson maker;
  maker.place = Place{5};
  maker.isMaker = true;
  maker.as = ShownAs::signedName;
  maker.shown = "Mara" + odd;
  session.people.push_back(maker);
  for (int round = 1; round <= 3; ++round) session.makers.push_back(table::flight<MakerFlight>(5, round, round == 2, 100 * round + 50));
  for (PanelFlight& flight : session.panel) {
    flight.sureness = Sureness::fairly;
    flight.clue = Clue::smell;
  }
  session.panel[0].words = "waxy" + odd;
  session.panel[1].voided = VoidReason::mixedUp;
  session.panel[4].picks.clear();
  session.panel[6].words = "soapy" + odd;
  session.said.push_back({Seq{290}, 1709255000000, {}, "cardboard" + odd});
  session.log = {{Seq{1}, 1709251200000, Event::sealed, {}, {}}, {Seq{9}, 1709254800000, Event::opened, {}, {}}, {Seq{30}, 1709256000000, Event::spilled, Place{2}, Round{1}}};
  session.pourSheetOpenings = 3;
  session.satBefore = SatBefore{2, 1};
  session.promises = {{Outcome::shown, "find out in what" + odd}, {Outcome::notShown, "pour pairs" + odd}, {Outcome::alike, "leave it" + odd}};
  session.decision = "pairs in May" + odd;
  return session;
}

}  // namespace report_test
