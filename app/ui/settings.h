#pragma once
#include <QString>

namespace oddglass::ui {

/// Where this machine's own wishes are kept: $XDG_CONFIG_HOME/oddglass/window.ini, or what the system uses in its place.
QString settingsFile();

}  // namespace oddglass::ui
