#include "ui/shelf_model.h"

#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/numbers.h"

namespace oddglass::ui {

ShelfModel::ShelfModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_beverages(BeverageRow::staticMetaObject, this) {}

void ShelfModel::setWanted(const QString& wanted) {
  if (wanted == m_wanted) return;
  m_wanted = wanted;
  load();
  emit changed();
}

void ShelfModel::setArchivedShown(bool shown) {
  if (shown == m_archivedShown) return;
  m_archivedShown = shown;
  load();
  emit changed();
}

void ShelfModel::load() {
  askNewest(m_lane, [wanted = plain(m_wanted), archived = m_archivedShown](Cellar& cellar, const std::stop_token&) {
    return shelf::find(cellar.store(), wanted, archived);
  }, [this](std::vector<shelf::OnShelf> all) {
    m_all = std::move(all);
    std::vector<BeverageRow> rows;
    for (const shelf::OnShelf& on : m_all) {
      BeverageRow row;
      row.name = shown(on.beverage.name);
      row.line = on.lots == 0 ? tr("%1. No bottles yet.").arg(drinkLine(on.beverage))
                              : tr("%1. %2 on the shelf.").arg(drinkLine(on.beverage), shown(words::bottles(voice(), on.bottles)));
      row.archived = on.beverage.archived;
      rows.push_back(row);
    }
    m_beverages.set(rows);
    m_anything = !m_all.empty() || !m_wanted.isEmpty();
    m_loaded = true;
    emit changed();
  });
}

void ShelfModel::open(int row) { emit beverageRequested(m_all.at(static_cast<std::size_t>(row)).beverage.id); }

void ShelfModel::add() { emit newBeverageRequested(); }

}  // namespace oddglass::ui
