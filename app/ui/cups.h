#pragma once
#include "domain/numbers.h"

#include <QString>

namespace oddglass::ui {

/// A code as it stands on the cup, and as it is read aloud: digit by digit.
QString codeText(Code code);
QString spokenCode(Code code);
/// Where a cup stands in its flight, from the taster's side: "left", "middle", "right" of three.
QString positionWord(Position position, int cups);

}  // namespace oddglass::ui
