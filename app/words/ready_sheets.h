#pragma once

#include "domain/shelf.h"
#include "domain/sheet.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// Sheets that are ready to be used, in the reader's words. They are starting points: every one may be changed. No points are added up anywhere.
enum class ReadySheet {
  guests,  ///< a short one: two or three words, liking, and what to change
  beer, mead, cider, wine,
  marked,  ///< how far from a marked cup; needs a reference to mark
};

/// All of them, in the order in which they are offered.
const std::vector<ReadySheet>& readySheets();

/// The one for a drink.
ReadySheet readyFor(Kind kind);

std::string readyName(const Voice& voice, ReadySheet sheet);

/// Its questions, not numbered yet. Words, lines from 0 to 100 with a limit of 10, liking with a limit of 1: starting points of our own. The lines
/// are the main questions; everything else is looked at afterwards. Which words: the trade's, by what usually tells such drinks apart (*common practice*).
std::vector<SheetItem> readyItems(const Voice& voice, ReadySheet sheet);

}  // namespace oddglass::words
