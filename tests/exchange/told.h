#pragma once

#include "evening.h"
#include "exchange/write_out.h"
#include "session/erase.h"
#include "tasting/typing.h"

#include <cstdlib>
#include <fstream>

/// Exit status of the independent script: 0 it holds, 1 it does not, 2 it cannot be read.
inline int outsideCheck(const std::filesystem::path& file) {
  const int status = std::system(("python3 -B \"" TEST_DATA "/../verify_export.py\" \"" + file.string() + "\" > \"" + file.string() + ".said\" 2>&1").c_str());
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

/// An evening on which almost everything happened, told to the end and written out.
struct Told : oddglass::testing::Evening {
  /// Two rounds, seven people at eight places: a spilled cup, one poured wrong and one not sure, a flight set aside with words, something said aloud,
  /// somebody who stops, a latecomer whose sheet another taster types in, a nickname, two loose tasters, comments; then closed, revealed and decided.
  Told() : Evening(2, 1, 7) {
    using namespace oddglass;
    Draft draft = session::draft(*store, session);
    draft.expectationPc = 65;
    session::saveDraft(*store, clock, draft);
    seal();
    const auto sheet = session::openPourSheet(*store, clock, session);
    session::pouredReally(*store, clock, chance, session, sheet.placeByPlace.at(0).code, Slot{2});
    session::pouredReally(*store, clock, chance, session, codeAt(4, 2, 1), std::nullopt);
    session::sayPoured(*store, clock, session);
    using enum ShownAs;
    const std::vector<ShownAs> as{signedName, nickname, loose, signedName, loose, signedName};
    for (int place = 1; place <= 6; ++place) sit(place, friends[place - 1], as[place - 1]);
    sit(7, maker);
    tasting::spilled(*store, clock, session, codeAt(2, 1, 3));
    for (int place = 1; place <= 7; ++place) answer(place, 1 + place % 3, place % 2 ? "a little =smoke, \"perhaps\" – blåbær" : "");
    tasting::said(*store, clock, chance, session, {Place{1}, Place{2}}, "the left one is sour");
    tasting::setAside(*store, clock, chance, session, Place{3}, Round{2}, VoidReason::other, "the glass broke");
    tasting::stopHere(*store, clock, session, Place{6});
    tasting::sit(*store, clock, session, {Place{8}, friends[6], signedName, true, true, true, true});
    for (int place : {1, 2, 5, 7}) answer(place, 1 + place % 2);
    const auto late = tasting::nextFlight(*store, session, Place{8}).value();
    tasting::handInTyped(*store, clock, chance, session, friends[0], choose(8, 1, late.cups.front().code));
    session::close(*store, clock, session);
    session::reveal(*store, clock, session);
    session::decide(*store, clock, chance, session, "look at the hops, then pour again");
  }

  oddglass::Code codeAt(int place, int round, int position) {
    for (const auto& cup : oddglass::session::record(*store, session).plan.cups)
      if (cup.place.value == place && cup.round.value == round && cup.position.value == position && cup.spare == 0) return cup.code;
    return {};
  }

  oddglass::canon::Json json() { return oddglass::exchange::interchange(*store, clock, session); }

  std::filesystem::path write(const std::string& text, const std::string& name = "file.json") {
    const auto path = folder / name;
    std::ofstream(path, std::ios::binary | std::ios::trunc) << text;
    return path;
  }
  std::filesystem::path write(const oddglass::canon::Json& json, const std::string& name = "file.json") { return write(json.dump(1), name); }
};

/// A store of its own to take things in.
struct Elsewhere : oddglass::testing::Cellar {
  std::unique_ptr<oddglass::store::Store> store = open();

  /// Everything that goes out of this store, without the moment of writing: equal before and after what must change nothing.
  std::string all() {
    auto json = oddglass::exchange::interchangeOfAll(*store, clock);
    json.erase("written_at");
    return json.dump();
  }
};
