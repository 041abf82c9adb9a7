#include "demo/demo_club.h"
#include "demo/demo_files.h"

#include "demo/demo_evenings.h"
#include "demo/demo_hands.h"
#include "demo/demo_methods.h"
#include "demo/demo_sheets.h"
#include "demo/demo_years.h"
#include "exchange/write_out.h"
#include "shelf/vocabulary.h"

#include <algorithm>

using namespace oddglass;

namespace {

std::string text(canon::Json file, Millis at, const std::string& shows = {}) {
  file["written_at"] = at;
  file["about"] = "Invented: nobody and nothing in this file exists." + (shows.empty() ? "" : ' ' + shows);
  return file.dump(1) + '\n';
}

canon::Json meadPlan() {
  return {{"title", "Heather mead against a bought one"},
          {"guest_title", "An evening with mead"},
          {"question", "differ"},
          {"method", "triangle"},
          {"lots", {"Heather mead", "Bought mead, younger vintage"}},
          {"tasters", {"Wenna", "Ilse", "Bram", "Tove", "Nia", "Ruan", "Kit", "Sorrel"}},
          {"pourer", "Odo"},
          {"rounds", 2},
          {"cup_ml", 15},
          {"spares", 1},
          {"alpha_pm", 50},
          {"seeks", "difference"},
          {"promises", {{"shown", "name the difference and pour pairs"}, {"not_shown", "brew it again, and ask more people"}}},
          {"give_aways", {{"haze", "mend"}}},
          {"care_settled", true}};
}

/// Two words of this table: one of their own, and one that came to be counted as another.
void addWords(DemoShelf& demo) {
  TastingWord hedge;
  hedge.text = "hedge after rain";
  hedge.wordClass = WordClass::floral;
  hedge.drinks = {Kind::mead, Kind::cider};
  hedge.leaning = Leaning::wanted;
  hedge.meaning = "Wet leaves and elderflower, as on the way to the orchard.";
  shelf::addWord(*demo.store, demo.clock, demo.chance, hedge);
  TastingWord cupboard;
  cupboard.text = "old cupboard";
  cupboard.wordClass = WordClass::cellar;
  cupboard.drinks = {Kind::beer, Kind::mead, Kind::cider};
  cupboard.leaning = Leaning::fault;
  const WordId old = shelf::addWord(*demo.store, demo.clock, demo.chance, cupboard);
  shelf::mergeWord(*demo.store, demo.clock, old, shelf::resolve(builtInWords(), "musty")->id);
}

}  // namespace

std::map<std::string, std::string> demoFiles() {
  DemoShelf demo;
  const SessionId first = playPorterEvening(demo), second = playCiderEvening(demo);
  std::vector<PlayedEvening> more;
  for (auto* play : {playTetrad, playPair, playPreference, playAlike, playSequential, playThreeComparisons, playWrongPour, playErased, playMarkedCup, playKindFriends, playMovedTwice, playTwoWords}) more.push_back(play(demo));
  addWords(demo);
  constexpr Millis written = 1785571200000;  // 1 August 2026, 8:00 UTC
  canon::Json shelf = exchange::interchangeOfAll(*demo.store, demo.clock);
  shelf.erase("sessions");
  shelf.erase("series");
  canon::Json plan{{"format", "oddglass"}, {"version", 1}, {"written_by", shelf["written_by"]}, {"plan", meadPlan()}};
  std::map<std::string, std::string> files{
      {"shelf.json", text(shelf, written)},
      {"evening_1.json", text(exchange::interchange(*demo.store, demo.clock, first), written, "Shows a difference: eight of ten triangles right, one of them by the look of it.")},
      {"evening_2.json", text(exchange::interchange(*demo.store, demo.clock, second), written, "No difference shown, and what could have been missed.")},
      {"plan.json", text(plan, written)}};
  int number = 2;
  for (const PlayedEvening& evening : more)
    files["evening_" + std::to_string(++number) + ".json"] = text(exchange::interchange(*demo.store, demo.clock, evening.session), written, evening.shows);
  // Played on a shelf of their own, so that no other file changes with them.
  DemoShelf club;
  for (auto* play : {playClub, playMishaps}) {
    const PlayedEvening evening = play(club);
    files["evening_" + std::to_string(++number) + ".json"] = text(exchange::interchange(*club.store, club.clock, evening.session), written, evening.shows);
  }
  const auto years = two_years::play(demo);
  canon::Json all = exchange::interchangeOfAll(*demo.store, demo.clock);
  auto& sessions = all["sessions"];
  for (std::size_t i = sessions.size(); i-- > 0;)
    if (std::ranges::find(years.sessions, SessionId{sessions[i]["id"].get<std::string>()}) == years.sessions.end()) sessions.erase(i);
  files["two_years.json"] = text(all, written, "Two years of one recipe: three batches, one of them followed as it ages, and a bought mead of two vintages.");
  // What is played after the two years leaves their drawn numbers as they were.
  for (auto* play : {playKnownDifference}) {
    const PlayedEvening evening = play(demo);
    files["evening_" + std::to_string(++number) + ".json"] = text(exchange::interchange(*demo.store, demo.clock, evening.session), written, evening.shows);
  }
  for (const auto& [name, play] : std::map<std::string, PlayedEvening (*)(DemoShelf&)>{{"alone.json", playAlone}, {"couple.json", playCouple}}) {
    const PlayedEvening evening = play(demo);
    files[name] = text(exchange::interchange(*demo.store, demo.clock, evening.session), written + 30LL * 86400000, evening.shows);
  }
  return files;
}
