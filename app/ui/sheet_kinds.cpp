#include "ui/sheet_kinds.h"

#include <QCoreApplication>

namespace oddglass::ui {

const std::vector<ItemKind>& sheetKinds() {
  static const std::vector<ItemKind> all{ItemKind::line, ItemKind::justRight, ItemKind::check, ItemKind::liking, ItemKind::magnitude, ItemKind::worst, ItemKind::changeOne,
                                         ItemKind::behaviour, ItemKind::distance, ItemKind::rank, ItemKind::split, ItemKind::words, ItemKind::sureness};
  return all;
}

QString partWord(Part part) {
  switch (part) {
    case Part::look: return QCoreApplication::translate("Sheet", "by eye, first");
    case Part::smell: return QCoreApplication::translate("Sheet", "by smell, before tasting");
    case Part::main: return QCoreApplication::translate("Sheet", "when it is tasted");
    case Part::late: return QCoreApplication::translate("Sheet", "45 seconds after swallowing");
    case Part::last: return QCoreApplication::translate("Sheet", "about all cups, at the end");
  }
  return {};
}

int usualLimit(ItemKind kind) {
  const AnswerForm form = answerForm(kind);
  return std::max(1, (form.high.value_or(10) - form.low.value_or(0)) / 10);
}

}  // namespace oddglass::ui
