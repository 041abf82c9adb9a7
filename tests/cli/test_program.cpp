#include "cli/child.h"
#include "cli/demo_count.h"
#include "evening.h"
#include "session/record.h"
#include "store/keep.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <map>
#include <set>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

using Flight = std::pair<int, int>;  // place, round

/// An evening of many flights, with a file of answers for each; the store is closed, for the program to use.
struct Table {
  Evening evening;
  std::string store = (evening.folder / "cellar.oddglass").string();
  std::map<Flight, std::string> files;

  Table(int rounds, int friends) : evening(rounds, 0, friends) {
    evening.seal();
    evening.sitAll();
    for (const Cup& cup : session::record(*evening.store, evening.session).plan.cups) {
      const Flight flight{cup.place.value, cup.round.value};
      if (cup.spare != 0 || cup.position.value != 1 + (flight.first + flight.second) % 3) continue;
      const std::string name = (evening.folder / ("answer-" + std::to_string(flight.first) + '-' + std::to_string(flight.second) + ".csv")).string();
      const std::string head = std::to_string(flight.first) + ',' + std::to_string(flight.second) + ',';
      std::ofstream(name) << "place,round,item,code,value\n" << head << "choose,," << cup.code.value << '\n' << head << "sureness,,2\n" << head << "clue,,1\n" << head << "words,,plain words\n";
      files[flight] = name;
    }
    evening.store.reset();
  }

  std::vector<std::string> command(const std::vector<std::string>& more) const {
    std::vector<std::string> all{"--store", store};
    all.insert(all.end(), more.begin(), more.end());
    return all;
  }
  std::vector<std::string> answer(const Flight& flight) const { return command({"answer", evening.session.text, files.at(flight)}); }

  std::unique_ptr<store::Store> open(store::Access access) { return store::Store::open(store, access, evening.clock, evening.chance); }

  /// Flights locked at each place, in the order of rounds.
  std::map<int, int> locked() {
    const auto reader = open(store::Access::read);
    std::map<int, int> rounds;
    for (const auto& place : tasting::board(*reader, evening.session).places) rounds[place.place.value] = place.lockedRounds;
    return rounds;
  }
};

bool acknowledges(const std::string& out, const Flight& flight) {
  return out.find("Place " + std::to_string(flight.first) + " locked round " + std::to_string(flight.second) + ".\n") != std::string::npos;
}

/// After the close and the reveal, every hand-in is whole and the record holds.
void requireWhole(Table& table, const std::set<Flight>& stored) {
  const auto store = table.open(store::Access::write);
  CHECK(store::isWhole(*store));
  session::reveal(*store, table.evening.clock, table.evening.session);
  const session::SessionRecord record = session::record(*store, table.evening.session);
  std::set<Flight> found;
  for (const session::RecordedHandIn& in : record.handIns) {
    found.insert({in.place.value, in.round.value});
    CHECK(in.replies.size() == 4);
    CHECK(in.words.size() == 1);
  }
  CHECK(found == stored);
  CHECK(session::check(record).holds());
}

}  // namespace

TEST_CASE("the program itself: exit status, one object, one line") {
  Folder folder;
  const std::string store = (folder / "cellar.oddglass").string();
  Child good({"--json", "count", "--method", "triangle", "--trials", "18", "--correct", "12"});
  CHECK(good.end() == 0);
  CHECK(nlohmann::json::parse(good.out).at("critical") == 10);
  Child bad({"--json", "count", "--method", "triangle", "--trials", "18", "--correct", "19"});
  CHECK(bad.end() == 2);
  CHECK(nlohmann::json::parse(bad.out).at("error").at("argument") == "--correct");
  Child none({"--store", store, "list"});
  CHECK(none.end() == 2);
  CHECK(none.out.empty());
  // From the build folder the demo is found without being told where it lies.
  Child demo({"--store", store, "--json", "demo"});
  CHECK(demo.end() == 0);
  CHECK(nlohmann::json::parse(demo.out).at("sessions").size() == demoEvenings());
  Child list({"--store", store, "--json", "list"});
  CHECK(list.end() == 0);
  CHECK(nlohmann::json::parse(list.out).at("sessions").size() == demoEvenings() + 1);  // and the one that waits
}

