#include "ui/shapes.h"

namespace oddglass::ui {

QString shapeName(words::Shape shape) {
  switch (shape) {
    case words::Shape::disc: return QStringLiteral("disc");
    case words::Shape::ring: return QStringLiteral("ring");
    case words::Shape::bars: return QStringLiteral("bars");
    case words::Shape::dash: return QStringLiteral("dash");
  }
  return {};
}

}  // namespace oddglass::ui
