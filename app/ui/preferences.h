#pragma once
#include <QObject>
#include <QSettings>
#include <QTranslator>
#include "words/voice.h"

#include <QtQml/qqmlregistration.h>

namespace oddglass::ui {

/// How this machine likes its pages: light or dark, the size of the text, the language, and the units in which amounts are told and typed. Nothing about people
/// or drinks is kept here. Language and units hold for the whole window and its paper from the moment they are chosen.
class Preferences : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(Light light READ light WRITE setLight NOTIFY changed)
  Q_PROPERTY(bool dark READ isDark NOTIFY changed)
  Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)
  Q_PROPERTY(qreal textScale READ textScale NOTIFY changed)
  Q_PROPERTY(QString textSize READ textSize NOTIFY changed)
  Q_PROPERTY(Language language READ language WRITE setLanguage NOTIFY spokenChanged)
  Q_PROPERTY(int volume READ volume WRITE setVolume NOTIFY spokenChanged)
  Q_PROPERTY(int temperature READ temperature WRITE setTemperature NOTIFY spokenChanged)
  Q_PROPERTY(int gravity READ gravity WRITE setGravity NOTIFY spokenChanged)

public:
  enum class Light { AsSystem, Bright, Dark };
  Q_ENUM(Light)
  enum class Language { AsSystem, English, Deutsch };
  Q_ENUM(Language)

  /// Reads and writes the settings file at `path`.
  explicit Preferences(const QString& path, QObject* parent = nullptr);
  Light light() const { return m_light; }
  void setLight(Light light);
  bool isDark() const;
  /// 100 to 200.
  int textPercent() const { return m_textPercent; }
  void setTextPercent(int percent);
  qreal textScale() const { return m_textPercent / 100.0; }
  QString textSize() const;
  Language language() const { return m_language; }
  void setLanguage(Language language);
  /// As numbers of `words::VolumeUnit`, `TemperatureUnit` and `GravityUnit`.
  int volume() const { return static_cast<int>(m_units.volume); }
  int temperature() const { return static_cast<int>(m_units.temperature); }
  int gravity() const { return static_cast<int>(m_units.gravity); }
  void setVolume(int unit);
  void setTemperature(int unit);
  void setGravity(int unit);
  Q_INVOKABLE void largerText() { setTextPercent(m_textPercent + 25); }
  Q_INVOKABLE void smallerText() { setTextPercent(m_textPercent - 25); }

signals:
  void changed();
  /// Language or units are others now; what was said before is to be said again.
  void spokenChanged();

private:
  void take(const words::Units& units);
  void speakNow();
  QSettings m_settings;
  Light m_light;
  int m_textPercent;
  Language m_language;
  words::Units m_units;
  QTranslator m_german;
};

}  // namespace oddglass::ui
