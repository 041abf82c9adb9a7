// Time to the first frame of the program beside that of an empty Qt Quick window, each in a process of its own, in turn.
// Run without arguments; it starts itself with "empty" or "program".
#include <QObject>

#include "blinding/chance.h"
#include "exchange/demo.h"
#include "store/store.h"
#include "ui/app.h"

#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

using namespace oddglass;

namespace {

const auto started = std::chrono::steady_clock::now();

// Ends the process with the milliseconds since it began on stdout.
void endAtFirstFrame(QQmlApplicationEngine& engine) {
  auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
  if (!window) std::exit(1);
  QObject::connect(window, &QQuickWindow::frameSwapped, [] {
    std::printf("%.3f\n", std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - started).count());
    std::fflush(stdout);
    std::_Exit(0);
  });
}

int showEmpty(QGuiApplication& program) {
  QQmlApplicationEngine engine;
  engine.loadData("import QtQuick\nimport QtQuick.Controls.Basic\nApplicationWindow { width: 1280; height: 800; visible: true }");
  endAtFirstFrame(engine);
  return program.exec();
}

int showProgram(QGuiApplication& program, const QString& folder) {
  SystemClock clock;
  blinding::SystemChance chance;
  const auto file = std::filesystem::path(folder.toStdString()) / "cellar.oddglass";
  auto cellar = std::make_unique<ui::Cellar>([&] { return store::Store::open(file, store::Access::write, clock, chance); }, clock, chance);
  ui::App app(std::move(cellar), folder + QStringLiteral("/window.ini"), QString());
  QQmlApplicationEngine engine;
  engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
  engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
  engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Oddglass/Main.qml")));
  endAtFirstFrame(engine);
  app.start();
  return program.exec();
}

double runOne(const QString& self, const QStringList& arguments) {
  QProcess child;
  child.start(self, arguments);
  child.waitForFinished();
  return child.readAllStandardOutput().trimmed().toDouble();
}

double median(std::vector<double> values) {
  std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2));
  return values[values.size() / 2];
}

}  // namespace

int main(int argc, char** argv) {
  if (argc > 1) {
    QGuiApplication program(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    return QString::fromLocal8Bit(argv[1]) == QStringLiteral("empty") ? showEmpty(program) : showProgram(program, QString::fromLocal8Bit(argv[2]));
  }
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QTemporaryDir folder;
  {
    SystemClock clock;
    blinding::SystemChance chance;
    const auto file = std::filesystem::path(folder.path().toStdString()) / "cellar.oddglass";
    const auto store = store::Store::open(file, store::Access::write, clock, chance);
    exchange::loadDemo(*store, clock, chance, ODDGLASS_DEMO);
  }
  const QString self = QString::fromLocal8Bit(argv[0]);
  std::vector<double> empty, program, ratio;
  for (int i = 0; i < 11; ++i) {
    empty.push_back(runOne(self, {QStringLiteral("empty")}));
    program.push_back(runOne(self, {QStringLiteral("program"), folder.path()}));
    ratio.push_back(program.back() / empty.back());
  }
  std::printf("first frame, store with the demo   %7.1f ms   empty Qt Quick window   %7.1f ms   ratio %4.2f\n", median(program), median(empty), median(ratio));
}
