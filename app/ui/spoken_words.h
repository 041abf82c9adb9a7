#pragma once
#include "shelf/word_list.h"

namespace oddglass::ui {

/// `shelf::wordsOf`, with the names that the words have in the language of the window beside their own.
shelf::WordList wordsSpoken(const shelf::WordList& list, const shelf::WordsWanted& wanted);

}  // namespace oddglass::ui
