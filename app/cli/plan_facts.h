#pragma once

#include "cli/answer.h"
#include "planning/gap.h"
#include "session/drafts.h"
#include "words/voice.h"

namespace oddglass::cli {

/// What a plan takes, finds and would miss, and whether it can be sealed; for programs and for people. `spread`: of a score sheet.
Answer planAnswer(const words::Voice& voice, const session::DraftFacts& facts, const planning::Spread& spread = {});

}  // namespace oddglass::cli
