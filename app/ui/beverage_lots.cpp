// The lots of a drink: their form, and what comes and goes.
#include "ui/beverage_model.h"

#include "domain/names.h"
#include "shelf/lots.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/numbers.h"
#include "words/units.h"

#include <algorithm>

namespace oddglass::ui {

void BeverageModel::newLot() {
  m_lotAt = -1;
  m_lotName = m_lotPackaged = m_lotBest = m_lotStorage = m_lotSource = QString();
  m_lotMl = shown(words::volumeTyped(voice(), usualBottleMl));
  m_lotOpen = true;
  emit changed();
}

void BeverageModel::editLot(int row) {
  const Lot& lot = m_lotValues.at(static_cast<std::size_t>(row));
  m_lotAt = row;
  m_lotName = shown(lot.name);
  m_lotPackaged = shown(lot.packagedOn);
  m_lotBest = shown(lot.bestBefore);
  m_lotMl = shown(words::volumeTyped(voice(), lot.bottleMl));
  m_lotStorage = shown(lot.storage);
  m_lotSource = shown(lot.source);
  m_lotOpen = true;
  emit changed();
}

void BeverageModel::leaveLot() {
  m_lotOpen = false;
  settle();
  emit changed();
}

void BeverageModel::saveLot() {
  try {
    Lot lot;
    if (m_lotAt >= 0) lot = m_lotValues.at(static_cast<std::size_t>(m_lotAt));
    lot.beverage = m_id;
    lot.name = plain(m_lotName);
    lot.packagedOn = plain(m_lotPackaged.trimmed());
    lot.bestBefore = plain(m_lotBest.trimmed());
    lot.bottleMl = typedVolume(m_lotMl, "bottle_ml");
    lot.storage = plain(m_lotStorage);
    lot.source = plain(m_lotSource);
    changeShelf([lot, id = m_id](Cellar& cellar) {
      try {
        shelf::save(cellar.store(), cellar.chance, lot);
      } catch (const Problem& problem) {
        // The page has two names to fill in: this one is the lot's.
        if (problem.argument() == "name") throw Problem(problem.trouble(), "lot_name", problem.values());
        throw;
      }
      return read(cellar.store(), id);
    }, [this](const Read& read) {
      const bool isNew = m_lotAt < 0;
      m_lotOpen = false;
      std::vector<LotId> before;
      for (const Lot& known : m_lotValues) before.push_back(known.id);
      fill(read);
      for (std::size_t i = 0; isNew && i < m_lotValues.size(); ++i)
        if (std::find(before.begin(), before.end(), m_lotValues[i].id) == before.end()) startMove(static_cast<int>(i));
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void BeverageModel::archiveLot(int row) {
  const Lot lot = m_lotValues.at(static_cast<std::size_t>(row));
  changeShelf([lot, id = m_id](Cellar& cellar) {
    if (lot.archived) shelf::bringBackLot(cellar.store(), lot.id);
    else shelf::archiveLot(cellar.store(), cellar.clock, lot.id);
    return read(cellar.store(), id);
  }, [this](const Read& read) { fill(read); });
}

void BeverageModel::startMove(int row) {
  m_moveAt = row;
  m_moveLot = shown(m_lotValues.at(static_cast<std::size_t>(row)).name);
  m_moveKind = 0;
  m_moveBottles.clear();
  emit changed();
}

void BeverageModel::leaveMove() {
  m_moveLot.clear();
  settle();
  emit changed();
}

void BeverageModel::saveMove() {
  try {
    const LotId lot = m_lotValues.at(static_cast<std::size_t>(m_moveAt)).id;
    const int bottles = typedWhole(m_moveBottles, "bottles");
    const auto change = static_cast<StockChange>(m_moveKind);
    changeShelf([lot, bottles, change, id = m_id](Cellar& cellar) {
      if (change == StockChange::counted) shelf::count(cellar.store(), cellar.clock, lot, bottles);
      else shelf::move(cellar.store(), cellar.clock, lot, change, bottles);
      return read(cellar.store(), id);
    }, [this](const Read& read) {
      m_moveLot.clear();
      fill(read);
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

}  // namespace oddglass::ui
