#pragma once

#include "domain/revealed.h"
#include "words/voice.h"

namespace oddglass::words {

/// Where somebody has broken the seal early: "The key was opened at 20:05, before ...". Empty for a session that was not.
std::string brokenLine(const Voice& voice, const RevealedSession& session);

/// How often the pour sheet was opened: always said.
std::string openingsLine(const Voice& voice, int openings);

/// What the seal says for the record: commitment, seal mark, whether they hold.
std::string commitmentLine(const Voice& voice, const RevealedSession& session);

}  // namespace oddglass::words
