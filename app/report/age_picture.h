#pragma once

#include "domain/series.h"
#include "figures/ages.h"
#include "insight/bottle_watch.h"
#include "insight/over_time.h"
#include "words/voice.h"

#include <optional>

namespace oddglass::report {

/// One question of a series over its sittings, with what was done to the drink as lettered marks; a line only where a slope was fitted. Nothing without a dot.
std::optional<figures::AgePicture> agePicture(const words::Voice& voice, const Series& series, const insight::OverTime& over, const insight::TimeLine& line,
                                              const std::vector<Note>& notes);

/// How many ticked a word at each sitting, of those who were asked, with the lettered marks. Nothing where nobody was asked.
std::optional<figures::AgePicture> mentionPicture(const words::Voice& voice, const Series& series, const insight::OverTime& over, const insight::TimeMentions& mentions, const std::vector<Note>& notes);

/// What was seen or smelled in the bottle by age: dots alone.
figures::AgePicture seenPicture(const words::Voice& voice, const insight::SeenInBottle& seen);

/// The notes that the picture marks, each with its letter: "a  12 March 2026: racked". In the order of their days.
std::vector<std::string> noteLines(const words::Voice& voice, const Series& series, const insight::OverTime& over, const std::vector<Note>& notes);

}  // namespace oddglass::report
