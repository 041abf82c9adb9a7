#pragma once

#include "tasting/flight.h"

#include <optional>
#include <vector>

namespace oddglass::tasting {

/// What stands before a taster at one moment of a score sheet.
enum class SheetStepKind {
  cup,       ///< one cup and the questions about it
  pause,     ///< wait and take the cleanser before the next cup
  swallow,   ///< wait before the late questions about the cup just tasted
  together,  ///< all cups at once: ranks, points, words about the flight
};
struct SheetStep {
  SheetStepKind kind = SheetStepKind::cup;
  Part part = Part::main;
  std::optional<int> cup;      ///< index into the flight's cups
  std::vector<Item> items;     ///< in the order in which they are asked
  int seconds = 0;             ///< of a pause or a wait
  bool operator==(const SheetStep&) const = default;
};

/// Seconds between swallowing and the late questions: mousiness comes late (*common practice*; the figure is our own).
constexpr int lateAfterSeconds = 45;

/// A score sheet from the first cup to the lock: look, then smell, for all cups in turn; then cup by cup the main questions, the wait and the late ones, and
/// the pause; all cups together at last. A marked cup is not asked about. Within the main part: words that apply, lines, just about right, the worst thing, one
/// thing to change, free words, behaviour, and liking last, so that the words are not coloured by it. Questions of one kind come in an order of their
/// own for each place, the same for all its cups, that depends on the session and the place alone.
std::vector<SheetStep> sheetSteps(const Flight& flight, const SessionId& session);

}  // namespace oddglass::tasting
