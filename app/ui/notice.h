#pragma once
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace oddglass::ui {

/// The one place where a problem is said. Every failed command ends here as one sentence.
class Notice : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString message READ message NOTIFY messageChanged)

public:
  using QObject::QObject;
  const QString& message() const { return m_message; }
  void say(const QString& message);
  Q_INVOKABLE void dismiss() { say({}); }

signals:
  void messageChanged();

private:
  QString m_message;
};

}  // namespace oddglass::ui
