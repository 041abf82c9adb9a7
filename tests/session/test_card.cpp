// Cards: for those who ask, from what they sat at by name, forgotten with them.
#include "session/card.h"

#include "own_evenings.h"
#include "known_evenings.h"
#include "session/erase.h"
#include "store/step.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using testing::KnownEvenings;
using testing::OwnEvenings;
using testing::troubleOf;

TEST_CASE("a card is asked for, seen by its person, let be seen, and taken back") {
  OwnEvenings evenings;
  store::Store& store = *evenings.store;
  const TasterId who = evenings.friends[0];
  CHECK_FALSE(session::cardOf(store, who));
  CHECK(troubleOf([&] { session::letCardBeSeen(store, evenings.clock, who); }) == Trouble::unknown);
  session::askForCard(store, evenings.clock, who);
  const auto asked = session::cardOf(store, who);
  REQUIRE(asked);
  CHECK_FALSE(asked->shownAt);
  session::letCardBeSeen(store, evenings.clock, who);
  session::askForCard(store, evenings.clock, who);
  CHECK(session::cardOf(store, who)->askedAt == asked->askedAt);
  CHECK(session::cardOf(store, who)->shownAt);
  CHECK(session::cards(store).size() == 1);
  session::takeCardBack(store, who);
  session::takeCardBack(store, who);
  CHECK(session::cards(store).empty());
  CHECK(troubleOf([&] { session::askForCard(store, evenings.clock, {std::string(32, 'a')}); }) == Trouble::unknown);
}

TEST_CASE("whoever is forgotten, words alone or everything, has no card any more") {
  for (const ErasureKind kind : {ErasureKind::words, ErasureKind::everything}) {
    OwnEvenings evenings;
    evenings.tell(evenings.proud());
    for (const TasterId& who : evenings.friends) session::askForCard(*evenings.store, evenings.clock, who);
    session::erase(*evenings.store, evenings.clock, evenings.chance, evenings.friends[1], kind, true);
    CHECK(session::cards(*evenings.store).size() == 3);
    CHECK_FALSE(session::cardOf(*evenings.store, evenings.friends[1]));
    auto row = store::bound(evenings.store->db(), "SELECT count(*) FROM card");
    row.executeStep();
    CHECK(row.getColumn(0).getInt() == 3);
  }
}

TEST_CASE("a card is worked out from the sheets that its person sat at by name or nickname") {
  OwnEvenings evenings;
  evenings.tell(evenings.proud());
  evenings.tell(evenings.proud(), std::nullopt, {{1, ShownAs::loose}, {2, ShownAs::nickname}});
  evenings.taste(evenings.proud());  // still sealed
  CHECK(session::cardTastings(*evenings.store, evenings.friends[0]).sheets.size() == 1);
  const CardTastings two = session::cardTastings(*evenings.store, evenings.friends[1]);
  REQUIRE(two.sheets.size() == 2);
  for (const ScoredSheet& sheet : two.sheets) {
    CHECK_FALSE(sheet.isMaker);
    CHECK(sheet.seat == Place{2});
    CHECK(sheet.session.panel.size() == 4);
    CHECK(sheet.session.plan.cups.empty());
    CHECK_FALSE(sheet.known.contains(Place{2}));
  }
  CHECK(two.sheets[0].known.size() == 3);
  CHECK(two.sheets[1].known.size() == 2);
  CHECK(two.sheets[0].known.at({3}) == two.sheets[1].known.at({3}));
  const CardTastings maker = session::cardTastings(*evenings.store, evenings.maker);
  REQUIRE(maker.sheets.size() == 2);
  CHECK(maker.sheets[0].isMaker);
  CHECK(session::cardTastings(*evenings.store, evenings.friends[1], two.sheets[0].session.revealedAt).sheets.size() == 1);
  CHECK(troubleOf([&] { session::cardTastings(*evenings.store, {std::string(32, 'a')}); }) == Trouble::unknown);
}

TEST_CASE("known differences on a card are those that its person sat at") {
  KnownEvenings evenings;
  evenings.tell(KnownEvenings::right({}), {{1, ShownAs::loose}});
  CHECK(session::cardTastings(*evenings.store, evenings.friends[0]).known.empty());
  CHECK(session::cardTastings(*evenings.store, evenings.friends[1]).known.size() == 1);
}
