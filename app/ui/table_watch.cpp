#include "ui/table_watch.h"

#include "tasting/board.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

/// Somebody sits there and it is not over.
bool isTaken(const tasting::Board& board) {
  const auto sits = [](const tasting::BoardPlace& place) { return place.step != tasting::PlaceStep::empty; };
  return board.state == State::tasting || (board.state == State::sealed && std::ranges::any_of(board.places, sits));
}

}  // namespace

TableWatch::TableWatch(const Stage& stage, QObject* parent) : PageModel(stage, parent) {
  connect(&stage.router, &Router::pageChanged, this, &TableWatch::look);
  connect(&stage.current, &Current::changed, this, &TableWatch::look);
}

void TableWatch::look() {
  const SessionId id = m_stage.current.id();
  if (id.empty()) return show(false);
  // What goes wrong with the file is said where something is asked of it.
  m_stage.worker.runNewest(m_lane, [id](Cellar& cellar, const std::stop_token&) { return isTaken(tasting::board(cellar.store(), id)); },
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
