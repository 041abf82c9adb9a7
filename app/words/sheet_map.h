#pragma once

#include "insight/sheet_map.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// The words around the picture of how the cups lie to each other.
struct MapPictureWords {
  std::string title, across, up;      ///< `across` and `up`: what the two axes are made of, and their share of what differs
  std::string count, note, sentence;
  std::vector<std::string> lots, sure;  ///< one sentence for each lot: where it lies; how sure that is (empty without an ellipse)
  std::vector<std::string> headers;
  std::vector<std::vector<std::string>> rows;  ///< the lots, then the words, on the two axes
};

/// `map` has two axes.
MapPictureWords mapPictureWords(const Voice& voice, const Plan& plan, const insight::SheetMap& map);

/// What it is and what it does not say; where there are no two axes, why.
std::vector<std::string> mapLines(const Voice& voice, const insight::SheetMap& map);

/// Its heading, and the link that shows it.
std::string mapHeading(const Voice& voice);
std::string mapLink(const Voice& voice);

}  // namespace oddglass::words
