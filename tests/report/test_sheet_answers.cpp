// The answers of a score sheet behind its report: of everybody but those who asked to be only in the sums.
#include "report/made.h"
#include "report/sheet_report.h"
#include "sheet_evening.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace oddglass;
using namespace oddglass::testing;

namespace {

struct AnsweredSheet : SheetEvening {
  RevealedSession came;

  AnsweredSheet() : SheetEvening(1, 0, 3) {
    Draft draft = asSheet({asked(ItemKind::line, "sweet"), asked(ItemKind::check, "butter"), asked(ItemKind::justRight, "body"), asked(ItemKind::liking), asked(ItemKind::rank, "", Part::last), asked(ItemKind::worst)});
    invite(draft);
    session::saveDraft(*store, clock, draft);
    seal();
    sheet = session::openPourSheet(*store, clock, session);
    sit(1, friends[0]);
    sit(2, friends[1], ShownAs::nickname);
    sit(3, friends[2], ShownAs::loose);
    sit(4, maker);
    answerAll([](int place, int, const SheetItem& item, Slot slot, int cup) -> Said {
      switch (item.kind) {
        case ItemKind::line: return {10 * place + slot.value};
        case ItemKind::check: return {slot.value - 1};
        case ItemKind::justRight: return {3 - (slot.value - 1)};
        case ItemKind::rank: return {cup};
        case ItemKind::worst: return {0};
        default: return {place + slot.value};
      }
    });
    came = end();
  }
};

}  // namespace

TEST_CASE("the answers stand behind the report of a score sheet, cup by cup") {
  AnsweredSheet evening;
  const report::Section answers = report::documentOf({}, evening.came, report::For::maker).maker.back();
  REQUIRE(answers.table);
  CHECK(answers.table->rows.size() == 6);   // two cups each of the two who are shown, and of the maker
  const auto rowOf = [&](const std::string& who, const std::string& drink) {
    for (const auto& row : answers.table->rows)
      if (row[0] == who && row[3] == drink) return row;
    return std::vector<std::string>();
  };
  REQUIRE_FALSE(rowOf("Friend A", "Heather mead").empty());
  CHECK(rowOf("Friend A", "Heather mead").back().starts_with("sweet 11; body: just about right; liking 2; an order of all cups "));
  CHECK(rowOf("Friend A", "Bought mead").back().starts_with("sweet 12; butter; body: too little; liking 3"));
  CHECK_FALSE(rowOf("fox 1", "Bought mead").empty());
  CHECK(rowOf("Wenna Tarn", "Bought mead")[1] == "maker");
  for (const auto& row : answers.table->rows)
    for (const std::string& cell : row) CHECK((cell.find("Friend B") == std::string::npos && cell.find("Friend C") == std::string::npos));
}

TEST_CASE("in JSON too, and the room's has neither answers nor people") {
  AnsweredSheet evening;
  const auto json = nlohmann::json::parse(report::jsonOf({}, evening.came, report::For::maker));
  CHECK(json.at("maker").at("answers").size() == 36);   // three people, two cups, six questions
  for (const auto& each : json.at("maker").at("answers")) CHECK((each.at("who") == "Friend A" || each.at("who") == "fox 1" || each.at("who") == "Wenna Tarn"));
  int dealt = 0;
  for (const auto& each : json.at("orders")) dealt += each.at("flights").get<int>();
  CHECK(dealt == 3);   // of the panel, the loose one too
  CHECK(json.at("tasters").at("panel") == 3);
  CHECK_FALSE(json.at("power_before").empty());
  const auto room = nlohmann::json::parse(report::jsonOf({}, evening.came, report::For::room));
  CHECK_FALSE(room.contains("maker"));
  for (const char* name : {"Friend", "fox 1", "Wenna"}) CHECK(room.dump().find(name) == std::string::npos);
}
