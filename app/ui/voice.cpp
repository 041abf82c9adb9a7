#include "ui/voice.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace oddglass::ui {

const words::Voice& voice() {
  static const words::Voice window = [] {
    words::Voice made;
    made.translate = [](const char* context, const char* source) { return QCoreApplication::translate(context, source).toStdString(); };
    made.decimal = QLocale().decimalPoint().toStdString();
    made.group = QLocale().groupSeparator().toStdString();
    made.timeOfDay = [](Millis at) { return QDateTime::fromMSecsSinceEpoch(at).toString(QStringLiteral("HH:mm")).toStdString(); };
    made.day = [](Millis at) { return QDateTime::fromMSecsSinceEpoch(at).toString(QStringLiteral("yyyy-MM-dd")).toStdString(); };
    return made;
  }();
  return window;
}

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

}  // namespace oddglass::ui
