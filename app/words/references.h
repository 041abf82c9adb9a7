#pragma once

#include "insight/references.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// One lot of a reference in sentences.
struct ReferenceLotWords {
  std::string name;
  std::string age;                     ///< packaged when, how old now
  std::string kept;                    ///< how it is kept and where it came from; may be empty
  std::string bottles;                 ///< how many are left; the last one is named
  std::string past;                    ///< its best-before; may be empty
  std::string poured;                  ///< in which sessions; may be empty
};

/// A bought drink with its lots, and its own range.
struct ReferenceWords {
  std::string name;
  std::vector<ReferenceLotWords> lots;
  std::vector<std::string> ranges;     ///< one question a sentence; else one on how to get a range
};

/// The whole book.
struct ReferenceBookWords {
  std::string headline;
  std::vector<ReferenceWords> references;
};

/// Findings of all references, in their order, in sentences.
ReferenceBookWords referenceBookWords(const Voice& voice, const std::vector<Reference>& references, const std::vector<insight::ReferenceFindings>& found);

/// The title of a plan beside a reference.
std::string besideTitle(const Voice& voice, const std::string& reference);

}  // namespace oddglass::words
