#include "cli/calibrated.h"
#include "cli/estimated.h"
#include "cli/families.h"
#include "domain/problem.h"
#include "insight/room.h"
#include "session/own.h"
#include "shelf/people.h"
#include "words/room.h"

namespace oddglass::cli {
namespace {

const char* verdictWord(insight::LeanVerdict verdict) {
  switch (verdict) {
    case insight::LeanVerdict::kinder: return "kinder";
    case insight::LeanVerdict::harder: return "harder";
    case insight::LeanVerdict::notShown: return "not shown";
    case insight::LeanVerdict::none: break;
  }
  return "no verdict";
}

const char* whyWord(insight::NoLean why) {
  switch (why) {
    case insight::NoLean::fewSessions: return "fewer than three opened tastings of their own";
    case insight::NoLean::fewKnown: return "too many asked to be only in the sums";
    case insight::NoLean::fewFriends: return "fewer than three others";
    case insight::NoLean::noSpread: return friendsAlike;
  }
  return "";
}

Json leanJson(const insight::Lean& lean) {
  Json json = estimatedJson(lean.over, friendsAlike);
  json["friends"] = lean.friends;
  json["sessions"] = lean.together;
  json["only_in_sums"] = lean.onlyInSums;
  json["verdict"] = verdictWord(lean.verdict);
  json["weaker_without_said"] = lean.weaker;
  if (lean.why) json["why"] = whyWord(*lean.why);
  return json;
}

Json labelJson(const insight::Label& label) {
  Json json = estimatedJson(label.over, friendsAlike);
  json["friends"] = label.friends;
  json["sessions"] = label.together;
  json["verdict"] = label.verdict == insight::LeanVerdict::kinder ? "towards their own" : label.verdict == insight::LeanVerdict::harder ? "away from their own" : verdictWord(label.verdict);
  json["order_and_label_together"] = true;
  if (label.why) json["why"] = *label.why == insight::NoLean::fewSessions ? "fewer than three tastings with an open round" : whyWord(*label.why);
  return json;
}

Json headJson(const OwnSession& own) { return {{"session", own.session.id.text}, {"title", own.session.title}, {"revealed_at", own.session.revealedAt}}; }

Json roomJson(const Taster& person, const OwnTastings& tastings, const insight::RoomFindings& found) {
  Json json{{"taster", person.id.text}, {"name", person.name}, {"lean", leanJson(found.lean)}, {"per_session", Json::array()}, {"label", labelJson(found.label)}, {"label_per_session", Json::array()}, {"expectations", Json::array()}, {"calibration", nullptr}};
  for (const insight::LeanLine& line : found.lean.sessions) {
    Json one = headJson(tastings.sessions[line.at]);
    one["friends"] = line.friends;
    one.update(estimatedJson(line.lean, friendsAlike));
    json["per_session"].push_back(std::move(one));
  }
  for (const insight::LabelLine& line : found.label.sessions) {
    Json one = headJson(tastings.sessions[line.at]);
    one["friends"] = line.friends;
    one["own"] = line.own;
    one["others"] = line.others;
    one.update(estimatedJson(line.label, friendsAlike));
    json["label_per_session"].push_back(std::move(one));
  }
  for (const insight::ExpectationLine& line : found.expectations) {
    Json one = headJson(tastings.sessions[line.at]);
    one["expectation_pc"] = line.percent;
    one["came_true"] = line.cameTrue ? Json(*line.cameTrue) : Json(nullptr);
    if (!line.cameTrue) one["why"] = "no verdict came of it";
    json["expectations"].push_back(std::move(one));
  }
  if (found.calibration) json["calibration"] = calibrationJson(*found.calibration);
  else json["why"] = "calibration needs three outcomes";
  return json;
}

std::vector<std::string> readableRoom(const words::RoomPage& page) {
  std::vector<std::string> lines{page.headline, page.lead};
  addLines(lines, page.lines);
  if (page.picture)
    for (const words::LeanRow& row : page.picture->rows) lines.push_back("  " + row.readOut);
  lines.push_back(page.label.heading);
  addLines(lines, page.label.lines);
  for (const auto& row : page.label.rows) lines.push_back("  " + row[0] + ": " + row[1] + "; " + row[2]);
  lines.push_back(page.expected.heading);
  addLines(lines, page.expected.lines);
  for (const auto& row : page.expected.rows) lines.push_back("  " + row[0] + ": " + row[1] + "; " + row[2]);
  if (page.curve) {
    lines.push_back(page.curve->title);
    for (const words::CurveRow& row : page.curve->rows) lines.push_back("  " + row.readOut);
  }
  return lines;
}

Taster whose(store::Store& store, const Given& given) {
  if (given.isGiven()) return looksLikeUid(given.text()) ? shelf::taster(store, {given.text()}) : shelf::tasterNamed(store, given.text());
  const auto brewer = shelf::brewer(store);
  if (!brewer) throw Problem(Trouble::unknown, given.name, {{"what", "taster"}, {"text", "the brewer"}});
  return *brewer;
}

}  // namespace

void describeRoom(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "room", "You and the room: how far a maker leans to their own, and how their expectations hold");
  const auto who = command.option("--taster", "TASTER", "Name or id of the maker; the brewer when left out");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    const Taster person = whose(*store, *who);
    const OwnTastings tastings = session::ownTastings(*store, person.id);
    const insight::RoomFindings found = insight::roomOf(tastings);
    return {roomJson(person, tastings, found), readableRoom(words::roomPage(desk.voice(), tastings, found))};
  });
}

}  // namespace oddglass::cli
