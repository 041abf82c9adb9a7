#include "ui/paper_wishes.h"

#include "domain/problem.h"

#include <QLocale>

namespace oddglass::ui {

print::PaperSize PaperWishes::size() const {
  const QString known = m_settings.value("paper/size").toString();
  if (known == QLatin1String("letter")) return print::PaperSize::letter;
  if (known == QLatin1String("a4")) return print::PaperSize::a4;
  return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? print::PaperSize::letter : print::PaperSize::a4;
}

void PaperWishes::keep(print::PaperSize size) { m_settings.setValue("paper/size", size == print::PaperSize::letter ? QStringLiteral("letter") : QStringLiteral("a4")); }

print::LabelSheet PaperWishes::labels() const {
  const print::LabelSheet usual;
  print::LabelSheet sheet;
  const auto number = [this](const char* key, auto value) { return m_settings.value(QStringLiteral("labels/") + QLatin1String(key), value); };
  sheet.columns = number("columns", usual.columns).toInt();
  sheet.rows = number("rows", usual.rows).toInt();
  sheet.top = number("top", usual.top).toDouble();
  sheet.right = number("right", usual.right).toDouble();
  sheet.bottom = number("bottom", usual.bottom).toDouble();
  sheet.left = number("left", usual.left).toDouble();
  sheet.across = number("across", usual.across).toDouble();
  sheet.down = number("down", usual.down).toDouble();
  try {
    print::requireLabels(sheet, size());
    return sheet;
  } catch (const Problem&) {
    return usual;
  }
}

void PaperWishes::keep(const print::LabelSheet& labels) {
  const auto keepAs = [this](const char* key, auto value) { m_settings.setValue(QStringLiteral("labels/") + QLatin1String(key), value); };
  keepAs("columns", labels.columns);
  keepAs("rows", labels.rows);
  keepAs("top", labels.top);
  keepAs("right", labels.right);
  keepAs("bottom", labels.bottom);
  keepAs("left", labels.left);
  keepAs("across", labels.across);
  keepAs("down", labels.down);
}

}  // namespace oddglass::ui
