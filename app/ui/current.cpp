#include "ui/current.h"

namespace oddglass::ui {

void Current::set(const SessionId& id, const QString& title, const QString& sealMark) {
  m_id = id;
  m_title = title;
  m_sealMark = sealMark;
  emit changed();
}

}  // namespace oddglass::ui
