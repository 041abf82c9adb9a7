#include "report/series_document.h"

#include "insight/beside.h"
#include "report/age_picture.h"
#include "report/made.h"
#include "words/bottle_watch.h"
#include "words/drinks.h"
#include "words/history.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/over_time.h"
#include "words/record.h"
#include "words/report.h"
#include "words/series_report.h"

#include <algorithm>

namespace oddglass::report {
namespace {

using words::Voice;

/// The pieces of one series' report.
struct SeriesWriter {
  const Voice& voice;
  const SeriesReport& read;
  words::SeriesReportWords text;

  std::vector<std::string> lotNames() const {
    std::vector<std::string> names;
    for (const SeriesReport::Stock& each : read.stock) names.push_back(words::lotTitle(voice, plannedAs(each)));
    return names;
  }

  static PlannedLot plannedAs(const SeriesReport::Stock& stock) {
    PlannedLot lot;
    lot.beverageName = stock.drink.name;
    lot.lotName = stock.lot.name;
    return lot;
  }

  std::string orDash(const std::string& value) const { return value.empty() ? std::string("–") : value; }

  Section sittings() const {
    Section section{text.sittingsHeading, {}, figures::Table{text.sittingHeaders, {}}};
    for (const session::SittingNow& each : read.now) {
      const auto held = std::ranges::find(read.over.sittings, each.session, [](const insight::TimeSitting& sitting) { return std::optional(sitting.session); });
      const bool isThere = held != read.over.sittings.end();
      section.table->rows.push_back({words::whole(voice, each.number), each.dueOn, isThere ? held->heldOn : !each.session ? text.notHeld : words::stateName(voice, each.state),
                                     isThere ? words::ageName(voice, held->age) : "–", isThere ? words::whole(voice, held->people) : "–", isThere ? words::whole(voice, held->alsoAtFirst) : "–"});
      if (const std::string seen = words::seenLine(voice, each.timesSeen); !seen.empty()) section.lines.push_back(words::atSitting(voice, each.number, seen));
    }
    for (std::size_t i = 0; i < read.held.size(); ++i) {
      const auto say = [&](const std::string& what) {
        if (!what.empty()) section.lines.push_back(words::atSitting(voice, read.over.sittings[i].number, what));
      };
      say(words::setupLine(voice, read.setup[i]));
      say(words::experienceLine(voice, read.held[i]));
      for (const std::string& each : words::deviationLines(voice, insight::deviationsOf(read.held[i]))) say(each);
    }
    return section;
  }

  Section served() const {
    Section section{words::reportWords(voice).servingHeading, words::servingLines(voice, read.held.front()), std::nullopt};
    section.lines.pop_back();   // the orders, by letters that this report does not use, stand in that of the sitting
    section.lines.insert(section.lines.begin(), text.servedNote);
    return section;
  }

  Section drinks() const {
    Section section{text.lotHeading, {text.lotNote}, figures::Table{text.lotHeaders, {}}};
    const auto toCome = static_cast<int>(std::ranges::count_if(read.now, session::isToCome));
    bool isBatch = true;
    for (const SeriesReport::Stock& each : read.stock) {
      const auto& [lot, drink] = each;
      section.table->rows.push_back({words::lotTitle(voice, plannedAs(each)), isBatch ? text.batch : words::controlName(voice, read.series.control), drink.abvBp ? words::strength(voice, *drink.abvBp) : words::notKnown(voice),
                                     orDash(lot.packagedOn), orDash(lot.bestBefore), orDash(lot.storage), words::whole(voice, lot.bottles), words::whole(voice, lot.held)});
      if (toCome > 0) section.lines.push_back(words::stockLine(voice, read.series, toCome, words::lotTitle(voice, plannedAs(each)), lot.bottles));
      isBatch = false;
    }
    return section;
  }

  Section record() const {
    Section section{text.recordHeading, {}, std::nullopt};
    for (std::size_t i = 0; i < read.held.size(); ++i)
      for (const std::string& each : {words::commitmentLine(voice, read.held[i]), words::openingsLine(voice, read.held[i].pourSheetOpenings)})
        section.lines.push_back(words::atSitting(voice, read.over.sittings[i].number, each));
    if (!read.held.empty()) section.lines.push_back(words::standardLine(voice, read.held.back().plan));
    return section;
  }

  // Each question with its figure; a figure stands in place of the section's table.
  void addAsked(const words::OverTimeWords& said, Document& made) const {
    const std::size_t lines = read.over.lines.size();
    for (std::size_t i = 0; i < said.round.size(); ++i)
      add(said.round[i], i < lines ? agePicture(voice, read.series, read.over, read.over.lines[i], read.notes) : mentionPicture(voice, read.series, read.over, read.over.mentions[i - lines], read.notes), made);
    const auto seen = insight::seenInBottle(read.series, read.notes);
    for (std::size_t i = 0; i < said.seen.size(); ++i) add(said.seen[i], i < seen.size() ? std::optional(seenPicture(voice, seen[i])) : std::nullopt, made);
  }

  static void add(const words::OutSection& section, const std::optional<figures::AgePicture>& picture, Document& made) {
    made.out.sections.push_back(section);
    made.drawings.push_back(picture ? std::vector<Drawing>{drawingOf(*picture, figures::ageFigure)} : std::vector<Drawing>());
  }
};

}  // namespace

Document seriesDocument(const Voice& voice, const SeriesReport& read) {
  const SeriesWriter writer{voice, read, words::seriesReportWords(voice)};
  const session::SittingNow* next = session::nextSitting(read.now);
  const words::OverTimeWords said = words::overTimeWords(voice, read.series, read.over, next ? next->dueOn : std::string(), read.notes);
  Document made;
  made.language = voice.language;
  made.title = read.series.title;
  made.date = words::seriesDates(voice, read.series, read.over);
  made.out.shape = said.shape;
  made.out.word = said.word;
  made.out.what = words::listed(voice, writer.lotNames());
  made.out.headline = said.headline;
  made.out.next = said.next;
  made.out.method = words::seriesMethod(voice);
  const auto addLinesUnder = [&](const std::string& heading, const std::vector<std::string>& lines) {
    if (lines.empty()) return;
    words::OutSection section;
    section.heading = heading;
    section.lines = lines;
    made.out.sections.push_back(std::move(section));
    made.drawings.emplace_back();
  };
  addLinesUnder({}, said.lines);
  addLinesUnder(writer.text.unknownHeading, said.cautions);
  if (!said.round.empty()) addLinesUnder(writer.text.roundHeading, {writer.text.roundNote});
  writer.addAsked(said, made);
  addLinesUnder(writer.text.notesHeading, noteLines(voice, read.series, read.over, read.notes));
  made.room = {{writer.text.planHeading, words::seriesPlanLines(voice, read.series, read.over.main.kind, writer.lotNames()), std::nullopt}, writer.sittings()};
  if (!read.held.empty()) made.room.push_back(writer.served());
  made.room.push_back(writer.drinks());
  made.room.push_back(writer.record());
  return made;
}

}  // namespace oddglass::report
