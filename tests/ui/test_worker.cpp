#include "ui/worker.h"

#include "blinding/chance.h"

#include <QtTest/QTest>
#include <catch2/catch.hpp>
#include <future>
#include <vector>

using namespace oddglass;

namespace {

struct Bench {
  SystemClock clock;
  blinding::SystemChance chance;
  ui::Worker worker{std::make_unique<ui::Cellar>([]() -> std::unique_ptr<store::Store> { throw Problem(Trouble::storeMissing, "store"); }, clock, chance)};
};

void fail(const Problem& problem) { FAIL(problem.what()); }

}  // namespace

TEST_CASE("jobs come back in the order in which they were asked for") {
  Bench bench;
  std::vector<int> order;
  for (int i = 0; i < 20; ++i) bench.worker.run([i](ui::Cellar&) { return i; }, [&order](int done) { order.push_back(done); }, fail);
  REQUIRE(QTest::qWaitFor([&] { return !bench.worker.isBusy(); }, 30000));
  REQUIRE(order.size() == 20);
  for (int i = 0; i < 20; ++i) CHECK(order[static_cast<std::size_t>(i)] == i);
}

TEST_CASE("of a lane only the newest result arrives") {
  Bench bench;
  ui::Lane lane;
  std::promise<void> gate;
  std::shared_future<void> opened = gate.get_future().share();
  std::vector<int> arrived;
  for (int i = 0; i < 5; ++i)
    bench.worker.runNewest(lane, [i, opened](ui::Cellar&, const std::stop_token&) {
      opened.wait();
      return i;
    }, [&arrived](int done) { arrived.push_back(done); }, fail);
  gate.set_value();
  REQUIRE(QTest::qWaitFor([&] { return !bench.worker.isBusy(); }, 30000));
  CHECK(arrived == std::vector<int>{4});
}

TEST_CASE("a running job of a lane is told to stop by the next one") {
  Bench bench;
  ui::Lane lane;
  std::promise<void> running;
  bool stopped = false;
  bench.worker.runNewest(lane, [&](ui::Cellar&, const std::stop_token& stop) {
    running.set_value();
    while (!stop.stop_requested()) std::this_thread::yield();
    stopped = true;
  }, [] { FAIL("a late result arrived"); }, fail);
  running.get_future().wait();
  bool second = false;
  bench.worker.runNewest(lane, [](ui::Cellar&, const std::stop_token&) {}, [&second] { second = true; }, fail);
  REQUIRE(QTest::qWaitFor([&] { return !bench.worker.isBusy(); }, 30000));
  CHECK(stopped);
  CHECK(second);
}

TEST_CASE("a problem comes back as a problem, and the next job runs") {
  Bench bench;
  std::optional<Trouble> trouble;
  bench.worker.run([](ui::Cellar& cellar) { cellar.store(); }, [] { FAIL("nothing was there to open"); },
                   [&trouble](const Problem& problem) { trouble = problem.trouble(); });
  bool ran = false;
  bench.worker.run([](ui::Cellar&) {}, [&ran] { ran = true; }, fail);
  REQUIRE(QTest::qWaitFor([&] { return !bench.worker.isBusy(); }, 30000));
  CHECK(trouble == Trouble::storeMissing);
  CHECK(ran);
}

TEST_CASE("what was asked for is done even when the program ends") {
  int done = 0;
  {
    Bench bench;
    for (int i = 0; i < 50; ++i) bench.worker.run([&done](ui::Cellar&) { ++done; }, [] {}, fail);
  }
  CHECK(done == 50);
}
