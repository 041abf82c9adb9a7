#include "exchange/take_in.h"
#include "refused.h"
#include "told.h"

#include <functional>
#include <random>

using namespace oddglass;
using namespace oddglass::exchange;
using canon::Json;

namespace {

struct Attack {
  std::string name;
  std::function<void(Json& file, Json& session)> change;
  Trouble trouble;
  std::string argument;  ///< how the path begins
};

/// Makes the chain whole again after an entry was changed, as somebody would who knows the form.
void chainAgain(Json& session) {
  canon::Digest before{};
  for (Json& entry : session["log"]) {
    entry.erase("hash");
    before = canon::sha256({before, canon::bytesOf(canon::canonical(entry))});
    entry["hash"] = canon::hex(before);
  }
}

Json& entryOf(Json& session, const std::string& kind) {
  for (Json& entry : session["log"])
    if (entry["kind"] == kind) return entry;
  throw std::logic_error("no entry " + kind);
}

const std::vector<Attack>& attacks() {
  using enum Trouble;
  static const std::vector<Attack> all{
      {"another format", [](Json& f, Json&) { f["format"] = "other"; }, badFile, "file"},
      {"a later version", [](Json& f, Json&) { f["version"] = 2; }, fileNewer, "version"},
      {"an unknown key at the top", [](Json& f, Json&) { f["extra"] = 1; }, badFile, "extra"},
      {"an unknown key in a session", [](Json&, Json& s) { s["extra"] = 1; }, badFile, "sessions/0/extra"},
      {"an unknown key in the plan", [](Json&, Json& s) { s["plan"]["extra"] = 1; }, badFile, "sessions/0/plan"},
      {"no log", [](Json&, Json& s) { s.erase("log"); }, badFile, "sessions/0"},
      {"an empty log", [](Json&, Json& s) { s["log"] = Json::array(); }, badFile, "sessions/0/log"},
      {"no key", [](Json&, Json& s) { s.erase("key"); }, badFile, "sessions/0"},
      {"a log entry altered", [](Json&, Json& s) { s["log"][3]["at"] = 5; }, doesNotVerify, "sessions/0"},
      {"a log entry left out", [](Json&, Json& s) { s["log"].erase(4); }, doesNotVerify, "sessions/0/log/4"},
      {"two log entries exchanged", [](Json&, Json& s) { std::swap(s["log"][2], s["log"][3]); }, doesNotVerify, "sessions/0/log/2"},
      {"two entries exchanged and renumbered", [](Json&, Json& s) {
         std::swap(s["log"][8], s["log"][9]);
         std::swap(s["log"][8]["seq"], s["log"][9]["seq"]);
       }, doesNotVerify, "sessions/0"},
      {"the last entry cut off", [](Json&, Json& s) {
         s["remarks"].erase(s["remarks"].size() - 1);
         s["log"].erase(s["log"].size() - 1);
         s["log"].erase(s["log"].size() - 1);
       }, doesNotVerify, "sessions/0/state"},
      {"a step that is not allowed, in a whole chain", [](Json&, Json& s) { entryOf(s, "poured")["kind"] = "closed"; chainAgain(s); }, doesNotVerify, "sessions/0"},
      {"a commitment that is none", [](Json&, Json& s) { s["log"][0]["body"]["commitment"] = "zz"; chainAgain(s); }, badFile, "sessions/0/log/0/body/commitment"},
      {"another commitment, in a whole chain", [](Json&, Json& s) { s["log"][0]["body"]["commitment"] = std::string(64, 'a'); chainAgain(s); }, doesNotVerify, "sessions/0"},
      {"another plan", [](Json&, Json& s) { s["plan"]["analysis"]["alpha_pm"] = 200; }, doesNotVerify, "sessions/0"},
      {"another plan, in a whole chain", [](Json&, Json& s) {
         s["plan"]["analysis"]["alpha_pm"] = 200;
         s["log"][0]["body"]["plan"] = canon::hex(canon::sha256({canon::bytesOf(canon::canonical(s["plan"]))}));
         chainAgain(s);
       }, doesNotVerify, "sessions/0"},
      {"another seal mark", [](Json&, Json& s) { s["seal_mark"] = "kapo rilu 7"; }, doesNotVerify, "sessions/0"},
      {"another seed", [](Json&, Json& s) { s["key"]["seed"] = std::string(64, '1'); }, doesNotVerify, "sessions/0"},
      {"another lot in the key", [](Json&, Json& s) { auto& slot = s["key"]["lines"][0][1]; slot = 3 - slot.get<int>(); }, doesNotVerify, "sessions/0"},
      {"a line of the key left out", [](Json&, Json& s) { s["key"]["lines"].erase(0); }, brokenReference, "sessions/0/key/lines"},
      {"a lot in the key that is not planned", [](Json&, Json& s) { s["key"]["lines"][0][1] = 3; }, brokenReference, "sessions/0/key/lines/0/1"},
      {"lines of the key out of order", [](Json&, Json& s) { std::swap(s["key"]["lines"][0], s["key"]["lines"][1]); }, badFile, "sessions/0/key/lines/1"},
      {"an open answer to a question that is about no cup", [](Json&, Json& s) { s["open"] = Json::array({{{"place", 1}, {"slot", 1}, {"item", 1}, {"value", 5}, {"at", 1}}}); }, doesNotVerify, "sessions/0"},
      {"an open answer about a lot that is not planned", [](Json&, Json& s) { s["open"] = Json::array({{{"place", 1}, {"slot", 7}, {"item", 1}, {"value", 5}, {"at", 1}}}); }, brokenReference, "sessions/0/open/0/slot"},
      {"another generator", [](Json&, Json& s) { s["key"]["generator"] = "dice/1"; }, notAChoice, "sessions/0/key/generator"},
      {"an answer altered", [](Json&, Json& s) { auto& sure = s["hand_ins"][0]["cells"][1][2]; sure = sure == 1 ? 2 : 1; }, doesNotVerify, "sessions/0"},
      {"an answer out of range", [](Json&, Json& s) { s["hand_ins"][0]["cells"][1][2] = 9; }, outOfRange, "sessions/0/hand_ins/0/cells/1/2"},
      {"an answer left out", [](Json&, Json& s) { s["hand_ins"].erase(2); }, doesNotVerify, "sessions/0"},
      {"an answer twice", [](Json&, Json& s) { s["hand_ins"].push_back(s["hand_ins"][0]); }, brokenReference, "sessions/0/hand_ins"},
      {"a remark twice", [](Json&, Json& s) { s["remarks"].push_back(s["remarks"][0]); }, brokenReference, "sessions/0/remarks"},
      {"two people at one place", [](Json&, Json& s) { s["people"].push_back(s["people"][0]); }, brokenReference, "sessions/0/people"},
      {"an answer to another place's entry", [](Json&, Json& s) { s["hand_ins"][0]["place"] = 5; }, doesNotVerify, "sessions/0"},
      {"an answer for a place that is not there", [](Json&, Json& s) { s["hand_ins"][0]["place"] = 300; }, brokenReference, "sessions/0/hand_ins/0/place"},
      {"an answer without an entry", [](Json&, Json& s) { s["hand_ins"][0]["seq"] = 9999; }, brokenReference, "sessions/0/hand_ins/0/seq"},
      {"an answer at an entry of another kind", [](Json&, Json& s) { s["hand_ins"][0]["seq"] = 1; }, brokenReference, "sessions/0/hand_ins/0/seq"},
      {"a choice of a cup that is not there", [](Json&, Json& s) { s["hand_ins"][0]["cells"][0][2] = 111; }, brokenReference, "sessions/0/hand_ins/0/cells/0/2"},
      {"words altered", [](Json&, Json& s) { s["hand_ins"][0]["words"][0]["text"] = "never said"; }, doesNotVerify, "sessions/0"},
      {"words left out without an erasure", [](Json&, Json& s) { s["hand_ins"][0]["words"].erase(0); }, doesNotVerify, "sessions/0"},
      {"a remark altered", [](Json&, Json& s) { s["remarks"][0]["text"] = "never said"; }, doesNotVerify, "sessions/0"},
      {"a promise altered", [](Json&, Json& s) { s["promises"][0]["text"] = "never promised"; }, doesNotVerify, "sessions/0"},
      {"a pour altered", [](Json&, Json& s) { s["key"]["poured"][0]["slot"] = 1; }, doesNotVerify, "sessions/0"},
      {"a pour of a cup that is not there", [](Json&, Json& s) { s["key"]["poured"][0]["code"] = 111; }, brokenReference, "sessions/0/key/poured/0/code"},
      {"a person nobody listed", [](Json&, Json& s) { s["people"][0]["taster"] = std::string(32, 'e'); }, brokenReference, "sessions/0/people/0/taster"},
      {"a person at a place that is not there", [](Json&, Json& s) { s["people"][0]["place"] = 300; }, brokenReference, "sessions/0/people/0/place"},
      {"a lot of a drink that is not there", [](Json& f, Json&) { f["lots"][0]["beverage"] = std::string(32, 'e'); }, brokenReference, "lots/0/beverage"},
      {"a note of a drink that is not there", [](Json& f, Json&) {
         f["notes"].push_back({{"id", std::string(32, 'b')}, {"beverage", std::string(32, 'e')}, {"done_on", "2026-01-02"}, {"kind", "other"}, {"text", "x"}});
       }, brokenReference, "notes/0/beverage"},
      {"a maker who is not there", [](Json& f, Json&) { f["beverages"][0]["origin"] = "batch"; f["beverages"][0]["makers"] = {std::string(32, 'e')}; f["beverages"][0]["id"] = std::string(32, 'd'); }, brokenReference, "beverages/0/makers"},
      {"an id twice", [](Json& f, Json&) { f["tasters"].push_back(f["tasters"][0]); }, alreadyThere, "tasters/"},
      {"an id that is none", [](Json& f, Json&) { f["lots"][0]["id"] = "ABC"; }, badFile, "lots/0/id"},
      {"a session twice", [](Json& f, Json& s) { const Json again = s; f["sessions"].push_back(again); }, alreadyThere, "sessions/1/id"},
      {"a strength without a source", [](Json& f, Json&) { f["beverages"][0]["abv_from"] = nullptr; }, empty, "beverages/0"},
      {"a sealed session that brings answers", [](Json&, Json& s) { s["state"] = "tasting"; }, badFile, "sessions/0/log"},
      {"a plan of a million rounds", [](Json&, Json& s) { s["plan"]["rounds"] = 1000000; }, badFile, "sessions/0/plan/rounds"},
      {"a question that the method does not answer", [](Json&, Json& s) { s["plan"]["question"] = "prefer"; }, badFile, "sessions/0/plan/method"},
      {"a plan with a cup less", [](Json&, Json& s) { s["plan"]["cups"].erase(0); }, badFile, "sessions/0/plan/cups"},
      {"a list where an object belongs", [](Json&, Json& s) { s["plan"] = Json::array(); }, badFile, "sessions/0/plan"},
      {"text where a number belongs", [](Json& f, Json&) { f["lots"][0]["bottle_ml"] = "many"; }, notANumber, "lots/0/bottle_ml"},
      {"a session of another kind of text", [](Json&, Json& s) { s["title"] = std::string(300, 'x'); }, tooLong, "sessions/0/title"},
  };
  return all;
}

}  // namespace

