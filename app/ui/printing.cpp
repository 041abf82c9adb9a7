#include "ui/printing.h"

#include "domain/by_hand.h"
#include "domain/problem.h"
#include "exchange/file_out.h"
#include "print/pour_pages.h"
#include "print/report_pages.h"
#include "print/routine_pages.h"
#include "print/run_pages.h"
#include "print/table_pages.h"
#include "print/tag_pages.h"
#include "report/series_document.h"
#include "report/sheet_report.h"
#include "session/look.h"
#include "session/pour.h"
#include "session/record.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/series.h"
#include "store/together.h"
#include "tasting/paper.h"

#include <algorithm>
#include <array>

namespace oddglass::ui {
namespace {

constexpr std::array<std::pair<std::string_view, Printed>, 11> printedNames{{{"labels", Printed::labels}, {"mats", Printed::mats}, {"sheets", Printed::sheets}, {"blank", Printed::blank},
                                                                            {"run", Printed::run}, {"routine", Printed::routine}, {"pour", Printed::pour}, {"key", Printed::key}, {"report", Printed::report}, {"series", Printed::series}, {"tags", Printed::tags}}};

std::string forTheTable(const words::Voice& voice, const tasting::TablePaper& paper, const Printing& wish) {
  switch (wish.what) {
    case Printed::labels: return print::labelsPdf(voice, paper, wish.size, wish.labels);
    case Printed::mats: return print::matsPdf(voice, paper, wish.size);
    case Printed::sheets: return print::answerSheetsPdf(voice, paper, wish.size);
    case Printed::blank: return print::answerSheetsPdf(voice, paper, wish.size, true);
    case Printed::run: return print::runPdf(voice, paper, wish.size);
    case Printed::routine:
    case Printed::pour:
    case Printed::key:
    case Printed::report:
    case Printed::series:
    case Printed::tags: break;
  }
  return {};
}

void printKey(store::Store& store, Clock& clock, const words::Voice& voice, const SessionId& session, const Printing& wish, const std::filesystem::path& file) {
  store::Together together(store);
  const session::PourSheet sheet = session::openPourSheet(store, clock, session);
  exchange::writeWhole(file, wish.what == Printed::key ? print::keyCardPdf(voice, sheet, wish.size) : print::pourSheetPdf(voice, sheet, wish.size));
  std::error_code cannot;   // not every disk knows owners
  std::filesystem::permissions(file, std::filesystem::perms::owner_read | std::filesystem::perms::owner_write, cannot);
  together.commit();
}

}  // namespace

Printed printedNamed(std::string_view name, const std::string& argument) {
  const auto found = std::ranges::find(printedNames, name, &std::pair<std::string_view, Printed>::first);
  if (found != printedNames.end()) return found->second;
  std::string choices;
  for (const auto& [known, what] : printedNames) choices += (choices.empty() ? "" : ", ") + std::string(known);
  throw Problem(Trouble::notAChoice, argument, {{"text", std::string(name)}, {"choices", choices}});
}

print::PaperSize sizeNamed(std::string_view name, const std::string& argument) {
  std::string lower(name);
  std::ranges::transform(lower, lower.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  if (lower == "a4") return print::PaperSize::a4;
  if (lower == "letter") return print::PaperSize::letter;
  throw Problem(Trouble::notAChoice, argument, {{"text", std::string(name)}, {"choices", "A4, letter"}});
}

store::Access accessFor(const Printing& wish) { return isKey(wish.what) ? store::Access::write : store::Access::read; }

void printInto(store::Store& store, Clock& clock, const words::Voice& voice, const SessionId& session, const Printing& wish, const std::filesystem::path& file) {
  if (file.empty()) throw Problem(Trouble::empty, "out");
  if (isKey(wish.what)) return printKey(store, clock, voice, session, wish, file);
  if (wish.what == Printed::routine) {
    const session::SessionRecord record = session::record(store, session);
    if (isDrawn(record.plan.routine)) throw Problem(Trouble::keyDrawn, "session");
    exchange::writeWhole(file, print::routinePdf(voice, {record.plan, record.guestTitle, record.sealMark}, wish.size));
    return;
  }
  exchange::writeWhole(file, wish.what == Printed::report ? print::reportPdf(voice, report::documentOf(voice, session::revealed(store, session), wish.whom), wish.size)
                                                          : forTheTable(voice, tasting::tablePaper(store, session), wish));
}

void printTags(store::Store& store, const words::Voice& voice, const SeriesId& series, const Printing& wish, const std::filesystem::path& file) {
  const Series found = shelf::series(store, series);
  const auto named = [&](const LotId& id) {
    const Lot lot = shelf::lot(store, id);
    return words::NamedLot{shelf::beverage(store, lot.beverage).name, lot.name};
  };
  const auto tags = words::bottleTags(voice, found, named(found.batch), found.controlLot ? named(*found.controlLot) : words::NamedLot{});
  exchange::writeWhole(file, print::tagsPdf(words::bottleTagsTitle(voice, found), tags, wish.size, wish.labels));
}

void printSeries(store::Store& store, const words::Voice& voice, const SeriesId& series, print::PaperSize size, const std::filesystem::path& file) {
  const report::SeriesReport read = report::readSeriesReport(store, series);
  if (session::areClosed(read.now)) throw Problem(Trouble::pagesClosed, "series", {{"text", read.series.title}});
  exchange::writeWhole(file, print::reportPdf(voice, report::seriesDocument(voice, read), size));
}

}  // namespace oddglass::ui
