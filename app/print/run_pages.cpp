#include "print/run_pages.h"

#include "planning/run_list.h"
#include "print/pages.h"
#include "words/paper.h"
#include "words/run_list.h"

#include <algorithm>

namespace oddglass::print {
namespace {

planning::RunFacts runFacts(const tasting::TablePaper& paper) {
  planning::RunFacts facts;
  facts.places = static_cast<int>(paper.places.size());
  facts.wave = paper.wave;
  facts.rounds = paper.rounds;
  facts.evenings = paper.evenings;
  if (paper.places.empty() || paper.places.front().flights.empty()) return facts;
  const tasting::Flight& flight = paper.places.front().flights.front();
  facts.cupsInFlight = static_cast<int>(flight.cups.size());
  facts.isSheet = flight.method == Method::sheet;
  facts.codedCups = static_cast<int>(std::ranges::count(flight.cups, false, &tasting::FlightCup::isMarked));
  facts.pauseSeconds = flight.pauseSeconds;
  facts.questionsACup = static_cast<int>(std::ranges::count(flight.items, true, &SheetItem::perCup));
  return facts;
}

}  // namespace

std::string runPdf(const words::Voice& voice, const tasting::TablePaper& paper, PaperSize size) {
  const planning::RunFacts facts = runFacts(paper);
  const int spares = static_cast<int>(std::ranges::count_if(paper.cups, [](const Cup& cup) { return cup.spare > 0; }));
  const words::RunPage page = words::runPage(voice, planning::runList(facts), facts.isSheet, paper.cupMl, static_cast<int>(paper.cups.size()), spares);
  const PaperWords about{page.title, words::paperFoot(voice, paper.guestTitle, paper.sealMark), [&voice](int at, int pages) { return words::pageOf(voice, at, pages); }};
  return pdf(size, about, [&](Pages& pages) {
    pages.paragraph(page.title, {20, true, Type{}.colour}, 6);
    pages.heading(page.beforeHeading);
    for (const std::string& line : page.before) pages.paragraph(line);
    for (const words::RunPage::Evening& evening : page.evenings) {
      pages.space(6);
      pages.heading(evening.heading);
      pages.table({evening.headers, evening.rows});
    }
    pages.paragraph(page.pace, {9, false, quietColour});
    pages.paragraph(page.law, {9, false, quietColour});
  });
}

}  // namespace oddglass::print
