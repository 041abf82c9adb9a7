#include "answers.h"
#include "cellar.h"
#include "domain/state.h"
#include "session/drafts.h"
#include "session/ending.h"
#include "session/look.h"
#include "session/record.h"
#include "shelf/beverages.h"
#include "shelf/notes.h"
#include "shelf/series.h"
#include "shelf/vocabulary.h"
#include "store/keep.h"
#include "store/migrate.h"
#include "tasting/board.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>
#include <set>
#include <sstream>

using namespace oddglass;
using testing::Cellar;

namespace {

/// Puts a store of an older version at the cellar's file, as that version wrote it (a dump of its tables and triggers).
void layDown(const Cellar& cellar, const std::string& name, int version) {
  std::ifstream in(std::string(TEST_DATA) + "/stores/" + name);
  REQUIRE(in.good());
  std::ostringstream dump;
  dump << in.rdbuf();
  SQLite::Database db(cellar.file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  db.exec(dump.str());
  db.exec("PRAGMA application_id = " + std::to_string(store::applicationId));
  db.exec("PRAGMA user_version = " + std::to_string(version));
}

std::set<std::string> namesOf(store::Store& store, const char* type) {
  std::set<std::string> names;
  SQLite::Statement rows(store.db(), "SELECT name FROM sqlite_schema WHERE type = ?");
  rows.bind(1, type);
  while (rows.executeStep()) names.insert(rows.getColumn(0).getString());
  return names;
}

/// Opens a store of an older version: a copy is kept first, and nothing that guards the file is lost on the way.
std::unique_ptr<store::Store> broughtUp(Cellar& cellar, const std::string& name, int version) {
  layDown(cellar, name, version);
  auto store = cellar.open();
  CHECK(store::versionOf(store->db()) == store::newestVersion());
  const auto copies = store::backups(*store);
  REQUIRE(copies.size() == 1);
  CHECK(copies[0].reason == store::BackupReason::beforeMigration);
  Cellar another;
  const auto fresh = another.open();
  for (const char* type : {"table", "trigger", "view", "index"}) CHECK(namesOf(*store, type) == namesOf(*fresh, type));
  // The steps that may be taken are today's.
  SQLite::Statement steps(store->db(), "SELECT count(*) FROM transition");
  steps.executeStep();
  CHECK(steps.getColumn(0).getInt() == static_cast<int>(transitions().size()));
  for (const auto& each : session::sessions(*store)) {
    INFO(each.title);
    CHECK(session::verify(*store, each.id).holds());
  }
  return store;
}

}  // namespace

TEST_CASE("a store of version 1 is brought up with all it holds, and its evening goes on") {
  Cellar cellar;
  const auto store = broughtUp(cellar, "version_1.sql", 1);
  const auto all = session::sessions(*store);
  REQUIRE(all.size() == 2);
  const auto over = std::ranges::find(all, State::revealed, &session::SessionLine::state), open = std::ranges::find(all, State::tasting, &session::SessionLine::state);
  REQUIRE(over != all.end());
  REQUIRE(open != all.end());
  CHECK(session::revealed(*store, over->id).panel.size() == 8);

  // The seat that was taken and the answer that was locked are there; the next flight can be tasted, and the key opens.
  CHECK(tasting::board(*store, open->id).locked == 1);
  const auto flight = tasting::nextFlight(*store, open->id, {1}).value();
  CHECK(flight.round == Round{2});
  CHECK(flight.method == Method::triangle);
  tasting::begin(*store, cellar.clock, open->id, {1}, flight.round);
  tasting::HandIn in{{1}, flight.round, {}, tasting::Via::device, {{{1}, flight.cups[0].code.value, {}}, {{2}, 3, {}}, {{3}, 1, {}}}};
  cellar.chance.fill(in.clientId);
  tasting::handIn(*store, cellar.clock, cellar.chance, open->id, in);
  session::close(*store, cellar.clock, open->id);
  CHECK(session::reveal(*store, cellar.clock, open->id).commitmentHolds);
  CHECK(session::verify(*store, open->id).holds());
  CHECK(session::revealed(*store, open->id).panel.size() == 2);
}

TEST_CASE("a store of version 2 is brought up with its other methods, its evening goes on, and words can be added") {
  Cellar cellar;
  const auto store = broughtUp(cellar, "version_2.sql", 2);
  const auto all = session::sessions(*store);
  REQUIRE(all.size() == 2);
  const auto over = std::ranges::find(all, State::revealed, &session::SessionLine::state), open = std::ranges::find(all, State::tasting, &session::SessionLine::state);
  REQUIRE(over != all.end());
  REQUIRE(open != all.end());
  CHECK(session::revealed(*store, over->id).plan.stopping);

  // Places 1 and 2 are taken; the first of three pairs is locked at place 1, and the second is poured there next.
  CHECK(tasting::board(*store, open->id).locked == 1);
  const auto flight = tasting::nextFlight(*store, open->id, {1}).value();
  CHECK(flight.round == Round{2});
  CHECK(flight.method == Method::pair);
  tasting::begin(*store, cellar.clock, open->id, {1}, flight.round);
  tasting::HandIn in{{1}, flight.round, {}, tasting::Via::device, {{{1}, flight.cups[0].code.value, {}}, {{2}, 3, {}}, {{3}, 1, {}}}};
  cellar.chance.fill(in.clientId);
  tasting::handIn(*store, cellar.clock, cellar.chance, open->id, in);
  session::close(*store, cellar.clock, open->id);
  CHECK(session::reveal(*store, cellar.clock, open->id).commitmentHolds);
  CHECK(session::verify(*store, open->id).holds());

  CHECK(shelf::vocabulary(*store) == builtInWords());
  TastingWord word;
  word.text = "hedge";
  word.drinks = {Kind::mead};
  shelf::addWord(*store, cellar.clock, cellar.chance, word);
  const auto words = shelf::vocabulary(*store);
  CHECK(shelf::resolve(words, "Hedge") == &words.back());
}

TEST_CASE("a store of version 3 is brought up with its own words, its evening goes on, and a score sheet can be asked") {
  Cellar cellar;
  const auto store = broughtUp(cellar, "version_3.sql", 3);
  const auto all = session::sessions(*store);
  REQUIRE(all.size() == 2);
  const auto over = std::ranges::find(all, State::revealed, &session::SessionLine::state), open = std::ranges::find(all, State::tasting, &session::SessionLine::state);
  REQUIRE(over != all.end());
  REQUIRE(open != all.end());
  const RevealedSession revealed = session::revealed(*store, over->id);
  CHECK(revealed.panel.size() == 8);
  CHECK(revealed.makers.size() == 2);

  // An own word, one that counts as it, and one that is no longer offered.
  const auto words = shelf::vocabulary(*store);
  REQUIRE(words.size() == builtInWords().size() + 3);
  const auto named = [&](const char* text) { return std::ranges::find(words, text, &TastingWord::text); };
  REQUIRE(named("hedge") != words.end());
  CHECK(named("hedge")->meaning == "as a hawthorn hedge smells in May");
  CHECK(shelf::resolve(words, "may blossom") == &*named("hedge"));
  CHECK(named("old barn")->retired);

  // Places 1 and 2 are taken; the first of two tetrads is locked at place 1.
  CHECK(tasting::board(*store, open->id).locked == 1);
  const auto flight = tasting::nextFlight(*store, open->id, {1}).value();
  CHECK(flight.round == Round{2});
  CHECK(flight.method == Method::tetrad);
  tasting::begin(*store, cellar.clock, open->id, {1}, flight.round);
  tasting::HandIn in{{1}, flight.round, {}, tasting::Via::device, {{{1}, flight.cups[0].code.value, {}}, {{2}, flight.cups[1].code.value, {}}, {{3}, 3, {}}, {{4}, 1, {}}}};
  cellar.chance.fill(in.clientId);
  tasting::handIn(*store, cellar.clock, cellar.chance, open->id, in);
  session::close(*store, cellar.clock, open->id);
  CHECK(session::reveal(*store, cellar.clock, open->id).commitmentHolds);
  CHECK(session::verify(*store, open->id).holds());

  // What version 4 brought: a sheet about the same drinks.
  Draft draft = session::draft(*store, session::newDraft(*store, cellar.clock, cellar.chance, "How good is it really?"));
  draft.question = Question::good;
  draft.method = Method::sheet;
  SheetItem liking;
  liking.kind = ItemKind::liking;
  draft.sheet.items = {liking};
  session::saveDraft(*store, cellar.clock, draft);
  CHECK(session::draft(*store, draft.id).sheet.items.size() == 1);
}

TEST_CASE("a store of version 4 is brought up with its score sheets, its evening goes on, and a series can be begun") {
  Cellar cellar;
  const auto store = broughtUp(cellar, "version_4.sql", 4);
  const auto all = session::sessions(*store);
  REQUIRE(all.size() == 2);
  const auto over = std::ranges::find(all, State::revealed, &session::SessionLine::state), open = std::ranges::find(all, State::tasting, &session::SessionLine::state);
  REQUIRE(over != all.end());
  REQUIRE(open != all.end());
  CHECK(session::revealed(*store, over->id).plan.sheet);

  // Places 1 and 2 are taken, the sheet of place 1 is locked; that of place 2 is filled in now.
  CHECK(tasting::board(*store, open->id).locked == 1);
  const auto flight = tasting::nextFlight(*store, open->id, {2}).value();
  tasting::begin(*store, cellar.clock, open->id, {2}, flight.round);
  tasting::HandIn in{{2}, flight.round, {}, tasting::Via::device, {}};
  cellar.chance.fill(in.clientId);
  for (const SheetItem& item : flight.items)
    for (const auto& cup : flight.cups) in.replies.push_back({item.item, item.kind == ItemKind::worst ? 0 : 5, std::nullopt, cup.code});
  tasting::handIn(*store, cellar.clock, cellar.chance, open->id, in);
  session::close(*store, cellar.clock, open->id);
  CHECK(session::reveal(*store, cellar.clock, open->id).commitmentHolds);
  CHECK(session::verify(*store, open->id).holds());
  CHECK(session::revealed(*store, open->id).panel.size() == 2);

  CHECK(shelf::allSeries(*store).empty());
  Series series;
  series.title = "Cider over time";
  series.batch = session::revealed(*store, open->id).plan.lots[0].lot;
  series.begunOn = "2026-03-01";
  series.sittings = {{0, "2026-04-01", std::nullopt}, {0, "2027-03-01", std::nullopt}};
  series.main.sitting = 2;
  const SeriesId id = shelf::save(*store, cellar.clock, cellar.chance, series);
  CHECK(shelf::series(*store, id).sittings.size() == 2);
}

TEST_CASE("a store of version 5 is brought up with its series and notes, its sitting goes on, and what was seen in a bottle is written down") {
  Cellar cellar;
  const auto store = broughtUp(cellar, "version_5.sql", 5);
  const auto series = shelf::allSeries(*store);
  REQUIRE(series.size() == 1);
  REQUIRE(series[0].sittings.size() == 3);
  CHECK(series[0].control == ControlKind::reference);
  REQUIRE(series[0].sittings[0].session);
  REQUIRE(series[0].sittings[1].session);
  CHECK_FALSE(series[0].sittings[2].session);
  CHECK(session::revealed(*store, *series[0].sittings[0].session).panel.size() == 3);

  // Places 1 and 2 of the second sitting are taken, the sheet of place 1 is locked; that of place 2 is filled in now.
  const SessionId open = *series[0].sittings[1].session;
  CHECK(tasting::board(*store, open).locked == 1);
  const auto flight = tasting::nextFlight(*store, open, {2}).value();
  tasting::begin(*store, cellar.clock, open, {2}, flight.round);
  tasting::HandIn in{{2}, flight.round, {}, tasting::Via::device, {}};
  cellar.chance.fill(in.clientId);
  for (const SheetItem& item : flight.items)
    for (const auto& cup : flight.cups) in.replies.push_back({item.item, item.kind == ItemKind::worst ? 0 : item.high.value_or(1), std::nullopt, cup.code});
  tasting::handIn(*store, cellar.clock, cellar.chance, open, in);
  session::close(*store, cellar.clock, open);
  CHECK(session::reveal(*store, cellar.clock, open).commitmentHolds);
  CHECK(session::verify(*store, open).holds());

  const auto drinks = shelf::find(*store, "Orchard");
  REQUIRE(drinks.size() == 1);
  CHECK(drinks[0].beverage.recipe.empty());
  const auto notes = shelf::notesOf(*store, drinks[0].beverage.id);
  REQUIRE(notes.size() == 2);
  CHECK(notes[0].text == "off the lees");
  CHECK(notes[1].gravity == 10020);
  CHECK(notes[1].word.empty());
  Note correction = notes[0], haze;
  correction.replaces = notes[0].id;
  correction.text = "off the lees, into a clean jar";
  haze.beverage = drinks[0].beverage.id;
  haze.doneOn = "2026-05-01";
  haze.kind = NoteKind::haze;
  haze.level = 1;
  shelf::add(*store, cellar.chance, correction);
  shelf::add(*store, cellar.chance, haze);
  const auto now = shelf::notesOf(*store, drinks[0].beverage.id);
  REQUIRE(now.size() == 3);
  CHECK(now[0].level == 1);
  CHECK(now[1].text == correction.text);
}

TEST_CASE("a store of version 6 is brought up, and its evening is brought to its end behind the new guards") {
  Cellar cellar;
  const auto store = broughtUp(cellar, "version_6.sql", 6);
  const auto all = session::sessions(*store);
  REQUIRE(all.size() == 2);
  const auto open = std::ranges::find(all, State::tasting, &session::SessionLine::state);
  REQUIRE(open != all.end());
  // Place 1 has locked, the round of place 2 was set aside, place 3 has not begun.
  const auto board = tasting::board(*store, open->id);
  REQUIRE(board.places.size() == 3);
  CHECK(board.locked == 1);
  CHECK(board.places[1].voidRounds == 1);
  CHECK(board.places[2].lockedRounds == 0);
  // The guards of the new shape stand: a reason that no version knows is refused, and a place that nobody freed stays taken.
  const auto refused = [&](const char* sql) {
    try {
      store::write(*store, [&](SQLite::Database& db) { db.exec(sql); });
      return false;
    } catch (const std::exception&) {
      return true;
    }
  };
  CHECK(refused("INSERT INTO voided SELECT session_id, 3, 1, 'no reason', seq FROM voided"));
  CHECK(refused("DELETE FROM place_taken WHERE place = 3"));
  session::close(*store, cellar.clock, open->id);
  CHECK(session::reveal(*store, cellar.clock, open->id).commitmentHolds);
  CHECK(session::verify(*store, open->id).holds());
}
