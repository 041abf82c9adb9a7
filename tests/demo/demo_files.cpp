#include "demo/demo_files.h"

#include "demo/demo_evenings.h"
#include "exchange/write_out.h"

using namespace oddglass;

namespace {

std::string text(canon::Json file, Millis at) {
  file["written_at"] = at;
  file["about"] = "Invented: nobody and nothing in this file exists.";
  return file.dump(1) + '\n';
}

canon::Json meadPlan() {
  return {{"title", "Heather mead against a bought one"},
          {"guest_title", "An evening with mead"},
          {"question", "differ"},
          {"method", "triangle"},
          {"lots", {"Heather mead", "Bought mead"}},
          {"tasters", {"Wenna", "Ilse", "Bram", "Tove", "Nia", "Ruan", "Kit", "Sorrel"}},
          {"pourer", "Odo"},
          {"rounds", 2},
          {"cup_ml", 15},
          {"spares", 1},
          {"alpha_pm", 50},
          {"seeks", "difference"},
          {"promises", {{"shown", "name the difference and pour pairs"}, {"not_shown", "call it a match and brew it again"}}},
          {"care_settled", true}};
}

}  // namespace

std::map<std::string, std::string> demoFiles() {
  DemoShelf demo;
  const SessionId first = playPorterEvening(demo), second = playCiderEvening(demo);
  constexpr Millis written = 1780300800000;  // 1 June 2026, 8:00 UTC
  canon::Json shelf = exchange::interchangeOfAll(*demo.store, demo.clock);
  shelf.erase("sessions");
  canon::Json plan{{"format", "oddglass"}, {"version", 1}, {"written_by", shelf["written_by"]}, {"plan", meadPlan()}};
  return {{"shelf.json", text(shelf, written)},
          {"evening_1.json", text(exchange::interchange(*demo.store, demo.clock, first), written)},
          {"evening_2.json", text(exchange::interchange(*demo.store, demo.clock, second), written)},
          {"plan.json", text(plan, written)}};
}
