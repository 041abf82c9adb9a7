#include "insight/bottle_watch.h"

#include "canon/folded.h"
#include "domain/day.h"
#include "insight/over_time.h"

#include <algorithm>

namespace oddglass::insight {
namespace {

std::vector<Note> byDay(std::vector<Note> notes) {
  std::ranges::stable_sort(notes, {}, &Note::doneOn);
  return notes;
}

}  // namespace

std::vector<SeenInBottle> seenInBottle(const Series& series, const std::vector<Note>& notes) {
  std::vector<SeenInBottle> all;
  for (const NoteKind kind : {NoteKind::haze, NoteKind::sediment, NoteKind::sulphur}) {
    SeenInBottle seen{kind, {}};
    for (const Note& note : byDay(notes)) {
      const auto days = daysBetween(series.begunOn, note.doneOn);
      if (note.kind == kind && note.level && days && *days >= 0) seen.looks.push_back({*days / daysOfAMonth, note.doneOn, *note.level});
    }
    if (!seen.looks.empty()) all.push_back(std::move(seen));
  }
  return all;
}

std::vector<Note> deedsAgainst(const std::string& word, const std::vector<Note>& notes) {
  std::vector<Note> deeds;
  if (word.empty()) return deeds;
  for (const Note& note : notes)
    if (!note.word.empty() && canon::folded(note.word) == canon::folded(word)) deeds.push_back(note);
  return byDay(std::move(deeds));
}

std::vector<std::string> faultsNotAsked(const std::vector<std::string>& asked, const std::vector<Note>& notes) {
  std::vector<std::string> faults;
  const auto isAmong = [](const std::vector<std::string>& words, const std::string& word) {
    return std::ranges::any_of(words, [&](const std::string& each) { return canon::folded(each) == canon::folded(word); });
  };
  for (const Note& note : byDay(notes))
    if (!note.word.empty() && !isAmong(asked, note.word) && !isAmong(faults, note.word)) faults.push_back(note.word);
  return faults;
}

}  // namespace oddglass::insight
