#pragma once

#include "blinding/draw.h"
#include "domain/flight_form.h"
#include "domain/trial.h"
#include "session/plan_now.h"
#include "sheet_evening.h"

#include <algorithm>
#include <set>

namespace oddglass::testing {

/// A clock that stands still, where the number of looks at it may differ from run to run.
struct StillClock : Clock {
  Millis now() override { return 1764000000000; }
};

/// A way of asking: what it is called in these tests, and what it makes of a draft that has the first two of three lots.
struct Way {
  const char* name;
  void (*ask)(Draft& draft, const std::vector<LotId>& lots);
};

/// Every way there is, one that stops early, three drinks in pairs and both questions of score sheets among them.
inline const std::vector<Way>& waysOfAsking() {
  static const std::vector<Way> ways{
      {"triangle", [](Draft&, const std::vector<LotId>&) {}},
      {"duo-trio", [](Draft& draft, const std::vector<LotId>&) { draft.method = Method::duoTrio; }},
      {"tetrad", [](Draft& draft, const std::vector<LotId>&) { draft.method = Method::tetrad; }},
      {"two-out-of-five", [](Draft& draft, const std::vector<LotId>&) { draft.method = Method::twoOutOfFive; }},
      {"pair", [](Draft& draft, const std::vector<LotId>&) {
         draft.question = Question::more, draft.method = Method::pair, draft.attribute = "sweet", draft.expected = Slot{1};
       }},
      {"3-AFC", [](Draft& draft, const std::vector<LotId>&) { draft.method = Method::threeAfc, draft.attribute = "sour", draft.expected = Slot{2}; }},
      {"same-different", [](Draft& draft, const std::vector<LotId>&) { draft.method = Method::sameDifferent; }},
      {"A-not-A", [](Draft& draft, const std::vector<LotId>&) { draft.method = Method::aNotA, draft.marked = Slot{2}; }},
      {"preference", [](Draft& draft, const std::vector<LotId>&) { draft.question = Question::prefer, draft.method = Method::preference, draft.mayHaveNone = true; }},
      {"preference after a choice", [](Draft& draft, const std::vector<LotId>&) { draft.alsoPrefer = draft.mayHaveNone = true; }},
      {"sequential plan", [](Draft& draft, const std::vector<LotId>&) { draft.rounds = 3, draft.stopping = Stopping{}; }},
      {"three short comparisons", [](Draft& draft, const std::vector<LotId>& lots) { draft.lots = lots, draft.rounds = 1; }},
      {"how good is it", [](Draft& draft, const std::vector<LotId>& lots) {
         draft.question = Question::good, draft.method = Method::sheet, draft.lots = lots, draft.rounds = 1;
         draft.sheet = {{asked(ItemKind::liking), asked(ItemKind::check, "oak"), asked(ItemKind::worst), asked(ItemKind::behaviour)}, {}, true, 7, 20, "water"};
       }},
      {"what does it lack", [](Draft& draft, const std::vector<LotId>& lots) {
         draft.question = Question::lacks, draft.method = Method::sheet, draft.lots = lots, draft.rounds = 1, draft.marked = Slot{2};
         draft.sheet = {{asked(ItemKind::line, "honey", Part::smell), asked(ItemKind::distance), asked(ItemKind::justRight, "acid"),
                         asked(ItemKind::line, "mousy", Part::late), asked(ItemKind::rank, "", Part::last)},
                        {LotRole::compared, LotRole::reference, LotRole::reference}, true, 7, 20, "water"};
       }},
  };
  return ways;
}

/// What somebody answers who looks at nothing but codes and positions.
inline tasting::HandIn blindly(const tasting::Flight& flight) {
  tasting::HandIn in{flight.place, flight.round, {}, tasting::Via::device, {}};
  in.clientId.fill(static_cast<std::uint8_t>(flight.place.value * 16 + flight.round.value));
  std::vector<int> codes;
  for (const auto& cup : flight.cups)
    if (!cup.isMarked) codes.push_back(cup.code.value);
  std::size_t pick = 0;
  for (const SheetItem& item : flight.items) {
    const auto about = [&](int cup) -> tasting::Reply {
      tasting::Reply reply{item.item, std::max(1, item.low.value_or(1)), std::nullopt};
      if (item.perCup) reply.code = {codes.at(static_cast<std::size_t>(cup))};
      if (item.kind == ItemKind::choose) reply.value = codes.at(pick++);
      if (item.kind == ItemKind::prefer) reply.value = codes.front();
      if (item.kind == ItemKind::rank) reply.value = cup + 1;
      if (item.kind == ItemKind::words || item.kind == ItemKind::worst) reply.value = 0, reply.text = "plain words";
      return reply;
    };
    for (int cup = 0; cup < (item.perCup ? static_cast<int>(codes.size()) : 1); ++cup) in.replies.push_back(about(cup));
  }
  return in;
}

/// What a seed of orders puts before each place in the first round, and how much of it differs from another's.
struct DrawnKey {
  const Plan* plan;
  std::vector<blinding::FlightOrder> orders;

