#include "aging_evenings.h"
#include "figures/shares.h"
#include "print/read_back.h"
#include "print/report_pages.h"
#include "report/evening.h"
#include "report/html.h"
#include "report/series_document.h"
#include "report/sheet_report.h"
#include "print/table_evening.h"

using namespace oddglass;
using namespace oddglass::testing;

namespace {

/// What a reader of the HTML reads: no style, no marks, no figure (its words are cut into lines of their own).
std::string wordsOf(std::string html) {
  html = std::regex_replace(html, std::regex("<style>[^]*</style>|<svg[^]*?</svg>|<title>[^<]*</title>"), "");
  html = std::regex_replace(html, std::regex("<[^>]*>"), "\n");
  for (const auto& [mark, sign] : {std::pair("&lt;", "<"), {"&gt;", ">"}, {"&quot;", "\""}, {"&#39;", "'"}, {"&amp;", "&"}}) html = std::regex_replace(html, std::regex(mark), sign);
  return html;
}

}  // namespace

TEST_CASE("the report on paper says all that the report as HTML says") {
  const std::string odd = " <i>&\"{x}%1";
  for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter})
    for (const report::For whom : {report::For::room, report::For::maker}) {
      const report::Document document = report::documentOf({}, report_test::evening(odd), whom);
      const bool isA4 = size == print::PaperSize::a4;
      const Paper read(std::string("report_") + (whom == report::For::room ? "room" : "maker") + (isA4 ? "_a4" : "_letter"), print::reportPdf({}, document, size));
      // What stands beside one another in a table may be read in turns: word by word, not line by line.
      const std::string text = read.text();
      std::istringstream wanted(wordsOf(report::html({}, document)));
      for (std::string word; wanted >> word;) {
        INFO(word);
        CHECK(squeezed(text).find(word) != std::string::npos);
      }
      CHECK(timesIn(squeezed(text), "0123456789abcdef0123456789abcdef") == 0);
      for (int page = 1; page <= read.pages(); ++page) CHECK_THAT(read.text(page), Catch::Contains("page " + std::to_string(page) + " of " + std::to_string(read.pages())));
      CHECK(timesIn(read.images(), "\n") <= 2);
      CHECK(beyond(read, isA4 ? 595.3 : 612, isA4 ? 841.9 : 792, 45) == "");
      CHECK(overlapping(read) == "");
    }
}

TEST_CASE("the report of a series on paper says all that its HTML says, with a figure for each question") {
  AgingEvenings evening;
  evening.holdThree();
  const report::Document document = report::seriesDocument({}, report::readSeriesReport(*evening.store, evening.series));
  const Paper read("report_series", print::reportPdf({}, document, print::PaperSize::a4));
  const std::string text = squeezed(read.text());
  std::istringstream wanted(wordsOf(report::html({}, document)));
  for (std::string word; wanted >> word;) {
    INFO(word);
    CHECK(text.find(word) != std::string::npos);
  }
  for (const std::string& line : document.out.sections[3].lines) CHECK_THAT(text, Catch::Contains(squeezed(line)));
  CHECK(timesIn(read.images(), "\n") <= 2);
  CHECK(beyond(read, 595.3, 841.9, 45) == "");
  CHECK(overlapping(read) == "");
}

TEST_CASE("the report for the room names nobody on paper") {
  const Paper read("report_nobody", print::reportPdf({}, report::documentOf({}, report_test::evening(), report::For::room), print::PaperSize::a4));
  for (const char* name : {"Ida", "Bram", "Quell", "Dora", "Mara"}) CHECK_THAT(read.text(), !Catch::Contains(name));
}

TEST_CASE("a hostile name stands whole in the report, and breaks nothing") {
  RevealedSession session = report_test::evening();
  session.title = hostileName();
  session.plan.lots.front().beverageName = hostileName();
  for (ShownPerson& person : session.people) person.shown = hostileName();
  session.decision = hostileName();
  const Paper read("report_hostile", print::reportPdf({}, report::documentOf({}, session, report::For::maker), print::PaperSize::letter));
  CHECK(timesIn(squeezed(read.text()), squeezed(hostileName())) >= 5);
  CHECK(beyond(read, 612, 792, 45) == "");
  CHECK(overlapping(read) == "");
}

TEST_CASE("the report of a score sheet is printed too") {
  PaperEvening evening(1, 0, 4, Method::sheet);
  evening.sitAll();
  evening.sheet = session::openPourSheet(*evening.store, evening.clock, evening.session);
  evening.answerAll([](int, int, const SheetItem& item, Slot slot, int cup) {
    switch (item.kind) {
      case ItemKind::rank: return Said{cup};
      case ItemKind::split: return Said{cup == 1 ? 5 : 0};
      case ItemKind::words:
      case ItemKind::changeOne: return Said{{}, "less of it"};
      case ItemKind::worst: return Said{0};
      case ItemKind::check: return Said{cup % 2};
      default: return Said{std::clamp(item.low.value_or(1) + slot.value, item.low.value_or(1), item.high.value_or(9))};
    }
  });
  report::Document document = report::documentOf({}, evening.end(), report::For::maker);
  // What the window shows on request stands on paper too, with its figures.
  const auto drawing = [](double width, const figures::Measure& measure) {
    figures::SharesPicture shares;
    shares.title = "drawn on request";
    shares.bars = {{"bar", 0.5, "half", "half"}};
    shares.nothing = "never", shares.always = "always";
    return figures::sharesFigure(shares, width, measure);
  };
  document.onRequest = report::Section{"Asked for", {"A line of it."}, std::nullopt, {drawing}};
  const Paper read("report_sheet", print::reportPdf({}, document, print::PaperSize::a4));
  CHECK_THAT(squeezed(read.text()), Catch::Contains(squeezed(document.out.headline)));
  for (const char* each : {"Asked for", "A line of it.", "drawn on request"}) CHECK_THAT(read.text(), Catch::Contains(each));
  CHECK(beyond(read, 595.3, 841.9, 45) == "");
  CHECK(overlapping(read) == "");
}
