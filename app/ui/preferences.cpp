#include "ui/preferences.h"

#include <QGuiApplication>
#include <QPalette>
#include <algorithm>

namespace oddglass::ui {

Preferences::Preferences(const QString& path, QObject* parent)
    : QObject(parent),
      m_settings(path, QSettings::IniFormat),
      m_light(static_cast<Light>(std::clamp(m_settings.value("light", 0).toInt(), 0, 2))),
      m_textPercent(std::clamp(m_settings.value("text", 100).toInt(), 100, 200)) {}

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

QString Preferences::textSize() const { return tr("%1 %").arg(m_textPercent); }

}  // namespace oddglass::ui