TEST_CASE("Each hostile change is refused by name and place, and nothing is written") {
  Told told;
  Elsewhere elsewhere;
  const std::string before = elsewhere.all();
  const Json good = told.json();
  for (const Attack& attack : attacks()) {
    INFO(attack.name);
    Json file = good;
    attack.change(file, file["sessions"][0]);
    const auto path = told.write(file);
    const Problem problem = problemOf([&] { importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, path); });
    INFO(problem.argument() << ": " << problem.what());
    CHECK(problem.trouble() == attack.trouble);
    CHECK(problem.argument().starts_with(attack.argument));
    CHECK(said(problem, "file") == "file.json");
    CHECK_FALSE(said(problem, "line").empty());
    CHECK(elsewhere.all() == before);
    if (attack.trouble == Trouble::doesNotVerify) CHECK(outsideCheck(path) == 1);
  }
  importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, told.write(good));
  CHECK(elsewhere.all() != before);
}

TEST_CASE("A file cut off anywhere is refused, and nothing is written") {
  Told told;
  Elsewhere elsewhere;
  const std::string before = elsewhere.all(), text = told.json().dump(1);
  std::mt19937 engine(7);
  for (int i = 0; i < 150; ++i) {
    const auto path = told.write(text.substr(0, engine() % (text.size() - 1)));
    CHECK(problemOf([&] { importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, path); }).trouble() == Trouble::badFile);
  }
  CHECK(elsewhere.all() == before);
}

