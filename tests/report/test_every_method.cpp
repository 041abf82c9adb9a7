#include "domain/flight_form.h"
#include "domain/names.h"
#include "figures/well_formed.h"
#include "insight/table.h"
#include "report/document.h"
#include "report/html.h"
#include "report/json.h"
#include "report/made.h"
#include "report/reported.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <map>

using namespace oddglass;
using report_test::htmlOf;
using report_test::jsonOf;

namespace {

RevealedSession sessionOf(Method method) {
  RevealedSession session = table::panelOf(method, {2, 1, 2, 2, 1, 2}, 2);
  session.title = "Heather against linden";
  session.plan.alsoPrefer = mayAlsoPrefer(method);
  for (ShownPerson& person : session.people) {
    person.as = ShownAs::signedName;
    person.shown = "Person " + std::to_string(person.place.value);
  }
  for (PanelFlight& flight : session.panel) {
    flight.sureness = Sureness::fairly;
    if (formOf(method).hasRight) flight.clue = Clue::taste;
    if (session.plan.alsoPrefer) flight.preferred = Position{2};
  }
  session.panel[1].voided = VoidReason::mixedUp;
  return session;
}

}  // namespace

TEST_CASE("every method has a whole report") {
  // How many orders a method has, by counting: two lots in n cups, k of them of the one.
  const std::map<Method, int> orders{{Method::triangle, 6}, {Method::duoTrio, 4}, {Method::tetrad, 6}, {Method::twoOutOfFive, 20}, {Method::pair, 2},
                                     {Method::threeAfc, 3}, {Method::sameDifferent, 4}, {Method::aNotA, 2}, {Method::preference, 2}};
  for (const Method method : comparingMethods()) {
    INFO(nameOf(method));
    const RevealedSession session = sessionOf(method);
    const std::string text = htmlOf(session);
    CHECK(tests::whatIsWrong(text) == "");
    CHECK(text.find("{") == text.find("{font"));  // the style sheet alone
    const auto report = jsonOf(session);
    CHECK(report.at("plan").at("method") == nameOf(method));
    REQUIRE(report.at("orders").size() == static_cast<std::size_t>(orders.at(method)));
    int dealt = 0;
    for (const auto& each : report.at("orders")) {
      CHECK(each.at("order").get<std::string>().size() == static_cast<std::size_t>(formOf(method).cups));
      dealt += each.at("flights").get<int>();
    }
    CHECK(dealt == 12);
    CHECK(report.at("maker").at("flights").size() == 12);
    for (const auto& each : report.at("maker").at("flights")) {
      CHECK(each.at("picks").size() == static_cast<std::size_t>(formOf(method).picks));
      CHECK(each.at("said_same").is_null() != formOf(method).saysSame);
      CHECK(each.at("right").is_null() == (!formOf(method).hasRight || !each.at("voided").is_null()));
    }
    CHECK(report.at("findings").at("voided") == 1);
    CHECK((text.find("[A]") != std::string::npos) == formOf(method).hasMarked);
  }
}

TEST_CASE("what each kind of question counts stands in the JSON") {
  const auto liked = jsonOf(sessionOf(Method::preference)).at("findings").at("all");
  CHECK(liked.at("votes").at("first").get<int>() + liked.at("votes").at("second").get<int>() + liked.at("votes").at("even").get<int>() == 6);
  const auto signal = jsonOf(sessionOf(Method::sameDifferent)).at("findings").at("all").at("signal");
  CHECK(signal.at("hits").get<int>() + signal.at("misses").get<int>() + signal.at("false_alarms").get<int>() + signal.at("correct_rejections").get<int>() == 11);
  CHECK(jsonOf(sessionOf(Method::sameDifferent)).at("findings").at("sureness_index").at("r_index").is_number());
  const auto pair = jsonOf(sessionOf(Method::pair));
  CHECK(pair.at("plan").at("attribute") == "bitter");
  CHECK(pair.at("plan").at("expected") == "A");
  CHECK(pair.at("standard") == "after ISO 5495:2005, not certified");
  CHECK(pair.at("findings").at("liking").at("votes").at("first").is_number());
  CHECK(jsonOf(sessionOf(Method::tetrad)).at("standard") == "common practice, not certified");
  RevealedSession sequential = sessionOf(Method::triangle);
  sequential.plan.stopping = Stopping{500, 200};
  const auto stopped = jsonOf(sequential);
  CHECK(stopped.at("plan").at("stopping").at("share_pm") == 500);
  CHECK(stopped.at("standard") == "after ISO 4120:2021, ISO 16820:2019, not certified");
  CHECK(stopped.at("findings").at("all").at("p_value").is_null());
  CHECK(stopped.at("findings").at("all").at("sequential").at("decision").is_string());
  CHECK(htmlOf(sequential).find("a difference from") != std::string::npos);
}

TEST_CASE("three lots: every pair in JSON and HTML") {
  const RevealedSession session = table::threePairs(6, {6, 5, 2});
  const auto report = jsonOf(session);
  const auto& pairs = report.at("findings").at("pairs");
  REQUIRE(pairs.size() == 3);
  CHECK(pairs[1].at("lots") == nlohmann::json::array({"A", "C"}));
  CHECK(pairs[0].at("verdict") == "shown");
  CHECK(pairs[2].at("verdict") == "not_shown");
  CHECK_THAT(pairs[0].at("all").at("p_value_holm").get<double>(), Catch::WithinRel(3 / 729.0, 1e-10));
  CHECK(report.at("conclusion").at("pairs").size() == 3);
  CHECK(report.at("orders").size() == 18);  // six of each pair
  const std::string text = htmlOf(session);
  CHECK(tests::whatIsWrong(text) == "");
  CHECK(text.find("p adjusted (Holm)") != std::string::npos);
  CHECK(text.find("Linden mead, vintage 2019 and Linden mead, vintage 2021: no difference shown.") != std::string::npos);
}
