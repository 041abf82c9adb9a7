#include "ui/cups.h"

#include "ui/page_model.h"
#include "ui/voice.h"
#include "words/paper.h"

#include <QStringList>

namespace oddglass::ui {

QString codeText(Code code) { return QString::number(code.value); }

QString spokenCode(Code code) {
  QStringList digits;
  for (const QChar digit : codeText(code)) digits << QString(digit);
  return digits.join(QLatin1Char(' '));
}

QString positionWord(Position position, int cups) { return shown(words::positionWord(voice(), position, cups)); }

}  // namespace oddglass::ui
