#pragma once
#include "print/label_sheet.h"

#include <QSettings>
#include <QString>

namespace oddglass::ui {

/// What this machine's printer takes: the size of its paper, and how its labels lie. Kept with the machine's other wishes; nothing about people or drinks is in it.
class PaperWishes {
 public:
  /// Reads and writes the settings file at `path`.
  explicit PaperWishes(const QString& path) : m_settings(path, QSettings::IniFormat) {}
  /// What was used last; before that Letter where inches are at home, else A4.
  print::PaperSize size() const;
  void keep(print::PaperSize size);
  /// What was used last, if it fits on a paper at all.
  print::LabelSheet labels() const;
  /// All but the labels that a begun sheet lacks.
  void keep(const print::LabelSheet& labels);

 private:
  QSettings m_settings;
};

}  // namespace oddglass::ui
