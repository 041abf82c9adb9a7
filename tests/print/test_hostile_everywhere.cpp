// One evening of a series whose every name and text would break a page, a table, a calendar or a reader, through everything that goes out.
#include "aging_evenings.h"
#include "domain/text.h"
#include "exchange/calendar.h"
#include "exchange/csv.h"
#include "exchange/write_out.h"
#include "figures/svg.h"
#include "figures/well_formed.h"
#include "print/pour_pages.h"
#include "print/read_back.h"
#include "print/report_pages.h"
#include "print/run_pages.h"
#include "print/table_pages.h"
#include "report/html.h"
#include "report/series_document.h"
#include "report/sheet_report.h"
#include "shelf/notes.h"
#include "tasting/paper.h"

#include <sstream>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

/// Markup, quotes, a formula, the right-to-left override, a line that would be one of a calendar, an emoji, and letters without a blank up to `letters`.
std::string odd(std::size_t letters) {
  std::string text = "=2+3 <script>\"&'{n}%1\xE2\x80\xAE\r\nBEGIN:VEVENT\r\nX \xF0\x9F\x8D\xAF ;,\\";
  while (lettersIn(cleaned(text)) < letters) text += 'W';
  return text;
}

struct HostileEvenings : AgingEvenings {
  HostileEvenings() {
    for (const LotId& each : {mine, twin}) {
      Lot lot = shelf::lot(*store, each);
      lot.name = odd(each == mine ? 200 : 199);
      lot.storage = odd(200);
      shelf::save(*store, chance, lot);
    }
    Beverage drink = shelf::beverage(*store, shelf::lot(*store, mine).beverage);
    drink.name = odd(200);
    shelf::save(*store, chance, drink);
    std::size_t letters = 80;
    for (const TasterId& each : friends) {
      Taster taster = shelf::taster(*store, each);
      taster.name = odd(++letters);
      taster.nickname = odd(letters - 30);
      shelf::save(*store, chance, taster);
    }
    Series changed = shelf::series(*store, series);
    changed.title = odd(200);
    shelf::save(*store, clock, chance, changed);
    Note note;
    note.beverage = drink.id;
    note.doneOn = "2025-12-01";
    note.kind = NoteKind::other;
    note.text = odd(300);
    shelf::add(*store, chance, note);
    clock.set(1765200000000);
    planned(1);
    Draft draft = session::draft(*store, session);
    draft.title = odd(200);
    draft.guestTitle = odd(200);
    draft.sheet.items.push_back(asked(ItemKind::check, odd(60)));
    draft.sheet.items.push_back(asked(ItemKind::line, odd(59)));
    draft.sheet.items.push_back(asked(ItemKind::changeOne));
    draft.sheet.cleanser = odd(60);
    draft.promises = {{Outcome::shown, odd(400)}, {Outcome::notShown, odd(400)}};
    session::saveDraft(*store, clock, draft);
    sealAndSit();
    tasting::said(*store, clock, chance, session, {}, odd(200));
  }

  void tasted() {
    answerAll([](int place, int, const SheetItem& item, Slot slot, int) -> Said {
      if (item.kind == ItemKind::changeOne) return {{}, odd(300)};
      return risen(1, place, item, slot);
    });
    end();
    session::decide(*store, clock, chance, session, odd(300));
  }
};

/// It stands there as it was cleaned on its way in: no direction sign, no line of its own.
void isWhole(const std::string& name, const std::string& bytes, bool hasText = true) {
  INFO(name);
  const Paper read("hostile_" + name, bytes);
  const std::string text = squeezed(read.text());
  CHECK(text.find("\xE2\x80\xAE") == std::string::npos);
  if (hasText) CHECK_THAT(text, Catch::Contains("=2+3<script>\"&'{n}%1BEGIN:VEVENTX"));
  CHECK(beyond(read, 595.3, 841.9, 45) == "");
  CHECK(overlapping(read) == "");
}

