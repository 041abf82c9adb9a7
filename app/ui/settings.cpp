#include "ui/settings.h"

#include <QStandardPaths>

namespace oddglass::ui {

QString settingsFile() { return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) + QStringLiteral("/oddglass/window.ini"); }

}  // namespace oddglass::ui
