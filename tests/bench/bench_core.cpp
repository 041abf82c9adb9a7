// Times the steps of an evening beside a reference in the same run and prints the ratio. Nothing passes or fails here.
#include "domain/flight_form.h"
#include "bench/timed.h"
#include "evening.h"
#include "domain/names.h"
#include "insight/findings.h"
#include "planning/amounts.h"
#include "planning/outlook.h"
#include "planning/recommend.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <string>
#include <vector>

using namespace oddglass;
using testing::Evening;
using testing::medianMs;

namespace {

void line(const char* what, double ms, const char* reference, double referenceMs) {
  std::printf("%-42s %9.3f ms   %-34s %9.3f ms   ratio %6.1f\n", what, ms, reference, referenceMs, ms / referenceMs);
}

// One row in a transaction of its own, with the same settings for durability.
double bareCommit(const std::filesystem::path& file) {
  SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  db.exec("PRAGMA journal_mode = WAL");
  db.exec("PRAGMA synchronous = FULL");
  db.exec("CREATE TABLE row (a INTEGER, b BLOB)");
  SQLite::Statement insert(db, "INSERT INTO row VALUES (1, randomblob(64))");
  return medianMs(300, [&](int) {
    db.exec("BEGIN IMMEDIATE");
    insert.exec();
    insert.reset();
    db.exec("COMMIT");
  });
}

// A bare insert of as many rows as a seal writes cups, in one transaction.
double bareRows(const std::filesystem::path& file, int rows) {
  SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  db.exec("PRAGMA journal_mode = WAL");
  db.exec("PRAGMA synchronous = FULL");
  db.exec("CREATE TABLE row (a INTEGER PRIMARY KEY, b INTEGER, c INTEGER, d INTEGER)");
  return medianMs(20, [&](int) {
    db.exec("BEGIN IMMEDIATE");
    SQLite::Statement insert(db, "INSERT INTO row (b, c, d) VALUES (1, 2, 3)");
    for (int i = 0; i < rows; ++i) {
      insert.exec();
      insert.reset();
    }
    db.exec("COMMIT");
  });
}

planning::Setup setupOf(int panel, int rounds) {
  planning::Setup setup;
  setup.panel = panel;
  setup.makers = 1;
  setup.rounds = rounds;
  setup.cupMl = 15;
  setup.lots = {{1200, 750, 100}, {1150, 750, 100}};
  return setup;
}

}  // namespace

