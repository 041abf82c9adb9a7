#include <QQmlEngine>
#include <QQuickStyle>
#include <QtPlugin>
#include <QtQuickTest/quicktest.h>

Q_IMPORT_QML_PLUGIN(OddglassPlugin)
Q_IMPORT_QML_PLUGIN(Oddglass_UiPlugin)

class Setup : public QObject {
  Q_OBJECT

public slots:
  void applicationAvailable() { QQuickStyle::setStyle("Basic"); }
  void qmlEngineAvailable(QQmlEngine* engine) { engine->addImportPath("qrc:/qt/qml"); }
};

QUICK_TEST_MAIN_WITH_SETUP(parts, Setup)
#include "main.moc"
