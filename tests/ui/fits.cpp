#include "ui/fits.h"

#include <QAccessible>
#include <QAccessibleInterface>
#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <catch2/catch.hpp>
#include <map>
#include <set>

namespace oddglass::test {

std::string silent(QQuickItem* root) {
  std::string found;
  walk(root, [&](QQuickItem* item) {
    if (!item->activeFocusOnTab() || !item->isEnabled()) return;
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(item);
    if (!spoken || spoken->text(QAccessible::Name).isEmpty()) found += item->objectName().toStdString() + " (" + item->metaObject()->className() + ")\n";
  });
  return found;
}

std::string unclear(QQuickItem* root) {
  // Three digits of which none stands twice, as on the cups.
  static const QRegularExpression code(QStringLiteral("(^|[^0-9.,/-])([1-9])(?!\\2)([0-9])(?!\\2|\\3)[0-9]($|[^0-9%.,/-])"));
  std::string found;
  // The row that a thing stands in is its description.
  std::map<QStringList, int> names;
  walk(root, [&](QQuickItem* item) {
    if (!item->activeFocusOnTab() || !item->isEnabled()) return;
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(item);
    if (!spoken) return;
    const QString name = spoken->text(QAccessible::Name);
    if (spoken->role() == QAccessible::NoRole || spoken->role() == QAccessible::Client) found += "no role: " + item->objectName().toStdString() + "\n";
    if (code.match(name).hasMatch()) found += "a code in one piece: " + name.toStdString() + "\n";
    if (++names[{QString::number(spoken->role()), name, spoken->text(QAccessible::Description)}] == 2) found += "twice on the page: " + name.toStdString() + " (" + item->objectName().toStdString() + ")\n";
  });
  return found;
}

std::string nameless(QQuickItem* root) {
  std::string found;
  walk(root, [&](QQuickItem* item) {
    if (item->activeFocusOnTab() && item->isEnabled() && item->objectName().isEmpty()) found += std::string(item->metaObject()->className()) + "\n";
  });
  return found;
}

bool isShown(Window& at, const std::string& words) {
  bool found = false;
  walk(at.window().contentItem(), [&](QQuickItem* item) { found = found || item->property("text").toString().contains(QString::fromStdString(words)); });
  return found;
}

std::string notGerman(Window& at) {
  static const std::set<QString> english = [] {
    std::set<QString> all;
    QFile file(QStringLiteral(GERMAN_SENTENCES));
    REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader read(&file);
    QString source;
    while (!read.atEnd()) {
      read.readNext();
      if (read.isStartElement() && read.name() == QLatin1String("source")) source = read.readElementText();
      if (read.isStartElement() && read.name() == QLatin1String("translation") && read.readElementText() != source) all.insert(source);
    }
    return all;
  }();
  std::string found;
  walk(at.window().contentItem(), [&](QQuickItem* item) {
    for (const char* said : {"text", "placeholderText"})
      if (const QString text = item->property(said).toString(); english.contains(text)) found += text.toStdString() + "\n";
  });
  return found;
}

std::string cutOff(Window& at) {
  std::string found;
  walk(at.window().contentItem(), [&](QQuickItem* item) {
    if (!item->inherits("QQuickText") || item->property("text").toString().isEmpty()) return;
    const QRectF box = item->mapRectToScene(QRectF(0, 0, item->property("contentWidth").toDouble(), item->height()));
    if (box.left() < -1 || box.right() > at.window().width() + 1) found += item->property("text").toString().toStdString() + "\n";
  });
  return found;
}

const std::vector<Look>& looks() {
  using enum ui::Preferences::Light;
  static const std::vector<Look> all{{"light_1280", 1280, 800, 100, Bright}, {"dark_1280", 1280, 800, 100, Dark}, {"light_900", 900, 600, 100, Bright}, {"dark_900_large", 900, 600, 200, Dark}};
  return all;
}

void wear(Window& at, const Look& look) {
  at.app().preferences()->setLight(look.light);
  at.app().preferences()->setTextPercent(look.textPercent);
  at.window().resize(look.width, look.height);
  at.nextFrame();
}

}  // namespace oddglass::test
