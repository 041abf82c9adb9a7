#pragma once

#include "insight/findings.h"
#include "words/voice.h"

#include <vector>

namespace oddglass::words {

/// One person's tastings. People who asked to be only in the sums have no row.
struct PersonRow {
  std::string who;
  std::string right;   ///< "2 of 3"; for a preference "liked better: Heather mead 2 and the bought one 1"
};

/// What is for the maker alone, never for the room.
struct MakerPart {
  std::vector<std::string> makers;    ///< each maker's own answers beside the panel's
  std::vector<PersonRow> people;
  std::string onlyInSums;             ///< how many people have no row
  std::string differ;                 ///< whether people differ in how well they tell; looked at afterwards
  std::vector<std::string> remarks;   ///< what was written on the sheets, after the names of those who signed
  std::vector<std::string> said;      ///< what was said aloud
};
MakerPart makerPart(const Voice& voice, const RevealedSession& session, const insight::Findings& findings);

}  // namespace oddglass::words
