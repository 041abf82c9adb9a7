#include "tasting/typing.h"

#include "cellar.h"
#include "session/look.h"
#include "sheet_evening.h"

using namespace oddglass;
using namespace oddglass::testing;
using tasting::Typing;

namespace {

/// Types the same lines twice.
void typeTwice(Typing& typing, const std::vector<std::string>& first, const std::vector<std::string>& second) {
  for (const std::string& line : first) REQUIRE(typing.take(line) == Typing::Took::yes);
  REQUIRE(typing.isSecond());
  for (const std::string& line : second) REQUIRE(typing.take(line) == Typing::Took::yes);
  REQUIRE(typing.isDone());
}

struct Typed : SheetEvening {
  explicit Typed(int friendCount = 4) : SheetEvening(1, 0, friendCount) {}
  void sealed() {
    seal();
    sitAll();
  }
  tasting::Flight flight(int place) { return tasting::nextFlight(*store, session, {place}).value(); }
};

}  // namespace

TEST_CASE("a forced choice is typed in twice and handed in as it stands on the paper") {
  Typed evening;
  evening.sealed();
  const tasting::Flight flight = evening.flight(1);
  Typing typing(flight, evening.session);
  const std::string code = std::to_string(flight.cups[1].code.value);
  // Words are typed once.
  typeTwice(typing, {code, "2", "1", "waxy"}, {code, "2", "1"});
  tasting::HandIn in;
  in.place = {1};
  in.round = flight.round;
  in.replies = typing.replies();
  evening.chance.fill(in.clientId);
  tasting::handInTyped(*evening.store, evening.clock, evening.chance, evening.session, std::nullopt, in);
  CHECK(tasting::board(*evening.store, evening.session).locked == 1);
  // Nobody makes sure of a locked sheet twice.
  in.clientId = {};
  CHECK(problemOf([&] { tasting::handInTyped(*evening.store, evening.clock, evening.chance, evening.session, std::nullopt, in); }).trouble() == Trouble::flightLocked);
}

TEST_CASE("only codes of the place itself are taken, and the refusal names no other") {
  Typed evening;
  evening.sealed();
  const tasting::Flight flight = evening.flight(1), other = evening.flight(2);
  Typing typing(flight, evening.session);
  const Problem problem = problemOf([&] { typing.take(std::to_string(other.cups[0].code.value)); });
  CHECK(problem.trouble() == Trouble::codeNotHere);
  for (const auto& cup : flight.cups) CHECK_THAT(problem.values().at("codes"), Catch::Contains(std::to_string(cup.code.value)));
  CHECK(problemOf([&] { typing.take("the left one"); }).trouble() == Trouble::notANumber);
  CHECK(problemOf([&] { typing.take("  "); }).trouble() == Trouble::answerMissing);
  CHECK_FALSE(typing.isSecond());
  CHECK(typing.shown(0).empty());
}

TEST_CASE("a slip is noticed the second time, and two lines in a row decide") {
  Typed evening;
  evening.sealed();
  const tasting::Flight flight = evening.flight(1);
  Typing typing(flight, evening.session);
  const std::string right = std::to_string(flight.cups[0].code.value), slip = std::to_string(flight.cups[2].code.value);
  for (const std::string& line : {slip, std::string("3"), std::string("6"), std::string()}) typing.take(line);
  REQUIRE(typing.isSecond());
  CHECK(typing.take(right) == Typing::Took::differs);
  CHECK(typing.take(right) == Typing::Took::yes);
  CHECK(typing.take("3") == Typing::Took::yes);
  typing.back();
  CHECK(typing.take("2") == Typing::Took::differs);
  CHECK(typing.take("2") == Typing::Took::yes);
  CHECK(typing.take("6") == Typing::Took::yes);
  CHECK(typing.take("") == Typing::Took::yes);
  CHECK(typing.isDone());
  CHECK(typing.replies().at(0).value == flight.cups[0].code.value);
  CHECK(typing.replies().at(1).value == 2);
  CHECK(typing.replies().size() == 3);
}

