// `too-early`: what a batch's readings and bottles say, and what the command refuses.
#include "cli/night.h"

using namespace oddglass::testing;
using oddglass::cli::Json;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

struct Watched : Terminal {
  Watched() { clock.set(1782000000000); }   // 21 June 2026

  /// A mead of two bottlings with these notes; each a day, a kind and what else is written.
  void put(const std::vector<std::string>& notes) {
    std::string listed;
    for (std::size_t i = 0; i < notes.size(); ++i)
      listed += (i > 0 ? "," : "") + std::string(R"({"id":"e000000000000000000000000000000)") + std::to_string(i) + R"(","beverage":"c1000000000000000000000000000001",)" + notes[i] + "}";
    json("put", {write("shelf.json", R"({"format":"oddglass","version":1,
      "tasters":[{"id":"a1000000000000000000000000000001","name":"Wenna","is_brewer":true}],
      "beverages":[{"id":"c1000000000000000000000000000001","name":"Heather mead","origin":"batch","kind":"mead","og":10500,"fg":10060,"makers":["a1000000000000000000000000000001"]},
        {"id":"c1000000000000000000000000000002","name":"Heather ale","origin":"batch","kind":"beer","makers":["a1000000000000000000000000000001"]}],
      "lots":[{"id":"d1000000000000000000000000000001","beverage":"c1000000000000000000000000000001","name":"bottled in May","packaged_on":"2026-05-20","bottle_ml":750,"bottles":12,"storage":"pantry"}],
      "notes":[)" + listed + "]}")});
  }
  Json early() { return json("too-early", {"Heather mead"}); }
};

}  // namespace

// 1.050 and 1.010: 43.8 g/L by Balling, as in the tests of planning; down to 1.006 four times 0.001, each 0.55 volumes.
TEST_CASE("readings, what is left, and what was seen are told of a batch by its name or id") {
  Watched run;
  run.put({R"("done_on":"2026-05-01","kind":"reading","gravity":10100)", R"("done_on":"2026-05-06","kind":"reading","gravity":10100)",
           R"("done_on":"2026-05-21","kind":"haze","level":2)", R"("done_on":"2026-06-10","kind":"haze","level":1)"});
  const Json early = run.early();
  CHECK(early.at("gravity") == "steady");
  CHECK(early.at("days") == 5);
  CHECK(early.at("last").at("gravity") == 1.01);
  CHECK(early.at("read_again_on").is_null());
  CHECK_THAT(early.at("extract_left").get<double>(), WithinAbs(43.8, 0.2));
  CHECK_THAT(early.at("volumes_left").get<double>(), WithinAbs(2.2, 1e-9));
  CHECK(early.at("bottled_on") == "2026-05-20");
  CHECK(early.at("watched") == Json::array({{{"kind", "haze"}, {"on", "2026-06-10"}, {"level", 1}, {"level_before", 2}}}));
  CHECK(run.json("too-early", {"c1000000000000000000000000000001"}) == early);
  CHECK(run.json("too-early", {"heather MEAD"}) == early);
  CHECK_THAT(run("too-early", {"Heather mead"}).out, Contains("In the bottle since 2026-05-20: 32 days.") && Contains("ressure"));
}

TEST_CASE("a fall is told as it was read, one of weeks as no more than that") {
  Watched soon;
  soon.put({R"("done_on":"2026-05-01","kind":"reading","gravity":10300)", R"("done_on":"2026-05-03","kind":"reading","gravity":10200)"});
  CHECK(soon.early().at("gravity") == "falling");
  CHECK(soon.early().at("read_again_on") == "2026-05-06");
  Watched late;
  late.put({R"("done_on":"2026-04-01","kind":"reading","gravity":10500)", R"("done_on":"2026-05-03","kind":"reading","gravity":10100)"});
  CHECK(late.early().at("gravity") == "fell before");
  CHECK_THAT(late("too-early", {"Heather mead"}).out, Contains("Whether it still does, only another reading says."));
}

TEST_CASE("a gusher names the other bottles; without a reading the reason stands there") {
  Watched run;
  run.put({R"("done_on":"2026-06-15","kind":"gusher")"});
  const Json early = run.early();
  CHECK(early.at("gravity") == "no reading");
  CHECK(early.at("gushed_on") == "2026-06-15");
  CHECK(early.at("extract_left").is_null());
  CHECK(early.at("why") == "no gravity was read");
  CHECK_THAT(run("too-early", {"Heather mead"}).out, Contains("A bottle gushed.") && Contains("bottled in May: 12 bottles, pantry") && Contains("gloves and goggles"));
}

TEST_CASE("a name that nothing has, or two drinks, is refused") {
  Watched run;
  run.put({});
  requireRefused(run, "too-early", "Elder wine", {"Elder wine"});
  requireRefused(run, "too-early", "Heather", {"Heather"});
  requireRefused(run, "too-early", "DRINK");
}
