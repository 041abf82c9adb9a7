#pragma once
#include <QObject>
#include "ui/page_model.h"
#include "ui/rows.h"

#include <filesystem>
#include <vector>

namespace oddglass::ui {

/// One backup.
struct BackupRow {
  Q_GADGET
  Q_PROPERTY(QString when MEMBER when)
  Q_PROPERTY(QString why MEMBER why)
  Q_PROPERTY(QString file MEMBER file)
  Q_PROPERTY(bool there MEMBER there)

public:
  QString when, why, file;
  bool there = false;
};

/// Keeping: backups, a check of the file, files in and out, and what the host has settled for this machine.
class KeepingModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString file MEMBER m_file NOTIFY changed)
  Q_PROPERTY(QString told MEMBER m_told NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* backups READ backups CONSTANT)
  Q_PROPERTY(QString restoreFrom MEMBER m_restoreFrom NOTIFY changed)
  Q_PROPERTY(QString importFrom MEMBER m_importFrom NOTIFY changed)
  Q_PROPERTY(QString exportTo MEMBER m_exportTo NOTIFY changed)
  Q_PROPERTY(QString ceiling MEMBER m_ceiling NOTIFY changed)
  Q_PROPERTY(QString country MEMBER m_country NOTIFY changed)

public:
  KeepingModel(const Stage& stage, QObject* parent);
  Rows* backups() { return &m_backups; }
  Q_INVOKABLE void load();
  /// The same words in the language that was chosen now; what is typed stays.
  void sayAgain();
  Q_INVOKABLE void backUp();
  Q_INVOKABLE void check();
  /// Takes the path of a listed backup into the field.
  Q_INVOKABLE void pickBackup(int row);
  Q_INVOKABLE void restore();
  Q_INVOKABLE void importFile();
  Q_INVOKABLE void exportAll();
  Q_INVOKABLE void settleRules();
  Q_INVOKABLE void stepCeiling(int by);

private:
  struct Read;
  static Read read(Cellar& cellar);
  void fill(const Read& read);
  QString m_file, m_told, m_restoreFrom, m_importFrom, m_exportTo, m_ceiling, m_country;
  Rows m_backups;
};

}  // namespace oddglass::ui
