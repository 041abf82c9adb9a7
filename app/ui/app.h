#pragma once
#include "ui/notice.h"
#include "ui/preferences.h"
#include "ui/router.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace oddglass::ui {

/// Everything that the window is given: where one is, what went wrong, and one view model for each page.
class App : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(oddglass::ui::Router* router READ router CONSTANT)
  Q_PROPERTY(oddglass::ui::Notice* notice READ notice CONSTANT)
  Q_PROPERTY(oddglass::ui::Preferences* preferences READ preferences CONSTANT)
  Q_PROPERTY(QString sealMark READ sealMark NOTIFY sealMarkChanged)

public:
  /// Settings of this machine are kept in the file at `settings`.
  explicit App(const QString& settings, QObject* parent = nullptr);
  Router* router() { return &m_router; }
  Notice* notice() { return &m_notice; }
  Preferences* preferences() { return &m_preferences; }
  /// The seal mark of the session that is on the table; empty when there is none.
  const QString& sealMark() const { return m_sealMark; }
  void setSealMark(const QString& mark);

signals:
  void sealMarkChanged();

private:
  Router m_router;
  Notice m_notice;
  Preferences m_preferences;
  QString m_sealMark;
};

}  // namespace oddglass::ui
