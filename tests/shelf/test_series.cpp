#include "cellar.h"
#include "raw_session.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/series.h"

using namespace oddglass;
using testing::Cellar;
using testing::problemOf;
using testing::troubleOf;

namespace {

struct AgingRack : Cellar {
  std::unique_ptr<store::Store> open_ = open();
  store::Store& store = *open_;
  LotId batch = lotOf("Hedge Mead", Origin::batch), bought = lotOf("Bought mead", Origin::reference);

  LotId lotOf(const char* drink, Origin origin) {
    Beverage beverage;
    beverage.name = drink;
    beverage.origin = origin;
    Lot lot;
    lot.beverage = shelf::save(store, chance, beverage);
    lot.name = "the only one";
    lot.packagedOn = "2026-01-10";
    lot.bottleMl = 500;
    const LotId id = shelf::save(store, chance, lot);
    shelf::move(store, clock, id, StockChange::added, 20);
    return id;
  }

  Series plain() const {
    Series series;
    series.title = "Hedge mead grows old";
    series.batch = batch;
    series.begunOn = "2026-01-10";
    series.main = {3, "", 1};
    for (const char* day : {"2026-01-24", "2026-04-11", "2027-01-10"}) series.sittings.push_back({0, day, std::nullopt});
    return series;
  }

  Series begun(Series series) {
    series.id = shelf::save(store, clock, chance, series);
    return shelf::series(store, series.id);
  }

  /// A session of a sitting, as `session` would plan it; sealed as far as the store can see when it has an entry.
  SessionId link(const Series& series, int number) {
    const SessionId id{std::string(31, '0') + std::to_string(number)};
    store.db().exec("INSERT INTO session (uid, title, came_from, created_at) VALUES ('" + id.text + "', 't', 'here', 1)");
    store.db().exec("UPDATE series_sitting SET session_id = (SELECT id FROM session WHERE uid = '" + id.text + "') WHERE number = " + std::to_string(number) +
                    " AND series_id = (SELECT id FROM series WHERE uid = '" + series.id.text + "')");
    return id;
  }
  void sealAsFarAsSeen(const SessionId& id) {
    store.db().exec("INSERT INTO log SELECT id, 1, 1, 'sealed', 'sealed', '{}', zeroblob(32), zeroblob(32) FROM session WHERE uid = '" + id.text + "'");
  }
};

}  // namespace

TEST_CASE("a series is kept with its sittings in the order of their days") {
  AgingRack rack;
  Series wanted = rack.plain();
  std::swap(wanted.sittings[0], wanted.sittings[2]);
  const Series series = rack.begun(wanted);
  CHECK(series.title == "Hedge mead grows old");
  CHECK(series.batch == rack.batch);
  CHECK(series.control == ControlKind::none);
  CHECK(series.main == MainComparison{3, "", 1});
  REQUIRE(series.sittings.size() == 3);
  for (int i = 0; i < 3; ++i) CHECK(series.sittings[static_cast<std::size_t>(i)].number == i + 1);
  CHECK(series.sittings[0].dueOn == "2026-01-24");
  CHECK(series.sittings[2].dueOn == "2027-01-10");
  REQUIRE(shelf::allSeries(rack.store).size() == 1);
  CHECK(shelf::allSeries(rack.store)[0] == series);
  shelf::archive(rack.store, rack.clock, series.id);
  CHECK(shelf::allSeries(rack.store).empty());
  CHECK(shelf::allSeries(rack.store, true).size() == 1);
  shelf::bringBack(rack.store, series.id);
  shelf::discard(rack.store, series.id);
  CHECK(shelf::allSeries(rack.store, true).empty());
  CHECK(troubleOf([&] { shelf::series(rack.store, series.id); }) == Trouble::unknown);
}

TEST_CASE("a cold twin comes out of the batch's own bottles") {
  AgingRack rack;
  const LotId twin = shelf::setTwinAside(rack.store, rack.clock, rack.chance, rack.batch, "kept cold", "fridge, 4 C", 6);
  CHECK(shelf::lot(rack.store, rack.batch).bottles == 14);
  const Lot kept = shelf::lot(rack.store, twin);
  CHECK(kept.bottles == 6);
  CHECK(kept.name == "kept cold");
  CHECK(kept.storage == "fridge, 4 C");
  CHECK(kept.packagedOn == "2026-01-10");
  CHECK(kept.beverage == shelf::lot(rack.store, rack.batch).beverage);
  CHECK(problemOf([&] { shelf::setTwinAside(rack.store, rack.clock, rack.chance, rack.batch, "more", "", 15); }).argument() == "bottles");
  CHECK(shelf::lot(rack.store, rack.batch).bottles == 14);

  Series series = rack.plain();
  series.control = ControlKind::twin;
  series.controlLot = twin;
  CHECK(rack.begun(series).controlLot == twin);
  series.controlLot = rack.bought;
  CHECK(problemOf([&] { rack.begun(series); }).argument() == "control");
  series.control = ControlKind::reference;
  CHECK(rack.begun(series).controlLot == rack.bought);
  series.controlLot = twin;
  CHECK(problemOf([&] { rack.begun(series); }).argument() == "control");
  series.controlLot = rack.batch;
  CHECK(troubleOf([&] { rack.begun(series); }) == Trouble::sameLotTwice);
}

