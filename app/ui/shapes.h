#pragma once
#include "words/came_out.h"

#include <QString>

namespace oddglass::ui {

/// The mark of a verdict by the name that pages know it by.
QString shapeName(words::Shape shape);

}  // namespace oddglass::ui
