#pragma once

#include "cli/answer.h"
#include "session/drafts.h"
#include "words/voice.h"

namespace oddglass::cli {

/// What a plan takes, finds and would miss, and whether it can be sealed; for programs and for people.
Answer planAnswer(const words::Voice& voice, const session::DraftFacts& facts);

}  // namespace oddglass::cli