  static blinding::Seed filled(int byte) {
    blinding::Seed seed{};
    seed.fill(static_cast<std::uint8_t>(byte));
    return seed;
  }
  static blinding::Streams streams(int seed) {
    return {blinding::Stream(filled(seed), blinding::StreamName::orders), blinding::Stream(filled(7), blinding::StreamName::codes)};
  }
  DrawnKey(const Plan& of, int seed) : plan(&of) {
    blinding::Stream stream(filled(seed), blinding::StreamName::orders);
    orders = blinding::dealOrders(session::shapeOf(of).deal, stream);
  }
  std::vector<std::optional<Slot>> flight(int place) const {
    for (const blinding::FlightOrder& each : orders)
      if (each.place.value == place && each.round.value == 1) return {each.lots.begin(), each.lots.end()};
    return {};
  }
  /// Right answers of the first four places in the first round, when all of them choose the first cup; it is poured wrong at place 1.
  int right() const {
    int right = 0;
    for (int place = 1; place <= 4; ++place) {
      RevealedFlight there;
      there.poured = flight(place);
      if (place == 1) there.poured.front() = Slot{1};
      there.picks = {{1}};
      right += isRight(*plan, there).value_or(false);
    }
    return right;
  }
  /// Places whose first flight differs; more than all of them where another lot is doubled.
  int unlike(const DrawnKey& other) const {
    int unlike = 0;
    for (int place = 1; place <= plan->places; ++place) unlike += flight(place) != other.flight(place);
    return unlike + (plan->sheet && doubled() != other.doubled() ? plan->places : 0);
  }
  /// The lot that one flight of a score sheet holds twice.
  Slot doubled() const {
    auto lots = flight(1);
    if (plan->marked) lots.erase(lots.begin());
    std::ranges::sort(lots);
    const auto twice = std::ranges::adjacent_find(lots);
    return twice == lots.end() ? Slot{0} : twice->value();
  }
};

/// Two keys for the same cups, as unlike as can be. Of a sequential plan one has one right answer in the first round, the other two: both go on.
struct TwoKeys {
  int one = 1, other = 2, stops = 0;

  explicit TwoKeys(const Plan& plan) {
    if (plan.stopping) {
      const auto with = [&](int right) {
        int orders = 1;
        while (orders < 255 && DrawnKey(plan, orders).right() != right) ++orders;
        return orders;
      };
      one = with(1), other = with(2), stops = with(0);
      return;
    }
    const DrawnKey first(plan, one);
    int most = 0;
    for (int orders = 2; orders < 40; ++orders)
      if (const int unlike = first.unlike(DrawnKey(plan, orders)); unlike > most) most = unlike, other = orders;
  }
};

/// A night of five places and three drinks that are unlike in everything, with codes from one seed and orders from another: poured, one cup wrongly;
/// four people sit, one has answered (all four where the plan is looked at after a round), one cup was spilled, something was said.
struct BlindNight {
  std::filesystem::path folder;
  StillClock clock;
  FixedChance chance;
  std::unique_ptr<store::Store> store;
  SessionId session;
  session::Sealed sealed;
  session::PourSheet sheet;   ///< the key; only planted leaks look at it

