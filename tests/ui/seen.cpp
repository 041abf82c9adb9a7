#include "ui/seen.h"

#include <QAbstractItemModel>
#include <QAccessible>
#include <QMetaProperty>
#include <QPainter>
#include <QRegularExpression>
#include <QTimer>

namespace oddglass::test {
namespace {

QString valueText(const QVariant& value) {
  if (value.canConvert<QStringList>() && value.typeId() == QMetaType::QStringList) return value.toStringList().join(QLatin1Char('|'));
  if (value.typeId() >= QMetaType::User && !value.canConvert<QString>()) return QString::fromLatin1(value.typeName());
  return value.toString();
}

void properties(QObject& object, const QString& path, QStringList& into) {
  const QMetaObject* meta = object.metaObject();
  for (int i = 0; i < meta->propertyCount(); ++i) {
    const QMetaProperty property = meta->property(i);
    // How long a timer still runs is the clock's, not the key's.
    if (qobject_cast<QTimer*>(&object) && QLatin1String(property.name()) == QLatin1String("remainingTime")) continue;
    if (property.isReadable()) into << path + QLatin1Char('.') + QLatin1String(property.name()) + QLatin1String(" = ") + valueText(property.read(&object));
  }
  if (auto* list = qobject_cast<QAbstractItemModel*>(&object)) {
    const auto roles = list->roleNames();
    QList<int> order = roles.keys();
    std::sort(order.begin(), order.end());
    for (int row = 0; row < list->rowCount(); ++row)
      for (int role : order)
        into << QStringLiteral("%1[%2].%3 = %4").arg(path).arg(row).arg(QString::fromLatin1(roles[role]), valueText(list->data(list->index(row, 0), role)));
  }
  int number = 0;
  for (QObject* child : object.children()) {
    // View models keep their lists as members, so those are found through their properties below.
    properties(*child, QStringLiteral("%1/%2#%3").arg(path, QString::fromLatin1(child->metaObject()->className())).arg(number++), into);
  }
  for (int i = 0; i < meta->propertyCount(); ++i) {
    const QVariant value = meta->property(i).read(&object);
    auto* list = qobject_cast<QAbstractItemModel*>(value.value<QObject*>());
    if (list && list->parent() != &object) properties(*list, path + QLatin1Char('>') + QLatin1String(meta->property(i).name()), into);
  }
}

void tree(QAccessibleInterface* from, int depth, QStringList& into) {
  if (!from || !from->isValid()) return;
  QStringList texts;
  for (QAccessible::Text kind : {QAccessible::Name, QAccessible::Description, QAccessible::Value, QAccessible::Help}) texts << from->text(kind);
  into << QStringLiteral("%1 %2 %3").arg(depth).arg(from->role()).arg(texts.join(QLatin1Char('|')));
  for (int i = 0; i < from->childCount(); ++i) tree(from->child(i), depth + 1, into);
}

}  // namespace

QStringList propertiesOf(QObject& root) {
  QStringList lines;
  properties(root, QStringLiteral("app"), lines);
  return lines;
}

QStringList accessibleTree(QQuickWindow& window) {
  QStringList lines;
  tree(QAccessible::queryAccessibleInterface(&window), 0, lines);
  return lines;
}

QString masked(QString text, const QString& sealMark) {
  static const QRegularExpression hash(QStringLiteral("[0-9a-f]{64}"));
  text.replace(hash, QStringLiteral("<hash>"));
  if (!sealMark.isEmpty()) text.replace(sealMark, QStringLiteral("<seal mark>"));
  return text;
}

void look(Window& program, const QString& sealMark, const QString& where, Seen& seen) {
  program.settle();
  const auto keep = [&](const QString& what, const QStringList& lines) {
    for (const QString& line : lines) seen.lines[where + QLatin1String(": ") + what] << masked(line, sealMark);
  };
  keep(QStringLiteral("properties"), propertiesOf(program.app()));
  keep(QStringLiteral("accessible"), accessibleTree(program.window()));
  keep(QStringLiteral("messages"), {QString::fromStdString(program.complaints())});
  QStringList shown;
  QImage picture = program.window().grabWindow();
  QPainter painter(&picture);
  walk(program.window().contentItem(), [&](QQuickItem* item) {
    const QString text = item->property("text").toString();
    shown << text << item->objectName();
    // The seal mark may differ; what stands around it may not. It is one line of fixed width in characters, not in pixels.
    if (!sealMark.isEmpty() && text.contains(sealMark))
      painter.fillRect(item->mapRectToScene({0, 0, item->width(), item->height()}).adjusted(-4, -4, 4, 4), Qt::black);
  });
  painter.end();
  keep(QStringLiteral("texts"), shown);
  seen.pictures[where] = picture;
}

QString difference(const Seen& one, const Seen& other) {
  if (one.lines.size() != other.lines.size() || one.pictures.size() != other.pictures.size()) return QStringLiteral("something was seen on one side only");
  for (const auto& [where, lines] : one.lines) {
    const auto there = other.lines.find(where);
    if (there == other.lines.end()) return where + QStringLiteral(" was seen on one side only");
    for (qsizetype i = 0; i < std::max(lines.size(), there->second.size()); ++i)
      if (lines.value(i) != there->second.value(i)) return QStringLiteral("%1:\n  %2\n  %3").arg(where, lines.value(i), there->second.value(i));
  }
  for (const auto& [where, picture] : one.pictures) {
    const auto there = other.pictures.find(where);
    if (there == other.pictures.end() || there->second != picture) return QStringLiteral("the pixels of ") + where;
  }
  return {};
}

}  // namespace oddglass::test
