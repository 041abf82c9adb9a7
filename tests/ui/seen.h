#pragma once

#include "ui/window.h"

#include <QImage>
#include <QStringList>

#include <map>

namespace oddglass::test {

/// Everything that somebody at the table could get hold of without the key, page by page.
struct Seen {
  std::map<QString, QStringList> lines;    ///< properties, roles, accessible tree, files, messages: by where it was seen
  std::map<QString, QImage> pictures;      ///< pixels, with the seal mark painted over
};

/// All readable properties of the view models and all roles of their lists, as text.
QStringList propertiesOf(QObject& root);

/// Names, descriptions, values and roles of the accessible tree.
QStringList accessibleTree(QQuickWindow& window);

/// Text without what may differ: 64 hex digits and the seal mark.
QString masked(QString text, const QString& sealMark);

/// Looks at the program as it stands now and keeps it under `where`.
void look(Window& window, const QString& sealMark, const QString& where, Seen& seen);

/// The first difference between two, in words; empty when there is none.
QString difference(const Seen& one, const Seen& other);

}  // namespace oddglass::test
