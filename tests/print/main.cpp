#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <QGuiApplication>

/// Fonts need an application; nothing needs a screen.
int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QGuiApplication program(argc, argv);
  return Catch::Session().run(argc, argv);
}
