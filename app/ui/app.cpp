#include "ui/app.h"

namespace oddglass::ui {

App::App(const QString& settings, QObject* parent) : QObject(parent), m_preferences(settings) {}

void App::setSealMark(const QString& mark) {
  if (mark == m_sealMark) return;
  m_sealMark = mark;
  emit sealMarkChanged();
}

}  // namespace oddglass::ui
