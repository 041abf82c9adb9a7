#pragma once

#include "cli/ran.h"

#include <set>
#include <string>

namespace oddglass::testing {

/// An evening played with nothing but commands: an invented shelf, a plan of five friends and a maker, and answers made from what the table shows.
struct Night : Terminal {
  std::string id;

  static std::string uid(char digit) { return std::string(32, digit); }

  static std::string shelf() {
    return R"({"format":"oddglass","version":1,
      "tasters":[{"id":"a1000000000000000000000000000001","name":"Wenna","is_brewer":true},{"id":"a1000000000000000000000000000002","name":"Odo"},
        {"id":"b1000000000000000000000000000001","name":"Ash"},{"id":"b1000000000000000000000000000002","name":"Birch","nickname":"the owl"},
        {"id":"b1000000000000000000000000000003","name":"Cedar"},{"id":"b1000000000000000000000000000004","name":"Dogwood"},{"id":"b1000000000000000000000000000005","name":"Elder"}],
      "beverages":[{"id":"c1000000000000000000000000000001","name":"Heather mead","origin":"batch","kind":"mead","abv_bp":1200,"abv_from":"gravities","makers":["a1000000000000000000000000000001"]},
        {"id":"c1000000000000000000000000000002","name":"Bought mead","origin":"reference","kind":"mead","abv_bp":1150,"abv_from":"label","makers":[]}],
      "lots":[{"id":"d1000000000000000000000000000001","beverage":"c1000000000000000000000000000001","name":"bottled in March","bottle_ml":750,"bottles":12},
        {"id":"d1000000000000000000000000000002","beverage":"c1000000000000000000000000000002","name":"vintage 2","bottle_ml":750,"bottles":6}]})";
  }

  static std::string planWith(const std::string& more) {
    return R"({"format":"oddglass","version":1,"plan":{"title":"Heather against bought","guest_title":"An evening","lots":["Heather mead","Bought mead"],
      "tasters":["Wenna","Ash","Birch","Cedar","Dogwood","Elder"],"pourer":"Odo","cup_ml":15,"spares":1,"care_settled":true,)" + more +
           R"("promises":{"shown":"name the difference","not_shown":"pour pairs"}}})";
  }

  /// Puts the shelf and keeps the plan.
  void plan(const std::string& more = R"("method":"triangle","rounds":2,)") {
    json("put", {write("shelf.json", shelf())});
    id = json("plan", {write("plan.json", planWith(more))}).at("id").get<std::string>();
  }

  void seal() { json("seal " + id); }

  /// The five friends and the maker, each in their own way.
  void sitAll() {
    const char* names[]{"Ash", "Birch", "Cedar", "Dogwood", "Elder", "Wenna"};
    const char* ways[]{"signed", "nickname", "loose", "signed", "signed", "signed"};
    for (int place = 1; place <= 6; ++place) json("sit " + id + ' ' + std::to_string(place) + ' ' + names[place - 1] + " --as " + ways[place - 1]);
  }

  /// Answers of every place that has cups before it, as a file; `cup` is the position that all of them choose.
  std::string answers(std::size_t cup = 0) {
    std::string table = "place,round,item,code,value\n";
    const cli::Json seen = json("table " + id);
    for (const cli::Json& place : seen.at("places"))
      if (!place.at("cups").empty() && !place.at("who").is_null() && place.at("step") != "empty") {
        const std::string flight = place.at("place").dump() + ',' + place.at("round").dump() + ',';
        table += flight + "choose,," + place.at("cups").at(cup).dump() + '\n' + flight + "sureness,,fairly\n" + flight + "clue,,taste\n";
      }
    return write("answers.csv", table);
  }

  /// From the seal to the close.
  void toTheClose(int rounds = 2) {
    seal();
    sitAll();
    for (int round = 1; round <= rounds; ++round) json("answer " + id, {answers(static_cast<std::size_t>(round))});
    json("close " + id);
  }
};

}  // namespace oddglass::testing
