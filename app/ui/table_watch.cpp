#include "ui/table_watch.h"

#include "tasting/board.h"

namespace oddglass::ui {

TableWatch::TableWatch(const Stage& stage, QObject* parent) : PageModel(stage, parent) {
  connect(&stage.router, &Router::pageChanged, this, &TableWatch::look);
  connect(&stage.current, &Current::changed, this, &TableWatch::look);
}

void TableWatch::look() {
  const SessionId id = m_stage.current.id();
  if (id.empty()) return show(false);
  // What goes wrong with the file is said where something is asked of it.
  m_stage.worker.runNewest(m_lane, [id](Cellar& cellar, const std::stop_token&) { return tasting::board(cellar.store(), id).state == State::tasting; },
                           [this](bool open) { show(open); }, [this](const Problem&) { show(false); });
}

void TableWatch::show(bool open) {
  const Router::Page page = m_stage.router.page();
  m_awake.setNeeded(page == Router::Page::PourSheet || page == Router::Page::Alone || (open && Router::isTasting(page)));
  if (open == m_open) return;
  m_open = open;
  emit changed();
}

}  // namespace oddglass::ui
