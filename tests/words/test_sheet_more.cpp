// What a sheet says for those who ask: how the cups lie to each other, and which words went with liking.
#include "insight/sheet_findings.h"
#include "insight/sheet_table.h"
#include "words/denials.h"
#include "words/plain_voice.h"
#include "words/sheet_drivers.h"
#include "words/sheet_maker.h"
#include "words/sheet_map.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace oddglass;
using namespace oddglass::words;
using oddglass::testing::plainVoice;
using oddglass::testing::SheetTable;
using Catch::Matchers::Contains;

namespace {

// Liking follows honey and not acid; oak is ticked where it is liked less.
SheetTable likedForHoney(int people, int lots) {
  SheetTable table(lots);
  const Item honey = table.ask(ItemKind::line, "honey"), acid = table.ask(ItemKind::line, "acid"), oak = table.ask(ItemKind::check, "oak"), liking = table.ask(ItemKind::liking);
  for (int place = 1; place <= people; ++place)
    for (int lot = 1; lot <= lots; ++lot) {
      const int taste = (place * 3 + lot * lot) % 4;
      table.say(place, honey, lot, 10 * lot + 3 * taste + place);
      table.say(place, acid, lot, 40 + (place * 7 + lot * 5) % 9);
      table.say(place, oak, lot, lot <= 2 && taste != 0);
      table.say(place, liking, lot, std::clamp(2 + lot + (taste == 3), 1, 9));
    }
  return table;
}

OutSection driversOf(const SheetTable& table) { return driversSection(plainVoice, insight::sheetFindingsOf(table.session).drivers, 50); }

}  // namespace

TEST_CASE("each axis of the map says which words it is made of, and every drink where it lies") {
  const SheetTable table = likedForHoney(6, 4);
  const insight::SheetMap map = insight::sheetMapOf(table.session);
  const MapPictureWords text = mapPictureWords(plainVoice, table.session.plan, map);
  CHECK_THAT(text.across, Contains("To the right: more honey ("));
  CHECK_THAT(text.across, Contains(" of 100 parts of what differs)"));
  CHECK_THAT(text.up, Contains("acid"));
  CHECK(text.count == "6 people");
  REQUIRE(text.lots.size() == 4);
  CHECK_THAT(text.lots[0], Contains("Drink 1: "));
  CHECK(text.rows.size() == 6);  // four drinks, two words
  for (const auto& row : text.rows) CHECK(row.size() == text.headers.size());
  CHECK_THAT(mapLines(plainVoice, map).front(), Contains("no part of the verdict"));
  CHECK_THAT(mapLines(plainVoice, insight::sheetMapOf(likedForHoney(6, 2).session)).front(), Contains("three drinks"));
}

TEST_CASE("what went with liking is called a hint and stands on the maker's page alone") {
  const SheetTable table = likedForHoney(8, 5);
  const OutSection section = driversOf(table);
  CHECK(section.heading == "Which words went with liking: a hint");
  REQUIRE(section.lines.size() >= 2);
  CHECK_THAT(section.lines.front() + section.lines[1], Contains("With 10 of 100 more “honey” liking was about "));
  CHECK_THAT(section.lines.front() + section.lines[1], Contains("points higher ("));
  CHECK_THAT(section.lines.back(), Contains("these 5 drinks only"));
  CHECK(section.rows.size() == 3);
  for (const auto& row : section.rows) CHECK(row.size() == section.headers.size());
  for (const std::string& line : section.lines) CHECK(forbiddenWordIn(line).empty());
  const auto all = sheetMakerSections(plainVoice, table.session, insight::sheetFindingsOf(table.session));
  CHECK(std::ranges::any_of(all, [&](const OutSection& each) { return each.heading == section.heading; }));
}

TEST_CASE("where no hint can be given the reason is") {
  CHECK_THAT(driversOf(likedForHoney(8, 3)).lines.front(), Contains("Under four drinks"));
  CHECK_THAT(driversOf(likedForHoney(4, 5)).lines.front(), Contains("fewer than five people"));
  SheetTable silent(5);
  silent.say(1, silent.ask(ItemKind::liking), 1, 5);
  CHECK(driversOf(silent).lines.empty());
}
