#pragma once

#include "domain/revealed.h"
#include "words/voice.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <type_traits>

namespace oddglass::report {

/// What the JSON reports of all methods share. Keys are lower case with underscores and only ever added to.
using Json = nlohmann::ordered_json;

/// The number; null where it is not finite.
Json number(double value);
/// The value, or null where there is none, or none that is finite.
template <class T>
Json orNull(const std::optional<T>& value) {
  if constexpr (std::is_floating_point_v<T>) return value ? number(*value) : Json(nullptr);
  else return value ? Json(*value) : Json(nullptr);
}
Json textOrNull(const std::string& text);
/// The letter of a lot, A for the plan's first; null for none.
Json letter(const Plan& plan, const std::optional<Slot>& slot);

/// Format, version, standard and session.
Json headOf(const RevealedSession& session);
/// The plan as it was sealed.
Json planOf(const Plan& plan);
Json promisesOf(const RevealedSession& session);
/// What this plan could find, in sentences; who sat down and who of them had answered before; null where nobody can know.
Json powerOf(const words::Voice& voice, const Plan& plan);
Json tastersOf(const RevealedSession& session);
Json ordersOf(const RevealedSession& session);
/// Commitment, seal mark, openings of the pour sheet, people who asked to be forgotten.
Json recordOf(const RevealedSession& session);

}  // namespace oddglass::report
