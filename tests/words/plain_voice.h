#pragma once

#include "words/voice.h"

namespace oddglass::testing {

/// English as it stands in the source.
inline const words::Voice plainVoice{};

}  // namespace oddglass::testing
