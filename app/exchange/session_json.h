#pragma once

#include "exchange/node.h"
#include "session/record.h"

#include <optional>

namespace oddglass::exchange {

/// A session's record in the interchange form. Before the reveal (or the breaking of the seal) only what a plan says.
canon::Json sessionJson(const session::SessionRecord& record);

/// The record in such JSON, or nothing when it holds a sealed plan only. The form and all references inside it are right then; what the record
/// proves is for session::check. Problems with file, line and path: badFile, brokenReference and those of Node.
std::optional<session::SessionRecord> sessionFrom(const Node& node);

/// The plan of a session in a file. Problem brokenReference or badFile with file, line and path.
Plan planOf(const Node& node);

}  // namespace oddglass::exchange
