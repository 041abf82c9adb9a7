#include "domain/replies.h"
#include "tasting/filling.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::tasting;

namespace {

const SessionId session{std::string(32, '7')};

Flight threeCups() {
  Flight flight;
  flight.place = {1};
  flight.round = {1};
  flight.method = Method::sheet;
  flight.pauseSeconds = 20;
  for (int cup = 1; cup <= 3; ++cup) flight.cups.push_back({{310 + cup}, {cup}, false});
  const auto ask = [&](ItemKind kind, Part part = Part::main, const std::string& word = {}, bool required = true) {
    SheetItem item;
    item.kind = kind;
    item.part = part;
    item.word = word;
    item.required = required;
    flight.items.push_back(item);
  };
  ask(ItemKind::line, Part::main, "sweet");
  ask(ItemKind::liking);
  ask(ItemKind::worst);
  ask(ItemKind::liking, Part::look, "colour", false);
  ask(ItemKind::rank, Part::last);
  ask(ItemKind::split, Part::last);
  ask(ItemKind::words, Part::last, {}, false);
  flight.items = numbered(flight.items, 3);
  return flight;
}

constexpr Item sweet{1}, liking{2}, worst{3}, colour{4}, rank{5}, split{6};

void fillCup(Filling& filling, int value) {
  filling.set(sweet, filling.code(), value);
  filling.set(liking, filling.code(), 5);
  filling.write(worst, filling.code(), "thin");
}

// To the page with all cups, everything answered on the way but the colour.
void walk(Filling& filling) {
  while (!filling.isLast()) {
    if (filling.step().part == Part::main && filling.step().kind == SheetStepKind::cup) fillCup(filling, 40);
    filling.next();
  }
}

bool isTaken(const Filling& filling) {
  std::vector<GivenReply> given;
  for (const Reply& reply : filling.replies()) given.push_back({reply.item, reply.code, reply.text ? std::nullopt : std::optional(reply.value), reply.text.has_value()});
  return !firstFault(filling.flight().items, filling.cups(), given);
}

}  // namespace

TEST_CASE("a sheet goes on when its cup is answered, and not before") {
  Filling filling(threeCups(), session);
  CHECK(filling.isFirst());
  CHECK(filling.step().part == Part::look);
  CHECK(filling.open().empty());  // "I don't judge colour"
  for (int cup = 0; cup < 3; ++cup) filling.next();
  REQUIRE(filling.step().part == Part::main);
  CHECK(filling.open().size() == 3);
  filling.next();
  CHECK(filling.code() == Code{311});
  filling.set(sweet, {311}, 101);  // beyond the line
  CHECK_FALSE(filling.value(sweet, {311}));
  fillCup(filling, 70);
  CHECK(filling.open().empty());
  filling.next();
  CHECK(filling.step().kind == SheetStepKind::pause);
  filling.next();
  CHECK(filling.code() == Code{312});
  filling.back();
  CHECK(filling.code() == Code{311});
  CHECK(filling.value(sweet, {311}) == 70);
}

TEST_CASE("the worst thing is in words, or looked for and not found") {
  Filling filling(threeCups(), session);
  for (int cup = 0; cup < 3; ++cup) filling.next();
  fillCup(filling, 1);
  filling.write(worst, {311}, "  ");
  CHECK(filling.open() == std::vector<Item>{worst});
  filling.set(worst, {311}, 0);
  CHECK(filling.open().empty());
  filling.set(worst, {311}, 3);
  CHECK(filling.value(worst, {311}) == 0);
  filling.write(worst, {311}, "sharp");
  CHECK_FALSE(filling.value(worst, {311}));
  CHECK(filling.text(worst, {311}) == "sharp");
}

TEST_CASE("cups are ranked by tapping, from the most to the least") {
  Filling filling(threeCups(), session);
  walk(filling);
  CHECK(filling.open() == std::vector<Item>{rank, split});
  filling.tapRank(rank, {312});
  CHECK(filling.value(rank, {312}) == 3);
  filling.tapRank(rank, {313});
  CHECK(filling.value(rank, {313}) == 2);
  CHECK(filling.value(rank, {311}) == 1);
  filling.tapRank(rank, {313});
  CHECK(filling.value(rank, {312}) == 3);
  CHECK_FALSE(filling.value(rank, {313}));
  CHECK_FALSE(filling.value(rank, {311}));
  filling.tapRank(rank, {311});
  CHECK(filling.value(rank, {313}) == 1);
  CHECK(filling.open() == std::vector<Item>{split});
}

TEST_CASE("five points are given, no more and no less") {
  Filling filling(threeCups(), session);
  walk(filling);
  filling.tapRank(rank, {311});
  filling.tapRank(rank, {312});
  for (int point = 0; point < 4; ++point) filling.givePoint(split, {311}, 1);
  CHECK(filling.pointsLeft(split) == 1);
  CHECK(filling.open() == std::vector<Item>{split});
  filling.givePoint(split, {313}, -1);
  CHECK(filling.value(split, {313}) == 0);
  filling.givePoint(split, {313}, 1);
  filling.givePoint(split, {312}, 1);
  CHECK(filling.value(split, {312}) == 0);
  CHECK(filling.open().empty());
  CHECK(isTaken(filling));
}

TEST_CASE("what was typed comes back, at the first step that still needs something") {
  Filling first(threeCups(), session);
  for (int cup = 0; cup < 3; ++cup) first.next();
  fillCup(first, 33);
  Filling again(threeCups(), session, first.replies());
  CHECK(again.value(sweet, {311}) == 33);
  CHECK(again.text(worst, {311}) == "thin");
  CHECK(again.step().part == Part::main);
  CHECK(again.code() == Code{312});
  walk(again);
  Filling last(threeCups(), session, again.replies());
  CHECK(last.isLast());
}

TEST_CASE("no word ticked is an answer, said when the cup is left and not before") {
  Flight flight = threeCups();
  SheetItem oak;
  oak.kind = ItemKind::check;
  oak.word = "oak";
  flight.items.push_back(oak);
  flight.items = numbered(flight.items, 3);
  const Item ticked = flight.items.back().item;
  Filling filling(flight, session, {});
  while (filling.step().part != Part::main || filling.step().kind != SheetStepKind::cup) filling.next();
  const Code first = filling.code();
  CHECK_FALSE(filling.open().empty());
  fillCup(filling, 40);
  CHECK(filling.open().empty());
  CHECK_FALSE(filling.value(ticked, first));
  filling.next();
  CHECK(filling.value(ticked, first) == 0);
  for (const Code cup : filling.cups())
    if (cup != first) CHECK_FALSE(filling.value(ticked, cup));
}
