#pragma once

#include "domain/plan.h"
#include "print/paper_size.h"
#include "words/voice.h"

#include <string>

namespace oddglass::print {

/// A sealed plan in which hands hide the key, as its paper needs it. Nothing of the key is in it, and nothing that was read off.
struct RoutinePaper {
  Plan plan;
  std::string guestTitle;
  std::string sealMark;
};

/// The routine's steps and the blank lists that are filled in by hand, as the bytes of a PDF: a couple's two sheets each on a page of its own, a die's list, what is
/// turned over alone, the letters of whole bottles with the codes that are poured from each.
std::string routinePdf(const words::Voice& voice, const RoutinePaper& paper, PaperSize size);

}  // namespace oddglass::print