TEST_CASE("killed at random moments while answering: what was acknowledged is there, and the store opens") {
  Table table(4, 11);
  std::mt19937 dice(2026);
  std::set<Flight> acknowledged;
  int killedUnheard = 0, stays = 0;

  // The first one runs to its end, which tells how long an answer takes on this machine.
  const Flight first{1, 1};
  const auto began = std::chrono::steady_clock::now();
  Child whole(table.answer(first));
  REQUIRE(whole.end() == 0);
  REQUIRE(acknowledges(whole.out, first));
  acknowledged.insert(first);
  const auto usual = std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - began);

  for (const auto& [flight, file] : table.files) {
    if (flight == first) continue;
    for (int attempt = 0;; ++attempt) {
      Child child(table.answer(flight));
      const auto moment = attempt == 8 ? std::chrono::microseconds(std::chrono::hours(1)) : usual * static_cast<int>(dice() % 150) / 100;
      if (!child.speaksWithin(moment)) child.killNow();
      else if (dice() % 2 == 0) child.killNow();
      else child.end();
      const bool heard = acknowledges(child.out, flight);
      if (heard) acknowledged.insert(flight);
      const auto locked = table.locked();
      for (const Flight& each : acknowledged) CHECK(locked.at(each.first) >= each.second);
      if (!heard) ++killedUnheard;
      if (!heard && locked.at(flight.first) >= flight.second) ++stays;  // on disk, but nobody heard of it
      if (heard || locked.at(flight.first) >= flight.second) break;
    }
  }
  WARN("answers: " << table.files.size() << ", killed before a word was heard: " << killedUnheard << ", of these on disk: " << stays);
  CHECK(killedUnheard > 0);
  CHECK(acknowledged.size() > 1);
  // The same file once more is the same hand-in, or the one that is missing.
  for (const auto& [flight, file] : table.files) {
    Child again(table.answer(flight));
    CHECK(again.end() == 0);
    CHECK(acknowledges(again.out, flight));
  }
  Child close(table.command({"close", table.evening.session.text}));
  CHECK(close.end() == 0);
  std::set<Flight> all;
  for (const auto& [flight, file] : table.files) all.insert(flight);
  requireWhole(table, all);
}

TEST_CASE("answers that race with the close are stored or refused, never half") {
  for (unsigned seed = 1; seed <= 4; ++seed) {
    Table table(1, 11);
    std::mt19937 dice(seed);
    std::vector<std::pair<Flight, std::unique_ptr<Child>>> racers;
    std::vector<Flight> flights;
    for (const auto& [flight, file] : table.files) flights.push_back(flight);
    std::shuffle(flights.begin(), flights.end(), dice);
    Child first(table.answer(flights[0]));
    REQUIRE(first.end() == 0);
    std::set<Flight> stored{flights[0]};
    std::unique_ptr<Child> close;
    const std::size_t turn = 1 + dice() % (flights.size() - 1);
    for (std::size_t i = 1; i < flights.size(); ++i) {
      if (i == turn) close = std::make_unique<Child>(table.command({"close", table.evening.session.text}));
      racers.emplace_back(flights[i], std::make_unique<Child>(table.answer(flights[i])));
    }
    bool isClosed = close->end() == 0;
    for (auto& [flight, child] : racers) {
      const int status = child->end();
      INFO(child->out);
      CHECK((status == 0 || status == 2));
      CHECK((status == 0) == acknowledges(child->out, flight));
      if (status == 0) stored.insert(flight);
    }
    if (!isClosed) {
      Child later(table.command({"close", table.evening.session.text}));
      isClosed = later.end() == 0;
    }
    REQUIRE(isClosed);
    requireWhole(table, stored);
  }
}
