#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QFont>
#include <QGuiApplication>
#include <QQuickStyle>

/// One application for all journeys, drawn off screen.
int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("LC_ALL", "C");  // the journeys read English, whatever is spoken where they run
  qunsetenv("LANGUAGE");
  QGuiApplication program(argc, argv);
  QQuickStyle::setStyle(QStringLiteral("Basic"));
  QFont::insertSubstitution(QStringLiteral("Inter Display"), QStringLiteral("Inter"));
  QFont::insertSubstitution(QStringLiteral("Inter"), QStringLiteral("DejaVu Sans"));
  return Catch::Session().run(argc, argv);
}