TEST_CASE("an impossible series is refused by name, and nothing is kept") {
  AgingRack rack;
  const auto refused = [&](auto change) {
    Series series = rack.plain();
    change(series);
    return problemOf([&] { rack.begun(series); }).argument();
  };
  CHECK(refused([](Series& s) { s.title = " "; }) == "title");
  CHECK(refused([](Series& s) { s.begunOn = ""; }) == "begun_on");
  CHECK(refused([](Series& s) { s.begunOn = "2026-02-30"; }) == "begun_on");
  CHECK(refused([](Series& s) { s.sittings.resize(1); }) == "sittings");
  CHECK(refused([](Series& s) { s.sittings[1].dueOn = s.sittings[0].dueOn; }) == "due_on");
  CHECK(refused([](Series& s) { s.sittings[1].dueOn = "2025-12-31"; }) == "due_on");
  CHECK(refused([](Series& s) { s.main.sitting = 1; }) == "main");
  CHECK(refused([](Series& s) { s.main.sitting = 4; }) == "main");
  CHECK(refused([](Series& s) { s.main.limit = 0; }) == "main_limit");
  CHECK(refused([](Series& s) { s.bottlesEach = 25; }) == "bottles_each");
  CHECK(refused([](Series& s) { s.batch.text = std::string(32, 'f'); }) == "batch");
  CHECK(shelf::allSeries(rack.store, true).empty());
}

TEST_CASE("what a series was begun for stays once a sitting is sealed") {
  AgingRack rack;
  Series series = rack.begun(rack.plain());
  series.main.limit = 2;
  shelf::save(rack.store, rack.clock, rack.chance, series);
  CHECK(shelf::series(rack.store, series.id).main.limit == 2);
  const SessionId session = rack.link(series, 1);
  series = shelf::series(rack.store, series.id);
  CHECK(series.sittings[0].session == session);
  rack.sealAsFarAsSeen(session);

  const auto refused = [&](auto change) {
    Series other = series;
    change(other);
    return problemOf([&] { shelf::save(rack.store, rack.clock, rack.chance, other); });
  };
  CHECK(refused([](Series& s) { s.main.limit = 1; }).argument() == "main");
  CHECK(refused([](Series& s) { s.main.word = "sour"; }).argument() == "main");
  CHECK(refused([](Series& s) { s.main.sitting = 2; }).argument() == "main");
  CHECK(refused([](Series& s) { s.begunOn = "2026-01-09"; }).argument() == "begun_on");
  CHECK(refused([&](Series& s) { s.control = ControlKind::reference, s.controlLot = rack.bought; }).argument() == "control");
  CHECK(refused([](Series& s) { s.sittings.erase(s.sittings.begin()), s.main.sitting = 2; }).argument() == "sittings");
  CHECK(refused([](Series& s) { s.sittings[2].dueOn = "2027-02-01"; }).argument() == "main");
  CHECK(troubleOf([&] { shelf::discard(rack.store, series.id); }) == Trouble::seriesBegun);
  CHECK(shelf::series(rack.store, series.id) == series);

  // The days of sittings that are not planned may still move, and others be put between them: the main comparison stays the same sitting.
  series.sittings[1].dueOn = "2026-05-01";
  series.sittings.push_back({0, "2026-08-01", std::nullopt});
  series.main.sitting = 4;
  shelf::save(rack.store, rack.clock, rack.chance, series);
  const Series later = shelf::series(rack.store, series.id);
  REQUIRE(later.sittings.size() == 4);
  CHECK(later.sittings[0].session == session);
  CHECK(later.sittings[3].dueOn == "2027-01-10");
}

TEST_CASE("the store itself keeps a series that has a sealed sitting") {
  AgingRack rack;
  const Series series = rack.begun(rack.plain());
  rack.sealAsFarAsSeen(rack.link(series, 1));
  const auto refusal = [&](const char* sql) {
    try {
      rack.store.db().exec(sql);
    } catch (const SQLite::Exception& error) {
      return std::string(error.what());
    }
    return std::string();
  };
  using Catch::Matchers::Contains;
  CHECK_THAT(refusal("UPDATE series SET main_word = 'sour'"), Contains("fixed once a sitting is sealed"));
  CHECK_THAT(refusal("UPDATE series SET begun_on = '2025-01-01'"), Contains("fixed once a sitting is sealed"));
  CHECK_THAT(refusal("DELETE FROM series_sitting WHERE number = 1"), Contains("stays in its series"));
  CHECK_THAT(refusal("UPDATE series_sitting SET session_id = NULL WHERE number = 1"), Contains("stays in its series"));
  CHECK_THAT(refusal("DELETE FROM series"), Contains("it stays"));
  CHECK(refusal("DELETE FROM series_sitting WHERE number = 2").empty());
  rack.store.db().exec("INSERT INTO series_seen SELECT series_id, session_id, 1 FROM series_sitting WHERE number = 1");
  CHECK_THAT(refusal("UPDATE series_seen SET at = 2"), Contains("kept as it is"));
  CHECK_THAT(refusal("DELETE FROM series_seen"), Contains("kept as it is"));
}