int main() {
  const double frame = 1000.0 / 60;
  for (const auto& [panel, rounds] : {std::pair(6, 3), std::pair(15, 4), std::pair(60, 3)}) {
    const planning::Setup setup = setupOf(panel, rounds);
    const double plan = medianMs(50, [&](int) {
      planning::amountsOf(setup);
      planning::outlookFor(setup);
    });
    line(("plan recalculated, " + std::to_string(panel) + " people x " + std::to_string(rounds)).c_str(), plan, "one frame at 60 Hz", frame);
  }

  // All that a page of a plan shows, for each method; the recommendation goes through every method by itself.
  for (const auto& [panel, rounds] : {std::pair(60, 3), std::pair(45, 20), std::pair(60, 20)})
    for (const Method method : comparingMethods()) {
      planning::Setup setup = setupOf(panel, rounds);
      setup.method = method;
      const double plan = medianMs(20, [&](int) {
        planning::amountsOf(setup);
        planning::outlookFor(setup);
        planning::recommend(Question::differ, setup);
      });
      line(("plan page, " + std::to_string(panel) + " x " + std::to_string(rounds) + ", " + std::string(nameOf(method))).c_str(), plan, "one frame at 60 Hz", frame);
    }
  {
    planning::Setup setup = setupOf(60, 3);
    setup.stopping = Stopping{};
    const double plan = medianMs(20, [&](int) { planning::outlookFor(setup); });
    line("plan with looks, 60 x 3", plan, "one frame at 60 Hz", frame);
    setup.stopping.reset();
    setup.lots.push_back({1150, 750, 100});
    const double three = medianMs(20, [&](int) {
      planning::outlookFor(setup);
      planning::recommend(Question::differ, setup);
    });
    line("three comparisons, 60 x 3", three, "one frame at 60 Hz", frame);
  }

  testing::Folder folder;
  const double commit = bareCommit(folder / "bare.db");

  std::vector<std::unique_ptr<Evening>> evenings;
  for (int i = 0; i < 10; ++i) evenings.push_back(std::make_unique<Evening>(3, 5, 6));
  const int cups = 12 * 3 * 3 * 2;
  const double seal = medianMs(10, [&](int i) { evenings[static_cast<std::size_t>(i)]->seal(); });
  line("seal, 12 places x 3 rounds", seal, "bare insert of as many rows", bareRows(folder / "rows.db", cups));

  Evening& evening = *evenings[0];
  evening.sitAll();
  std::vector<tasting::HandIn> ins;
  for (int place = 1; place <= 7; ++place) {
    const auto flight = tasting::nextFlight(*evening.store, evening.session, {place}).value();
    ins.push_back(evening.choose(place, 1, flight.cups[0].code));
  }
  const double handIn = medianMs(7, [&](int i) {
    tasting::handIn(*evening.store, evening.clock, evening.chance, evening.session, ins[static_cast<std::size_t>(i)]);
  });
  line("hand-in acknowledged", handIn, "bare commit of one row", commit);
  const double board = medianMs(50, [&](int) { tasting::board(*evening.store, evening.session); });
  line("the table looked at", board, "one frame at 60 Hz", frame);

  for (auto& each : evenings) {
    if (each != evenings[0]) each->sitAll();
    for (int place = 1; place <= 7; ++place)
      while (tasting::nextFlight(*each->store, each->session, {place})) each->answer(place, 2);
    session::close(*each->store, each->clock, each->session);
  }
  const double reveal = medianMs(10, [&](int i) {
    auto& each = *evenings[static_cast<std::size_t>(i)];
    session::reveal(*each.store, each.clock, each.session);
  });
  const double copy = medianMs(5, [&](int i) {
    SQLite::Database db(evening.store->file().string(), SQLite::OPEN_READONLY);
    db.exec("VACUUM INTO '" + (folder / ("copy" + std::to_string(i))).string() + "'");
  });
  line("reveal, with its backup", reveal, "VACUUM INTO alone", copy);
  const double findings = medianMs(20, [&](int) { insight::findingsOf(session::revealed(*evening.store, evening.session)); });
  line("findings of a revealed session", findings, "one frame at 60 Hz", frame);

  // A shelf with 1,000 sessions: one record, put in under a thousand names, would not chain; so a thousand are sealed.
  Evening many(1, 0, 4);
  const Draft first = session::draft(*many.store, many.session);
  shelf::count(*many.store, many.clock, many.mine, 100000);
  shelf::count(*many.store, many.clock, many.bought, 100000);
  many.seal();
  for (int i = 1; i < 1000; ++i) {
    Draft draft = first;
    draft.id = session::newDraft(*many.store, many.clock, many.chance, "Session " + std::to_string(i));
    draft.title = "Session " + std::to_string(i);
    session::saveDraft(*many.store, many.clock, draft);
    session::seal(*many.store, many.clock, many.chance, draft.id);
  }
  const double list = medianMs(20, [&](int) { session::sessions(*many.store); });
  SQLite::Statement count(many.store->db(), "SELECT uid, title, created_at FROM session");
  const double bare = medianMs(20, [&](int) {
    while (count.executeStep()) {}
    count.reset();
  });
  line("list of 1,000 sessions", list, "bare select of as many rows", bare);
  const double shelfList = medianMs(20, [&](int) { shelf::find(*many.store, "", true); });
  line("shelf beside 1,000 sessions", shelfList, "bare select of as many rows", bare);
  const double open = medianMs(20, [&](int) { store::Store::open(many.store->file(), store::Access::read, many.clock, many.chance); });
  const double bareOpen = medianMs(20, [&](int) {
    SQLite::Database db(many.store->file().string(), SQLite::OPEN_READONLY);
    db.execAndGet("SELECT count(*) FROM log");
  });
  line("opening it, every page looked at", open, "bare open and count", bareOpen);
}