TEST_CASE("a score sheet is typed cup by cup; a code before the value means that cup") {
  Typed evening;
  session::saveDraft(*evening.store, evening.clock,
                     evening.asSheet({asked(ItemKind::check, "toffee"), asked(ItemKind::line, "sweet"), asked(ItemKind::magnitude, "bitter"), asked(ItemKind::worst), asked(ItemKind::liking),
                                      asked(ItemKind::rank, "", Part::last), asked(ItemKind::split, "", Part::last)}, true));
  evening.sealed();
  const tasting::Flight flight = evening.flight(1);
  REQUIRE(flight.cups.size() == 3);
  Typing typing(flight, evening.session);
  int rank = 0, number = 0;
  for (const tasting::TypedAsk* ask = typing.next(); ask; ask = typing.next()) {
    if (typing.isSecond()) ++number;
    switch (ask->item.kind) {
      case ItemKind::check: typing.take(ask->cup == flight.cups[0].code ? "1" : ""); break;
      case ItemKind::line:
        CHECK(problemOf([&] { typing.take("101"); }).trouble() == Trouble::answerOutOfRange);
        CHECK(problemOf([&] { typing.take("1234 40"); }).trouble() == Trouble::codeNotHere);
        typing.take("40");
        break;
      case ItemKind::magnitude: typing.take("34,7"); break;
      case ItemKind::worst: typing.take("0"); break;
      case ItemKind::liking: typing.take(std::to_string(ask->cup.value) + " 6 "); break;
      case ItemKind::rank: typing.take(std::to_string(rank++ % 3 + 1)); break;
      case ItemKind::split: typing.take(ask->cup == flight.cups[2].code ? "5" : ""); break;
      default: FAIL("not on this sheet");
    }
  }
  CHECK(number > 0);
  tasting::HandIn in;
  in.place = {1};
  in.round = flight.round;
  in.replies = typing.replies();
  tasting::handInTyped(*evening.store, evening.clock, evening.chance, evening.session, std::nullopt, in);
  CHECK(tasting::board(*evening.store, evening.session).locked == 1);
  int magnitudes = 0;
  for (const tasting::Reply& reply : in.replies) magnitudes += reply.value == 347;
  CHECK(magnitudes == 3);
}

TEST_CASE("whoever made or pours it, or still tastes, does not type sheets in") {
  Typed evening(3);
  evening.seal();
  const auto typistCalled = [&](const std::string& name) {
    const auto all = tasting::typists(*evening.store, evening.session);
    const auto found = std::ranges::find(all, name, &tasting::Typist::name);
    REQUIRE(found != all.end());
    return *found;
  };
  // Invited, and not at the table yet.
  CHECK(typistCalled("Friend A").hasOpen);
  evening.sitAll();
  CHECK(typistCalled("Wenna Tarn").isMaker);
  CHECK(typistCalled("Odo Pell").isPourer);
  CHECK(typistCalled("Friend A").hasOpen);
  evening.answer(1, 1);
  CHECK(typistCalled("Friend A").mayType());
  const tasting::Flight flight = evening.flight(2);
  tasting::HandIn in = evening.choose(2, 1, flight.cups[0].code);
  for (const TasterId& who : {evening.maker, evening.pourer, evening.friends[1]}) {
    const Problem problem = problemOf([&] { tasting::handInTyped(*evening.store, evening.clock, evening.chance, evening.session, who, in); });
    CHECK(problem.trouble() == Trouble::notAChoice);
    CHECK(problem.argument() == "typist");
  }
  CHECK(tasting::board(*evening.store, evening.session).locked == 1);
  tasting::handInTyped(*evening.store, evening.clock, evening.chance, evening.session, evening.friends[0], in);
  CHECK(tasting::board(*evening.store, evening.session).locked == 2);
  // The record says which place typed, and no name; the sheet of somebody else says that nobody at the table did.
  in = evening.choose(3, 1, evening.flight(3).cups[0].code);
  tasting::handInTyped(*evening.store, evening.clock, evening.chance, evening.session, std::nullopt, in);
  std::vector<std::optional<Place>> typed;
  for (const session::HistoryLine& line : session::history(*evening.store, evening.session))
    if (line.event == Event::answered) typed.push_back(line.typedBy);
  CHECK(typed == std::vector<std::optional<Place>>{std::nullopt, Place{1}, Place{0}});
  CHECK(session::verify(*evening.store, evening.session).holds());
  session::close(*evening.store, evening.clock, evening.session);
  session::reveal(*evening.store, evening.clock, evening.session);
  const TypedIn counted = session::revealed(*evening.store, evening.session).typedIn;
  CHECK(counted.fromPaper == 2);
  CHECK(counted.byTasters == 1);
  CHECK(counted.byOthers == 1);
}
