#include "planning/too_early.h"

#include "canon/folded.h"
#include "cli/families.h"
#include "domain/day.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "words/too_early.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

/// The drink that is meant by an id, by its name, or by a part of it that no other name has.
Beverage drinkOf(store::Store& store, const Given& given) {
  if (looksLikeUid(given.text())) return shelf::beverage(store, {given.text()});
  const auto found = shelf::find(store, given.text());
  const auto exactly = std::ranges::find(found, canon::folded(given.text()), [](const shelf::OnShelf& line) { return canon::folded(line.beverage.name); });
  if (exactly != found.end()) return exactly->beverage;
  if (found.size() != 1) throw Problem(found.empty() ? Trouble::unknown : Trouble::ambiguous, given.name, {{"what", "drink"}, {"text", given.text()}});
  return found.front().beverage;
}

std::string_view gravityWatchWord(planning::GravityWatch watch) {
  switch (watch) {
    case planning::GravityWatch::none: return "no reading";
    case planning::GravityWatch::one: return "one reading";
    case planning::GravityWatch::tooClose: return "too close together";
    case planning::GravityWatch::falling: return "falling";
    case planning::GravityWatch::fell: return "fell before";
    case planning::GravityWatch::rising: return "rising";
    case planning::GravityWatch::steady: break;
  }
  return "steady";
}

Json dayOrNull(const std::string& day) { return day.empty() ? Json() : Json(day); }

Json tooEarlyJson(const Beverage& drink, const planning::TooEarly& early, const words::TooEarlyWords& said) {
  Json json{{"beverage", drink.id.text},
            {"gravity", gravityWatchWord(early.gravity)},
            {"last", {{"on", dayOrNull(early.lastDay)}, {"gravity", early.last ? Json(*early.last / 10000.0) : Json()}}},
            {"since", {{"on", dayOrNull(early.sinceDay)}, {"gravity", early.since ? Json(*early.since / 10000.0) : Json()}}},
            {"days", early.days},
            {"read_again_on", dayOrNull(early.nextDay)},
            {"extract_left", numberOrNull(early.extractLeft)},
            {"volumes_left", numberOrNull(early.volumesLeft)},
            {"bottled_on", dayOrNull(early.bottledOn)},
            {"gushed_on", dayOrNull(early.gushedOn)},
            {"watched", Json::array()},
            {"text", said.headline}};
  for (const planning::Watched& each : early.watched)
    json["watched"].push_back({{"kind", nameOf(each.kind)}, {"on", each.day}, {"level", each.level}, {"level_before", each.levelBefore ? Json(*each.levelBefore) : Json()}});
  if (!early.extractLeft) json["why"] = early.last ? "no original gravity is given" : "no gravity was read";
  else if (!early.volumesLeft) json["why"] = "no final gravity below the last reading is given";
  return json;
}

}  // namespace

void describeTooEarly(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "too-early", "What a batch's readings and bottles say about whether it still works, and what a bottle could hold");
  const auto which = command.argument("DRINK", "Its name or id");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    const Beverage drink = drinkOf(*store, *which);
    const auto lots = shelf::lotsOf(*store, drink.id);
    const planning::TooEarly early = planning::tooEarly(drink, lots, shelf::notesOf(*store, drink.id), dayOf(desk.clock().now()));
    const words::TooEarlyWords said = words::tooEarlyWords(desk.voice(), drink, lots, early);
    Answer answer{tooEarlyJson(drink, early, said), {said.headline}};
    addLines(answer.lines, said.body());
    addLines(answer.lines, said.smallPrint());
    return answer;
  });
}

}  // namespace oddglass::cli
