#pragma once

#include "domain/plan.h"
#include "domain/series.h"
#include "domain/shelf.h"
#include "domain/state.h"
#include "domain/vocabulary.h"

#include <optional>
#include <string_view>
#include <vector>

namespace oddglass {

/// The word for a value as it stands in the store, in files and on the command line ("notKnown" is "not_known").
template <class E>
std::string_view nameOf(E value);

/// The value of a word, or nothing.
template <class E>
std::optional<E> named(std::string_view word);

/// All values of an enumeration, in order.
template <class E>
const std::vector<E>& allOf();

}  // namespace oddglass
