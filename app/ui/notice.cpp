#include "ui/notice.h"

namespace oddglass::ui {

void Notice::say(const QString& message) {
  if (m_message == message) return;
  m_message = message;
  emit messageChanged();
}

}  // namespace oddglass::ui
