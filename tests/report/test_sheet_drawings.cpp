#include "figures/frame.h"
#include "figures/svg.h"
#include "insight/sheet_table.h"
#include "report/html.h"
#include "report/sheet_pictures.h"
#include "report/sheet_report.h"
#include "words/sheet_out.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using oddglass::testing::SheetTable;

namespace {

// Everything a sheet can ask, by so many people of so many drinks, the last one bought.
SheetTable everything(int people, int lots) {
  std::vector<LotRole> roles(static_cast<std::size_t>(lots), LotRole::compared);
  roles.back() = LotRole::reference;
  SheetTable table(lots, roles);
  const Item sweet = table.ask(ItemKind::line, "sweet", 10, true), sour = table.ask(ItemKind::line, "sour"), strong = table.ask(ItemKind::magnitude, "alcohol"), liking = table.ask(ItemKind::liking),
             far = table.ask(ItemKind::distance), right = table.ask(ItemKind::justRight, "sweet"), hay = table.ask(ItemKind::check, "hay"), smoke = table.ask(ItemKind::check, "smoke"),
             behaviour = table.ask(ItemKind::behaviour), worst = table.ask(ItemKind::worst), change = table.ask(ItemKind::changeOne), rank = table.ask(ItemKind::rank), split = table.ask(ItemKind::split),
             sure = table.ask(ItemKind::sureness);
  for (int place = 1; place <= people; ++place) {
    for (int lot = 1; lot <= lots; ++lot) {
      const int mixed = (place * 7 + lot * 5) % 11;
      table.say(place, sweet, lot, 5 * mixed + lot);
      table.say(place, sour, lot, 60 - 3 * ((place * 3 + lot * 2) % 7) - lot);
      table.say(place, strong, lot, 80 * mixed);
      table.say(place, liking, lot, 1 + mixed % 9);
      table.say(place, far, lot, mixed % 11);
      table.say(place, right, lot, 1 + mixed % 5);
      table.say(place, hay, lot, mixed % 2);
      table.say(place, smoke, lot, mixed % 3 == 0);
      table.say(place, behaviour, lot, 1 + mixed % 3);
      if (mixed % 3 == 0) table.say(place, worst, lot, 0);
      else table.write(place, worst, lot, mixed % 2 == 0 ? "thin" : "a smell that I cannot name, like an old barn in the rain");
      table.write(place, change, lot, "more \"hops\" & <less> malt");
      table.say(place, rank, lot, 1 + (place + lot) % lots);
      table.say(place, split, lot, lot == 1 ? 5 : 0);
    }
    table.flight(place).replies.push_back({sure, std::nullopt, 1 + place % 3, {}});
  }
  table.session.commitmentHolds = true;
  return table;
}

std::size_t marksIn(const std::string& text, const std::string& mark) {
  std::size_t count = 0;
  for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark, at + 1)) ++count;
  return count;
}

}  // namespace

TEST_CASE("each kind of question of a sheet has its figure, with the table behind it") {
  for (const auto& [people, lots] : {std::pair{1, 2}, {2, 3}, {8, 4}, {60, 12}}) {
    INFO(people << " people, " << lots << " drinks");
    const SheetTable table = everything(people, lots);
    const auto findings = insight::sheetFindingsOf(table.session);
    const words::CameOut out = words::sheetOut(words::Voice{}, table.session, findings);
    const auto drawings = report::sheetDrawings(words::Voice{}, table.session, findings, out);
    CHECK(drawings.lead.size() == static_cast<std::size_t>(people < insight::fewestForARange ? 0 : lots - 1));  // of one or two nothing is told of gaps
    REQUIRE(drawings.sections.size() == out.sections.size());
    std::vector<report::Drawing> all = drawings.lead;
    for (std::size_t i = 0; i < out.sections.size(); ++i) {
      INFO(out.sections[i].heading);
      CHECK_FALSE(drawings.sections[i].empty());
      all.insert(all.end(), drawings.sections[i].begin(), drawings.sections[i].end());
    }
    for (const report::Drawing& layOut : all)
      for (const double width : {300.0, 640.0, 860.0}) {
        const figures::Figure figure = layOut(width, figures::roomFor);
        INFO(figure.title << " at " << width);
        CHECK(tests::fault(figure, tests::MayCross::nothing) == "");
        CHECK_FALSE(figure.sentence.empty());
        CHECK_FALSE(figure.table.rows.empty());
        for (const auto& row : figure.table.rows) CHECK(row.size() == figure.table.headers.size());
      }
  }
}

TEST_CASE("how the cups lie to each other stands in the report, closed, and says that it came afterwards") {
  const SheetTable table = everything(8, 4);
  const auto findings = insight::sheetFindingsOf(table.session);
  const auto picture = report::mapPicture(words::Voice{}, table.session.plan, findings, insight::sheetMapOf(table.session));
  REQUIRE(picture);
  CHECK(picture->points.size() == 4);
  CHECK(picture->points[3].isOpen);  // the bought one
  CHECK(picture->points[0].ellipse);
  CHECK_THAT(picture->xName, Catch::Contains("more "));
  for (const double width : {300.0, 860.0}) CHECK(tests::fault(figures::mapFigure(*picture, width), tests::MayCross::lines) == "");
  const std::string html = report::html(words::Voice{}, report::documentOf(words::Voice{}, table.session, report::For::room));
  CHECK_THAT(html, Catch::Contains("<details><summary>How the cups lie to each other</summary>\n<p>Looked at afterwards"));
  CHECK(marksIn(html, "<details>") == marksIn(html, "</details>"));
  CHECK(marksIn(html, "<svg") == marksIn(html, "</svg>"));
  CHECK_THAT(html, !Catch::Contains("<less>"));
  CHECK_FALSE(report::mapPicture(words::Voice{}, table.session.plan, findings, insight::sheetMapOf(everything(8, 2).session)));
}

TEST_CASE("after a broken seal no picture gives a verdict") {
  SheetTable table = everything(8, 4);
  table.session.log.push_back({Seq{999}, 0, Event::broken, std::nullopt, std::nullopt});
  const auto findings = insight::sheetFindingsOf(table.session);
  const words::CameOut out = words::sheetOut(words::Voice{}, table.session, findings);
  CHECK(report::sheetDrawings(words::Voice{}, table.session, findings, out).lead.empty());
  CHECK_FALSE(report::documentOf(words::Voice{}, table.session, report::For::room).onRequest);
}
