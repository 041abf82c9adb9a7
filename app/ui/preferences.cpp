#include "ui/preferences.h"

#include "ui/voice.h"

#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <algorithm>

namespace oddglass::ui {
namespace {

/// A number that stands for a value of an enumeration that begins at 0 and ends with `last`; anything else is its first.
template <class Choice>
Choice chosen(int number, Choice last) {
  return number < 0 || number > static_cast<int>(last) ? Choice{} : static_cast<Choice>(number);
}

bool isGermanPreferred() {
  for (const QString& wanted : QLocale::system().uiLanguages()) {
    if (wanted.startsWith(QLatin1String("de"))) return true;
    if (wanted.startsWith(QLatin1String("en")) || wanted == QLatin1String("C")) return false;
  }
  return false;
}

}  // namespace

Preferences::Preferences(const QString& path, QObject* parent)
    : QObject(parent),
      m_settings(path, QSettings::IniFormat),
      m_light(static_cast<Light>(std::clamp(m_settings.value("light", 0).toInt(), 0, 2))),
      m_textPercent(std::clamp(m_settings.value("text", 100).toInt(), 100, 200)),
      m_language(chosen(m_settings.value("language", 0).toInt(), Language::Deutsch)),
      m_units{chosen(m_settings.value("volume", 0).toInt(), words::VolumeUnit::imperialFluidOunce),
              chosen(m_settings.value("temperature", 0).toInt(), words::TemperatureUnit::fahrenheit),
              chosen(m_settings.value("gravity", 0).toInt(), words::GravityUnit::plato)} {
  speakNow();
}

void Preferences::setLight(Light light) {
  if (light == m_light) return;
  m_light = light;
  m_settings.setValue("light", static_cast<int>(light));
  emit changed();
}

bool Preferences::isDark() const {
  if (m_light != Light::AsSystem) return m_light == Light::Dark;
  return QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
}

void Preferences::setTextPercent(int percent) {
  percent = std::clamp(percent, 100, 200);
  if (percent == m_textPercent) return;
  m_textPercent = percent;
  m_settings.setValue("text", percent);
  emit changed();
}

void Preferences::setLanguage(Language language) {
  if (language == m_language) return;
  m_language = language;
  m_settings.setValue("language", static_cast<int>(language));
  speakNow();
  emit spokenChanged();
}

void Preferences::setVolume(int unit) {
  words::Units units = m_units;
  units.volume = chosen(unit, words::VolumeUnit::imperialFluidOunce);
  take(units);
}

void Preferences::setTemperature(int unit) {
  words::Units units = m_units;
  units.temperature = chosen(unit, words::TemperatureUnit::fahrenheit);
  take(units);
}

void Preferences::setGravity(int unit) {
  words::Units units = m_units;
  units.gravity = chosen(unit, words::GravityUnit::plato);
  take(units);
}

void Preferences::take(const words::Units& units) {
  if (units == m_units) return;
  m_units = units;
  m_settings.setValue("volume", volume());
  m_settings.setValue("temperature", temperature());
  m_settings.setValue("gravity", gravity());
  speakNow();
  emit spokenChanged();
}

void Preferences::speakNow() {
  const bool isGerman = m_language == Language::Deutsch || (m_language == Language::AsSystem && isGermanPreferred());
  if (isGerman && (!m_german.isEmpty() || m_german.load(QStringLiteral(":/translations/oddglass_de.qm")))) QCoreApplication::installTranslator(&m_german);
  else QCoreApplication::removeTranslator(&m_german);
  speak(m_units, isGerman ? "de" : "en");
}

QString Preferences::textSize() const { return tr("%1 %").arg(m_textPercent); }

}  // namespace oddglass::ui
