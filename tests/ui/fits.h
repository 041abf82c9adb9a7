#pragma once
#include "ui/window.h"

#include <string>
#include <vector>

namespace oddglass::test {

/// How the window may look.
struct Look {
  const char* name;
  int width, height, textPercent;
  ui::Preferences::Light light;
};
/// Light and dark, wide and small, and large text.
const std::vector<Look>& looks();
/// The window looks like that from now on.
void wear(Window& at, const Look& look);

/// Whatever can be operated and says nothing of itself; one line each.
std::string silent(QQuickItem* root);

/// Whatever can be operated and would be misheard: without a role, a code that is not read digit by digit, or a name that another thing of its kind
/// has too in the same row of the page.
std::string unclear(QQuickItem* root);

/// Whatever can be operated and has no name for a test to find it by.
std::string nameless(QQuickItem* root);

/// Whether a text that is shown holds these words.
bool isShown(Window& at, const std::string& words);

/// Texts that stand there in English although they have a German sentence, while the window speaks German.
std::string notGerman(Window& at);

/// Texts that reach beyond the window at its sides.
std::string cutOff(Window& at);

}  // namespace oddglass::test
