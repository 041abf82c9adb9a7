#pragma once

#include "insight/bottle_watch.h"
#include "insight/over_time.h"
#include "words/came_out.h"

namespace oddglass::words {

/// A ticked word over the sittings: how many of how many, and what was done against it.
OutSection mentionsSection(const Voice& voice, const insight::OverTime& over, const insight::TimeMentions& mentions, const std::vector<Note>& notes);

/// The columns of what was seen in the bottle.
std::vector<std::string> seenHeaders(const Voice& voice);

/// One note of a batch in a few words: "2026-03-12: haze, a slight haze"; what it was meant to mend is named.
std::string noteLine(const Voice& voice, const Note& note);

/// What was done against a fault; empty where nothing was.
std::string deedsLine(const Voice& voice, const std::string& word, const std::vector<Note>& notes);

/// What was seen or smelled in the bottle, a section each in the order of `insight::seenInBottle`; then deeds against faults that were not asked about.
std::vector<OutSection> seenSections(const Voice& voice, const Series& series, const insight::OverTime& over, const std::vector<Note>& notes);

}  // namespace oddglass::words
