#pragma once

#include "domain/series.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// What hangs on one bottle of a series, so that months later it still says what it is and what it is kept for.
struct BottleTag {
  std::string letters;  ///< A, B, ... Z, AA: no other bottle of the series has them, and no tag can be taken for the code of a cup
  std::string drink;    ///< drink and lot, as on the shelf
  std::string keptFor;  ///< "look 2 of 6, due on 2026-05-24", or that it is a reserve
};

/// A drink and its lot by their names.
struct NamedLot {
  std::string drink, lot;
};

/// A tag for every bottle that a series sets aside: look by look the batch, then its control; the reserve last. Letters run on; I and O are left out.
/// `control` is not read where the series has none.
std::vector<BottleTag> bottleTags(const Voice& voice, const Series& series, const NamedLot& batch, const NamedLot& control);

/// The title of the file.
std::string bottleTagsTitle(const Voice& voice, const Series& series);

}  // namespace oddglass::words
