#pragma once

#include "insight/side_by_side.h"
#include "words/came_out.h"
#include "words/sheet_picture.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// One batch set against another, in sentences.
struct BatchStepWords {
  std::string heading;
  std::vector<std::string> lines;       ///< how they are linked, how old they were, what was changed
  std::vector<std::string> gaps;        ///< one sentence for each question
  std::vector<std::string> told;        ///< of these the ones with a verdict, and one for all others together
  std::string advice;                   ///< how to take age out; empty where nothing is to be said
};

/// Batches beside each other, for everybody: no person in it.
struct SideBySideWords {
  Shape shape = Shape::dash;
  std::string word;                     ///< the shape in words
  std::string headline;
  std::vector<std::string> lines;       ///< what it rests on, what it does not say
  std::vector<std::string> columns;     ///< the names of the batches
  std::vector<std::string> headers;     ///< of the table: what is told, then the batches
  std::vector<std::vector<std::string>> rows;
  std::string underTable;               ///< how to read it
  std::vector<BatchStepWords> steps;
  std::vector<std::string> marks;       ///< words that were changed between the tastings
};

/// Findings in sentences. `today` (YYYY-MM-DD) is what days to come are told from.
SideBySideWords sideBySideWords(const Voice& voice, const std::vector<Batch>& batches, const BatchTastings& tastings, const insight::SideBySide& found, const std::string& today);

/// What the batches are called beside each other: the drink, with its lot where two are called alike.
std::vector<std::string> batchNames(const std::vector<Batch>& batches, const BatchTastings& tastings, const insight::SideBySide& found);

/// One question of a step in a sentence.
std::string batchGapLine(const Voice& voice, const std::vector<std::string>& names, const insight::SideBySide& found, const insight::BatchStep& step, const insight::BatchGap& gap);

/// The words around the picture of a step, for the questions of one kind.
GapPictureWords batchPictureWords(const Voice& voice, const std::vector<std::string>& names, const insight::BatchStep& step, ItemKind kind);

/// What was changed between two batches, and what that can say.
std::string changedLine(const Voice& voice, const std::vector<Note>& changed);

/// The title of a plan that links batches.
std::string linkTitle(const Voice& voice, const std::string& recipe);

}  // namespace oddglass::words
