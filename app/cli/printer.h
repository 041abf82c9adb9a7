#pragma once

#include "cli/desk.h"

namespace oddglass::cli {

/// Has the program with windows print, without a window, and waits for it: this program links nothing that paints. `options` are those of its --print, without the
/// dashes; the store that was named is told to it. Nothing may have the store open to write. Problem programMissing ("--out"), or notPrinted naming what it refused.
void print(Desk& desk, const std::vector<std::pair<std::string, std::string>>& options);

}  // namespace oddglass::cli
