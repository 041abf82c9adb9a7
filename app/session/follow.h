#pragma once

#include "planning/recommend.h"
#include "session/drafts.h"

#include <optional>

namespace oddglass::session {

/// The methods that answer a draft's question, the recommended one first; nothing before there are two lots and somebody whose answers count.
std::optional<planning::Recommendation> recommendationFor(const DraftFacts& facts);

/// Leaves out of a draft what does not go with its question, method and lots, and fills in what they need: the lot that is asked about as having
/// more (the batch), and that of the marked cup (the reference). A method that cannot compare three lots gives way to one that can, and is then
/// nobody's choice any more. `facts` may be older than the draft.
void fit(Draft& draft, const DraftFacts& facts);

/// The method that a draft takes because nobody has chosen one and another is recommended; nothing where it stays.
std::optional<Method> methodToFollow(const Draft& draft, const std::optional<planning::Recommendation>& recommendation);

}  // namespace oddglass::session