TEST_CASE("A flipped bit is refused, or changes nothing that the record proves") {
  Told told;
  Elsewhere elsewhere;
  const std::string text = told.json().dump(1), before = elsewhere.all();
  const Json good = told.json();
  std::mt19937 engine(11);
  int refusals = 0;
  for (int i = 0; i < 400; ++i) {
    std::string flipped = text;
    flipped[engine() % flipped.size()] ^= static_cast<char>(1 << engine() % 8);
    const auto path = told.write(flipped);
    bool holds = false;
    try {
      const auto checked = verifyFile(path);
      holds = checked.size() == 1 && checked[0].found.holds();
    } catch (const Problem&) {
    }
    if (!holds) {
      ++refusals;
      CHECK_THROWS_AS(importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, path), Problem);
      if (i % 10 == 0) CHECK(elsewhere.all() == before);
      continue;
    }
    // What still holds must tell the same of plan, log and answers.
    const Json session = Json::parse(flipped)["sessions"][0];
    for (const char* part : {"plan", "log", "key", "promises", "remarks"}) CHECK(session[part] == good["sessions"][0][part]);
    for (std::size_t k = 0; k < session["hand_ins"].size(); ++k)
      for (const char* part : {"seq", "place", "round", "salt", "cells", "words"}) CHECK(session["hand_ins"][k][part] == good["sessions"][0]["hand_ins"][k][part]);
  }
  CHECK(refusals > 300);
  CHECK(elsewhere.all() == before);
}

