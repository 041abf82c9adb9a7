// The program with windows: builds what lives long, wires it, and shows the first page.
#include "blinding/chance.h"
#include "domain/chance.h"
#include "store/store.h"
#include "ui/app.h"
#include "ui/print_command.h"
#include "ui/settings.h"

#include <QCommandLineParser>
#include <QFont>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>

#include <algorithm>
#include <iostream>
#include <string_view>

using namespace oddglass;

int main(int argc, char** argv) {
  const bool prints = std::any_of(argv + 1, argv + std::max(argc, 1), [](std::string_view each) { return each == "--print" || each.starts_with("--print="); });
  if (prints) qputenv("QT_QPA_PLATFORM", "offscreen");  // there may be no screen
  QGuiApplication program(argc, argv);
  QGuiApplication::setApplicationName(QStringLiteral("oddglass"));
  QGuiApplication::setApplicationDisplayName(QStringLiteral("Oddglass"));
  QGuiApplication::setApplicationVersion(QStringLiteral(ODDGLASS_VERSION));
  QQuickStyle::setStyle(QStringLiteral("Basic"));
  QFont::insertSubstitution(QStringLiteral("Inter Display"), QStringLiteral("Inter"));
  QFont::insertSubstitution(QStringLiteral("Inter"), QStringLiteral("DejaVu Sans"));

  SystemClock clock;
  blinding::SystemChance chance;
  if (prints) return ui::printCommand(QCoreApplication::arguments(), clock, chance, std::cerr);

  QCommandLineParser asked;
  asked.setApplicationDescription(QGuiApplication::translate("main", "Blind tastings at home."));
  asked.addHelpOption();
  asked.addVersionOption();
  const QCommandLineOption storeOption(QStringLiteral("store"), QGuiApplication::translate("main", "The file that holds everything."), QStringLiteral("FILE"));
  const QCommandLineOption demoOption(QStringLiteral("demo-folder"), QGuiApplication::translate("main", "Where the demo sessions lie."), QStringLiteral("FOLDER"),
                                      QStringLiteral(ODDGLASS_DEMO));
  const QCommandLineOption printOption(QStringLiteral("print"), QGuiApplication::translate("main", "Puts something on paper without a window; oddglass-cli report and oddglass-cli paper start it."), QStringLiteral("WHAT"));
  asked.addOptions({storeOption, demoOption, printOption});
  asked.process(program);

  const std::filesystem::path file = asked.isSet(storeOption) ? std::filesystem::path(asked.value(storeOption).toStdString()) : store::usualFile();
  auto cellar = std::make_unique<ui::Cellar>([&] { return store::Store::open(file, store::Access::write, clock, chance); }, clock, chance);
  ui::App app(std::move(cellar), ui::settingsFile(), asked.value(demoOption));

  app.table()->awake().use(ui::desktopScreenSaver());

  QQmlApplicationEngine engine;
  engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
  QObject::connect(app.preferences(), &ui::Preferences::spokenChanged, &engine, &QQmlEngine::retranslate);
  engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
  QObject::connect(&engine, &QQmlApplicationEngine::objectCreationFailed, &program, [] { QCoreApplication::exit(1); }, Qt::QueuedConnection);
  engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Oddglass/Main.qml")));
  app.start();
  return QGuiApplication::exec();
}
