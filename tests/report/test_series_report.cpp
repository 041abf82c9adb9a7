// The report of an aging series, from a store in which three of its four looks were held.
#include "aging_evenings.h"
#include "figures/well_formed.h"
#include "report/html.h"
#include "report/series_document.h"
#include "shelf/notes.h"
#include "words/denials.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::testing;
using Catch::Matchers::Contains;

namespace {

Note racked(AgingEvenings& evening, const std::string& text) {
  Note note;
  note.beverage = shelf::lot(*evening.store, evening.mine).beverage;
  note.doneOn = "2026-03-01";
  note.kind = NoteKind::racked;
  note.text = text;
  return note;
}

report::SeriesReport readIn(AgingEvenings& evening) { return report::readSeriesReport(*evening.store, evening.series); }

std::string htmlIn(AgingEvenings& evening) { return report::html({}, report::seriesDocument({}, readIn(evening))); }

nlohmann::json jsonIn(AgingEvenings& evening) { return nlohmann::json::parse(report::seriesJson({}, readIn(evening))); }

}  // namespace

TEST_CASE("the report of a series holds plan, findings, sittings, drinks and record, and nobody") {
  AgingEvenings evening;
  shelf::add(*evening.store, evening.chance, racked(evening, "off the lees"));
  evening.holdThree();
  const std::string text = htmlIn(evening);
  CHECK(tests::whatIsWrong(text) == "");
  for (const char* part : {"Heather mead grows old", "Sitting 4, which this series was begun for, has not been held yet.", "rose since 2025-12-08", "Begun for one comparison: honey at sitting 4 beside the first.",
                           "A change of up to 10 of 100 was said beforehand not to matter.", "bottles of this bottling, kept cold", "2026-11-24", "not held", "Heather mead, kept cold", "fridge", "What cannot be known", "Looking round", "15 mL in each cup",
                           "off the lees", "Sitting 3: Seal mark ", "Sitting 2: The pour sheet was opened once.", "After ISO 13299:2016; nobody has certified this test.", "1 sitting to come takes 1", "Next look: 2026-11-24."}) {
    INFO(part);
    CHECK_THAT(text, Contains(part));
  }
  // A figure for each question that was looked round: honey, vinegar and the liking; beside them the mark of the verdict.
  std::size_t drawn = 0;
  for (std::size_t at = text.find("<svg"); at != std::string::npos; at = text.find("<svg", at + 1)) ++drawn;
  CHECK(drawn == 4);
  for (const char* name : {"Friend", "fox ", "Wenna", "Odo"}) CHECK(text.find(name) == std::string::npos);
  for (const report::Section& section : report::seriesDocument({}, readIn(evening)).room)
    for (const std::string& line : section.lines) {
      INFO(line);
      CHECK(words::forbiddenWordIn(line).empty());
    }

  const auto json = jsonIn(evening);
  CHECK(json.at("format") == "oddglass-series-report");
  CHECK(json.at("plan").at("main") == nlohmann::json({{"sitting", 4}, {"word", "honey"}, {"limit", 10}}));
  REQUIRE(json.at("sittings").size() == 4);
  // Six friends and the maker sat every time; the second time all of them had answered before.
  CHECK(json.at("sittings")[0].at("tasters") == nlohmann::json({{"panel", 6}, {"makers", 1}, {"answered_before", {{"panel", 0}, {"makers", 0}}}}));
  CHECK(json.at("sittings")[1].at("tasters").at("answered_before") == nlohmann::json({{"panel", 6}, {"makers", 1}}));
  CHECK(json.at("sittings")[3].at("session").is_null());
  CHECK(json.at("lots").size() == 2);
  CHECK(json.at("lots")[1].at("storage") == "fridge");
  for (const char* name : {"Friend", "fox ", "Wenna", "Odo"}) CHECK(json.dump().find(name) == std::string::npos);
}

TEST_CASE("a series without a sitting has a report too, and a hostile name breaks none of it") {
  AgingEvenings evening;
  const std::string odd = "<b>\"&'=1+1 {title}</script>";
  Series series = shelf::series(*evening.store, evening.series);
  series.title = odd;
  shelf::save(*evening.store, evening.clock, evening.chance, series);
  shelf::add(*evening.store, evening.chance, racked(evening, odd));
  CHECK(tests::whatIsWrong(htmlIn(evening)) == "");
  CHECK_THAT(htmlIn(evening), Contains("Nothing has been tasted in this series yet."));
  evening.hold(1, 1765200000000, [](int place, int, const SheetItem& item, Slot slot, int) { return risen(1, place, item, slot); });
  const std::string text = htmlIn(evening);
  CHECK(tests::whatIsWrong(text) == "");
  CHECK(text.find("<b>") == std::string::npos);
  CHECK_THAT(text, Contains("&lt;b&gt;&quot;&amp;&#39;=1+1 {title}&lt;/script&gt;"));
  CHECK(jsonIn(evening).at("notes")[0].at("text") == odd);
}