TEST_CASE("Random bytes and deep, repeated or broken numbers inside a good file are refused") {
  Told told;
  Elsewhere elsewhere;
  const std::string text = told.json().dump(1), before = elsewhere.all();
  const auto with = [&](const std::string& from, const std::string& to) {
    std::string changed = text;
    changed.replace(changed.find(from), from.size(), to);
    return problemOf([&] { importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, told.write(changed)); });
  };
  CHECK(with("\"version\": 1", "\"version\": 1, \"version\": 1").trouble() == Trouble::keyTwice);
  CHECK(with("\"version\": 1", "\"version\": 1.0").trouble() == Trouble::notWhole);
  CHECK(with("\"version\": 1", "\"about\": " + std::string(10000, '[') + std::string(10000, ']') + ", \"version\": 1").trouble() == Trouble::fileTooDeep);
  CHECK(with("\"version\": 1", "\"version\": 1e99").trouble() == Trouble::notWhole);
  std::mt19937 engine(3);
  for (int i = 0; i < 100; ++i) {
    std::string noise(1 + engine() % 300, ' ');
    for (char& c : noise) c = static_cast<char>(engine());
    CHECK_THROWS_AS(importFile(*elsewhere.store, elsewhere.clock, elsewhere.chance, told.write(noise)), Problem);
  }
  CHECK(elsewhere.all() == before);
}
