#pragma once
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "domain/plan.h"

namespace oddglass::ui {

/// How the drinks are served, as far as the plan puts it on record. Nothing has to be said.
class ServingModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString vessel READ vessel WRITE setVessel NOTIFY changed)
  Q_PROPERTY(QString temperature READ temperature WRITE setTemperature NOTIFY changed)
  Q_PROPERTY(QString temperatureUnit READ temperatureUnit NOTIFY changed)
  Q_PROPERTY(QString temperatureWrong MEMBER m_wrong NOTIFY changed)
  Q_PROPERTY(QStringList mouthfuls READ mouthfuls NOTIFY changed)
  Q_PROPERTY(int mouthful READ mouthful NOTIFY changed)

public:
  ServingModel(Draft& draft, QObject* parent) : QObject(parent), m_draft(draft) {}
  QString vessel() const { return QString::fromStdString(m_draft.serving.vessel); }
  void setVessel(const QString& text);
  QString temperature() const { return m_typed; }
  void setTemperature(const QString& text);
  static QString temperatureUnit();
  static QStringList mouthfuls();
  int mouthful() const { return m_draft.serving.mouthful ? static_cast<int>(*m_draft.serving.mouthful) : -1; }
  /// One of `mouthfuls`; the same once more takes it back.
  Q_INVOKABLE void chooseMouthful(int index);
  /// What the draft says now.
  void show();

signals:
  void changed();
  /// The draft is another one now and wants to be kept.
  void edited();

private:
  Draft& m_draft;
  SessionId m_of;   ///< whose temperature was typed
  QString m_typed, m_wrong;
};

}  // namespace oddglass::ui
