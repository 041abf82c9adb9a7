#include "ui/voice.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <atomic>
#include <list>
#include <mutex>

namespace oddglass::ui {
namespace {

words::Voice made(const words::Units& units, const std::string& language) {
  words::Voice voice;
  voice.translate = [](const char* context, const char* source) { return QCoreApplication::translate(context, source).toStdString(); };
  voice.language = language;
  voice.units = units;
  // Where the system's language is spoken, its own habits of writing numbers hold; Switzerland's are not Germany's.
  const QLocale asked(QString::fromStdString(language));
  const QLocale numbers = asked.language() == QLocale().language() ? QLocale() : asked;
  voice.decimal = numbers.decimalPoint().toStdString();
  voice.group = numbers.groupSeparator().toStdString();
  voice.timeOfDay = [](Millis at) { return QDateTime::fromMSecsSinceEpoch(at).toString(QStringLiteral("HH:mm")).toStdString(); };
  voice.day = [](Millis at) { return QDateTime::fromMSecsSinceEpoch(at).toString(QStringLiteral("yyyy-MM-dd")).toStdString(); };
  return voice;
}

/// Voices are few and are kept, since the worker may still be speaking with an earlier one.
struct Voices {
  std::mutex adding;
  std::list<words::Voice> all{made({}, "en")};
  std::atomic<const words::Voice*> current{&all.front()};
};

Voices& voices() {
  static Voices kept;
  return kept;
}

}  // namespace

const words::Voice& voice() { return *voices().current.load(); }

void speak(const words::Units& units, const std::string& language) {
  const words::Voice& now = voice();
  if (now.units == units && now.language == language) return;
  const std::lock_guard lock(voices().adding);
  voices().current.store(&voices().all.emplace_back(made(units, language)));
}

std::string today() { return QDate::currentDate().toString(Qt::ISODate).toStdString(); }

}  // namespace oddglass::ui
