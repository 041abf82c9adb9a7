#include <QQmlEngine>
#include <QQuickStyle>
#include <QtQuickTest/quicktest.h>


class Setup : public QObject {
  Q_OBJECT

public slots:
  void applicationAvailable() { QQuickStyle::setStyle("Basic"); }
  void qmlEngineAvailable(QQmlEngine* engine) { engine->addImportPath("qrc:/qt/qml"); }
};

QUICK_TEST_MAIN_WITH_SETUP(parts, Setup)
#include "main.moc"
