#pragma once
#include <QObject>
#include "domain/chance.h"
#include "domain/problem.h"
#include "store/store.h"

#include <QTimer>
#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <type_traits>

namespace oddglass::ui {

/// What a job is given: the store, the clock and chance. Used on the worker's thread only.
class Cellar {
public:
  using Open = std::function<std::unique_ptr<store::Store>()>;
  Cellar(Open open, Clock& ofRecord, Chance& system) : clock(ofRecord), chance(system), m_open(std::move(open)) {}
  /// The store, opened at the first call; what is changed on its shelf from then on can be taken back. Throws what opening throws.
  store::Store& store();
  /// Lets go of the file, for a restore; the next `store()` opens it again.
  void close() { m_store.reset(); }

  Clock& clock;
  Chance& chance;

private:
  Open m_open;
  std::unique_ptr<store::Store> m_store;
};

/// Jobs of which only the newest matters, such as working a plan out while its numbers are typed.
struct Lane {
  std::uint64_t newest = 0;
  std::stop_source stop;
};

/// The one thread that opens the store. Jobs run one after the other, in order; their results come back on the window's thread.
class Worker : public QObject {
  Q_OBJECT
  Q_PROPERTY(bool busy READ isBusy NOTIFY busyChanged)
  Q_PROPERTY(bool slow READ isSlow NOTIFY slowChanged)

public:
  using Job = std::function<void(Cellar&, const std::stop_token&)>;

  /// `patience`: how long it may be busy before people are told so.
  explicit Worker(std::unique_ptr<Cellar> cellar, std::chrono::milliseconds patience = std::chrono::milliseconds(500));
  /// Finishes the jobs that are waiting, so that nothing that was asked for is lost.
  ~Worker() override;

  /// Runs `work(cellar)` on the worker's thread, then `done(result)` here; when it throws, `failed(problem)`.
  template <class Work, class Done, class Failed>
  void run(Work work, Done done, Failed failed) {
    start(nullptr, [work = std::move(work)](Cellar& cellar, const std::stop_token&) mutable { return work(cellar); },
          std::move(done), std::move(failed));
  }
  /// The same with `work(cellar, stop)`; a newer job of the lane stops this one, and a late result is dropped. `lane` must outlive the worker's job.
  template <class Work, class Done, class Failed>
  void runNewest(Lane& lane, Work work, Done done, Failed failed) {
    start(&lane, std::move(work), std::move(done), std::move(failed));
  }
  bool isBusy() const { return m_unfinished > 0; }
  /// True when it has been busy without a pause for longer than its patience.
  bool isSlow() const { return m_slow; }

signals:
  void busyChanged();
  void slowChanged();

private:
  template <class Work, class Done, class Failed>
  void start(Lane* lane, Work work, Done done, Failed failed) {
    using Result = std::invoke_result_t<Work&, Cellar&, const std::stop_token&>;
    const std::uint64_t number = ++m_last;
    std::stop_token stop;
    if (lane) {
      lane->stop.request_stop();
      lane->stop = std::stop_source();
      lane->newest = number;
      stop = lane->stop.get_token();
    }
    const auto isLate = [lane, number] { return lane && lane->newest != number; };
    put([this, stop, isLate, work = std::move(work), done = std::move(done), failed = std::move(failed)](Cellar& cellar) mutable {
      if (stop.stop_requested()) return deliver([] {});
      try {
        if constexpr (std::is_void_v<Result>) {
          work(cellar, stop);
          deliver([isLate, done = std::move(done)]() mutable { if (!isLate()) done(); });
        } else {
          auto result = std::make_shared<Result>(work(cellar, stop));
          deliver([isLate, result, done = std::move(done)]() mutable { if (!isLate()) done(std::move(*result)); });
        }
      } catch (const Problem& problem) {
        deliver([isLate, problem, failed = std::move(failed)]() mutable { if (!isLate()) failed(problem); });
      } catch (const std::exception& error) {
        const Problem problem(Trouble::storeFailed, "", {{"text", error.what()}});
        deliver([isLate, problem, failed = std::move(failed)]() mutable { if (!isLate()) failed(problem); });
      }
    });
  }
  void put(std::function<void(Cellar&)> job);
  void deliver(std::function<void()> result);
  void work(const std::stop_token& stop);
  void setSlow(bool slow);

  std::unique_ptr<Cellar> m_cellar;
  QTimer m_patience;
  bool m_slow = false;
  std::uint64_t m_last = 0;
  int m_unfinished = 0;
  std::mutex m_guard;
  std::condition_variable_any m_wake;
  std::deque<std::function<void(Cellar&)>> m_jobs;
  std::jthread m_thread;
};

}  // namespace oddglass::ui
