#pragma once

#include "blinding/key.h"
#include "canon/canonical.h"
#include "canon/digest.h"
#include "domain/plan.h"

#include <string>

namespace oddglass::blinding {

/// SHA-256 of the canonical text of a plan.
canon::Digest planHash(const canon::Json& plan);

/// "drawn", or the name of the routine in whose hands the key lies.
std::string custodyOf(Routine routine);

/// What a session is bound to at the seal:
/// sha256("oddglass seal 1\n", the 32 bytes of the salt, canonical {"custody", "generator", "lines", "plan", "seed"}),
/// with custody "drawn" or the routine in whose hands the key lies, lines as [code, slot] rising by code (none where it was not drawn), plan as the hex digits of `plan`, seed as hex digits.
canon::Digest commitment(const KeyContents& key, const canon::Digest& plan);

/// True when a key and a plan hash give this commitment. Compared in constant time.
bool commitmentHolds(const canon::Digest& committed, const KeyContents& key, const canon::Digest& plan);

}  // namespace oddglass::blinding
