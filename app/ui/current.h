#pragma once
#include <QObject>
#include "domain/state.h"
#include "domain/uid.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace oddglass::ui {

/// The session that the pages are about, and what everybody may know of it. Where it stands is read from the store each time.
class Current : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString sealMark READ sealMark NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)

public:
  using QObject::QObject;
  const SessionId& id() const { return m_id; }
  /// Spoken form of the commitment; empty before the seal.
  const QString& sealMark() const { return m_sealMark; }
  /// What tasters are shown as the title.
  const QString& title() const { return m_title; }
  void set(const SessionId& id, const QString& title, const QString& sealMark);
  void clear() { set({}, {}, {}); }

signals:
  void changed();

private:
  SessionId m_id;
  QString m_title;
  QString m_sealMark;
};

}  // namespace oddglass::ui
