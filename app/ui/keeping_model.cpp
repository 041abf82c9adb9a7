#include "ui/keeping_model.h"

#include "exchange/take_in.h"
#include "exchange/write_out.h"
#include "shelf/rules.h"
#include "store/keep.h"
#include "ui/kinds.h"
#include "ui/voice.h"

#include <QUrl>
#include <algorithm>

namespace oddglass::ui {
namespace {

/// A path as typed, or as a file manager gives it.
std::filesystem::path pathOf(const QString& typed, const char* argument) {
  const QString text = typed.trimmed();
  if (text.isEmpty()) throw Problem(Trouble::empty, argument);
  const QUrl url(text);
  return std::filesystem::path((url.isLocalFile() ? url.toLocalFile() : text).toStdString());
}

QString whyWord(store::BackupReason reason) {
  switch (reason) {
    case store::BackupReason::asked: return KeepingModel::tr("asked for");
    case store::BackupReason::beforeMigration: return KeepingModel::tr("before the file was brought up to date");
    case store::BackupReason::afterReveal: return KeepingModel::tr("after a key was opened");
    case store::BackupReason::beforeRestore: return KeepingModel::tr("before a backup was put back");
  }
  return {};
}

}  // namespace

struct KeepingModel::Read {
  std::filesystem::path file;
  std::vector<store::Backup> backups;
  HouseRules rules;
};

KeepingModel::KeepingModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_backups(BackupRow::staticMetaObject, this) {
  nameFields({"restore", "import", "out", "ceiling_grams", "country"});
}

KeepingModel::Read KeepingModel::read(Cellar& cellar) {
  store::Store& store = cellar.store();
  return {store.file(), store::backups(store), shelf::rules(store)};
}

void KeepingModel::load() {
  m_told.clear();
  ask([](Cellar& cellar) { return read(cellar); }, [this](const Read& read) {
    m_ceiling = QString::number(read.rules.ceilingGrams);
    m_country = shown(read.rules.country);
    if (m_exportTo.isEmpty()) m_exportTo = QString::fromStdString((read.file.parent_path() / "exports").string());
    fill(read);
  });
}

void KeepingModel::sayAgain() {
  m_told.clear();
  ask([](Cellar& cellar) { return read(cellar); }, [this](const Read& read) { fill(read); });
}

void KeepingModel::fill(const Read& read) {
  m_file = QString::fromStdString(read.file.string());
  std::vector<BackupRow> rows;
  for (const store::Backup& backup : read.backups) {
    BackupRow row;
    row.when = tr("%1 %2").arg(shown(words::day(voice(), backup.at)), shown(words::timeOfDay(voice(), backup.at)));
    row.why = backup.isThere ? whyWord(backup.reason) : tr("%1; the file is gone").arg(whyWord(backup.reason));
    row.file = QString::fromStdString(backup.file.string());
    row.there = backup.isThere;
    rows.push_back(row);
  }
  m_backups.set(rows);
  emit changed();
}

void KeepingModel::backUp() {
  ask([](Cellar& cellar) {
    const auto file = store::keepCopy(cellar.store(), cellar.clock, store::BackupReason::asked);
    return std::pair(file, read(cellar));
  }, [this](const std::pair<std::filesystem::path, Read>& done) {
    m_told = tr("Backed up to %1. Keep a copy on another disk too.").arg(QString::fromStdString(done.first.string()));
    fill(done.second);
  });
}

void KeepingModel::check() {
  ask([](Cellar& cellar) { return store::isWhole(cellar.store()); }, [this](bool whole) {
    m_told = whole ? tr("The file is whole.") : tr("The file is damaged. Close the program, keep this file, and put a backup back.");
    emit changed();
  });
}

void KeepingModel::pickBackup(int row) {
  m_restoreFrom = m_backups.at<BackupRow>(row).file;
  emit changed();
}

void KeepingModel::restore() {
  try {
    ask([copy = pathOf(m_restoreFrom, "restore")](Cellar& cellar) {
      const std::filesystem::path file = cellar.store().file();
      cellar.close();
      const auto kept = store::restore(file, copy, cellar.clock, cellar.chance);
      return std::pair(kept, read(cellar));
    }, [this](const std::pair<std::filesystem::path, Read>& done) {
      m_stage.current.clear();
      m_told = tr("The backup is in place. What stood here before is kept at %1.").arg(QString::fromStdString(done.first.string()));
      fill(done.second);
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void KeepingModel::importFile() {
  try {
    ask([file = pathOf(m_importFrom, "import")](Cellar& cellar) {
      const exchange::Brought brought = exchange::importFile(cellar.store(), cellar.clock, cellar.chance, file);
      return std::pair(brought, read(cellar));
    }, [this](const std::pair<exchange::Brought, Read>& done) {
      const exchange::Brought& brought = done.first;
      m_told = tr("Taken in: sessions %1, series %2, drinks %3, lots %4, people %5. Here already, and left as they are: %6.")
                   .arg(brought.sessions.size()).arg(brought.series).arg(brought.beverages).arg(brought.lots).arg(brought.tasters).arg(brought.alreadyThere);
      if (!brought.leftOut.empty()) m_told += tr(" Still sealed where the file was written, and not to be carried on here: %1.").arg(brought.leftOut.size());
      fill(done.second);
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void KeepingModel::exportAll() {
  try {
    ask([folder = pathOf(m_exportTo, "out")](Cellar& cellar) { return exchange::exportAllJson(cellar.store(), cellar.clock, folder); },
        [this](const std::filesystem::path& file) {
          m_told = tr("Written to %1. Of sealed sessions it holds the plan only.").arg(QString::fromStdString(file.string()));
          emit changed();
        });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void KeepingModel::settleRules() {
  try {
    HouseRules rules;
    rules.ceilingGrams = typedWhole(m_ceiling, "ceiling_grams");
    rules.country = plain(m_country.trimmed().toUpper());
    ask([rules](Cellar& cellar) {
      shelf::settle(cellar.store(), rules);
      return read(cellar);
    }, [this](const Read& read) {
      m_told = tr("Settled.");
      fill(read);
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void KeepingModel::stepCeiling(int by) {
  m_ceiling = QString::number(std::clamp(m_ceiling.toInt() + by, 1, 100));
  emit changed();
}

}  // namespace oddglass::ui
