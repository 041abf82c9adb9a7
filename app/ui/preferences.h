#pragma once
#include <QObject>
#include <QSettings>
#include <QtQml/qqmlregistration.h>

namespace oddglass::ui {

/// How this machine likes its pages: light or dark, and the size of the text. Nothing about people or drinks is kept here.
class Preferences : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(Light light READ light WRITE setLight NOTIFY changed)
  Q_PROPERTY(bool dark READ isDark NOTIFY changed)
  Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)
  Q_PROPERTY(qreal textScale READ textScale NOTIFY changed)
  Q_PROPERTY(QString textSize READ textSize NOTIFY changed)

public:
  enum class Light { AsSystem, Bright, Dark };
  Q_ENUM(Light)

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
  Q_INVOKABLE void largerText() { setTextPercent(m_textPercent + 25); }
  Q_INVOKABLE void smallerText() { setTextPercent(m_textPercent - 25); }

signals:
  void changed();

private:
  QSettings m_settings;
  Light m_light;
  int m_textPercent;
};

}  // namespace oddglass::ui
