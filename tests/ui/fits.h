#pragma once
#include "ui/window.h"

#include <string>

namespace oddglass::test {

/// Whatever can be operated and says nothing of itself; one line each.
std::string silent(QQuickItem* root);

/// Whatever can be operated and has no name for a test to find it by.
std::string nameless(QQuickItem* root);

/// Whether a text that is shown holds these words.
bool isShown(Window& at, const std::string& words);

/// Texts that reach beyond the window at its sides.
std::string cutOff(Window& at);

}  // namespace oddglass::test
