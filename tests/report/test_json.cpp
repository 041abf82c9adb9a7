#include "domain/problem.h"
#include "report/evening.h"
#include "report/json.h"
#include "report/reported.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace oddglass;
using namespace report_test;
using report::For;

namespace {

}  // namespace

TEST_CASE("the JSON has the numbers at full precision and the sentences beside them") {
  RevealedSession session = evening();
  const auto report = jsonOf(session, For::maker);
  CHECK(report.at("format") == "oddglass-report");
  CHECK(report.at("plan").at("limit_pm") == 300);
  CHECK(report.at("plan").at("lots").at(0).at("abv_bp") == 1250);
  CHECK(report.at("plan").at("lots").at(1).at("abv_bp").is_null());
  CHECK(report.at("plan").at("lots").at(1).at("ingredients") == "not_known");
  const auto& all = report.at("findings").at("all");
  CHECK(all.at("trials") == 10);
  CHECK(all.at("right") == 6);
  // P(6 or more of 10 at 1/3) = 4521/59049 (exact binomial)
  CHECK_THAT(all.at("p_value").get<double>(), Catch::WithinRel(4521.0 / 59049.0, 1e-12));
  CHECK(all.at("needed") == 7);  // ISO 4120:2021, table A.1
  CHECK(report.at("conclusion").at("verdict") == "not_shown");
  CHECK(report.at("conclusion").at("headline") == "No difference shown.");
  CHECK(report.at("record").at("pour_sheet_openings") == 3);
  CHECK(report.at("record").at("seal_mark") == "kapo rilu 7");
  CHECK(report.at("orders").size() == 6);
  int flights = 0;
  for (const auto& each : report.at("orders")) flights += each.at("flights").get<int>();
  CHECK(flights == 12);
}

TEST_CASE("the room's JSON holds no person") {
  const std::string room = report::json(words::Voice{}, evening(), insight::findingsOf(evening()), For::room);
  for (const char* word : {"Ida", "Bram", "Quell", "Dora", "Mara", "waxy", "soapy", "cardboard", "\"maker\": {"}) {
    INFO(word);
    CHECK(room.find(word) == std::string::npos);
  }
  const auto full = jsonOf(evening(), For::maker);
  CHECK(full.at("maker").at("people").size() == 3);
  CHECK(full.at("maker").at("flights").size() == 12);  // three people and a maker, three rounds each; the loose one has no rows
  CHECK(full.dump().find("Quell") == std::string::npos);
}

TEST_CASE("hostile texts survive, invalid bytes do not break the file") {
  CHECK(jsonOf(evening("\"}]"), For::maker).at("session").at("title") == "Heather against bought\"}]");
  CHECK(jsonOf(evening("\xFF"), For::maker).at("session").at("title") == "Heather against bought\xEF\xBF\xBD");
}

TEST_CASE("no JSON before the key is open") {
  RevealedSession session = evening();
  session.state = State::closed;
  CHECK_THROWS_AS(report::json(words::Voice{}, session, insight::findingsOf(session), For::room), Problem);
}

TEST_CASE("a broken session says so in its codes") {
  RevealedSession session = evening();
  session.state = State::broken;
  session.log.push_back({Seq{40}, 1709257000000, Event::broken, {}, {}});
  const auto report = jsonOf(session, For::room);
  CHECK(report.at("conclusion").at("verdict") == "none");
  CHECK(report.at("conclusion").at("why") == "seal_broken");
}