  /// `in` is made new and empty: the same path in every run, since pages and messages may name it.
  BlindNight(const std::filesystem::path& in, const Way& way, int orders) : folder(in) {
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    store = store::Store::open(folder / "cellar.oddglass", store::Access::write, clock, chance);
    std::vector<TasterId> friends;
    for (const char* name : {"Ash", "Birch", "Cedar", "Dogwood"}) friends.push_back(shelf::save(*store, chance, Taster{{}, name, "", false, false}));
    const TasterId brewer = shelf::save(*store, chance, Taster{{}, "Wenna Tarn", "", true, false});
    Draft draft;
    draft.pourer = shelf::save(*store, chance, Taster{{}, "Odo Pell", "", false, false});
    const std::vector<LotId> lots = putDrinks(brewer);
    draft.id = session = session::newDraft(*store, clock, chance, "Two unlike drinks");
    draft.title = "Two unlike drinks";
    draft.guestTitle = "An evening";
    draft.lots = {lots[0], lots[1]};
    draft.tasters = friends;
    draft.tasters.push_back(brewer);
    draft.cupMl = 10;
    draft.rounds = 2;
    draft.careSettled = true;
    draft.giveAways.emplace();
    way.ask(draft, lots);
    session::saveDraft(*store, clock, draft);
    sealed = session::sealDrawnFrom(*store, clock, chance, session, DrawnKey::filled(7), DrawnKey::streams(orders));
    pour();
    taste(friends);
  }

  Plan plan() const { return session::record(*store, session).plan; }

  void answer(int place) {
    const auto flight = tasting::nextFlight(*store, session, {place}).value();
    tasting::begin(*store, clock, session, {place}, flight.round);
    tasting::handIn(*store, clock, chance, session, blindly(flight));
  }

 private:
  std::vector<LotId> putDrinks(const TasterId& brewer) {
    Beverage batch;
    batch.name = "A";
    batch.kind = Kind::beer;
    batch.abvBp = 310;
    batch.abvFrom = AbvFrom::guess;
    batch.ingredients = {IngredientsKnown::known, {Allergen::gluten, Allergen::milk}};
    batch.makers = {brewer};
    Beverage reference;
    reference.origin = Origin::reference;
    reference.name = "A very long name for a bought mead of a far away valley";
    reference.kind = Kind::mead;
    reference.abvBp = 1450;
    reference.abvFrom = AbvFrom::label;
    const BeverageId mine = shelf::save(*store, chance, batch), bought = shelf::save(*store, chance, reference);
    std::vector<LotId> lots;
    const auto put = [&](const BeverageId& beverage, const char* name, int bottleMl, int bottles) {
      Lot lot;
      lot.beverage = beverage;
      lot.name = name;
      lot.bottleMl = bottleMl;
      lots.push_back(shelf::save(*store, chance, lot));
      shelf::move(*store, clock, lots.back(), StockChange::added, bottles);
    };
    put(mine, "x", 330, 5);
    put(bought, "vintage of the dry year", 750, 40);
    put(bought, "of a wet one", 500, 11);
    return lots;
  }

  void pour() {
    sheet = session::openPourSheet(*store, clock, session);
    for (const session::PourLine& line : sheet.placeByPlace) session::tick(*store, clock, session, line.code, line.slot == Slot{1});
    session::pouredReally(*store, clock, chance, session, sheet.placeByPlace[0].code, Slot{1});
    session::sayPoured(*store, clock, session);
  }

  void taste(const std::vector<TasterId>& friends) {
    for (int place = 1; place <= 4; ++place)
      tasting::sit(*store, clock, session, {{place}, friends[static_cast<std::size_t>(place - 1)], ShownAs::signedName, true, true, true, false});
    answer(2);
    tasting::spilled(*store, clock, session, tasting::nextFlight(*store, session, {3})->cups[1].code);
    if (plan().stopping)
      for (int place : {1, 3, 4}) answer(place);
    tasting::said(*store, clock, chance, session, {}, "a loud word");
  }
};

}  // namespace oddglass::testing
