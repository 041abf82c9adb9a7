#pragma once

#include <cstdint>
#include <string>

namespace oddglass {

/// What a change of the shelf was about, and what it did. `retired` words and people, lots and drinks that were put away are `putAway`.
enum class ChangedThing { drink, lot, bottles, note, person, word };
enum class ChangeDeed { added, changed, putAway, broughtBack, merged };

/// One change of the shelf that can be taken back.
struct ShelfChange {
  std::int64_t number = 0;  ///< from 1 in this run of the program; names the change when it is taken back
  ChangedThing thing = ChangedThing::drink;
  ChangeDeed deed = ChangeDeed::changed;
  std::string name;         ///< of the drink, lot, person or word; of a note and of bottles, whose they are
  bool operator==(const ShelfChange&) const = default;
};

}  // namespace oddglass
