#include "ui/worker.h"

#include "shelf/undo.h"

namespace oddglass::ui {

store::Store& Cellar::store() {
  if (!m_store) {
    m_store = m_open();
    if (m_store->access() == store::Access::write) shelf::rememberChanges(*m_store);
  }
  return *m_store;
}

Worker::Worker(std::unique_ptr<Cellar> cellar, std::chrono::milliseconds patience)
    : m_cellar(std::move(cellar)), m_thread([this](const std::stop_token& stop) { work(stop); }) {
  m_patience.setSingleShot(true);
  m_patience.setInterval(patience);
  connect(&m_patience, &QTimer::timeout, this, [this] { setSlow(true); });
}

Worker::~Worker() {
  m_thread.request_stop();
  m_thread.join();
}

void Worker::put(std::function<void(Cellar&)> job) {
  if (++m_unfinished == 1) {
    m_patience.start();
    emit busyChanged();
  }
  {
    const std::lock_guard hold(m_guard);
    m_jobs.push_back(std::move(job));
  }
  m_wake.notify_one();
}

void Worker::deliver(std::function<void()> result) {
  QMetaObject::invokeMethod(
      this,
      [this, result = std::move(result)] {
        result();
        if (--m_unfinished > 0) return;
        m_patience.stop();
        setSlow(false);
        emit busyChanged();
      },
      Qt::QueuedConnection);
}

void Worker::setSlow(bool slow) {
  if (m_slow == slow) return;
  m_slow = slow;
  emit slowChanged();
}

void Worker::work(const std::stop_token& stop) {
  for (;;) {
    std::function<void(Cellar&)> job;
    {
      std::unique_lock hold(m_guard);
      m_wake.wait(hold, stop, [this] { return !m_jobs.empty(); });
      if (m_jobs.empty()) break;
      job = std::move(m_jobs.front());
      m_jobs.pop_front();
    }
    job(*m_cellar);
  }
  m_cellar->close();
}

}  // namespace oddglass::ui
