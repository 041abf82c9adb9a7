#pragma once
#include <QObject>
#include "ui/awake.h"
#include "ui/page_model.h"

namespace oddglass::ui {

/// Whether a table is open in this window: then the screen stays awake on its pages, and closing the window is asked about once. The pourer's screen, and that of the steps in
/// which hands hide the cups, stays awake too.
class TableWatch : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool open MEMBER m_open NOTIFY changed)

public:
  TableWatch(const Stage& stage, QObject* parent);
  Awake& awake() { return m_awake; }

private:
  void look();
  void show(bool open);
  Lane m_lane;
  Awake m_awake;
  bool m_open = false;
};

}  // namespace oddglass::ui
