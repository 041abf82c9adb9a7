#include "planning/too_early.h"

#include "domain/day.h"
#include "planning/gravity.h"

#include <algorithm>

namespace oddglass::planning {
namespace {

/// The notes of one kind up to today, the latest first, one a day.
std::vector<Note> byDay(const std::vector<Note>& notes, NoteKind kind, std::string_view today) {
  std::vector<Note> all;
  for (const Note& note : notes)
    if (!note.withdrawn && note.kind == kind && note.doneOn <= today && (kind != NoteKind::reading || note.gravity)) all.push_back(note);
  std::ranges::stable_sort(all, std::ranges::greater{}, &Note::doneOn);
  const auto again = std::ranges::unique(all, {}, &Note::doneOn);
  all.erase(again.begin(), again.end());
  return all;
}

/// What an earlier reading says of the last one.
GravityWatch beside(const Note& earlier, const Note& last) {
  const int days = daysBetween(earlier.doneOn, last.doneOn).value_or(0), fall = *earlier.gravity - *last.gravity;
  if (fall > steadyWithin) return days <= steadyDays ? GravityWatch::falling : GravityWatch::fell;
  if (fall < -steadyWithin) return GravityWatch::rising;
  return days < steadyDays ? GravityWatch::tooClose : GravityWatch::steady;
}

void lookAtReadings(TooEarly& early, const std::vector<Note>& readings) {
  if (readings.empty()) return;
  const Note& last = readings.front();
  early.gravity = GravityWatch::one;
  early.lastDay = last.doneOn;
  early.last = last.gravity;
  if (readings.size() == 1) return;
  // Backwards: the first reading far enough back decides, unless a nearer one already lies beyond what can be misread. A fall since a reading long before says nothing
  // where a nearer one does not show it.
  for (std::size_t at = 1; at < readings.size(); ++at) {
    const GravityWatch watch = beside(readings[at], last);
    if (watch == GravityWatch::fell && at > 1) return;
    early.gravity = watch;
    early.sinceDay = readings[at].doneOn;
    early.since = readings[at].gravity;
    early.days = daysBetween(readings[at].doneOn, last.doneOn).value_or(0);
    if (watch != GravityWatch::tooClose) return;
  }
}

void lookAtWhatIsLeft(TooEarly& early, const Beverage& drink) {
  if (!early.last) return;
  const double now = *early.last / 10000.0;
  if (drink.originalGravity && *drink.originalGravity >= *early.last) {
    const double real = 0.1808 * platoOf(*drink.originalGravity / 10000.0) + 0.8192 * platoOf(now);
    early.extractLeft = std::max(0.0, real * 10 * now);
  }
  if (drink.finalGravity && *early.last > *drink.finalGravity) {
    early.fallLeft = *early.last - *drink.finalGravity;
    early.volumesLeft = *early.fallLeft / 10.0 * volumesEach;
  }
}

}  // namespace

TooEarly tooEarly(const Beverage& drink, const std::vector<Lot>& lots, const std::vector<Note>& notes, std::string_view today) {
  TooEarly early;
  lookAtReadings(early, byDay(notes, NoteKind::reading, today));
  lookAtWhatIsLeft(early, drink);
  if (!early.lastDay.empty() && early.gravity != GravityWatch::steady) early.nextDay = dayAfter(early.lastDay, steadyDays).value_or("");
  if (const auto done = byDay(notes, NoteKind::stabilised, today); !done.empty()) early.stabilisedOn = done.front().doneOn;
  if (const auto done = byDay(notes, NoteKind::bottled, today); !done.empty()) early.bottledOn = done.back().doneOn;
  for (const Lot& lot : lots)
    if (!lot.packagedOn.empty() && lot.packagedOn <= today && (early.bottledOn.empty() || lot.packagedOn < early.bottledOn)) early.bottledOn = lot.packagedOn;
  if (!early.bottledOn.empty()) early.daysInBottle = daysBetween(early.bottledOn, today);
  for (const NoteKind kind : {NoteKind::haze, NoteKind::sediment, NoteKind::sulphur})
    if (const auto seen = byDay(notes, kind, today); !seen.empty()) {
      Watched watched{kind, seen[0].doneOn, {}, seen[0].level.value_or(0), std::nullopt};
      if (seen.size() > 1) {
        watched.before = seen[1].doneOn;
        watched.levelBefore = seen[1].level;
      }
      early.watched.push_back(std::move(watched));
    }
  if (const auto gushed = byDay(notes, NoteKind::gusher, today); !gushed.empty()) early.gushedOn = gushed.front().doneOn;
  return early;
}

}  // namespace oddglass::planning
