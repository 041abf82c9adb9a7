#include "ui/cups.h"

#include <QCoreApplication>
#include <QStringList>

namespace oddglass::ui {

QString codeText(Code code) { return QString::number(code.value); }

QString spokenCode(Code code) {
  QStringList digits;
  for (const QChar digit : codeText(code)) digits << QString(digit);
  return digits.join(QLatin1Char(' '));
}

QString positionWord(Position position, int cups) {
  if (position.value == 1) return QCoreApplication::translate("Cups", "left");
  if (position.value == cups) return QCoreApplication::translate("Cups", "right");
  if (cups == 3) return QCoreApplication::translate("Cups", "middle");
  return QCoreApplication::translate("Cups", "number %1 from the left").arg(position.value);
}

}  // namespace oddglass::ui
