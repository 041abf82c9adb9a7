#include "domain/flight_form.h"
#include "print/form.h"
#include "print/score_sheet.h"
#include "print/table_pages.h"
#include "words/drinks.h"
#include "words/method.h"
#include "words/paper.h"
#include "words/report.h"

#include <algorithm>

namespace oddglass::print {
namespace {

const SheetItem* itemOf(const tasting::Flight& flight, ItemKind kind) {
  const auto found = std::ranges::find(flight.items, kind, &SheetItem::kind);
  return found == flight.items.end() ? nullptr : &*found;
}

std::vector<std::string> surenessWords(const words::Voice& voice) {
  std::vector<std::string> all;
  for (const Sureness each : {Sureness::guess, Sureness::fairly, Sureness::sure}) all.push_back(words::surenessName(voice, each));
  return all;
}

std::vector<std::string> clueWords(const words::Voice& voice) {
  std::vector<std::string> all;
  for (const Clue each : {Clue::taste, Clue::smell, Clue::mouthfeel, Clue::look, Clue::fizz, Clue::guess}) all.push_back(words::clueName(voice, each));
  return all;
}

/// Which cup was liked better; a lowest answer of 0 is "no preference".
void liked(Pages& pages, const words::Voice& voice, const tasting::Flight& flight, const SheetItem& item) {
  std::vector<std::string> options;
  for (const tasting::FlightCup& cup : flight.cups)
    if (!cup.isMarked && cup.code.value > 0) options.push_back(std::to_string(cup.code.value));
  if (item.low == 0) options.push_back(words::noPreference(voice));
  if (!options.empty()) boxes(pages, options);
  else writingLines(pages, 1);
}

/// A forced choice or a preference: one flight.
void choice(Pages& pages, const words::Voice& voice, const words::TablePaperText& text, const tasting::Flight& flight) {
  const FlightForm form = formOf(flight.method);
  const bool mayHaveNone = [&] {
    const SheetItem* prefer = itemOf(flight, ItemKind::prefer);
    return prefer && prefer->low == 0;
  }();
  pages.paragraph(words::prompt(voice, flight.method, flight.attribute), {15, true, QColor(Qt::black)}, 2);
  pages.paragraph(words::promptHint(voice, flight.method, mayHaveNone), {}, 8);
  std::vector<FormCup> cups;
  for (const tasting::FlightCup& cup : flight.cups)
    cups.push_back({cup.code.value, cup.isMarked ? text.markedCup + " (" + text.mark + ")" : words::positionWord(voice, cup.position, static_cast<int>(flight.cups.size())),
                    !cup.isMarked && !form.saysSame});
  cupBoxes(pages, cups);
  if (form.saysSame) boxes(pages, {words::sameWord(voice, flight.method, true), words::sameWord(voice, flight.method, false)});
  else pages.paragraph(form.picks == 2 ? text.tickTwo : text.tickOne, {9, false, quietColour}, 4);
  if (!form.hasRight && mayHaveNone) boxes(pages, {words::noPreference(voice)});
  if (itemOf(flight, ItemKind::sureness)) {
    asked(pages, text.howSure, 20);
    boxes(pages, surenessWords(voice));
  }
  if (itemOf(flight, ItemKind::clue)) {
    asked(pages, text.howKnew, 20);
    boxes(pages, clueWords(voice));
  }
  if (const SheetItem* prefer = itemOf(flight, ItemKind::prefer); prefer && form.hasRight) {
    asked(pages, text.likedBetter, 20);
    liked(pages, voice, flight, *prefer);
  }
  if (itemOf(flight, ItemKind::words)) {
    asked(pages, text.remark, 44);
    writingLines(pages, 2);
  }
}

/// The same flight with nothing of its own on it.
tasting::Flight emptied(tasting::Flight flight) {
  flight.place = {};
  flight.round = {};
  for (tasting::FlightCup& cup : flight.cups) cup.code = {};
  return flight;
}

void flightPages(Pages& pages, const words::Voice& voice, const words::TablePaperText& text, const tasting::TablePaper& paper, const tasting::Flight& flight) {
  const bool isBlank = flight.place.value == 0;
  pages.paragraph(isBlank ? text.blankPlace + ": ____________" : words::placeLine(voice, flight.place, flight.round, flight.rounds), {18, true, QColor(Qt::black)}, 2);
  if (!isBlank) pages.continues(words::placeLine(voice, flight.place, flight.round, flight.rounds));
  if (isBlank) pages.paragraph(text.blankCode, {9, false, quietColour}, 6);
  if (flight.method == Method::sheet) scoreSheet(pages, voice, text, flight, paper.id);
  else choice(pages, voice, text, flight);
  pages.paragraph(text.fold, {9, false, quietColour}, 8);
}

}  // namespace

std::string answerSheetsPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size, bool isBlank) {
  const words::TablePaperText text = words::tablePaperText(voice);
  const PaperWords about{text.answers, words::paperFoot(voice, paper.guestTitle, paper.sealMark), {}};
  return pdf(size, about, [&](Pages& pages) {
    if (isBlank) {
      if (!paper.places.empty() && !paper.places.front().flights.empty()) flightPages(pages, voice, text, paper, emptied(paper.places.front().flights.front()));
      return;
    }
    bool isFirst = true;
    for (const tasting::PaperPlace& place : paper.places)
      for (const tasting::Flight& flight : place.flights) {
        // One flight a page: it goes into the box folded, by itself.
        pages.continues({});
        if (!isFirst) pages.turn();
        isFirst = false;
        flightPages(pages, voice, text, paper, flight);
      }
  });
}

}  // namespace oddglass::print