void isSafe(const std::string& xml) {
  CHECK(tests::whatIsWrong(xml) == "");
  CHECK(xml.find("<script") == std::string::npos);
  CHECK(xml.find("\xE2\x80\xAE") == std::string::npos);
  CHECK(xml.find("&lt;script&gt;&quot;&amp;&#39;{n}%1") != std::string::npos);
}

}  // namespace

TEST_CASE("a hostile name goes through everything that goes out, and breaks none of it") {
  HostileEvenings evening;
  const tasting::TablePaper paper = tasting::tablePaper(*evening.store, evening.session);
  constexpr print::PaperSize a4 = print::PaperSize::a4;
  CHECK(overlapping(Paper("hostile_labels", print::labelsPdf({}, paper, a4))) == "");
  isWhole("mats", print::matsPdf({}, paper, a4));
  isWhole("sheets", print::answerSheetsPdf({}, paper, a4));
  isWhole("blank", print::answerSheetsPdf({}, paper, a4, true));
  isWhole("run", print::runPdf({}, paper, a4));
  isWhole("pour", print::pourSheetPdf({}, evening.sheet, a4));
  CHECK_THAT(squeezed(Paper("hostile_key", print::keyCardPdf({}, evening.sheet, a4)).text()), Catch::Contains("=2+3<script>"));

  evening.tasted();
  const RevealedSession session = session::revealed(*evening.store, evening.session);
  for (const report::For whom : {report::For::room, report::For::maker}) {
    const report::Document document = report::documentOf({}, session, whom);
    isWhole(whom == report::For::room ? "report_room" : "report_maker", print::reportPdf({}, document, a4));
    isSafe(report::html({}, document));
    CHECK(nlohmann::json::parse(report::jsonOf({}, session, whom)).at("session").at("title") == cleaned(odd(200)));
    bool isDrawn = false;
    for (const auto& section : document.drawings)
      for (const report::Drawing& layOut : section) {
        isDrawn = true;
        CHECK(tests::whatIsWrong(figures::svg(layOut(640, figures::roomFor))) == "");
      }
    CHECK(isDrawn);
  }
  const report::SeriesReport read = report::readSeriesReport(*evening.store, evening.series);
  const report::Document series = report::seriesDocument({}, read);
  isWhole("series", print::reportPdf({}, series, a4));
  isSafe(report::html({}, series));
  CHECK(nlohmann::json::parse(report::seriesJson({}, read)).at("findings").at("title") == cleaned(odd(200)));

  for (const auto& file : exchange::exportCsv(*evening.store, evening.session, evening.folder / "csv")) {
    INFO(file.filename().string());
    const exchange::CsvTable table = exchange::readCsv(file);   // as many cells in each row as it has columns
    for (const auto& row : table.rows)
      for (const std::string& cell : row.cells) CHECK((cell.empty() || std::string("=+-@").find(cell[0]) == std::string::npos || cell.find_first_not_of("-0123456789") == std::string::npos));
  }
  std::ostringstream out;
  out << std::ifstream(exchange::exportJson(*evening.store, evening.clock, evening.session, evening.folder / "json")).rdbuf();
  CHECK(nlohmann::json::parse(out.str()).at("format") == "oddglass");
  CHECK(out.str().find("\xE2\x80\xAE") == std::string::npos);

  const std::string calendar = exchange::calendarOf(read.series, read.series.sittings, std::vector<std::string>(4, read.series.title), 1765200000000);
  CHECK(timesIn(calendar, "\r\nBEGIN:VEVENT\r\n") == 4);   // one a sitting, none out of a title
  for (std::size_t at = 0; at < calendar.size();) {
    const std::size_t end = calendar.find("\r\n", at);
    REQUIRE(end != std::string::npos);
    CHECK(end - at <= 75);   // RFC 5545, 3.1
    at = end + 2;
  }
}
