#include "domain/flight_form.h"
#include "words/shelf_change.h"
#include "words/sources.h"

#include <catch2/catch.hpp>

#include <set>

using namespace oddglass;
using namespace oddglass::words;

TEST_CASE("every change of the shelf is told with the name of what was changed") {
  std::set<std::string> told;
  for (const ChangedThing thing : {ChangedThing::drink, ChangedThing::lot, ChangedThing::bottles, ChangedThing::note, ChangedThing::person, ChangedThing::word})
    for (const ChangeDeed deed : {ChangeDeed::added, ChangeDeed::changed, ChangeDeed::putAway, ChangeDeed::broughtBack, ChangeDeed::merged}) {
      const std::string line = shelfChangeLine(Voice{}, {1, thing, deed, "{name} & Co"});
      INFO(line);
      CHECK(line.find("“{name} & Co”") != std::string::npos);  // what is filled in is never read again
      told.insert(line);
    }
  CHECK(told.size() >= 9);
}

TEST_CASE("a plan names the standard of its method, or says that there is none, and how its chances are worked out") {
  for (const Method method : comparingMethods()) {
    planning::Outlook outlook;
    outlook.method = method;
    const auto lines = planSources(Voice{}, method, outlook, 300);
    REQUIRE(lines.size() >= 2);
    // ISO 4120, 10399 and 5495 are of triangle, duo-trio and paired tests; the others have none of their own (common practice).
    const char* standard = method == Method::triangle ? "ISO 4120" : method == Method::duoTrio ? "ISO 10399" : method == Method::pair || method == Method::preference ? "ISO 5495" : "common practice";
    CHECK(lines.front().find(standard) != std::string::npos);
    CHECK_FALSE(lines[1].empty());
    outlook.sequential = planning::SequentialOutlook{};
    CHECK(planSources(Voice{}, method, outlook, 300).back().find("ISO 16820") != std::string::npos);
  }
}
