#include "words/series_report.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

namespace oddglass::words {

SeriesReportWords seriesReportWords(const Voice& voice) {
  const auto w = [&](const char* source) { return say(voice, source); };
  SeriesReportWords words;
  words.planHeading = w(QT_TRANSLATE_NOOP("words", "Settled when it began"));
  words.sittingsHeading = w(QT_TRANSLATE_NOOP("words", "The sittings"));
  words.lotHeading = w(QT_TRANSLATE_NOOP("words", "The drinks and what is left of them"));
  words.lotNote = w(QT_TRANSLATE_NOOP("words", "As they stand on the shelf now."));
  words.notesHeading = w(QT_TRANSLATE_NOOP("words", "What was done to it"));
  words.recordHeading = w(QT_TRANSLATE_NOOP("words", "The record"));
  words.unknownHeading = w(QT_TRANSLATE_NOOP("words", "What cannot be known"));
  words.sittingHeaders = {w(QT_TRANSLATE_NOOP("words", "sitting")), w(QT_TRANSLATE_NOOP("words", "due on")), w(QT_TRANSLATE_NOOP("words", "held on")), w(QT_TRANSLATE_NOOP("words", "age")),
                          w(QT_TRANSLATE_NOOP("words", "people who had both")), w(QT_TRANSLATE_NOOP("words", "at the first too"))};
  words.lotHeaders = {w(QT_TRANSLATE_NOOP("words", "drink and lot")), w(QT_TRANSLATE_NOOP("words", "in the series")), w(QT_TRANSLATE_NOOP("words", "alcohol by volume")), w(QT_TRANSLATE_NOOP("words", "packaged on")),
                      w(QT_TRANSLATE_NOOP("words", "best before")), w(QT_TRANSLATE_NOOP("words", "storage")), w(QT_TRANSLATE_NOOP("words", "bottles now")), w(QT_TRANSLATE_NOOP("words", "set aside for sealed sessions"))};
  words.notHeld = w(QT_TRANSLATE_NOOP("words", "not held"));
  words.batch = w(QT_TRANSLATE_NOOP("words", "the batch"));
  words.roundHeading = w(QT_TRANSLATE_NOOP("words", "Looking round"));
  words.roundNote = w(QT_TRANSLATE_NOOP("words", "From here on it is not what the series was begun for: hints, judged together, so that looking at many things does not make one of them speak by chance."));
  words.servedNote = w(QT_TRANSLATE_NOOP("words", "As at the first sitting; what was set otherwise later stands with its sitting."));
  return words;
}

std::string controlName(const Voice& voice, ControlKind control) {
  switch (control) {
    case ControlKind::none: return say(voice, QT_TRANSLATE_NOOP("words", "nothing"));
    case ControlKind::twin: return say(voice, QT_TRANSLATE_NOOP("words", "bottles of this bottling, kept cold"));
    case ControlKind::reference: return say(voice, QT_TRANSLATE_NOOP("words", "a bought drink"));
  }
  return {};
}

std::vector<std::string> seriesPlanLines(const Voice& voice, const Series& series, ItemKind kind, const std::vector<std::string>& lots) {
  std::vector<std::string> lines;
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Followed: {lot}. Ages count from {date}."), {{"lot", lots.at(0)}, {"date", series.begunOn}}));
  lines.push_back(series.control == ControlKind::none || lots.size() < 2
                      ? say(voice, QT_TRANSLATE_NOOP("words", "Nothing stands beside it, so a changed drink and a changed day cannot be told apart."))
                      : say(voice, QT_TRANSLATE_NOOP("words", "Beside it at every sitting, under a code like its own: {lot} ({kind})."), {{"lot", lots.at(1)}, {"kind", controlName(voice, series.control)}}));
  const MainComparison& main = series.main;
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Begun for one comparison: {what} at sitting {number} beside the first."),
                      {{"what", main.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "liking")) : main.word}, {"number", whole(voice, main.sitting)}}));
  if (main.limit) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "A change of up to {limit} was said beforehand not to matter."), {{"limit", limitPoints(voice, kind, *main.limit)}}));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Everything else is looking round, and is judged together.")));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Planned: {sittings} sittings, {bottles} of each drink for one of them, {reserve} more in reserve."),
                      {{"sittings", whole(voice, static_cast<int>(series.sittings.size()))}, {"bottles", sayCount(voice, QT_TRANSLATE_NOOP("words", "1 bottle"), QT_TRANSLATE_NOOP("words", "{n} bottles"), series.bottlesEach)},
                       {"reserve", whole(voice, series.reserve)}}));
  return lines;
}

std::string seriesDates(const Voice& voice, const Series& series, const insight::OverTime& over) {
  const Values values{{"begun", series.begunOn}, {"first", over.sittings.empty() ? std::string() : over.sittings.front().heldOn}, {"last", over.sittings.empty() ? std::string() : over.sittings.back().heldOn}};
  if (over.sittings.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "Followed from {begun}; no sitting has been held yet."), values);
  if (over.sittings.size() == 1) return say(voice, QT_TRANSLATE_NOOP("words", "Followed from {begun}; one sitting so far, on {first}."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "Followed from {begun}; sittings held from {first} to {last}."), values);
}

std::string atSitting(const Voice& voice, int number, const std::string& what) {
  if (number == 0) return what;
  return say(voice, QT_TRANSLATE_NOOP("words", "Sitting {number}: {what}"), {{"number", whole(voice, number)}, {"what", what}});
}

std::string seenLine(const Voice& voice, int timesSeen) {
  if (timesSeen == 0) return {};
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "The series’ old pages were opened once while it was sealed."), QT_TRANSLATE_NOOP("words", "The series’ old pages were opened {n} times while it was sealed."), timesSeen);
}

std::string stockLine(const Voice& voice, const Series& series, int toCome, const std::string& lot, int bottles) {
  const Values values{{"lot", lot}, {"take", whole(voice, toCome * series.bottlesEach)}, {"reserve", whole(voice, series.reserve)}, {"there", whole(voice, bottles)}};
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "{lot}: 1 sitting to come takes {take}, with {reserve} in reserve; bottles there: {there}."),
                  QT_TRANSLATE_NOOP("words", "{lot}: {n} sittings to come take {take}, with {reserve} in reserve; bottles there: {there}."), toCome, values);
}

std::string seriesMethod(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "The main comparison by Student’s t over the people who sat at both sittings (paired), its limit by two one-sided tests; slopes over the sittings by a mixed model with people and sittings, held together over all questions by Holm (1979)."));
}

}  // namespace oddglass::words
