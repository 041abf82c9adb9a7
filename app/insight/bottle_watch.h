#pragma once

#include "domain/series.h"
#include "domain/shelf.h"

#include <string>
#include <vector>

namespace oddglass::insight {

/// What was seen or smelled in a batch's bottles, by age. No blind result: whoever looked knew what it was.
struct SeenInBottle {
  NoteKind kind = NoteKind::haze;      ///< haze, sediment or sulphur
  struct Look {
    double age = 0;                    ///< months after the first day of the series
    std::string day;
    int level = 0;                     ///< 0 none to 3 much
  };
  std::vector<Look> looks;             ///< by age
};

/// Every kind that was noted since the series began, in the order haze, sediment, sulphur.
std::vector<SeenInBottle> seenInBottle(const Series& series, const std::vector<Note>& notes);

/// The deeds against one fault, the first day first: notes that name this word, compared without case.
std::vector<Note> deedsAgainst(const std::string& word, const std::vector<Note>& notes);

/// Words that deeds were done against and that are none of `asked`, each once, in the order of their first day.
std::vector<std::string> faultsNotAsked(const std::vector<std::string>& asked, const std::vector<Note>& notes);

}  // namespace oddglass::insight
