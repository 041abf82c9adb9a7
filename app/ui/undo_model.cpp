#include "ui/undo_model.h"

#include "shelf/undo.h"
#include "ui/voice.h"
#include "words/shelf_change.h"

namespace oddglass::ui {
namespace {

bool isOfTheShelf(Router::Page page) {
  switch (page) {
    case Router::Page::Shelf:
    case Router::Page::Beverage:
    case Router::Page::People:
    case Router::Page::Words:
    case Router::Page::Word:
    case Router::Page::References: return true;
    default: return false;
  }
}

}  // namespace

UndoModel::UndoModel(const Stage& stage, QObject* parent) : PageModel(stage, parent) {
  connect(&stage.router, &Router::pageChanged, this, [this] {
    if (!isOfTheShelf(m_stage.router.page())) dismiss();
  });
}

void UndoModel::look() {
  ask([](Cellar& cellar) { return shelf::lastChange(cellar.store()); }, [this](std::optional<ShelfChange> last) {
    if (!isOfTheShelf(m_stage.router.page())) return;
    m_last = std::move(last);
    m_line = m_last ? shown(words::shelfChangeLine(voice(), *m_last)) : QString();
    emit changed();
  });
}

void UndoModel::dismiss() {
  if (m_line.isEmpty()) return;
  m_last.reset();
  m_line.clear();
  emit changed();
}

void UndoModel::takeBack() {
  if (!m_last) return;
  ask([number = m_last->number](Cellar& cellar) {
    shelf::takeBack(cellar.store(), cellar.clock, number);
    return shelf::lastChange(cellar.store());
  }, [this](std::optional<ShelfChange> last) {
    if (!isOfTheShelf(m_stage.router.page())) return;
    m_last = std::move(last);
    m_line = m_last ? tr("Taken back. Before that: %1").arg(shown(words::shelfChangeLine(voice(), *m_last))) : tr("Taken back.");
    emit changed();
    emit takenBack();
  });
}

}  // namespace oddglass::ui
