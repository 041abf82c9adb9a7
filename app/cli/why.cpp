#include "cli/why.h"

namespace oddglass::cli {
namespace {

using stats::ScoreNote;

std::string sentence(const ScoreNote& note) {
  switch (note.kind) {
    case ScoreNote::Kind::againstResidual: return "nobody scored a sample twice, so samples are judged against the residual";
    case ScoreNote::Kind::belowZero: return "the variance of " + note.term + " is estimated below zero; the test stays the same";
    case ScoreNote::Kind::atZero: return "the variance of " + note.term + " is estimated at zero, so it left the model";
    case ScoreNote::Kind::confounded: return "these answers cannot tell " + note.term + " from the rest, so it was left out";
  }
  return {};
}

}  // namespace

std::string notesOf(const std::vector<ScoreNote>& notes) {
  std::string all;
  for (const ScoreNote& note : notes) all += (all.empty() ? "" : "; ") + sentence(note);
  return all;
}

}  // namespace oddglass::cli
