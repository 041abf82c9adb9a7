#include "ui/worker.h"

#include "blinding/chance.h"
#include "insight/sheet_findings.h"
#include "insight/sheet_table.h"
#include "report/sheet_pictures.h"
#include "words/sheet_out.h"

#include <QTimer>
#include <QtTest/QTest>
#include <atomic>
#include <catch2/catch.hpp>
#include <future>
#include <semaphore>

using namespace oddglass;

namespace {

/// A sheet with so many people, drinks and words.
RevealedSession largeSheet(int people, int lots, int words) {
  std::vector<LotRole> roles(static_cast<std::size_t>(lots), LotRole::compared);
  roles.back() = LotRole::reference;
  testing::SheetTable table(lots, roles);
  for (int word = 1; word <= words; ++word) {
    const Item item = table.ask(ItemKind::line, "word " + std::to_string(word), 10, word <= 5);
    for (int place = 1; place <= people; ++place)
      for (int lot = 1; lot <= lots; ++lot) table.say(place, item, lot, (place * 7 + lot * 13 + word * word * lot) % 101);
  }
  table.session.commitmentHolds = true;
  return table.session;
}

std::unique_ptr<ui::Cellar> noCellar(Clock& clock, Chance& chance) {
  return std::make_unique<ui::Cellar>([]() -> std::unique_ptr<store::Store> { throw Problem(Trouble::storeMissing, "store"); }, clock, chance);
}

}  // namespace

// The job does not end before the window's thread has gone on twenty times since the job began: were that thread to wait for the job, both would stand
// still, and the beats would not come.
TEST_CASE("the window goes on while a large sheet is worked out") {
  SystemClock clock;
  blinding::SystemChance chance;
  ui::Worker worker(noCellar(clock, chance));
  const RevealedSession session = largeSheet(60, 12, 40);
  std::counting_semaphore<> beats(0);
  std::atomic<bool> begun = false;
  QTimer heart;
  QObject::connect(&heart, &QTimer::timeout, &heart, [&] {
    if (begun) beats.release();
  });
  heart.start(0);
  struct Came {
    std::size_t questions = 0, figures = 0;
    int heard = 0;
    std::thread::id thread;
  } came;
  const auto work = [&](ui::Cellar&) {
    begun = true;
    Came made;
    made.thread = std::this_thread::get_id();
    const auto findings = insight::sheetFindingsOf(session);
    const words::CameOut out = words::sheetOut(words::Voice{}, session, findings);
    made.questions = findings.points.size();
    made.figures = report::sheetDrawings(words::Voice{}, session, findings, out).sections.size();
    while (made.heard < 20 && beats.try_acquire_for(std::chrono::seconds(60))) ++made.heard;
    return made;
  };
  worker.run(work, [&](const Came& made) { came = made; }, [](const Problem& problem) { FAIL(problem.what()); });
  REQUIRE(QTest::qWaitFor([&] { return !worker.isBusy(); }, 300000));
  CHECK(came.heard == 20);
  CHECK(came.questions == 40);
  CHECK(came.figures == 40);
  CHECK(came.thread != std::thread::id());
  CHECK(came.thread != std::this_thread::get_id());
}

TEST_CASE("work that takes longer than the patience is told, until it ends") {
  SystemClock clock;
  blinding::SystemChance chance;
  ui::Worker worker(noCellar(clock, chance), std::chrono::milliseconds(1));
  std::promise<void> gate;
  std::shared_future<void> opened = gate.get_future().share();
  int told = 0;
  QObject::connect(&worker, &ui::Worker::slowChanged, &worker, [&] { ++told; });
  worker.run([opened](ui::Cellar&) { opened.wait(); }, [] {}, [](const Problem& problem) { FAIL(problem.what()); });
  CHECK_FALSE(worker.isSlow());
  REQUIRE(QTest::qWaitFor([&] { return worker.isSlow(); }, 60000));
  CHECK(worker.isBusy());
  gate.set_value();
  REQUIRE(QTest::qWaitFor([&] { return !worker.isBusy(); }, 60000));
  CHECK_FALSE(worker.isSlow());
  CHECK(told == 2);
}
